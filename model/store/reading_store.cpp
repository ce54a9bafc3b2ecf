// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/reading_store.h"

#include "store/people_store.h"
#include "store/records.h"

namespace hangbook::store {
namespace {

using marks::LoadReading;

constexpr auto readingColumns = [](auto& io, auto& reading) {
  io("id", reading.id);
  io("lift", reading.lift);
  io("tour", reading.tour);
  io("show", reading.show);
  io("hang", reading.hang);
  io("option_id", reading.option);
  io("pick", reading.pick);
  io("cell_at", reading.cellAt);
  io("leg_to", reading.legTo);
  io("reading_n", reading.reading);
  io("computed_n", reading.computed);
  io("instrument", reading.instrument);
  io("remark", reading.remark);
  io("corrects", reading.corrects);
  io("by_name", reading.by);
  io("recorded_at", reading.recordedAt);
};

} // namespace

std::vector<LoadReading> loadReadingsOf(Store& store, const QString& tour, const QString& show) {
  std::vector<LoadReading> readings;
  for (const Row& row :
       store.rows(QStringLiteral("SELECT * FROM load_reading WHERE tour = :tour AND show = :show AND NOT "
                                 "EXISTS (SELECT 1 FROM load_reading c WHERE c.corrects = load_reading.id) "
                                 "ORDER BY recorded_at DESC, lift, pick, leg_to, id"),
                  {{"tour", tour}, {"show", show}})) {
    ColumnReader io(row);
    readingColumns(io, readings.emplace_back());
  }
  return readings;
}

std::vector<LoadReading> loadReadings(Store& store) {
  std::vector<LoadReading> readings;
  for (const Row& row : store.rows(
           QStringLiteral("SELECT * FROM load_reading ORDER BY recorded_at, lift, pick, leg_to, id"))) {
    ColumnReader io(row);
    readingColumns(io, readings.emplace_back());
  }
  return readings;
}

LoadReading append(Store& store, const LoadReading& reading) {
  if (reading.by.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who read the load cells; say who is at the desk");
  }
  return store.transact([&] {
    LoadReading saved = reading;
    if (saved.id.isNull()) {
      saved.id = QUuid::createUuid();
    }
    if (saved.lift.isNull()) {
      saved.lift = saved.id;
    }
    if (!saved.recordedAt.isValid()) {
      saved.recordedAt = QDateTime::currentDateTimeUtc();
    }
    inTermsOf({"load_reading", QStringLiteral("reading at the %1 pick").arg(saved.pick)}, [&] {
      ColumnWriter io;
      readingColumns(io, std::as_const(saved));
      io("device", thisDevice());
      insertRow(store, "load_reading", io.bindings);
    });
    return saved;
  });
}

} // namespace hangbook::store
