// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>

#include "options/option.h"

namespace hangbook::terminal {

/// What picks and points carry at each step of the build, in kN at rest.
void printBuild(const options::Option& option, std::ostream& out);

/// What happens where one hoist of two stops, and the difference at which to hold.
void printStops(const options::Option& option, std::ostream& out);

/// What the wind does, outdoors.
void printWind(const options::Option& option, std::ostream& out);

} // namespace hangbook::terminal
