// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/history_store.h"

#include "store/people_store.h"
#include "store/records.h"

namespace hangbook::store {

namespace {

constexpr auto deedColumns = [](auto& io, auto& deed) {
  io("recorded_at", deed.at);
  io("by_name", deed.by);
  io("device", deed.device);
  io("program", deed.program);
  io("action", deed.action);
  io("subject", deed.subject);
  io("detail", deed.detail);
};

} // namespace

std::vector<Deed> loadHistory(Store& store, int most) {
  std::vector<Deed> deeds;
  for (const Row& row : store.rows(QStringLiteral("SELECT * FROM history ORDER BY number DESC LIMIT :most"),
                                   {{"most", most}})) {
    ColumnReader io(row);
    deedColumns(io, deeds.emplace_back());
  }
  return deeds;
}

void append(Store& store, const Deed& deed) {
  Deed saved = deed;
  if (!saved.at.isValid()) {
    saved.at = QDateTime::currentDateTimeUtc();
  }
  if (saved.device.isEmpty()) {
    saved.device = thisDevice();
  }
  if (saved.program.isEmpty()) {
    saved.program = QStringLiteral(HANGBOOK_VERSION);
  }
  ColumnWriter io;
  io("id", QUuid::createUuid());
  io("number",
     store.one(QStringLiteral("SELECT coalesce(max(number), 0) + 1 AS n FROM history"))->integer("n"));
  deedColumns(io, std::as_const(saved));
  insertRow(store, "history", io.bindings);
}

} // namespace hangbook::store
