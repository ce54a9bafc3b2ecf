// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QJsonArray>

#include "fleet/due.h"
#include "quantity/text.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString day(QDate date) {
  return date.isValid() ? date.toString(Qt::ISODate) : QStringLiteral("–");
}

QString minute(const QDateTime& at) {
  return at.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

/// One line of a unit's history.
struct Event {
  QDateTime at;
  QString what;
  QString text;
  QString by;
  QUuid entry;
  QUuid corrects;
};

std::vector<Event> historyOf(store::Store& store, const QString& serial) {
  std::vector<Event> events;
  for (const fleet::Movement& each : store::loadMovements(store, serial)) {
    QStringList text{each.toPlace, wordOf(each.toState)};
    if (!each.toCart.isEmpty()) {
      text << QStringLiteral("on cart %1").arg(each.toCart);
    }
    if (!each.show.isEmpty()) {
      text << QStringLiteral("for %1").arg(each.show);
    }
    if (!each.reason.isEmpty()) {
      text << each.reason;
    }
    events.push_back({each.happenedAt, wordOf(each.act), text.join(QStringLiteral(", ")), each.by, each.id,
                      each.corrects});
  }
  for (const fleet::Examination& each : store::loadExaminations(store, serial)) {
    QStringList text{each.rule, wordOf(each.result), QStringLiteral("by %1").arg(each.examiner)};
    for (const QString& more : {each.certificate, each.remark}) {
      if (!more.isEmpty()) {
        text << more;
      }
    }
    events.push_back({QDateTime(each.date, QTime(12, 0), Qt::UTC), QStringLiteral("examined"),
                      text.join(QStringLiteral(", ")), each.by, each.id, each.corrects});
  }
  for (const fleet::Occurrence& each : store::loadOccurrences(store, serial)) {
    QStringList text;
    if (each.hours) {
      text << QStringLiteral("%1 h").arg(*each.hours);
    }
    for (const QString& more : {each.place, each.remark}) {
      if (!more.isEmpty()) {
        text << more;
      }
    }
    events.push_back({QDateTime(each.date, QTime(12, 0), Qt::UTC), wordOf(each.kind),
                      text.join(QStringLiteral(", ")), each.by, each.id, each.corrects});
  }
  for (const fleet::UnitDocument& each : store::loadDocuments(store, serial)) {
    events.push_back({each.recordedAt, QStringLiteral("file"),
                      QStringLiteral("%1, SHA-256 %2").arg(each.fileName, each.sha256.left(12) + u'…'),
                      each.by, each.id, each.examination});
  }
  std::ranges::stable_sort(events, {}, &Event::at);
  return events;
}

QJsonObject unitInJson(const fleet::Unit& unit) {
  return {{QStringLiteral("serial"), unit.serial},
          {QStringLiteral("type"), unit.type},
          {QStringLiteral("owner"), unit.owner},
          {QStringLiteral("hired_until"),
           unit.hiredUntil.isValid() ? QJsonValue(day(unit.hiredUntil)) : QJsonValue(QJsonValue::Null)},
          {QStringLiteral("place"), unit.place},
          {QStringLiteral("state"), wordOf(unit.state)},
          {QStringLiteral("cart"), unit.cart},
          {QStringLiteral("cart_position"),
           unit.cartPosition ? QJsonValue(*unit.cartPosition) : QJsonValue(QJsonValue::Null)},
          {QStringLiteral("pieces"), fleet::piecesOf(unit)},
          {QStringLiteral("weighed_kg"),
           unit.weighed ? QJsonValue(inKilograms(*unit.weighed)) : QJsonValue(QJsonValue::Null)}};
}

void printUnit(const fleet::Unit& unit, std::ostream& out) {
  out << unit.serial << ": " << unit.type;
  if (unit.pieces) {
    out << ", " << QString::number(*unit.pieces) << " pieces";
  }
  out << ", " << (unit.owner.isEmpty() ? QStringLiteral("our own") : QStringLiteral("of ") + unit.owner);
  if (unit.hiredUntil.isValid()) {
    out << ", back by " << day(unit.hiredUntil);
  }
  out << "\n" << wordOf(unit.state) << " at " << unit.place;
  if (!unit.cart.isEmpty()) {
    out << ", on cart " << unit.cart;
    if (unit.cartPosition) {
      out << " in place " << QString::number(*unit.cartPosition);
    }
  }
  if (unit.weighed) {
    out << "\nweighed " << QStringLiteral("%1 kg").arg(inKilograms(*unit.weighed));
    if (unit.weighedOn.isValid()) {
      out << " on " << day(unit.weighedOn);
    }
    if (!unit.weighedBy.isEmpty()) {
      out << " by " << unit.weighedBy;
    }
  }
  out << '\n';
}

Ending showOne(store::Store& store, const fleet::Unit& unit, Context& context) {
  const auto examinations = store::loadExaminations(store, unit.serial);
  const auto occurrences = store::loadHappened(store, unit.serial);
  const fleet::LastExaminations last(examinations);
  const fleet::Happened happened(occurrences);
  const std::vector<Event> events = historyOf(store, unit.serial);
  QJsonArray rules;
  Table table({{QStringLiteral("examination")},
               {QStringLiteral("last")},
               {QStringLiteral("stands until")},
               {QStringLiteral("note"), Column::Kind::text}});
  for (const fleet::ExaminationRule& rule : store::loadExaminationRules(store)) {
    if (fleet::appliesTo(rule, unit)) {
      const fleet::Standing standing =
          fleet::standingOf(rule, last.of(unit.serial, rule.name), happened.to(unit.serial));
      rules.append(
          QJsonObject{{QStringLiteral("rule"), rule.name},
                      {QStringLiteral("met"), standing.met},
                      {QStringLiteral("until"), standing.until.isValid() ? QJsonValue(day(standing.until))
                                                                         : QJsonValue(QJsonValue::Null)},
                      {QStringLiteral("why"), standing.why}});
      table.add({rule.name, day(standing.last), day(standing.until), standing.why});
    }
  }
  if (context.json) {
    QJsonArray list;
    for (const Event& each : events) {
      list.append(
          QJsonObject{{QStringLiteral("at"), each.at.toUTC().toString(Qt::ISODate)},
                      {QStringLiteral("what"), each.what},
                      {QStringLiteral("text"), each.text},
                      {QStringLiteral("by"), each.by},
                      {QStringLiteral("entry"), each.entry.toString(QUuid::WithoutBraces)},
                      {QStringLiteral("names"),
                       each.corrects.isNull() ? QJsonValue(QJsonValue::Null)
                                              : QJsonValue(each.corrects.toString(QUuid::WithoutBraces))}});
    }
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.unit/1")},
                        {QStringLiteral("unit"), unitInJson(unit)},
                        {QStringLiteral("examinations"), rules},
                        {QStringLiteral("history"), list}});
    return Ending::done;
  }
  printUnit(unit, context.out);
  if (!table.empty()) {
    table.print(context.out);
  }
  Table history({{QStringLiteral("when (UTC)")},
                 {QStringLiteral("what")},
                 {QStringLiteral(""), Column::Kind::text},
                 {QStringLiteral("by")},
                 {QStringLiteral("entry")}});
  for (const Event& each : events) {
    history.add({minute(each.at), each.what, each.text, each.by, each.entry.toString(QUuid::WithoutBraces)});
  }
  context.out << '\n';
  history.print(context.out, {}, 150);
  return Ending::done;
}

