// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/due_answers.h"

#include <QJsonArray>

#include "terminal/answers.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

using calendar::Planned;
using calendar::Slot;
using calendar::Visit;

QString day(QDate date) {
  return date.isValid() ? date.toString(Qt::ISODate) : QStringLiteral("–");
}

QJsonValue jsonDay(QDate date) {
  return date.isValid() ? QJsonValue(date.toString(Qt::ISODate)) : QJsonValue(QJsonValue::Null);
}

QJsonObject lineOf(const Planned& each) {
  return {{QStringLiteral("unit"), each.due.serial},
          {QStringLiteral("type"), each.due.type},
          {QStringLiteral("rule"), each.due.rule},
          {QStringLiteral("last"), jsonDay(each.due.last)},
          {QStringLiteral("due"), jsonDay(each.due.due)},
          {QStringLiteral("place"), each.due.place},
          {QStringLiteral("overdue"), each.due.overdue},
          {QStringLiteral("note"), each.due.note},
          {QStringLiteral("idle"), each.due.idle},
          {QStringLiteral("best_at"), each.slot.place},
          {QStringLiteral("best_from"), jsonDay(each.slot.from)},
          {QStringLiteral("best_to"), jsonDay(each.slot.to)},
          {QStringLiteral("ahead"), each.ahead}};
}

QString headingOf(const Visit& visit) {
  if (visit.units.front().due.overdue) {
    return QStringLiteral("OVERDUE, at %1").arg(visit.slot.place);
  }
  const QString days = visit.slot.from == visit.slot.to
                           ? day(visit.slot.from)
                           : QStringLiteral("%1 to %2").arg(day(visit.slot.from), day(visit.slot.to));
  return QStringLiteral("%1, %2").arg(visit.slot.place, days);
}

void printVisit(const Visit& visit, std::ostream& out) {
  out << headingOf(visit) << ": " << QString::number(visit.units.size()) << '\n';
  Table table({{QStringLiteral("due")},
               {QStringLiteral("")},
               {QStringLiteral("unit")},
               {QStringLiteral("type"), Column::Kind::text},
               {QStringLiteral("rule"), Column::Kind::text},
               {QStringLiteral("last")},
               {QStringLiteral("place"), Column::Kind::text},
               {QStringLiteral("note"), Column::Kind::text}});
  for (const Planned& each : visit.units) {
    table.add({day(each.due.due), each.due.overdue ? QStringLiteral("OVERDUE") : QString(), each.due.serial,
               each.due.type, each.due.rule, day(each.due.last), each.due.place,
               each.ahead ? QStringLiteral("send ahead: falls due while away") : each.due.note});
  }
  table.print(out, QStringLiteral("  "));
}

} // namespace

QJsonObject dueInJson(const DueAnswer& answer) {
  QJsonArray lines;
  for (const Planned& each : answer.units) {
    lines.append(lineOf(each));
  }
  QJsonArray besides;
  for (const Planned& each : answer.besides) {
    besides.append(lineOf(each));
  }
  QJsonArray stops;
  for (const Visit& visit : calendar::visits(answer.units)) {
    QJsonArray units;
    for (const Planned& each : visit.units) {
      units.append(each.due.serial);
    }
    stops.append(QJsonObject{{QStringLiteral("at"), visit.slot.place},
                             {QStringLiteral("from"), jsonDay(visit.slot.from)},
                             {QStringLiteral("to"), jsonDay(visit.slot.to)},
                             {QStringLiteral("warehouse"), visit.slot.warehouse},
                             {QStringLiteral("overdue"), visit.units.front().due.overdue},
                             {QStringLiteral("units"), units}});
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.due/1")},
          {QStringLiteral("as_of"), answer.asOf.toString(Qt::ISODate)},
          {QStringLiteral("until"), jsonDay(answer.last)},
          {QStringLiteral("due"), lines},
          {QStringLiteral("besides"), besides},
          {QStringLiteral("visits"), stops}};
}

void printDue(const DueAnswer& answer, std::ostream& out) {
  if (answer.units.empty()) {
    out << "Nothing is due up to " << answer.last.toString(Qt::ISODate)
        << (answer.asked.isEmpty() ? QString() : QStringLiteral(" for the ") + answer.asked) << ".\n";
  }
  for (const Visit& visit : calendar::visits(answer.units)) {
    printVisit(visit, out);
  }
  if (!answer.besides.empty()) {
    out << "Besides, not of what the " << answer.asked << " takes:\n";
    for (const Visit& visit : calendar::visits(answer.besides)) {
      printVisit(visit, out);
    }
  }
}

} // namespace hangbook::terminal
