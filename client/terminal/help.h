// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

#include "terminal/command.h"

namespace hangbook::terminal {

/// Every word with its purpose, and the options that all of them take.
void printOverview(std::ostream& out);

/// One command: purpose, options, operands, example, what its run may end with.
void printHelp(const Command& command, std::ostream& out);

} // namespace hangbook::terminal
