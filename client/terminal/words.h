// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "terminal/command.h"

namespace hangbook::terminal {

/// The options that every command takes, as data for reading and for the help.
const std::vector<Option>& sharedOptions();

/// The command whose word (or two words) stand in front. `used` is how many. Throws Error(badInput) for a
/// word that is not known, saying which are.
const Command& commandFor(const std::vector<std::string>& words, std::size_t& used);

/// Sorts what stands behind the command's word into options and operands; sets the shared ones in `context`.
/// "--option text" and "--option=text" are the same; "--" ends the options. Throws Error(badInput) for what
/// the command does not take, for what it lacks, and for an option given twice.
Given read(const Command& command, const std::vector<std::string>& words, Context& context);

} // namespace hangbook::terminal
