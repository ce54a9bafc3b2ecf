// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "options/option.h"
#include "options/search.h"
#include "options/snapshot.h"

namespace hangbook::options {

/// The same stack on the same bar, picked up the same way with the same hoist, in this show's hang of the
/// same name, at whichever of this venue's points it does best; by today's rules and data, whatever was said
/// of it then. Nothing where the makers' data or the venue no longer give that option. Throws Error
/// (badInput) where the show has no such hang.
std::optional<Option> sameAgain(const Snapshot& snapshot, const OptionKey& before,
                                const Progress& progress = {});

} // namespace hangbook::options
