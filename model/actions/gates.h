// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "actions/run.h"
#include "marks/gate.h"

namespace hangbook::actions {

/// Signs a hold point of a build, or skips it with a reason. `gates` are the hang's hold points in the order
/// of its plan. Throws Error: not one of them; one before it stands open (neither signed nor skipped since
/// it counts, which is since the option was chosen or moved); skipped without a reason; nobody named.
marks::GateSigned signGate(store::Store& store, const marks::GateSigned& gate, const QStringList& gates,
                           const marks::GatesSince& since, const QString& by = {});

/// The newest fact of each of these hold points of the option; `id` is null where it stands open.
std::vector<marks::GateSigned> gatesAsTheyStand(const std::vector<marks::GateSigned>& all,
                                                const QString& hang, const QString& option,
                                                const marks::GatesSince& since, const QStringList& gates);

/// Names of those that stand open. A hang is known to be up once none does.
QStringList openAmong(const std::vector<marks::GateSigned>& gates);

} // namespace hangbook::actions
