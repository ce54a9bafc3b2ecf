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
Command compareCommand();
Command copyCommand();
Command demoCommand();
Command dueCommand();
Command examineCommand();
Command exportCommand();
Command findCommand();
Command happenedCommand();
Command helpCommand();
Command hungCommand();
Command houseCommand();
Command houseSetCommand();
Command importCommand();
Command labelsCommand();
Command loadCommand();
Command buildCommand();
Command reportCommand();
Command markCommand();
Command markRecordCommand();
Command markLearnedCommand();
Command gateCommand();
Command flownCommand();
Command optionsCommand();
Command routeCommand();
Command rulesCommand();
Command scanCommand();
Command settledCommand();
Command stateCommand();
Command swapCommand();
Command splitCommand();
Command staticsCommand();
Command stockCommand();
Command unitCommand();
Command weighCommand();

/// In the order in which the help lists them.
const std::vector<Command>& commands();

} // namespace hangbook::terminal
