// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <utility>

#include "catalogue/source.h"

namespace hangbook::exchange {

/// Words for what a capacity is compared with.
inline constexpr std::array bases = {std::pair{catalogue::Basis::unknown, "unknown"},
                                     std::pair{catalogue::Basis::atRest, "at rest"},
                                     std::pair{catalogue::Basis::dynamic, "dynamic"}};

} // namespace hangbook::exchange
