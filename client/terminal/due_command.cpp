// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "fleet/due.h"
#include "store/fleet_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/spans.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QJsonValue jsonDay(const QDate& day) {
  return day.isValid() ? QJsonValue(day.toString(Qt::ISODate)) : QJsonValue(QJsonValue::Null);
}

QJsonObject inJson(const std::vector<fleet::Due>& due, const QDate& asOf) {
  QJsonArray lines;
  for (const fleet::Due& each : due) {
    lines.append(QJsonObject{{QStringLiteral("unit"), each.serial},
                             {QStringLiteral("type"), each.type},
                             {QStringLiteral("rule"), each.rule},
                             {QStringLiteral("last"), jsonDay(each.last)},
                             {QStringLiteral("due"), jsonDay(each.due)},
                             {QStringLiteral("place"), each.place},
                             {QStringLiteral("overdue"), each.overdue},
                             {QStringLiteral("note"), each.note}});
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.due/1")},
          {QStringLiteral("as_of"), asOf.toString(Qt::ISODate)},
          {QStringLiteral("due"), lines}};
}

void printForPeople(const std::vector<fleet::Due>& due, const QDate& last, std::ostream& out) {
  if (due.empty()) {
    out << "Nothing is due up to " << last.toString(Qt::ISODate) << ".\n";
    return;
  }
  Table table({{QStringLiteral("due")},
               {QStringLiteral("")},
               {QStringLiteral("unit")},
               {QStringLiteral("type"), Column::Kind::text},
               {QStringLiteral("rule"), Column::Kind::text},
               {QStringLiteral("last")},
               {QStringLiteral("place"), Column::Kind::text},
               {QStringLiteral("note"), Column::Kind::text}});
  for (const fleet::Due& each : due) {
    table.add({each.due.isValid() ? each.due.toString(Qt::ISODate) : QStringLiteral("–"),
               each.overdue ? QStringLiteral("OVERDUE") : QString(), each.serial, each.type, each.rule,
               each.last.isValid() ? each.last.toString(Qt::ISODate) : QStringLiteral("–"), each.place,
               each.note});
  }
  table.print(out);
}

Ending run(const Given& given, Context& context) {
  const QDate asOf = today(context);
  const QDate last = endOfSpan("--within", *given.option("--within"), asOf);
  const auto store = openStore(context);
  const auto due = store->reading([&] {
    return fleet::dueWithin(store::loadUnits(*store), store::loadExaminationRules(*store),
                            store::loadExaminations(*store), asOf, static_cast<int>(asOf.daysTo(last)));
  });
  if (context.json) {
    printJson(context, inJson(due, asOf));
  } else {
    printForPeople(due, last, context.out);
  }
  return Ending::done;
}

} // namespace

Command dueCommand() {
  return {"due",
          "which units must be examined, and by when; what is overdue comes first",
          {{"--within", "SPAN", "how far ahead: days, weeks or months, such as 90d, 12w, 6m", true}},
          {},
          "hangbook due --within 90d",
          run};
}

} // namespace hangbook::terminal
