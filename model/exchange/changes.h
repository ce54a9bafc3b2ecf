// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/import.h"

namespace hangbook::exchange {

/// What `after` has and `before` has not, and what stands otherwise in it. Nothing ever vanishes.
Changes changesBetween(const Data& before, const Data& after);

} // namespace hangbook::exchange
