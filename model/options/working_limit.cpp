// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/working_limit.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {
namespace {

const CoefficientTable dguv{"DGUV Information 215-313, table 1",
                            {"wire rope", 5.0, 10.0},
                            {"fibre sling", 7.0, 14.0},
                            {"chain or other metal", 4.0, 8.0},
                            {"shackle", 5.0, 10.0}};
// The directive has no row for shackles: they are metal parts of the accessory, as chain is.
const CoefficientTable machineryDirective{"Machinery Directive 2006/42/EC, Annex I 4.1.2.5",
                                          {"wire rope", 5.0, notKnown},
                                          {"fibre sling", 7.0, notKnown},
                                          {"chain or other metal", 4.0, notKnown},
                                          {"shackle", 4.0, notKnown}};

double partOf(const WeightLimits& limits, const catalogue::HardwareType& type) {
  if (limits.coefficients == nullptr) {
    return notKnown;
  }
  const WorkingCoefficient& row = coefficientOf(*limits.coefficients, type);
  const double made = type.designFactor.value_or(row.without);
  const double part = made / (limits.nobodyBeneath ? row.without : row.withPeople);
  const double most = limits.accessory.value;
  return std::isnan(part) || std::isnan(most) ? notKnown : std::min(part, most);
}

} // namespace

const CoefficientTable* coefficientTable(double number) {
  return number == 1.0 ? &dguv : (number == 2.0 ? &machineryDirective : nullptr);
}

const WorkingCoefficient& coefficientOf(const CoefficientTable& table, const catalogue::HardwareType& type) {
  switch (type.kind) {
  case catalogue::HardwareKind::shackle:
    return table.shackle;
  case catalogue::HardwareKind::sling:
    return table.fibre;
  case catalogue::HardwareKind::secondarySteel:
    return table.wireRope;
  case catalogue::HardwareKind::clip:
  case catalogue::HardwareKind::pin:
  case catalogue::HardwareKind::loom: // hangs nothing; the table's figure for metal is not asked of it
    break;
  }
  return table.chain;
}

double limitIn(const std::optional<Force>& stated) {
  return stated && inNewtons(*stated) >= 0.0 ? inNewtons(*stated) : notKnown;
}

double usableLimit(const WeightLimits& limits, const catalogue::HardwareType& type) {
  return limitIn(type.limit) * partOf(limits, type);
}

double usableLimit(const WeightLimits& limits, const Piece& piece) {
  return piece.type == nullptr ? notKnown : usableLimit(limits, *piece.type);
}

QString usableSource(const WeightLimits& limits, const catalogue::HardwareType& type) {
  if (limits.coefficients == nullptr) {
    return QStringLiteral("the house names no table of working coefficients");
  }
  if (type.kind == catalogue::HardwareKind::sling && !type.designFactor && !limits.nobodyBeneath &&
      !std::isnan(limits.coefficients->fibre.withPeople)) {
    return QStringLiteral("%1: twice the sling's own coefficient (wire rope %2 / %3, fibre %4 / %5)")
        .arg(QString::fromLatin1(limits.coefficients->source))
        .arg(limits.coefficients->wireRope.without)
        .arg(limits.coefficients->wireRope.withPeople)
        .arg(limits.coefficients->fibre.without)
        .arg(limits.coefficients->fibre.withPeople);
  }
  const WorkingCoefficient& row = coefficientOf(*limits.coefficients, type);
  const double asked = limits.nobodyBeneath ? row.without : row.withPeople;
  const QString figure = std::isnan(asked) ? QStringLiteral("nothing stated over people")
                                           : QStringLiteral("coefficient %1").arg(asked);
  return QStringLiteral("%1: %2 %3")
      .arg(QString::fromLatin1(limits.coefficients->source), QString::fromLatin1(row.what), figure);
}

} // namespace hangbook::options
