// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "kept/unlike_show.h"
#include "options/house_figures.h"

/// What an unlike show is made of.
namespace hangbook::testing {

template <class Value>
void dropOneIn(Chance& by, int count, std::optional<Value>& value) {
  if (by.lacks(count)) {
    value.reset();
  }
}

/// Makers' data.
void unlikeParts(catalogue::Catalogue& all, Chance& by);

/// Units in every state, weighed, hired and due; what other shows and the other hang have chosen.
void unlikeFleet(options::Snapshot& made, Chance& by);

} // namespace hangbook::testing
