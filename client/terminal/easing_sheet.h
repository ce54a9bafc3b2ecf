// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <vector>

#include "options/easing.h"
#include "options/reserve.h"

namespace hangbook::terminal {

/// What would do for an option that fails, what to ask for where one is unproven, how far an option that
/// stands is from its first limit.
void printEasings(const options::Easings& easings, std::ostream& out);
void printReserves(const std::vector<options::Reserve>& reserves, std::ostream& out);

/// One or two lines of an option in a list: the smallest change of its own kind first.
void printEasingLine(const QString& id, const options::Easings& easings, std::ostream& out);

} // namespace hangbook::terminal
