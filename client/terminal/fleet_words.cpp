// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/fleet_words.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonObject>

#include "store/fleet_store.h"
#include "store/warehouse_store.h"
#include "terminal/answers.h"
#include "terminal/names.h"
#include "terminal/spans.h"

namespace hangbook::terminal {

QString textOf(const Given& given, const std::string& option) {
  return QString::fromStdString(given.option(option).value_or("")).trimmed();
}

fleet::Unit findUnit(store::Store& store, const QString& serial) {
  if (std::optional<fleet::Unit> unit = store::loadUnit(store, serial)) {
    return std::move(*unit);
  }
  QStringList known;
  for (const fleet::Unit& each : store::findUnits(store, serial.left(3), 500).units) {
    known << each.serial;
  }
  throw unknownName(serial, QStringLiteral("the serial of a unit of this store"), known);
}

QDate pastDay(const Given& given, Context& context) {
  const auto text = given.option("--date");
  const QDate day = text ? readDay("--date", *text) : today(context);
  if (day > today(context)) {
    throw Error(Trouble::badInput, "--date " + *text + ": a day that is not in the future is expected");
  }
  return day;
}

std::vector<actions::File> filesFrom(const Given& given, fleet::DocumentKind kind) {
  const auto name = given.option("--file");
  if (!name) {
    return {};
  }
  QFile file(QString::fromStdString(*name));
  if (!file.open(QIODevice::ReadOnly)) {
    throw Error(Trouble::badInput,
                "--file " + *name + " cannot be read: " + file.errorString().toStdString());
  }
  return {{QFileInfo(file).fileName(), file.readAll(), kind}};
}

QString wordOf(fleet::UnitState state) {
  switch (state) {
  case fleet::UnitState::ready:
    return QStringLiteral("ready");
  case fleet::UnitState::away:
    return QStringLiteral("away");
  case fleet::UnitState::quarantined:
    return QStringLiteral("quarantined");
  case fleet::UnitState::inRepair:
    return QStringLiteral("in repair");
  case fleet::UnitState::writtenOff:
    return QStringLiteral("written off");
  }
  return {};
}

QString wordOf(fleet::ExaminationResult result) {
  switch (result) {
  case fleet::ExaminationResult::pass:
    return QStringLiteral("pass");
  case fleet::ExaminationResult::passWithRemark:
    return QStringLiteral("pass with remark");
  case fleet::ExaminationResult::fail:
    return QStringLiteral("fail");
  }
  return {};
}

QString wordOf(fleet::Act act) {
  switch (act) {
  case fleet::Act::unsaid:
    return QStringLiteral("moved");
  case fleet::Act::entered:
    return QStringLiteral("entered");
  case fleet::Act::out:
    return QStringLiteral("out");
  case fleet::Act::in:
    return QStringLiteral("in");
  case fleet::Act::transfer:
    return QStringLiteral("moved");
  case fleet::Act::ontoCart:
    return QStringLiteral("onto cart");
  case fleet::Act::ontoTruck:
    return QStringLiteral("onto truck");
  case fleet::Act::state:
    return QStringLiteral("state");
  case fleet::Act::undone:
    return QStringLiteral("scan undone");
  }
  return {};
}

QString wordOf(fleet::OccurrenceKind kind) {
  switch (kind) {
  case fleet::OccurrenceKind::use:
    return QStringLiteral("use");
  case fleet::OccurrenceKind::exceptional:
    return QStringLiteral("exceptional");
  case fleet::OccurrenceKind::assembly:
    return QStringLiteral("assembly");
  case fleet::OccurrenceKind::fault:
    return QStringLiteral("fault");
  }
  return {};
}

QJsonArray showsInJson(const std::vector<actions::CountedOn>& shows) {
  QJsonArray list;
  for (const actions::CountedOn& show : shows) {
    list.append(QJsonObject{{QStringLiteral("tour"), show.tour},
                            {QStringLiteral("show"), show.show},
                            {QStringLiteral("away_from"), show.from.isValid()
                                                              ? QJsonValue(show.from.toString(Qt::ISODate))
                                                              : QJsonValue(QJsonValue::Null)},
                            {QStringLiteral("out_with_it"), show.wasOut},
                            {QStringLiteral("short"), show.lacking}});
  }
  return list;
}

void printShows(const std::vector<actions::CountedOn>& shows, std::ostream& out) {
  for (const actions::CountedOn& show : shows) {
    out << "counted on by " << show.show << " (" << show.tour << "), away from "
        << (show.from.isValid() ? show.from.toString(Qt::ISODate) : QStringLiteral("a day not stated"));
    if (show.wasOut) {
      out << "; it is out with this show";
    }
    if (show.lacking > 0) {
      out << "; short of " << QString::number(show.lacking) << " now";
    } else {
      out << "; others of its type can stand in";
    }
    out << '\n';
  }
}

} // namespace hangbook::terminal
