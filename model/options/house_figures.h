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
  /// In which direction alone it may be set; free: a signed statement may set it either way.
  Stricter stricter = Stricter::free;
  /// In which direction it is stricter: what nobody signed may move it that way alone. free: there is none,
  /// so that an unsigned statement never counts.
  Stricter tighter = Stricter::free;
};

/// All figures that there are, in order of id.
std::span<const HouseFigureKind> houseFigureKinds();

/// A figure as it stands for one show: the value and, for the finding, who set it.
struct HouseValue {
  std::optional<double> value;
  QString source;
  /// Nobody signed it and there is no usual value that it tightens: it proves nothing by itself.
  bool unsignedAlone{};
};

/// Whose list of house rules, the farthest from the show first.
enum class HousePlace { tour, venue, show };
QString wordFor(HousePlace place); ///< tour, venue, show

/// Signed: with a name and a day.
bool isSigned(const venue::HouseFigure& figure);

/// Why a statement cannot be used: there is no such figure, no number, below 0, or another unit. Empty: it
/// can.
QString houseFault(const venue::HouseFigure& figure);

/// What holds for a show: a show's rule before its venue's before its tour's before the usual value, but a
/// figure of a maker, venue or law is only ever tightened: of several rules the strictest counts. Within one
/// list the newest signed statement counts, and of the unsigned ones those that are stricter.
class House {
public:
  House(const std::vector<venue::HouseFigure>& tour, const std::vector<venue::HouseFigure>& venue,
        const std::vector<venue::HouseFigure>& show);
  HouseValue figure(const QString& id) const;
  /// What a finding of this rule owes to house rules, figure by figure with who set it where; empty: nothing.
  /// What stands in `said` already is not said again.
  QString sourcesOf(const QString& rule, const QString& said) const;

private:
  std::optional<HouseValue> statedValue(const HouseFigureKind& kind, HouseValue standing) const;

  std::vector<venue::HouseFigure> tour_;
  std::vector<venue::HouseFigure> venue_;
  std::vector<venue::HouseFigure> show_;
};

} // namespace hangbook::options
