// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/plugging.h"
#include "calendar/cabling.h"
#include "calendar/show.h"

namespace hangbook::build {

/// What is stated to go into each cabinet of a hang, `types` from the bar down, with what its loom's ends
/// are.
std::vector<Plugs> plugsOf(const calendar::Cabling& cabling, const calendar::Show& show, const QString& hang,
                           const QStringList& types);

} // namespace hangbook::build
