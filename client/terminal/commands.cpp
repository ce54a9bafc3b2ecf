// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/commands.h"

namespace hangbook::terminal {

const std::vector<Command>& commands() {
  // clang-format off
  static const std::vector<Command> all{
      routeCommand(),
      optionsCommand(),
      compareCommand(),
      chooseCommand(),
      buildCommand(),
      reportCommand(),
      markCommand(),
      markRecordCommand(),
      markLearnedCommand(),
      gateCommand(),
      flownCommand(),
      weighCommand(),
      scanCommand(),
      unitCommand(),
      findCommand(),
      stateCommand(),
      splitCommand(),
      swapCommand(),
      hungCommand(),
      examineCommand(),
      happenedCommand(),
      rulesCommand(),
      houseCommand(),
      houseSetCommand(),
      dueCommand(),
      stockCommand(),
      loadCommand(),
      labelsCommand(),
      staticsCommand(),
      settledCommand(),
      importCommand(),
      exportCommand(),
      demoCommand(),
      backupCommand(),
      copyCommand(),
      checkStoreCommand(),
      helpCommand(),
  };
  // clang-format on
  return all;
}

} // namespace hangbook::terminal
