// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "quantity/error.h"

namespace hangbook::terminal {

/// The same name however its accents were typed: compared in one Unicode form, exactly otherwise.
bool sameName(const QString& one, const QString& other);

/// Names in order of likeness to `name`, the likest first: fewest letters to change, regardless of case.
QStringList nearest(const QString& name, const QStringList& known, int most = 5);

/// One line for a name that is not known: `"Pollan" is not a show of this store; nearest: Pollan Cross, …`.
/// `what` with its article and place: "a show of this store".
Error unknownName(const QString& name, const QString& what, const QStringList& known);

} // namespace hangbook::terminal
