// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/catching.h"

#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {

double stretchPerNewton(const WeightLimits& limits) {
  double sum = 0.0;
  for (const Piece& piece : limits.secondarySteel) {
    if (piece.type == nullptr) {
      return notKnown;
    }
    const catalogue::HardwareType& type = *piece.type;
    const bool steel =
        type.kind == catalogue::HardwareKind::secondarySteel || type.kind == catalogue::HardwareKind::sling;
    if (steel) {
      sum += type.length && type.stiffness ? inMetres(*type.length) / inNewtons(*type.stiffness) : notKnown;
    }
  }
  return sum;
}

double catchFactor(double drop, double stretch) {
  if (drop == 0.0) {
    return 2.0;
  }
  return !std::signbit(drop) && stretch > 0.0 ? 1.0 + std::sqrt(1.0 + 2.0 * drop / stretch) : notKnown;
}

Catching catchingAt(const Case& option, const Settled& settled, std::size_t pick) {
  const double load = std::max(settled.build.most[pick], pickLoad(settled, pick));
  return catchingOf(*option.weight, stretchPerNewton(*option.weight), load);
}

Catching catchingOf(const WeightLimits& limits, double stretchForEach, double load) {
  Catching catching;
  catching.drop = limits.drop.value;
  const double factor = catchFactor(catching.drop, load * stretchForEach);
  catching.factor = std::isnan(factor) || std::isnan(limits.secondary.value)
                        ? notKnown
                        : std::max(factor, limits.secondary.value);
  catching.load = load * catching.factor;
  return catching;
}

QString catchingWords(const Case& option, const Catching& catching) {
  if (std::isnan(catching.drop)) {
    return QStringLiteral("the drop before it is taut is not known");
  }
  if (std::isnan(catching.factor)) {
    return QStringLiteral("it drops %1, and how far its steel stretches is not stated")
        .arg(inM(catching.drop));
  }
  return QStringLiteral("factor %1 for catching it after a drop of %2 (%3)")
      .arg(inTimes(catching.factor), inM(catching.drop), option.weight->drop.source);
}

} // namespace hangbook::options
