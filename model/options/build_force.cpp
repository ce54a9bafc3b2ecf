// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/build_force.h"

#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/placement.h"

namespace hangbook::options {
namespace {

/// Lean of a chain while a fore-aft pair's bar is level: its picks then stand farther apart in plan. Points
/// and picks that stand alike to a micrometre stand plumb.
double levelLeanDeg(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const catalogue::PickArrangement& picks = *option.arrangement;
  if (picks.picks != catalogue::Picks::foreAftPair || !picks.front || !picks.rear ||
      trimM == -std::numeric_limits<double>::infinity()) {
    return 0.0;
  }
  const double apart = std::abs(inMetres(picks.front->x) - inMetres(picks.rear->x));
  const double off = 0.5 * std::abs(option.weight->spacing - apart);
  if (off < 1e-6) {
    return 0.0;
  }
  const double above = inMetres(option.points[pick]->z) - originHeight(option, settled, trimM) -
                       settled.layout.picks[pick].z - heightDoubt(settled);
  return hang::toDegrees(std::atan2(off, above));
}

} // namespace

double highestPickForce(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const double asSet = pickForce(option, settled, trimM, pick);
  const double lean =
      std::max(leanDeg(option, settled, trimM, pick), levelLeanDeg(option, settled, trimM, pick));
  const double most = std::max(settled.build.most[pick], pickLoad(settled, pick));
  if (lean == 0.0 || std::isnan(asSet)) {
    return std::isnan(asSet) ? notKnown : std::max(most, asSet);
  }
  const double leaning =
      lean < 90.0 ? most / std::cos(hang::toRadians(lean)) : std::numeric_limits<double>::infinity();
  return std::isnan(lean) ? notKnown : std::max(leaning, asSet);
}

double highestAtRest(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  return pointAtRest(option, settled, trimM, pick) +
         (highestPickForce(option, settled, trimM, pick) - pickForce(option, settled, trimM, pick));
}

double highestLifted(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  if (!option.hoist->bodyClimbs) {
    return notKnown;
  }
  const WeightLimits& limits = *option.weight;
  return highestPickForce(option, settled, trimM, pick) +
         (*option.hoist->bodyClimbs ? settled.gearHeavier * (limits.hoistBody + limits.hoistChain) : 0.0);
}

Use provenOver(const Settled& settled, Use use) {
  if (settled.build.unknown && use.verdict < Verdict::unproven) {
    use.verdict = Verdict::unproven;
  }
  return use;
}

QString momentWords(const hang::BuildMoment& moment, const Case& option) {
  const QString cabinets = moment.cabinets == 0 ? QStringLiteral("with the bar alone")
                           : moment.cabinets == 1
                               ? QStringLiteral("with 1 cabinet under the bar")
                               : QStringLiteral("with %1 cabinets under the bar").arg(moment.cabinets);
  switch (moment.stage) {
  case hang::BuildStage::stacked:
    return option.held != 0 && moment.cabinets >= option.held
               ? cabinets + QStringLiteral(" and the chain not yet on")
               : cabinets;
  case hang::BuildStage::chained:
    return cabinets + QStringLiteral(" and the chain on");
  case hang::BuildStage::aiming:
    return QStringLiteral("while it is aimed");
  case hang::BuildStage::set:
    break;
  }
  return {};
}

QString unknownMomentWords(const Case& option, const Settled& settled) {
  if (!settled.build.unknown) {
    return {};
  }
  const QString when = momentWords(*settled.build.unknown, option);
  return QStringLiteral("; what the picks carry %1 does not follow from the figures")
      .arg(when.isEmpty() ? QStringLiteral("during the build") : when);
}

} // namespace hangbook::options
