// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTabWidget>

namespace hangbook::desk {

/// The parts of what is edited, one behind the other. Ctrl+Tab goes on from wherever the keyboard is in them,
/// out of a table too, which keeps that key to itself.
QTabWidget* partTabs(const QString& name, const QString& says, QWidget* parent);

} // namespace hangbook::desk
