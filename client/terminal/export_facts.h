// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QByteArray>
#include <QString>

#include "store/store.h"

/// Facts as spreadsheets, one line each, corrected ones too: they go out to be read elsewhere, and not in
/// again.
namespace hangbook::terminal {

/// Takes the bytes of a spreadsheet piece by piece.
using Taker = std::function<void(const QByteArray&)>;

/// "movements", "occurrences", "gates", "readings" or "files".
bool isFactKind(const QString& kind);

/// All movements unit by unit, in order of serial, oldest first; they need not fit into memory.
void writeMovements(store::Store& store, const Taker& take);
/// What happened to units, oldest first.
void writeOccurrences(store::Store& store, const Taker& take);
/// Hold points of builds, signed or skipped, of all shows, oldest first.
void writeGates(store::Store& store, const Taker& take);
/// What load cells read after lifting and what was computed for that place then, kN, oldest first.
void writeReadings(store::Store& store, const Taker& take);
/// Every kept file into a folder, which is made where it is not there: each content once, named by the
/// beginning of its SHA-256 and its file name; and files.csv, which says what belongs to which unit. Answers
/// how many there are. Throws Error(badInput) where one cannot be written.
int writeKeptFiles(store::Store& store, const QString& folder);

} // namespace hangbook::terminal
