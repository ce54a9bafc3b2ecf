// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/sort.h"

namespace hangbook::exchange {

/// Lines that say which unit hangs at which place of a hang.
std::unique_ptr<Sort> hungSort();

} // namespace hangbook::exchange
