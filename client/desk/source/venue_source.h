// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "options/house_change.h"
#include "venue/venue.h"

namespace hangbook::desk {

/// A venue with other figures.
struct VenueWish {
  venue::Venue venue{};
  QString by{};
  bool dryRun = false; ///< only tell what would change
};

/// What a source can do with venues, besides Source: the same object offers both, and the same holds, that
/// it runs on Work's thread alone.
class VenueSource {
public:
  VenueSource() = default;
  VenueSource(const VenueSource&) = delete;
  VenueSource& operator=(const VenueSource&) = delete;
  virtual ~VenueSource() = default;

  /// Which chosen options change their verdict by it. Throws Error with words for people.
  virtual options::HouseEffect editVenue(const VenueWish& wish) = 0;
};

} // namespace hangbook::desk
