// SPDX-License-Identifier: GPL-3.0-or-later
// uneven: the two hoists of a side pair never stand quite level. With one of them higher by what the house
// lets pass, either way, the hang rolls, the higher pick takes more, and points, shared structure, bridles,
// hoists and hardware still carry it; the difference is within the bar's own figure.
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "hang/uneven.h"
#include "options/load_columns.h"
#include "options/loads.h"
#include "options/rig_fold.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

enum Why { judged, noPair, moreThanBar, differenceUnknown };

/// `which` = rule × 2, + 1 where the right one stands higher.
std::array<const Rule*, 5> carried() {
  return {&pointLoadRule, &zoneLoadRule, &bridleRule, &hoistRule, &hardwareRule};
}

double spacingOf(const Case& option) {
  return option.arrangement->spacing ? inMetres(*option.arrangement->spacing) : notKnown;
}

std::optional<hang::Uneven> unevenBy(const Case& option, double difference, const hang::Statics& level) {
  hang::Bar bar;
  hang::SidePair pair;
  pair.pickSpacing = spacingOf(option);
  bar.picks = pair;
  return hang::unevenBy(bar, level, difference);
}

/// What the picks of a level pair carry where the left one stands so much higher.
std::optional<std::array<double, 2>> loadsBy(const Case& option, double difference, const Settled& level) {
  const auto uneven = unevenBy(option, difference, level.statics);
  if (!uneven) {
    return std::nullopt;
  }
  const auto even = unevenBy(option, 0.0, level.statics);
  std::array<double, 2> loads{};
  for (std::size_t pick = 0; pick < 2; ++pick) {
    // What unlike hoists move from one pick to the other, with the lever at its greatest, on top of the level
    // loads.
    const double moved = even ? uneven->loads.at(pick) - even->loads.at(pick) : notKnown;
    loads.at(pick) = level.doubt == nullptr ? uneven->loads.at(pick)
                     : moved > 0.0          ? pickLoad(level, pick) + level.doubt->worst.lever * moved
                                            : pickLoad(level, pick) + moved;
  }
  return loads;
}

/// The same hang with its picks so loaded.
bool takeUneven(const Case& option, double difference, const Settled& level, Settled& into) {
  const auto loads = loadsBy(option, difference, level);
  for (std::size_t pick = 0; loads && pick < 2; ++pick) {
    into.statics.pickLoads[pick].load = loads->at(pick);
    into.build.most[pick] = std::max(level.build.most[pick], loads->at(pick));
  }
  return loads.has_value();
}

/// With the left one higher, with the right one higher; nothing where that is not known.
bool takeBoth(const Case& option, double difference, const Settled& level,
              std::optional<std::array<Settled, 2>>& into) {
  into.emplace(std::array<Settled, 2>{level, level});
  if (!takeUneven(option, difference, level, (*into)[0]) ||
      !takeUneven(option, -difference, level, (*into)[1])) {
    into.reset();
  }
  return into.has_value();
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  Use worst;
  worst.verdict = Verdict::holds;
  if (!isSidePair(*settled)) {
    worst.applies = false;
    worst.why = noPair;
    return worst;
  }
  const double difference = option.weight->hoistDifference.value;
  if (beyondBar(option)) {
    worst.value = difference;
    worst.limit = inMetres(*option.bar->hoistOffsetLimit);
    worst.verdict = Verdict::fails;
    worst.why = moreThanBar;
    return worst;
  }
  const auto rules = carried();
  std::optional<std::array<Settled, 2>> here;
  auto* uneven = option.fold == nullptr ? nullptr : option.fold->uneven(*settled);
  uneven = uneven == nullptr ? &here : uneven;
  if (!*uneven && !takeBoth(option, difference, *settled, *uneven)) {
    worst = Use{};
    worst.why = differenceUnknown;
    return worst;
  }
  for (const int right : {0, 1}) {
    for (std::size_t i = 0; i < rules.size(); ++i) {
      Use use = rules.at(i)->evaluate(option, &(**uneven)[static_cast<std::size_t>(right)], trimM);
      if (!use.applies) {
        continue;
      }
      use.which = static_cast<int>(i) * 2 + right;
      use.why = judged;
      if (worst.which < 0 || worseOf(worst, use).which == use.which) {
        worst = use;
      }
    }
  }
  return worst;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  const Factor& difference = option.weight->hoistDifference;
  if (!use.applies) {
    return doesNotApply("uneven", QStringLiteral("there is no pair of hoists side by side."));
  }
  if (use.why == moreThanBar) {
    Finding finding = findingFor("uneven", use, "m");
    finding.source = makerSource(option.bar->name, option.bar->source);
    finding.text =
        QStringLiteral("The house lets the two hoists stand %1 unlike (%2), and the bar allows %3.")
            .arg(inM(use.value), difference.source, inM(use.limit));
    return finding;
  }
  Finding finding = findingFor("uneven", use, "kN");
  if (use.why == differenceUnknown) {
    finding.text =
        QStringLiteral("How unlike the two hoists may stand, or the spacing of the picks, is not known.");
    return finding;
  }
  Settled uneven = *settled;
  const double by = use.which % 2 == 0 ? difference.value : -difference.value;
  takeUneven(option, by, *settled, uneven);
  const Rule& rule = *carried().at(static_cast<std::size_t>(use.which / 2));
  const Use again = rule.evaluate(option, &uneven, trimM);
  const Finding told = rule.explain(option, &uneven, trimM, again);
  finding.value = told.value;
  finding.limit = told.limit;
  finding.unit = told.unit;
  finding.usePercent = told.usePercent;
  finding.source = QStringLiteral("%1; %2").arg(difference.source, told.source);
  finding.text =
      QStringLiteral("With the %1 hoist %2 cm higher the hang rolls %3 and the picks take %4 and %5. %6")
          .arg(use.which % 2 == 0 ? QStringLiteral("left") : QStringLiteral("right"))
          .arg(QString::number(difference.value * 100.0, 'f', 1))
          .arg(inDeg(unevenBy(option, by, settled->statics)->turnDeg), inKn(pickLoad(uneven, 0)),
               inKn(pickLoad(uneven, 1)), told.text);
  return finding;
}

} // namespace

std::optional<std::array<std::array<double, 2>, 2>> unevenLoads(const Case& option, const Settled& level) {
  const double difference = option.weight->hoistDifference.value;
  const auto left = loadsBy(option, difference, level);
  const auto right = loadsBy(option, -difference, level);
  return left && right ? std::optional(std::array{*left, *right}) : std::nullopt;
}

bool isSidePair(const Settled& settled) {
  return settled.statics.side.has_value() && settled.statics.pickCount == 2;
}

bool beyondBar(const Case& option) {
  return option.bar->hoistOffsetLimit &&
         option.weight->hoistDifference.value > inMetres(*option.bar->hoistOffsetLimit);
}

const Rule unevenRule{"uneven", true, evaluate, nullptr, explain};

} // namespace hangbook::options
