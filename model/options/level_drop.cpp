// SPDX-License-Identifier: GPL-3.0-or-later
// level-drop (advice, never a gate): how much quieter the farthest ear is than the nearest one, from
// spreading of a point source and the air's absorption of the day.
#include <algorithm>
#include <array>
#include <cmath>

#include "options/air.h"
#include "options/cover.h"
#include "options/level.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "level-drop";
// The exact mid-bands of the third octaves called 1 kHz and 4 kHz.
const std::array<double, 2> frequencies{1000.0, 1000.0 * std::pow(10.0, 0.6)};
enum Reason { nothing, noTemperature, noHumidity, noAudience, noTrim };

/// Straight from the topmost covering cabinet to the nearest and the farthest ear.
struct Ways {
  double near = notKnown;
  double far = notKnown;
};

Ways waysOf(const Case& option, const Settled& settled, double trimM) {
  const Audience& audience = option.room->audience;
  const CoverView view = viewOf(option, audience, settled);
  Ways ways;
  for (std::size_t i = 0; i < view.distance.size(); ++i) {
    const double away = view.distance[i] - view.sources.front().ahead;
    if (!(away > 0.0)) {
      continue;
    }
    const double down = audience.positions[i].ear - trimM - view.sources.front().height;
    const double way = std::hypot(away, down);
    ways.near = way < ways.near || std::isnan(ways.near) ? way : ways.near;
    ways.far = way > ways.far || std::isnan(ways.far) ? way : ways.far;
  }
  return ways;
}

double dropAt(double frequency, const Ways& ways, const LevelAir& air) {
  return spreadingLoss(ways.near, ways.far) +
         airAbsorption(frequency, air.temperature, air.humidity, air.pressure) * (ways.far - ways.near);
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
  use.value = dropAt(frequencies[1], ways, *airOf(show));
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
               QString::number(dropAt(frequencies[0], ways, *airOf(show)), 'f', 1),
               QString::number(use.value, 'f', 1), QString::number(*show.temperature, 'f', 0),
               QString::number(*show.humidity, 'f', 0));
  return finding;
}

} // namespace

const Rule levelDropRule{ruleId, true, evaluate, nullptr, explain};

} // namespace hangbook::options
