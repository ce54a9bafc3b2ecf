// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/show.h"
#include "store/store.h"

namespace hangbook::store {

/// In order of name.
std::vector<calendar::Tour> loadTours(Store& store);
std::optional<calendar::Tour> loadTour(Store& store, const QString& name);

/// Shows of one tour, or of all where `tour` is empty, in order of their first day, then of tour and name.
std::vector<calendar::Show> loadShows(Store& store, const QString& tour = {});
std::optional<calendar::Show> loadShow(Store& store, const QString& tour, const QString& name);

/// As for makers' data (catalogue_store.h). A show's hangs must name points and sections that its venue has.
calendar::Tour save(Store& store, const calendar::Tour& tour);
calendar::Show save(Store& store, const calendar::Show& show);
void remove(Store& store, const calendar::Tour& tour);
void remove(Store& store, const calendar::Show& show);

} // namespace hangbook::store
