// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QString>

#include "quantity/text.h"

namespace hangbook::reports {

/// Figures as sheets show them, each with its unit; "not known" where there is none.
class Figures {
public:
  explicit Figures(UnitSystem system = UnitSystem::metric) : system_(system) {}

  UnitSystem system() const { return system_; }
  QString length(std::optional<double> metres, int digits = 2) const;
  /// A pound-force is less than half a hundredth of a kilonewton: whole ones say more than kN to two places.
  QString force(std::optional<double> kilonewtons, int digits = 2) const;
  QString mass(std::optional<double> kilograms, int digits = 1) const;
  QString angle(std::optional<double> degrees, int digits = 1) const; ///< with its sign
  QString slope(std::optional<double> degrees, int digits = 1) const; ///< without a plus: no sense of turning
  QString speed(std::optional<double> metresPerSecond, int digits = 1) const;
  /// What a tape shows: in US units feet and inches beside the feet, to an eighth of an inch.
  QString tape(std::optional<double> metres) const;
  /// With its sign: "+1.32 m".
  QString move(std::optional<double> metres) const;

private:
  UnitSystem system_;
};

QString notKnown();

} // namespace hangbook::reports
