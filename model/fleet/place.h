// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::fleet {

enum class PlaceKind { bay, truck, venue, workshop };

/// Where a unit may be. A unit's place is a name; one that no record describes is taken as it is.
struct NamedPlace : catalogue::Record {
  QString name; ///< unique
  PlaceKind kind = PlaceKind::bay;
  std::optional<Length> floorLength; ///< of a truck, inside
  std::optional<Length> floorWidth;
  std::optional<Mass> payload; ///< of a truck
  bool operator==(const NamedPlace&) const = default;
};

} // namespace hangbook::fleet
