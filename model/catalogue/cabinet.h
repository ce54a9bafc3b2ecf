// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::catalogue {

/// A place in the plane of the hang: x forward, z up, in the coordinates that the field names.
struct Position {
  Length x;
  Length z;
  bool operator==(const Position&) const = default;
};

/// A type of cabinet. Places are in element coordinates: origin at the top front pin, x forward, z up.
struct CabinetType : Record {
  QString name;
  QString maker;
  QString family;
  std::optional<Mass> mass;
  std::optional<Position> centreOfGravity;
  std::optional<Position> nextPin;             ///< where the pin of the cabinet below sits
  std::vector<Position> outline;               ///< corners in order; empty = not known
  std::optional<Length> width;                 ///< across, along y
  std::optional<Position> chainEye;            ///< where the chain may hold it
  std::optional<Position> rearContact;         ///< for seated joints: where the rear feet push
  std::optional<std::array<Position, 2>> pins; ///< for pinned joints: the two pins of one side
  /// How far what joins it to the element above (arms in transport position, feet) stands above its outline's
  /// top while it rides: what hangs must pass over that before it is lowered on. 0: nothing stands proud.
  std::optional<Length> engagement;
  /// Whether it is there to cover the audience. Bass is not: it then needs no cover figures.
  bool coversAudience = false;
  bool downfill = false; ///< it is a downfill: options with it say so
  std::optional<Angle>
      coverLowest; ///< lower edge of vertical cover against its forward direction (negative = below)
  std::optional<Angle> coverHighest;     ///< upper edge
  std::optional<Angle> coverAcross;      ///< from its left to its right edge of cover, even about its forward
  std::optional<Length> throwDistance;   ///< how far it is good for
  std::optional<double> levelAtOneMetre; ///< dB, for level-drop advice only
  std::optional<double> faceArea;        ///< m², for wind
  std::optional<double> forceCoefficient; ///< for wind on the face
  Tolerances tolerances;
  bool operator==(const CabinetType&) const = default;
};

} // namespace hangbook::catalogue
