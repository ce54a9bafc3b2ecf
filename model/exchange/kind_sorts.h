// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/import.h"
#include "exchange/sort.h"

namespace hangbook::exchange {

const Sorts& sortsOf(Kind kind);

/// Every heading of the sorts once, in their order.
std::vector<Heading> headingsTogether(const Sorts& sorts);

/// "mass [kg]"
QString writtenHeading(const Heading& heading);

/// The heading over the words that say of which sort a line is.
QString recordHeading();

} // namespace hangbook::exchange
