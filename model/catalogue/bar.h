// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "catalogue/cabinet.h"

namespace hangbook::catalogue {

enum class Picks { sidePair, foreAftPair, single };

/// One way of picking up a bar, with the maker's limit for it.
struct PickArrangement {
  Picks picks = Picks::sidePair;
  std::optional<Length> spacing;     ///< side pair: between the two picks
  std::optional<Position> front;     ///< fore-aft pair, frame coordinates
  std::optional<Position> rear;      ///< fore-aft pair, frame coordinates
  std::optional<Position> only;      ///< single pick, frame coordinates
  std::optional<Force> limit;        ///< on everything below the picks
  bool limitIncludesFactors = false; ///< the maker states that dynamic factor and share are in the limit
  std::optional<int> mostCabinets;
  bool operator==(const PickArrangement&) const = default;
};

/// A type of bar. Frame coordinates: the lower part that the stack hangs from; origin at the tilt axis
/// (side pair) or at any point that the maker names. Head coordinates: origin midway between the picks.
struct BarType : Record {
  QString name;
  QString maker;
  std::optional<Mass> headMass;                   ///< side pair only, like the next five
  std::optional<Position> headCentreOfGravity;    ///< head coordinates
  std::optional<Position> tiltAxis;               ///< head coordinates
  std::optional<std::array<Angle, 2>> tiltTravel; ///< of the actuator
  std::optional<std::array<Angle, 2>> panTravel;
  std::optional<Angle> swingLimit; ///< most swing of the head, either way
  std::optional<Angle> tiltStep;   ///< step of the settings; 0.5° where it is not given
  std::optional<Mass> frameMass;
  std::optional<Position> frameCentreOfGravity; ///< frame coordinates, like all below
  std::optional<Position> stackPin;
  std::optional<Position> chainAnchor;
  std::optional<Position> datum;          ///< the marked place that a tape is held to
  std::vector<Position> outline;          ///< of the frame
  std::optional<Length> width;            ///< across, along y
  std::optional<Length> hoistOffsetLimit; ///< most difference of the two hoists' trims
  std::vector<PickArrangement> arrangements;
  Tolerances tolerances; ///< of head and frame alike
  bool operator==(const BarType&) const = default;
};

} // namespace hangbook::catalogue
