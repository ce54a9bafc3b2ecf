// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/check_store.h"

#include "store/people_store.h"
#include "store/records.h"

namespace hangbook::store {
namespace {

constexpr auto checkColumns = [](auto& io, auto& check) {
  io("tour", check.tour);
  io("show", check.show);
  io("inputs", check.inputs);
  io("program", check.program);
  io("checked_at", check.checkedAt);
};

} // namespace

std::optional<KeptCheck> loadKeptCheck(Store& store, const QString& tour, const QString& show) {
  const auto row = store.one(QStringLiteral("SELECT * FROM kept_check WHERE tour = :tour AND show = :show"),
                             {{"tour", tour}, {"show", show}});
  if (!row) {
    return std::nullopt;
  }
  KeptCheck check;
  ColumnReader io(*row);
  checkColumns(io, check);
  check.result = row->text("result").toUtf8();
  return check;
}

void keep(Store& store, const KeptCheck& check) {
  store.transact([&] {
    store.run(QStringLiteral("DELETE FROM kept_check WHERE tour = :tour AND show = :show"),
              {{"tour", check.tour}, {"show", check.show}});
    ColumnWriter io;
    checkColumns(io, check);
    io("result", QString::fromUtf8(check.result));
    insertRow(store, "kept_check", io.bindings);
  });
}

QString liking(Store& store, const QString& name) {
  const auto row =
      store.one(QStringLiteral("SELECT value FROM liking WHERE device = :device AND name = :name"),
                {{"device", thisDevice()}, {"name", name}});
  return row ? row->text("value") : QString();
}

void setLiking(Store& store, const QString& name, const QString& value) {
  store.transact([&] {
    store.run(QStringLiteral("INSERT INTO liking (device, name, value) VALUES (:device, :name, :value) "
                             "ON CONFLICT (device, name) DO UPDATE SET value = excluded.value"),
              {{"device", thisDevice()}, {"name", name}, {"value", value}});
  });
}

} // namespace hangbook::store
