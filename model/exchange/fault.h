// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::exchange {

/// What is wrong with a file's content: where, what was read, what is expected. Faults are collected, never
/// thrown, so that one look at the list mends the whole file.
struct Fault {
  int line = 0;     ///< in the file, from 1, as an editor counts; 0 = the file as a whole
  QString column;   ///< the heading as it stands in the file; empty = the line as a whole
  QString read;     ///< empty where there was nothing to read
  QString expected; ///< goes on from "expected": "a date such as 2027-04-02"
  bool operator==(const Fault&) const = default;
};

/// "line 7, column capacity: read “1 ton”, expected a force such as 12.5 kN"; what was read is cut where it
/// is long.
QString text(const Fault& fault);

} // namespace hangbook::exchange
