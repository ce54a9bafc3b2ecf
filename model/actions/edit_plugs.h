// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "exchange/plug_text.h"

/// Which ends of which looms go into the cabinets of a hang.
namespace hangbook::actions {

/// The plugs of a hang, as the texts of their columns.
struct PluggedFor {
  exchange::HangName hang;
  std::vector<QStringList> rows{};
};

/// What plugs are read against: makers' data, the show, and the plugs of all of its hangs.
exchange::Data plugData(store::Store& store, const exchange::HangName& hang);

/// As it stands in the store now.
PluggedFor pluggedNow(store::Store& store, const exchange::HangName& hang);

/// Puts these plugs in the place of all that the hang has. Throws Error (badInput) where a row cannot be
/// read; nothing is written then.
void savePlugs(store::Store& store, const PluggedFor& wanted, const QString& by);

} // namespace hangbook::actions
