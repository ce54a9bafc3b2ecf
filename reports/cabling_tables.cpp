// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/cabling_tables.h"

#include <algorithm>
#include <map>

namespace hangbook::reports {
namespace {

QString orNotStated(const QString& text) {
  return text.isEmpty() ? QStringLiteral("not stated") : text;
}

QString nameOf(const build::Plugged& plug) {
  return plug.label.isEmpty() ? plug.loom : QStringLiteral("%1 “%2”").arg(plug.loom, plug.label);
}

Table::Row rowOf(const build::Step& step, const build::Plugged& plug) {
  Table::Row row;
  row.cells = {QStringLiteral("%1 %2").arg(step.element).arg(step.cabinet),
               orNotStated(plug.socket),
               nameOf(plug),
               orNotStated(plug.end),
               orNotStated(plug.connector),
               orNotStated(plug.colour),
               orNotStated(plug.rack),
               orNotStated(plug.channel)};
  row.warn = row.cells.contains(orNotStated({}));
  return row;
}

} // namespace

Table cablingTable(const ShowAsIs& show, const QString& hang) {
  Table table;
  table.name = QStringLiteral("cabling %1").arg(hang);
  table.title = QStringLiteral("Hang %1, cabling").arg(hang.toUpper());
  table.note =
      QStringLiteral("As stated for this show; signal and power are the makers' data, and nothing here is "
                     "computed. What is not stated: follow the maker's data.");
  table.columns = {{QStringLiteral("Cabinet"), 2.2, false},   {QStringLiteral("Socket"), 0.9, false},
                   {QStringLiteral("Loom"), 2.4, false},      {QStringLiteral("End"), 0.8, false},
                   {QStringLiteral("Connector"), 1.2, false}, {QStringLiteral("Colour"), 1.0, false},
                   {QStringLiteral("Rack"), 1.2, false},      {QStringLiteral("Channel"), 1.0, false}};
  for (const build::Step& step : show.plan.steps) {
    if (step.hang != hang || step.kind != build::StepKind::plug) {
      continue;
    }
    for (const build::Plugged& plug : step.plugs) {
      table.rows.push_back(rowOf(step, plug));
    }
    if (step.plugs.empty()) {
      table.rows.push_back(rowOf(step, {{}, orNotStated({}), {}, {}, {}, {}, {}, {}, {}}));
    }
  }
  return table;
}

Table loomsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("looms");
  table.title = QStringLiteral("Looms");
  table.note = QStringLiteral("As the cabling of this show states them.");
  table.large = true;
  table.ticked = true;
  table.columns = {{QStringLiteral("Loom"), 2.6, false},
                   {QStringLiteral("Length"), 1.1, true},
                   {QStringLiteral("For hang"), 1.2, false},
                   {QStringLiteral("Ends in use"), 2.4, false}};
  // Cabinet by cabinet, so that ends stand in the order in which they are plugged.
  std::vector<std::pair<QString, QString>> order;
  std::map<std::pair<QString, QString>, std::pair<QString, QStringList>> ends;
  for (const build::Step& step : show.plan.steps) {
    for (const build::Plugged& plug : step.plugs) {
      const std::pair key{nameOf(plug), step.hang};
      if (!ends.contains(key)) {
        order.push_back(key);
      }
      ends[key].first = plug.loom;
      ends[key].second << plug.end;
    }
  }
  for (const auto& key : order) {
    const auto* type = catalogue::find(show.snapshot.catalogue.hardware, ends[key].first);
    const std::optional<double> length =
        type != nullptr && type->length ? std::optional(inMetres(*type->length)) : std::nullopt;
    Table::Row row;
    row.cells = {key.first, figures.length(length), key.second, ends[key].second.join(QStringLiteral(", "))};
    row.warn = !length;
    table.rows.push_back(row);
  }
  return table;
}

} // namespace hangbook::reports
