// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

namespace hangbook::terminal {

/// The whole help as a page of the manual's first section (macros of man(7)): made of the same data as
/// `help`, so that it cannot fall behind it.
void printManPage(std::ostream& out);

} // namespace hangbook::terminal
