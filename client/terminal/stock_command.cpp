// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/fleet_work.h"
#include "options/gear_needs.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/spans.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString inWords(const options::Shortage& lack) {
  QStringList ways;
  if (lack.examine > 0) {
    ways << QStringLiteral("examine %1").arg(lack.examine);
  }
  if (lack.release > 0) {
    ways << QStringLiteral("release or repair %1").arg(lack.release);
  }
  if (lack.hire > 0) {
    ways << QStringLiteral("hire in %1").arg(lack.hire);
  }
  return ways.join(QStringLiteral(", "));
}

QJsonArray typesInJson(const std::vector<options::TypeOnDay>& types) {
  QJsonArray list;
  for (const options::TypeOnDay& type : types) {
    QJsonArray takers;
    for (const options::Taker& taker : type.takers) {
      takers.append(QJsonObject{{QStringLiteral("tour"), taker.tour},
                                {QStringLiteral("show"), taker.show},
                                {QStringLiteral("number"), taker.number}});
    }
    list.append(QJsonObject{{QStringLiteral("kind"), options::wordFor(type.kind)},
                            {QStringLiteral("type"), type.type},
                            {QStringLiteral("owned"), type.owned},
                            {QStringLiteral("hired"), type.hired},
                            {QStringLiteral("away_now"), type.away},
                            {QStringLiteral("quarantined"), type.quarantined},
                            {QStringLiteral("due"), type.due},
                            {QStringLiteral("unruled"), type.unruled},
                            {QStringLiteral("wanted"), type.wanted},
                            {QStringLiteral("free"), type.free()},
                            {QStringLiteral("shows"), takers}});
  }
  return list;
}

QJsonArray lacksInJson(const std::vector<options::Shortage>& lacks) {
  QJsonArray list;
  for (const options::Shortage& lack : lacks) {
    list.append(QJsonObject{{QStringLiteral("tour"), lack.tour},
                            {QStringLiteral("show"), lack.show},
                            {QStringLiteral("kind"), options::wordFor(lack.kind)},
                            {QStringLiteral("type"), lack.type},
                            {QStringLiteral("day"), lack.day.toString(Qt::ISODate)},
                            {QStringLiteral("short"), lack.lacking},
                            {QStringLiteral("examine"), lack.examine},
                            {QStringLiteral("release"), lack.release},
                            {QStringLiteral("hire"), lack.hire}});
  }
  return list;
}

void printTypes(const std::vector<options::TypeOnDay>& types, std::ostream& out) {
  using Kind = Column::Kind;
  Table table({{QStringLiteral("type"), Kind::text},
               {QStringLiteral("kind")},
               {QStringLiteral("owned"), Kind::figure},
               {QStringLiteral("hired"), Kind::figure},
               {QStringLiteral("away now"), Kind::figure},
               {QStringLiteral("kept back"), Kind::figure},
               {QStringLiteral("due"), Kind::figure},
               {QStringLiteral("wanted"), Kind::figure},
               {QStringLiteral("free"), Kind::figure},
               {QStringLiteral("")}});
  for (const options::TypeOnDay& type : types) {
    table.add({type.type, options::wordFor(type.kind), QString::number(type.owned),
               QString::number(type.hired), QString::number(type.away), QString::number(type.quarantined),
               QString::number(type.due), QString::number(type.wanted), QString::number(type.free()),
               type.free() < 0 ? QStringLiteral("SHORT") : QString()});
  }
  table.print(out);
}

Ending run(const Given& given, Context& context) {
  const QDate day = given.has("--day") ? readDay("--day", *given.option("--day")) : today(context);
  const auto store = openStore(context);
  const options::Stock stock = actions::loadStock(*store);
  const std::vector<options::Demand> demands = actions::loadDemands(*store, std::min(day, today(context)));
  const auto types = options::stockOn(day, stock, demands);
  const auto lacks = options::shortagesOf(stock, demands);
  QJsonArray open;
  for (const options::Demand& demand : demands) {
    for (const QString& hang : demand.open) {
      open.append(QJsonObject{{QStringLiteral("show"), demand.show}, {QStringLiteral("hang"), hang}});
    }
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.stock/1")},
                        {QStringLiteral("day"), day.toString(Qt::ISODate)},
                        {QStringLiteral("types"), typesInJson(types)},
                        {QStringLiteral("shortages"), lacksInJson(lacks)},
                        {QStringLiteral("not_chosen"), open}});
  } else {
    context.out << "On " << day.toString(Qt::ISODate) << ":\n";
    printTypes(types, context.out);
    for (const options::Shortage& lack : lacks) {
      context.out << lack.show << " (" << lack.tour << "): short of " << QString::number(lack.lacking) << ' '
                  << lack.type << " on " << lack.day.toString(Qt::ISODate)
                  << "; to fill it: " << inWords(lack) << '\n';
    }
    if (!open.isEmpty()) {
      context.out << "Nothing is chosen yet for " << QString::number(open.size())
                  << " hangs: what they will take is not counted.\n";
    }
  }
  return lacks.empty() ? Ending::done : Ending::failing;
}

} // namespace

Command stockCommand() {
  return {"stock",
          "stock against demand for a day, by type, and what each show lacks",
          {{"--day", "DATE", "the day; today where left out"}},
          {},
          "hangbook stock --day 2027-03-04",
          run};
}

} // namespace hangbook::terminal
