// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/sort.h"

/// Lines about what is plugged: makers' data (types) and where it goes (shows).
namespace hangbook::exchange {

std::unique_ptr<Sort> connectorSort();
std::unique_ptr<Sort> socketSort();
std::unique_ptr<Sort> loomEndSort();
std::unique_ptr<Sort> plugSort();

} // namespace hangbook::exchange
