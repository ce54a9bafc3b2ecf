// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/house_change.h"

/// What other data than house rules do to what is chosen.
namespace hangbook::options {

/// Judges every chosen option of a show on both, and puts down those whose verdict differs. The choices of
/// both are the same ones.
void addChanges(const Snapshot& before, const Snapshot& after, HouseEffect& effect);

/// Judges every chosen option of these shows with their venue as it is and as it becomes; shows elsewhere are
/// left out.
HouseEffect effectOf(const std::vector<Snapshot>& shows, const venue::Venue& becomes);

} // namespace hangbook::options
