// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/commands.h"

namespace hangbook::terminal {

const std::vector<Command>& commands() {
  static const std::vector<Command> all{
      staticsCommand(),
      settledCommand(),
      helpCommand(),
  };
  return all;
}

} // namespace hangbook::terminal
