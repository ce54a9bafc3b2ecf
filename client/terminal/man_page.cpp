// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/man_page.h"

#include <string>
#include <string_view>

#include "terminal/commands.h"
#include "terminal/words.h"

namespace hangbook::terminal {
namespace {

/// Text as it is, whatever roff would read into it.
std::string plain(std::string_view text) {
  std::string page;
  for (const char each : text) {
    if (each == '\\') {
      page += "\\e";
    } else if (each == '-') {
      page += "\\-";
    } else {
      page += each;
    }
  }
  if (!page.empty() && (page.front() == '.' || page.front() == '\'')) {
    page.insert(0, "\\&");
  }
  return page;
}

void entry(std::ostream& out, const std::string& bold, const std::string& italic, const std::string& text) {
  out << ".TP\n\\fB" << plain(bold) << "\\fR";
  if (!italic.empty()) {
    out << " \\fI" << plain(italic) << "\\fR";
  }
  out << '\n' << plain(text) << '\n';
}

void entries(std::ostream& out, const std::vector<Option>& options) {
  for (const Option& option : options) {
    entry(out, option.word, option.argument, option.meaning + (option.needed ? " (needed)" : ""));
  }
}

void page(std::ostream& out, const Command& command) {
  out << ".SS \"hangbook " << plain(command.word) << "\"\n" << plain(command.purpose) << ".\n";
  for (const Operand& operand : command.operands) {
    out << ".TP\n\\fI" << plain(operand.name) << "\\fR\n"
        << plain(operand.meaning + (operand.needed ? " (needed)" : "")) << '\n';
  }
  entries(out, command.options);
  out << ".PP\nExample:\n.PP\n.RS 4\n.nf\n" << plain(command.example) << "\n.fi\n.RE\n";
}

} // namespace

void printManPage(std::ostream& out) {
  out << ".TH HANGBOOK 1 \"\" \"Hangbook " HANGBOOK_VERSION "\" \"User Commands\"\n"
         ".SH NAME\nhangbook \\- stacking and downfill options of touring sound crews, with loads and chain "
         "marks\n"
         ".SH SYNOPSIS\n.B hangbook\n.RI [ WORD \" \" [ options ]]\n"
         ".SH DESCRIPTION\nWithout a word, the window opens; with one, the answer is printed. Figures "
         "support the "
         "maker's manual, local codes and a competent person's judgement and do not replace them; no verdict "
         "is a "
         "permission to lift.\n"
         ".SH OPTIONS OF EVERY WORD\n";
  entries(out, sharedOptions());
  out << ".SH WORDS\n";
  for (const Command& command : commands()) {
    page(out, command);
  }
  out << ".SH EXIT STATUS\n";
  entry(out, "0", "", "done");
  entry(out, "1", "", "done, and something fails, is unproven or is not possible");
  entry(out, "2", "", "wrong words or wrong input");
  entry(out, "3", "", "trouble with the store");
}

} // namespace hangbook::terminal
