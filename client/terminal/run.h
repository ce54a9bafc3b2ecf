// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <istream>
#include <ostream>
#include <string>
#include <vector>

#include "terminal/command.h"

namespace hangbook::terminal {

/// Runs one line of words (without the program's own name). Every Error ends here: one line on `err`, and
/// the ending that goes with its kind.
Ending run(const std::vector<std::string>& words, std::istream& in, std::ostream& out, std::ostream& err);

} // namespace hangbook::terminal
