// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <istream>
#include <map>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

#include <QDate>

#include "quantity/text.h"

/// What a word of the terminal is made of. A command is data (its word, purpose, options, example) and one
/// function; it reads and writes only the streams that it is given, so that a test can run it in process.
namespace hangbook::terminal {

/// What a run ends with, for the shell.
enum class Ending : int {
  done = 0,
  failing = 1, ///< done, and something fails, is unproven or is not possible
  badInput = 2,
  storeTrouble = 3,
};

/// The streams, and the options that every command takes.
struct Context {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  std::optional<std::string> store = {}; ///< --store: where the data lie; the usual place where left out
  std::optional<std::string> by = {};    ///< --by: who does or signs it
  std::optional<QDate> asOf = {};        ///< --as-of: the day that counts as today
  bool json = false;                     ///< --json
  /// --units: whether the same in US customary units stands beside what an answer says; never in JSON
  UnitSystem units = UnitSystem::metric;
};

/// "--word ARGUMENT", or a plain "--word" where `argument` is empty.
struct Option {
  std::string word;     ///< with its dashes
  std::string argument; ///< such as NAME
  std::string meaning;  ///< one line
  bool needed = false;
  bool repeats = false; ///< may stand several times; `Given` then has all of it, joined by "; "
};

/// A word without dashes that the command takes, such as a file; in this order.
struct Operand {
  std::string name;
  std::string meaning;
  bool needed = true;
};

/// What stood behind the command's word, already checked against its options and operands.
struct Given {
  std::map<std::string, std::string> options; ///< a plain option has an empty text
  std::map<std::string, std::string> operands;
  std::map<std::string, std::vector<std::string>> repeated; ///< each option's texts one by one

  bool has(const std::string& option) const { return options.contains(option); }
  std::optional<std::string> option(const std::string& word) const;
  /// All texts of an option that may stand several times, in their order.
  std::vector<std::string> all(const std::string& word) const;
  std::optional<std::string> operand(const std::string& name) const;
};

struct Command {
  std::string word;    ///< one or two words: "statics", "mark record"
  std::string purpose; ///< one line
  std::vector<Option> options;
  std::vector<Operand> operands;
  std::string example; ///< a whole line, as it would be typed
  std::function<Ending(const Given&, Context&)> run;
  bool forPrograms = false; ///< what it answers is a file's text: units change nothing in it
};

} // namespace hangbook::terminal
