// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/sort.h"

namespace hangbook::exchange {

std::unique_ptr<Sort> picksSort();
std::unique_ptr<Sort> tableSort();
std::unique_ptr<Sort> joinSort();
std::unique_ptr<Sort> countSort();

} // namespace hangbook::exchange
