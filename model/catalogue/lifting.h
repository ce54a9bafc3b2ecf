// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::catalogue {

/// Hoisting class of EN 1991-3 / EN 13001-2, from which the dynamic factor follows with the speed.
enum class HoistingClass { hc1, hc2, hc3, hc4 };

struct HoistType : Record {
  QString name;
  QString maker;
  std::optional<Force> limit; ///< WLL ("1 t" typed is its weight)
  std::optional<Mass> bodyMass;
  std::optional<bool> bodyClimbs;         ///< the body travels with the load (else it stays at the point)
  std::optional<LinearDensity> chainMass; ///< per metre of one fall
  std::optional<Mass> chainBagMass;
  std::optional<Length> chainLength;  ///< lift height: from the point down to the lowest hook
  std::optional<Length> closedLength; ///< from the upper to the lower bearing when run in
  std::optional<Speed> speed;
  std::optional<HoistingClass> hoistingClass;
  /// The maker's class allows holding loads over people without secondary suspension.
  std::optional<bool> holdsWithoutSecondary;
  bool operator==(const HoistType&) const = default;
};

/// A type of chain that holds a cabinet's eye to the bar. Usable length = fixed + mark × pitch.
struct ChainType : Record {
  QString name;
  QString maker;
  std::optional<Length> pitch;
  std::optional<Length> fixedLength; ///< all bearing-to-bearing lengths outside the counted links
  std::optional<int> links;          ///< how many links it has: the highest mark
  std::optional<Force> limit;
  bool limitIncludesFactors = false;
  std::optional<LinearDensity> mass;
  std::optional<double> discardStretchPercent; ///< elongation at which the maker discards it
  std::optional<Length> pitchTolerance;        ///< how far a new link's pitch may be off, either way
  bool operator==(const ChainType&) const = default;
};

/// A loom is no lifting hardware: no hang names one.
enum class HardwareKind { shackle, sling, clip, pin, secondarySteel, loom };

struct HardwareType : Record {
  QString name;
  QString maker;
  HardwareKind kind = HardwareKind::shackle;
  std::optional<Force> limit; ///< WLL
  std::optional<Mass> mass;
  std::optional<Length> length; ///< what it adds between point and hoist
  /// E·A: the pull that would stretch it to twice its length, were it to stay straight and elastic.
  std::optional<Force> stiffness;
  /// Least breaking force ÷ working load limit, where the maker states it.
  std::optional<double> designFactor;
  bool operator==(const HardwareType&) const = default;
};

struct CartType : Record {
  QString name;
  QString maker;
  QString carries;          ///< type of cabinet
  std::optional<int> most;  ///< how many ride on it
  std::optional<Mass> mass; ///< empty
  std::optional<Length> length;
  std::optional<Length> width;
  std::optional<Length> height; ///< loaded
  std::optional<Length> deck;   ///< of what the lowest cabinet stands on, above the floor
  std::optional<int> high;      ///< how many stand on one another; the rest stand beside them
  bool operator==(const CartType&) const = default;
};

} // namespace hangbook::catalogue
