// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/rule.h"

namespace hangbook::options {

bool isSeated(const Case& option, std::size_t element);

/// Whether the chain, where there is one, still has slack in the shape that the hang takes: it then carries
/// nothing.
bool chainHasSlack(const Settled& settled);

} // namespace hangbook::options
