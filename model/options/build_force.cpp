// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/build_force.h"

#include <algorithm>
#include <cmath>

#include "options/sentence.h"

namespace hangbook::options {

double highestPickForce(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const double asSet = pickForce(option, settled, trimM, pick);
  const double most = std::max(settled.build.most[pick], pickLoad(settled, pick));
  const double off = std::max(chainOff(option, settled), levelOff(option));
  if (std::isnan(asSet)) {
    return notKnown;
  }
  if (off == 0.0 || trimM == -std::numeric_limits<double>::infinity()) {
    return std::max(most, asSet);
  }
  const double factor = leanFactor(off, heightOver(option, settled, trimM, pick));
  const double leaning = std::isinf(factor) ? factor : most * factor;
  return std::isnan(leaning) ? notKnown : std::max(leaning, asSet);
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
  if (settled.build.unknown) {
    use.verdict = worse(use.verdict, Verdict::unproven);
  }
  return use;
}

Use carriedOver(const Settled& settled, Use use) {
  if (settled.build.carried.unknown) {
    use.verdict = worse(use.verdict, Verdict::unproven);
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

QString carriedUnknownWords(const Case& option, const Settled& settled) {
  if (!settled.build.carried.unknown) {
    return {};
  }
  const QString when = momentWords(*settled.build.carried.unknown, option);
  return QStringLiteral("; what it carries %1 does not follow from the figures")
      .arg(when.isEmpty() ? QStringLiteral("during the build") : when);
}

} // namespace hangbook::options
