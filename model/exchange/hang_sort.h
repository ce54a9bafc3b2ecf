// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/sort.h"

namespace hangbook::exchange {

std::unique_ptr<Sort> hangSort();

} // namespace hangbook::exchange
