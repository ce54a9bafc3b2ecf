// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "terminal/command.h"

/// Every command of the terminal. A new one is a file of its own with a function here and a line in
/// commands.cpp.
namespace hangbook::terminal {

Command backupCommand();
Command checkStoreCommand();
Command chooseCommand();
Command demoCommand();
Command dueCommand();
Command exportCommand();
Command helpCommand();
Command importCommand();
Command markCommand();
Command markRecordCommand();
Command optionsCommand();
Command routeCommand();
Command settledCommand();
Command staticsCommand();
Command weighCommand();

/// In the order in which the help lists them.
const std::vector<Command>& commands();

} // namespace hangbook::terminal
