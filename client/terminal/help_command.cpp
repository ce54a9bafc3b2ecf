// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/help.h"

#include <algorithm>
#include <sstream>
#include <utility>

#include "terminal/commands.h"
#include "terminal/man_page.h"
#include "terminal/words.h"

namespace hangbook::terminal {
namespace {

using Rows = std::vector<std::pair<std::string, std::string>>;

/// Two columns, the second one flush.
void printRows(const Rows& rows, std::ostream& out) {
  std::size_t width = 0;
  for (const auto& row : rows) {
    width = std::max(width, row.first.size());
  }
  for (const auto& row : rows) {
    out << "  " << row.first << std::string(width - row.first.size() + 2, ' ') << row.second << '\n';
  }
}

Rows optionRows(const std::vector<Option>& options) {
  Rows rows;
  for (const Option& option : options) {
    rows.emplace_back(option.argument.empty() ? option.word : option.word + " " + option.argument,
                      option.meaning + (option.needed ? " (needed)" : ""));
  }
  return rows;
}

Ending run(const Given& given, Context& context) {
  if (given.has("--man")) {
    printManPage(context.out);
    return Ending::done;
  }
  const auto asked = given.operand("WORD");
  if (!asked) {
    printOverview(context.out);
    return Ending::done;
  }
  std::vector<std::string> words{*asked};
  if (const auto second = given.operand("SECOND")) {
    words.push_back(*second);
  }
  std::size_t used = 0;
  printHelp(commandFor(words, used), context.out);
  return Ending::done;
}

} // namespace

void printOverview(std::ostream& out) {
  out << "hangbook opens the window; hangbook WORD answers in the terminal.\n\nWords:\n";
  Rows rows;
  for (const Command& command : commands()) {
    rows.emplace_back(command.word, command.purpose);
  }
  printRows(rows, out);
  out << "\nEvery word takes:\n";
  printRows(optionRows(sharedOptions()), out);
  out << "\nhangbook help WORD tells more about one; hangbook --version names the version.\n";
}

void printHelp(const Command& command, std::ostream& out) {
  out << "hangbook " << command.word;
  for (const Operand& operand : command.operands) {
    out << ' ' << (operand.needed ? operand.name : "[" + operand.name + "]");
  }
  out << (command.options.empty() ? "" : " [options]") << "\n  " << command.purpose << '\n';
  Rows rows;
  for (const Operand& operand : command.operands) {
    rows.emplace_back(operand.name, operand.meaning);
  }
  const Rows own = optionRows(command.options);
  rows.insert(rows.end(), own.begin(), own.end());
  if (!rows.empty()) {
    out << "\nIt takes:\n";
    printRows(rows, out);
  }
  out << "\nEvery word takes:\n";
  printRows(optionRows(sharedOptions()), out);
  out << "\nExample:\n  " << command.example
      << "\n\nEnds with 0: done; 1: done, and something fails, is unproven or is not possible;"
         "\n2: wrong words or wrong input; 3: trouble with the store.\n";
}

Command helpCommand() {
  return {"help",
          "tell what the words do, or one of them in full",
          {{"--man", "", "all of it as a page of the manual, for man(1)"}},
          {{"WORD", "the word to tell about", false}, {"SECOND", "its second word, where it has two", false}},
          "hangbook help statics",
          run};
}

} // namespace hangbook::terminal
