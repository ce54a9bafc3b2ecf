// SPDX-License-Identifier: GPL-3.0-or-later
// wind (outdoors): under the gust at hang height the hoists' chains lean no more than allowed, each point
// stays within its capacity with what the gust adds, and no pick is unloaded. The chains lean by atan(force ÷
// weight). Against the line of two picks the gust also turns the hang: it moves force × depth ÷ pick spacing
// from one pick to the other; along that line it only makes the whole swing.
#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/loads.h"
#include "options/sentence.h"
#include "options/wind_force.h"

namespace hangbook::options {
namespace {

enum Why { judged, indoors, notStated, placeUnknown };
/// `which`: −1 the lean; else pick × 2, + 1 where the pick unloads.
constexpr int theLean = -1;

double gustLean(const Settled& settled, const WindForce& wind) {
  return hang::toDegrees(std::atan(std::max(wind.front.force, wind.side.force) / weightBelow(settled)));
}

/// What the gust moves from one pick to the other, N.
double moved(const Settled& settled, const WindForce& wind) {
  if (settled.statics.pickCount < 2) {
    return 0.0;
  }
  const Gust& across = settled.statics.side ? wind.side : wind.front;
  return across.force * std::max(across.below, 0.0) / pickSpacing(settled);
}

double pointInGust(const Case& option, const Settled& settled, double trimM, const WindForce& wind,
                   std::size_t pick) {
  const double lean = hang::toRadians(gustLean(settled, wind));
  const double load = pointAtRest(option, settled, trimM, pick) + moved(settled, wind) / std::cos(lean) +
                      pickLoad(settled, pick) * (1.0 / std::cos(lean) - 1.0);
  return option.points[pick]->basis == catalogue::Basis::dynamic ? load * option.weight->dynamic.value : load;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  Use worst;
  if (!option.snapshot->venue.outdoors) {
    worst.why = placeUnknown;
    return worst;
  }
  if (!*option.snapshot->venue.outdoors) {
    worst.verdict = Verdict::holds;
    worst.applies = false;
    worst.why = indoors;
    return worst;
  }
  const WindForce wind = windForce(option, *settled);
  worst.value = gustLean(*settled, wind);
  worst.limit = option.weight->leanMost.value;
  worst.verdict = againstUpperLimit(worst.value, worst.limit, 0.0);
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    Use point = loadUse(pointInGust(option, *settled, trimM, wind, pick), option.weight->capacity[pick],
                        static_cast<int>(pick) * 2);
    if (option.points[pick]->basis == catalogue::Basis::unknown) {
      point.verdict = std::max(point.verdict, Verdict::unproven);
    }
    Use left;
    left.value = (pickLoad(*settled, pick) - moved(*settled, wind)) / 1000.0;
    left.limit = 0.0;
    left.which = static_cast<int>(pick) * 2 + 1;
    left.verdict = againstLowerLimit(left.value, 0.0, 0.0);
    for (const Use& each : {point, left}) {
      worst = each.verdict > worst.verdict ? each : worst;
    }
  }
  if (!wind.missing.isEmpty() && worst.verdict < Verdict::unproven) {
    worst.verdict = Verdict::unproven;
    worst.why = notStated;
  }
  return worst;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  if (!use.applies) {
    return doesNotApply("wind", QStringLiteral("the venue is indoors."));
  }
  if (use.why == placeUnknown) {
    Finding finding = findingFor("wind", use, "°");
    finding.source = QStringLiteral("venue's sheet");
    finding.text = QStringLiteral("Whether the venue is outdoors is not stated, so the wind is not judged.");
    return finding;
  }
  const WindForce wind = windForce(option, *settled);
  if (use.why == notStated) {
    Use none;
    Finding finding = findingFor("wind", none, "");
    finding.text = QStringLiteral("Not stated: %1.").arg(wind.missing.join(QStringLiteral("; ")));
    return finding;
  }
  QString gust =
      option.snapshot->show.wind
          ? QStringLiteral("A gust of %1 m/s (%2 N/m²) pushes %3 from in front and %4 from the side")
                .arg(inMetresPerSecond(*option.snapshot->show.wind))
                .arg(gustPressure(inMetresPerSecond(*option.snapshot->show.wind)), 0, 'f', 0)
                .arg(inKn(wind.front.force), inKn(wind.side.force))
          : QStringLiteral("The gust is not stated");
  if (use.which == theLean) {
    Finding finding = findingFor("wind", use, "°");
    finding.source = option.weight->leanMost.source;
    finding.text = QStringLiteral("%1; against %2 of weight the chains lean %3, and %4 is allowed.")
                       .arg(gust, inKn(weightBelow(*settled)), inDeg(use.value), inDeg(use.limit));
    return finding;
  }
  const auto pick = static_cast<std::size_t>(use.which / 2);
  if (use.which % 2 == 1) {
    Finding finding = findingFor("wind", use, "kN");
    finding.source = QStringLiteral("mechanics: a hoist can only pull");
    finding.text =
        QStringLiteral("%1, which takes %2 off pick %3: %4 is left, and it must stay above 0.")
            .arg(gust, inKn(moved(*settled, wind)), pickName(*settled, pick), inKn(use.value * 1000.0));
    return finding;
  }
  Finding finding = loadFinding("wind", use);
  finding.source = QStringLiteral("venue's sheet: %1").arg(option.points[pick]->source.text);
  finding.text =
      QStringLiteral("%1; with what that moves (%2) point %3 carries %4, and the venue's sheet allows %5.")
          .arg(gust, inKn(moved(*settled, wind)), option.points[pick]->name,
               inKn(pointInGust(option, *settled, trimM, wind, pick)), inKn(use.limit * 1000.0));
  return finding;
}

} // namespace

const Rule windRule{"wind", true, evaluate, nullptr, explain};

} // namespace hangbook::options
