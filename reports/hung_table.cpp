// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/hung_table.h"

#include "options/hung_places.h"
#include "reports/parts.h"

namespace hangbook::reports {
namespace {

QString notRecorded() {
  return QStringLiteral("not recorded by serial");
}

calendar::HungSerials serialsOf(const ShowAsIs& show, const QString& hang) {
  calendar::HungSerials serials;
  for (const calendar::Hung& each : show.hung) {
    if (each.hang == hang && !each.serial.isEmpty()) {
      serials[each.element] = each.serial;
    }
  }
  return serials;
}

Table::Row rowOf(const QString& hang, const options::HungPlace& place, const Figures& figures) {
  Table::Row row;
  const bool there = !place.serial.isEmpty();
  row.cells = {hang,
               options::placeOf(place),
               place.type,
               there ? place.serial : notRecorded(),
               there ? figures.mass(place.massKg) : QString(),
               place.trouble.isEmpty() ? place.basis
               : place.basis.isEmpty() ? place.trouble
                                       : place.basis + QStringLiteral("; ") + place.trouble};
  row.warn = !there || !place.massKg || !place.trouble.isEmpty();
  return row;
}

void addHang(Table& table, const QString& name, const options::HungHang& hang, const Figures& figures) {
  if (hang.recorded == 0 && hang.places.back().serial.isEmpty()) {
    Table::Row row;
    row.cells = {name, QStringLiteral("all"), {}, notRecorded(), {}, {}};
    row.warn = true;
    table.rows.push_back(row);
    return;
  }
  const std::size_t first = table.rows.size();
  for (const options::HungPlace& place : hang.places) {
    table.rows.push_back(rowOf(name, place, figures));
  }
  table.rows[first].withNext = table.rows.back().withNext = true; // no row of a hang alone on a page
  Table::Row sum;
  sum.cells = {name,
               QStringLiteral("all"),
               QStringLiteral("bar and cabinets"),
               {},
               figures.mass(hang.massKg),
               QStringLiteral("the loads count %1").arg(figures.mass(hang.countedKg))};
  sum.strong = true;
  sum.warn = !hang.massKg || !hang.countedKg;
  table.rows.push_back(sum);
}

} // namespace

Table hungTable(const ShowAsIs& show, const Figures& figures, const QString& only) {
  Table table;
  table.name = only.isEmpty() ? QStringLiteral("weights by serial") : QStringLiteral("units %1").arg(only);
  table.title = only.isEmpty() ? QStringLiteral("Weights by serial")
                               : QStringLiteral("Hang %1, units by serial").arg(only.toUpper());
  table.note =
      QStringLiteral("Cabinets are counted from the bar down. Loads are of types: they count the heaviest "
                     "unit of a type that may come to hang.");
  table.columns = {{QStringLiteral("Hang"), 0.8, false}, {QStringLiteral("Place"), 0.6, false},
                   {QStringLiteral("Type"), 1.7, false}, {QStringLiteral("Serial"), 2.1, false},
                   {QStringLiteral("Mass"), 0.9, true},  {QStringLiteral("From"), 2.6, false}};
  for (const HangAsIs& hang : show.hangs) {
    if (hang.now && (only.isEmpty() || hang.hang == only)) {
      addHang(table, hang.hang,
              options::hungOf(show.snapshot, hang.now->key, serialsOf(show, hang.hang), show.hungElsewhere),
              figures);
    }
  }
  return table;
}

QStringList hungTroubles(const ShowAsIs& show) {
  QStringList lines;
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    for (const options::HungPlace& place :
         options::hungOf(show.snapshot, hang.now->key, serialsOf(show, hang.hang), show.hungElsewhere)
             .places) {
      if (!place.trouble.isEmpty()) {
        lines << QStringLiteral("Hang %1, %2: %3 %4.")
                     .arg(hang.hang,
                          place.element == 0 ? QStringLiteral("bar")
                                             : QStringLiteral("cabinet %1").arg(place.element),
                          place.serial, place.trouble);
      }
    }
  }
  return lines;
}

} // namespace hangbook::reports
