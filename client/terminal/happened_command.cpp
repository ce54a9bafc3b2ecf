// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "quantity/text.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using fleet::OccurrenceKind;

OccurrenceKind kindFrom(const Given& given) {
  const QString text = textOf(given, "--what");
  for (const OccurrenceKind each :
       {OccurrenceKind::fault, OccurrenceKind::exceptional, OccurrenceKind::assembly, OccurrenceKind::use}) {
    if (text.compare(wordOf(each), Qt::CaseInsensitive) == 0) {
      return each;
    }
  }
  throw Error(Trouble::badInput,
              "--what " + text.toStdString() + ": fault, exceptional, assembly or use is expected");
}

double hoursFrom(const std::string& text) {
  bool good = false;
  const double hours = QString::fromStdString(text).toDouble(&good);
  if (!good || hours < 0 || hours > 100'000) {
    throw Error(Trouble::badInput, "--hours " + text + ": hours of use are expected, such as 6.5");
  }
  return hours;
}

Ending run(const Given& given, Context& context) {
  fleet::Occurrence fact;
  fact.kind = kindFrom(given);
  fact.remark = textOf(given, "--remark");
  fact.place = textOf(given, "--place");
  if (const auto hours = given.option("--hours")) {
    fact.hours = hoursFrom(*hours);
  }
  if (fact.kind == OccurrenceKind::use && !fact.hours) {
    throw Error(Trouble::badInput, "--hours is needed with --what use; outings are counted by the scans");
  }
  if (fact.kind != OccurrenceKind::use && fact.hours) {
    throw Error(Trouble::badInput, "--hours goes with --what use only");
  }
  if ((fact.kind == OccurrenceKind::fault || fact.kind == OccurrenceKind::exceptional) &&
      fact.remark.isEmpty()) {
    throw Error(Trouble::badInput, "--remark TEXT is needed to say what happened");
  }
  if (fact.kind == OccurrenceKind::assembly && fact.place.isEmpty()) {
    throw Error(Trouble::badInput, "--place NAME is needed to say where it was assembled");
  }
  const auto store = openStore(context);
  const fleet::Unit unit = findUnit(*store, QString::fromStdString(*given.operand("SERIAL")).trimmed());
  fact.serial = unit.serial;
  fact.date = pastDay(given, context);
  const QString by = person(*store, context);
  const actions::Recorded done = actions::recordOccurrence(
      *store, fact, filesFrom(given, fleet::DocumentKind::photograph), today(context), by);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.happened/1")},
                        {QStringLiteral("entry"), done.occurrence.id.toString(QUuid::WithoutBraces)},
                        {QStringLiteral("unit"), unit.serial},
                        {QStringLiteral("what"), wordOf(fact.kind)},
                        {QStringLiteral("date"), fact.date.toString(Qt::ISODate)},
                        {QStringLiteral("quarantined"), done.quarantined},
                        {QStringLiteral("shows"), showsInJson(done.shows)}});
  } else {
    context.out << unit.serial << ": " << wordOf(fact.kind) << " on " << fact.date.toString(Qt::ISODate)
                << (fact.remark.isEmpty() ? QString() : QStringLiteral(", ") + fact.remark) << '\n';
    if (done.quarantined) {
      context.out << unit.serial << " is quarantined\n";
    }
    printShows(done.shows, context.out);
  }
  return fact.kind == OccurrenceKind::fault ? Ending::failing : Ending::done;
}

} // namespace

Command happenedCommand() {
  return {"happened",
          "record what happened to a unit: a fault (quarantines it), something exceptional, an assembly, "
          "hours of use",
          {{"--what", "WORD", "fault, exceptional, assembly or use", true},
           {"--remark", "TEXT", "in words"},
           {"--hours", "NUMBER", "hours of use"},
           {"--place", "NAME", "where"},
           {"--date", "DATE", "when; today where left out"},
           {"--file", "FILE", "a photograph; it is kept in the store with its SHA-256"}},
          {{"SERIAL", "the unit"}},
          "hangbook happened CH02 --what fault --remark \"link 14 nicked\" --file ch02.jpg",
          run};
}

} // namespace hangbook::terminal