Ending runUnit(const Given& given, Context& context) {
  const auto store = openStore(context);
  return showOne(*store, findUnit(*store, QString::fromStdString(*given.operand("SERIAL")).trimmed()),
                 context);
}

Ending runFind(const Given& given, Context& context) {
  const auto store = openStore(context);
  const store::FoundUnits found =
      store::findUnits(*store, QString::fromStdString(*given.operand("PART")).trimmed());
  if (context.json) {
    QJsonArray list;
    for (const fleet::Unit& unit : found.units) {
      list.append(unitInJson(unit));
    }
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.find/1")},
                        {QStringLiteral("all"), found.all},
                        {QStringLiteral("units"), list}});
    return found.all > 0 ? Ending::done : Ending::failing;
  }
  if (found.all == 0) {
    context.out << "No serial holds that.\n";
    return Ending::failing;
  }
  Table table({{QStringLiteral("serial")},
               {QStringLiteral("type"), Column::Kind::text},
               {QStringLiteral("state")},
               {QStringLiteral("place"), Column::Kind::text},
               {QStringLiteral("cart")}});
  for (const fleet::Unit& unit : found.units) {
    table.add({unit.serial, unit.type, wordOf(unit.state), unit.place, unit.cart});
  }
  table.print(context.out);
  if (found.all > static_cast<int>(found.units.size())) {
    context.out << "The first " << QString::number(found.units.size()) << " of " << QString::number(found.all)
                << "; give more of the serial.\n";
  }
  return Ending::done;
}

} // namespace

Command unitCommand() {
  return {"unit",
          "one unit: where it is, its examinations, its files and its whole history",
          {},
          {{"SERIAL", "the unit"}},
          "hangbook unit H03",
          runUnit};
}

Command findCommand() {
  return {"find",
          "units by any part of their serial",
          {},
          {{"PART", "of the serial, in upper or lower case"}},
          "hangbook find 03",
          runFind};
}

} // namespace hangbook::terminal
