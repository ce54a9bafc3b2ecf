// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QJsonObject>

#include "build/plan.h"
#include "options/snapshot.h"

namespace hangbook::terminal {

/// What of a show can be built: the chosen options as today's rules judge them.
struct ToBuild {
  std::vector<options::Option> options; ///< in the order of the show's hangs
  QStringList notCleared;               ///< why it must not be lifted as it is, each with its hang
};
ToBuild toBuild(const options::Snapshot& snapshot);

/// `hangbook.build/1`; the keys are in model/build/README.md. `hang`: only its steps; empty: all.
QJsonObject buildJson(const build::Plan& plan, const ToBuild& of, const QString& hang);

} // namespace hangbook::terminal
