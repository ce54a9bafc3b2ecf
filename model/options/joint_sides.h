// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/weight_limits.h"

/// What a joint's two sides are to each other, and what a part of it may take. NaN where nobody stated it.
namespace hangbook::options {

/// The part of a joint's force that the more loaded side takes, 0.5…1: its table's, else the house's.
double sideShare(const Case&, const catalogue::Join&);

/// N, of a limit of one of its parts: what may be used of it over people.
double usableOf(const Case&, const std::optional<Force>& limit);

/// m between a joint's two sides: the narrower cabinet's width, whose flanks carry the arms.
double sidesApart(const Case&, std::size_t element);

} // namespace hangbook::options
