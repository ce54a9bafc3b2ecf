// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using fleet::UnitState;

UnitState stateFrom(const Given& given) {
  const QString text = textOf(given, "--set");
  for (const UnitState each :
       {UnitState::ready, UnitState::quarantined, UnitState::inRepair, UnitState::writtenOff}) {
    if (text.compare(wordOf(each), Qt::CaseInsensitive) == 0) {
      return each;
    }
  }
  throw Error(Trouble::badInput, "--set " + text.toStdString() +
                                     ": ready, quarantined, \"in repair\" or \"written off\" is expected");
}

Ending run(const Given& given, Context& context) {
  const UnitState state = stateFrom(given);
  const auto store = openStore(context);
  const fleet::Unit unit = findUnit(*store, QString::fromStdString(*given.operand("SERIAL")).trimmed());
  const actions::Recorded done =
      actions::setState(*store, unit.serial, state, textOf(given, "--place"), textOf(given, "--because"),
                        today(context), person(*store, context));
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.state/1")},
                        {QStringLiteral("unit"), unit.serial},
                        {QStringLiteral("was"), wordOf(unit.state)},
                        {QStringLiteral("state"), wordOf(state)},
                        {QStringLiteral("shows"), showsInJson(done.shows)}});
  } else {
    context.out << unit.serial << ": " << wordOf(state) << " (was " << wordOf(unit.state) << ")\n";
    printShows(done.shows, context.out);
  }
  return Ending::done;
}

} // namespace

Command stateCommand() {
  return {"state",
          "release a unit, keep it back, send it to repair or write it off, with the reason",
          {{"--set", "STATE", "ready, quarantined, \"in repair\" or \"written off\"", true},
           {"--because", "TEXT", "why", true},
           {"--place", "NAME", "where it goes; where it is, where left out"}},
          {{"SERIAL", "the unit"}},
          "hangbook state CH02 --set \"in repair\" --place workshop --because \"link 14 nicked\"",
          run};
}

} // namespace hangbook::terminal
