// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/store.h"
#include "venue/venue.h"

namespace hangbook::store {

/// Venues with all their points, zones, obstructions, sections and house rules, in order of name.
std::vector<venue::Venue> loadVenues(Store& store);
std::optional<venue::Venue> loadVenue(Store& store, const QString& name);

/// As for makers' data (catalogue_store.h). A zone that a point names must be one of the venue's.
venue::Venue save(Store& store, const venue::Venue& venue);
void remove(Store& store, const venue::Venue& venue);

} // namespace hangbook::store
