// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ostream>
#include <vector>

#include <QJsonArray>

#include "build/flown.h"

/// What changes between two settings or two states of the fleet, for words that tell it.
namespace hangbook::terminal {

QJsonArray changesJson(const std::vector<build::FlownChange>& changes);
void printChanges(const std::vector<build::FlownChange>& changes, std::ostream& out);

} // namespace hangbook::terminal
