// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <QString>

#include "venue/house.h"

namespace hangbook::options {

/// Which way a house rule may move a figure and still be stricter.
enum class Stricter { higher, lower, free };

/// One figure that a house may set, with its usual value where nobody set it.
struct HouseFigureKind {
  QString id;                  ///< "dynamic-factor"
  QString what;                ///< in words: what it is and which rule reads it
  QString unit;                ///< "", "m", "°", "%"
  std::optional<double> usual; ///< none: the rule stays unproven until the house states it
  QString source;              ///< where the usual value comes from
  Stricter stricter = Stricter::free;
};

/// All figures that there are, in order of id.
std::span<const HouseFigureKind> houseFigureKinds();

/// A figure as it stands for one show: the value and, for the finding, who set it.
struct HouseValue {
  std::optional<double> value;
  QString source;
};

/// What holds for a show: a show's rule before its venue's before its tour's before the usual value, but a
/// figure of a maker, venue or law is only ever tightened: of several rules the strictest counts.
class House {
public:
  House(const std::vector<venue::HouseFigure>& tour, const std::vector<venue::HouseFigure>& venue,
        const std::vector<venue::HouseFigure>& show);
  HouseValue figure(const QString& id) const;

private:
  std::vector<venue::HouseFigure> tour_;
  std::vector<venue::HouseFigure> venue_;
  std::vector<venue::HouseFigure> show_;
};

} // namespace hangbook::options
