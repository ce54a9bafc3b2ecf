// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/gates.h"

#include "quantity/error.h"
#include "store/gate_store.h"

namespace hangbook::actions {

std::vector<marks::GateSigned> gatesAsTheyStand(const std::vector<marks::GateSigned>& all,
                                                const QString& hang, const QString& option,
                                                const marks::GatesSince& since, const QStringList& gates) {
  std::vector<marks::GateSigned> stand;
  for (const QString& name : gates) {
    marks::GateSigned found;
    found.hang = hang;
    found.option = option;
    found.gate = name;
    for (const marks::GateSigned& each : all) { // newest first
      if (each.hang == hang && each.option == option && each.gate == name &&
          each.recordedAt >= since.of(name)) {
        found = each;
        break;
      }
    }
    stand.push_back(found);
  }
  return stand;
}

QStringList openAmong(const std::vector<marks::GateSigned>& gates) {
  QStringList open;
  for (const marks::GateSigned& each : gates) {
    if (each.id.isNull()) {
      open << each.gate;
    }
  }
  return open;
}

marks::GateSigned signGate(store::Store& store, const marks::GateSigned& gate, const QStringList& gates,
                           const marks::GatesSince& since, const QString& by) {
  if (!gates.contains(gate.gate)) {
    throw Error(Trouble::badInput, "\"" + gate.gate.toStdString() + "\" is not a hold point of hang " +
                                       gate.hang.toStdString() + "; it has " +
                                       gates.join(QStringLiteral(", ")).toStdString());
  }
  if (gate.skipped && gate.reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput,
                "skipping the hold point \"" + gate.gate.toStdString() + "\" takes a reason");
  }
  return withDeed(store, by.isEmpty() ? gate.by : by,
                  {gate.skipped ? "skip hold point" : "sign hold point", gate.show,
                   QStringLiteral("hang \"%1\", %2%3")
                       .arg(gate.hang, gate.gate,
                            gate.reason.isEmpty() ? QString() : QStringLiteral(": %1").arg(gate.reason))},
                  [&](const QString& who) {
                    const auto stand = gatesAsTheyStand(store::loadGatesOf(store, gate.tour, gate.show),
                                                        gate.hang, gate.option, since, gates);
                    for (const marks::GateSigned& each : stand) {
                      if (each.gate == gate.gate) {
                        break;
                      }
                      if (each.id.isNull()) {
                        throw Error(Trouble::notPossible,
                                    "the hold point \"" + each.gate.toStdString() +
                                        "\" before it stands open: sign it, or skip it with a "
                                        "reason");
                      }
                    }
                    marks::GateSigned fact = gate;
                    fact.by = who;
                    return store::append(store, fact);
                  });
}

} // namespace hangbook::actions
