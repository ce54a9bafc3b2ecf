// SPDX-License-Identifier: GPL-3.0-or-later
// level-drop (advice, never a gate): how much quieter the farthest ear is than the nearest one, from
// spreading of a point source and the air's absorption of the day.
#include <algorithm>
#include <cmath>
#include <limits>

#include "options/air.h"
#include "options/cover.h"
#include "options/level.h"
#include "options/rig_fold.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "level-drop";
enum Reason { nothing, noTemperature, noHumidity, noAudience, noTrim };

/// Straight from the topmost covering cabinet to the nearest and the farthest ear.
struct Ways {
  double near = notKnown;
  double far = notKnown;
};

Ways waysOf(const Case& option, const Settled& settled, double trimM) {
  const Audience& audience = option.room->audience;
  const SourcePlace source = sourcePlace(option, audience.cabinets.front(), settled);
  const auto ears =
      option.fold == nullptr ? std::make_shared<EarColumns>(audience) : option.fold->ears(audience);
  const std::vector<double>& distance = ears->distanceFrom(audience, coverPlaceOf(option, settled));
  const std::vector<double>& height = ears->height();
  double near = std::numeric_limits<double>::infinity(); // squared
  double far = 0.0;
  for (std::size_t i = 0; i < distance.size(); ++i) {
    const double away = distance[i] - source.ahead;
    const double down = height[i] - trimM - source.height;
    const double way = away * away + down * down;
    near = away > 0.0 ? std::min(near, way) : near;
    far = away > 0.0 ? std::max(far, way) : far;
  }
  return far > 0.0 ? Ways{std::sqrt(near), std::sqrt(far)} : Ways{};
}

double dropOver(const Ways& ways, double lostDbPerM) {
  return spreadingLoss(ways.near, ways.far) + lostDbPerM * (ways.far - ways.near);
}

Use without(Reason reason) {
  Use use;
  use.verdict = Verdict::holds;
  use.applies = false;
  use.why = reason;
  return use;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const calendar::Show& show = option.snapshot->show;
  const Audience& audience = option.room->audience;
  if (!show.temperature) {
    return without(noTemperature);
  }
  if (!show.humidity) {
    return without(noHumidity);
  }
  if (audience.cabinets.empty() || audience.positions.empty()) {
    return without(noAudience);
  }
  if (std::isnan(trimM)) {
    return without(noTrim);
  }
  const Ways ways = waysOf(option, *settled, trimM);
  if (std::isnan(ways.far)) {
    return without(noAudience);
  }
  Use use;
  use.verdict = Verdict::holds;
  use.value = dropOver(ways, option.room->airLoss);
  return use;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  switch (use.why) {
  case noTemperature:
    return doesNotApply(ruleId, QStringLiteral("advice only, and the day's temperature is not stated."));
  case noHumidity:
    return doesNotApply(ruleId, QStringLiteral("advice only, and the day's humidity is not stated."));
  case noAudience:
    return doesNotApply(ruleId,
                        QStringLiteral("advice only, and no audience lies in front of a covering cabinet."));
  case noTrim:
    return doesNotApply(ruleId, QStringLiteral("advice only, and no trim is decided."));
  default:
    break;
  }
  Finding finding = findingFor(ruleId, use, "dB");
  const calendar::Show& show = option.snapshot->show;
  const Ways ways = waysOf(option, *settled, trimM);
  finding.source = QStringLiteral("advice: spreading of a point source, air after ISO 9613-1:1993");
  finding.text =
      QStringLiteral("From the nearest ear at %1 to the farthest at %2 the level drops by %3 dB at 1 kHz "
                     "and %4 dB at 4 kHz (%5 °C, %6 % humidity); advice, with no limit.")
          .arg(inM(ways.near), inM(ways.far),
               QString::number(dropOver(ways, *airLoss(show, oneKilohertzBand)), 'f', 1),
               QString::number(use.value, 'f', 1), QString::number(*show.temperature, 'f', 0),
               QString::number(*show.humidity, 'f', 0));
  return finding;
}

} // namespace

const Rule levelDropRule{ruleId, true, evaluate, nullptr, explain};

} // namespace hangbook::options
