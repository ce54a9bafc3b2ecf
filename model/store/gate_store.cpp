// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/gate_store.h"

#include "store/people_store.h"
#include "store/records.h"

namespace hangbook::store {
namespace {

using marks::GateSigned;

constexpr auto gateColumns = [](auto& io, auto& gate) {
  io("id", gate.id);
  io("tour", gate.tour);
  io("show", gate.show);
  io("hang", gate.hang);
  io("option_id", gate.option);
  io("gate", gate.gate);
  io("skipped", gate.skipped);
  io("reason", gate.reason);
  io("corrects", gate.corrects);
  io("by_name", gate.by);
  io("recorded_at", gate.recordedAt);
};

} // namespace

std::vector<GateSigned> loadGatesOf(Store& store, const QString& tour, const QString& show) {
  std::vector<GateSigned> gates;
  for (const Row& row : store.rows(
           QStringLiteral("SELECT * FROM gate_signed WHERE tour = :tour AND show = :show AND NOT EXISTS "
                          "(SELECT 1 FROM gate_signed c WHERE c.corrects = gate_signed.id) "
                          "ORDER BY recorded_at DESC, id"),
           {{"tour", tour}, {"show", show}})) {
    ColumnReader io(row);
    gateColumns(io, gates.emplace_back());
  }
  return gates;
}

std::vector<GateSigned> loadGates(Store& store) {
  std::vector<GateSigned> gates;
  for (const Row& row : store.rows(QStringLiteral("SELECT * FROM gate_signed ORDER BY recorded_at, id"))) {
    ColumnReader io(row);
    gateColumns(io, gates.emplace_back());
  }
  return gates;
}

GateSigned append(Store& store, const GateSigned& gate) {
  if (gate.by.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "a hold point asks for a name; say who is at the desk");
  }
  return store.transact([&] {
    GateSigned saved = gate;
    if (saved.id.isNull()) {
      saved.id = QUuid::createUuid();
    }
    if (!saved.recordedAt.isValid()) {
      saved.recordedAt = QDateTime::currentDateTimeUtc();
    }
    inTermsOf({"gate_signed", QStringLiteral("hold point \"%1\"").arg(saved.gate)}, [&] {
      ColumnWriter io;
      gateColumns(io, std::as_const(saved));
      io("device", thisDevice());
      insertRow(store, "gate_signed", io.bindings);
    });
    return saved;
  });
}

} // namespace hangbook::store
