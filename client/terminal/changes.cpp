// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/changes.h"

#include <QJsonObject>

#include "terminal/answers.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString textOf(const build::FlownChange& change, std::optional<double> figure, const QString& word) {
  return change.unit.isEmpty() ? word
         : figure
             ? QStringLiteral("%1 %2").arg(
                   change.unit == QStringLiteral("°") ? shownAngle(figure) : shown(figure, 2), change.unit)
             : QStringLiteral("not known");
}

} // namespace

QJsonArray changesJson(const std::vector<build::FlownChange>& changes) {
  QJsonArray list;
  for (const build::FlownChange& each : changes) {
    const bool word = each.unit.isEmpty();
    list.append(QJsonObject{
        {QStringLiteral("what"), each.what},
        {QStringLiteral("was"), word ? QJsonValue(each.wasWord) : jsonFigure(each.was)},
        {QStringLiteral("becomes"), word ? QJsonValue(each.becomesWord) : jsonFigure(each.becomes)},
        {QStringLiteral("unit"), word ? QJsonValue(QJsonValue::Null) : QJsonValue(each.unit)},
        {QStringLiteral("worse"), each.worse}});
  }
  return list;
}

void printChanges(const std::vector<build::FlownChange>& changes, std::ostream& out) {
  if (changes.empty()) {
    out << "Nothing changes.\n";
    return;
  }
  Table table({{QStringLiteral("what")},
               {QStringLiteral("signed"), Column::Kind::figure},
               {QStringLiteral("becomes"), Column::Kind::figure}});
  for (const build::FlownChange& each : changes) {
    table.add(
        {each.what, textOf(each, each.was, each.wasWord), textOf(each, each.becomes, each.becomesWord)});
  }
  table.print(out);
}

} // namespace hangbook::terminal
