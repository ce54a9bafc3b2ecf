// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/run.h"

#include <algorithm>
#include <new>
#include <string>

#include "quantity/error.h"
#include "terminal/both_units.h"
#include "terminal/commands.h"
#include "terminal/help.h"
#include "terminal/words.h"

namespace hangbook::terminal {
namespace {

Ending endingOf(Trouble trouble) {
  switch (trouble) {
  case Trouble::badInput:
    return Ending::badInput;
  case Trouble::notPossible:
    return Ending::failing;
  case Trouble::store:
    break;
  }
  return Ending::storeTrouble;
}

/// What an engine says may be several lines; trouble is one, for whoever reads line by line.
std::string inOneLine(std::string text) {
  for (char& letter : text) {
    letter = letter == '\n' || letter == '\r' ? ' ' : letter;
  }
  return text;
}

Ending runWords(const std::vector<std::string>& words, Context& context) {
  if (words.empty()) {
    printOverview(context.err);
    return Ending::badInput;
  }
  if (words[0] == "--help" || words[0] == "--version") {
    if (words.size() > 1) {
      throw Error(Trouble::badInput, "\"" + words[1] + "\" is one word too many behind " + words[0]);
    }
    if (words[0] == "--help") {
      printOverview(context.out);
    } else {
      context.out << "hangbook " HANGBOOK_VERSION "\n";
    }
    return Ending::done;
  }
  std::size_t used = 0;
  const Command& command = commandFor(words, used);
  const std::vector<std::string> behind(words.begin() + static_cast<std::ptrdiff_t>(used), words.end());
  if (std::ranges::find(behind, "--help") != behind.end()) { // wherever it stands: nothing is then done
    printHelp(command, context.out);
    return Ending::done;
  }
  const Given given = read(command, behind, context);
  if (context.units == UnitSystem::metric || context.json || command.forPrograms) {
    return command.run(given, context);
  }
  BothUnitsBuffer buffer(context.out);
  std::ostream out(&buffer);
  Context toReaders{context.in, out,          context.err,  context.store,
                    context.by, context.asOf, context.json, context.units};
  const Ending ending = command.run(given, toReaders);
  out.flush();
  return ending;
}

} // namespace

Ending run(const std::vector<std::string>& words, std::istream& in, std::ostream& out, std::ostream& err) {
  Context context{in, out, err};
  try {
    const Ending ending = runWords(words, context);
    out.flush();
    if (!out) {
      err << "hangbook: the answer could not be written\n";
      return Ending::storeTrouble;
    }
    return ending;
  } catch (const Error& error) {
    err << "hangbook: " << inOneLine(error.what()) << '\n';
    return endingOf(error.trouble());
  } catch (const std::bad_alloc&) {
    err << "hangbook: there is not enough memory for this input\n";
    return Ending::badInput;
  }
}

} // namespace hangbook::terminal
