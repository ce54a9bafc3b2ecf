// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::exchange {

/// What is wrong with one field of a form, in the words of somebody who sees fields, not lines of a file.
struct FieldFault {
  int row = 0;      ///< of a table of rows, from 0
  QString field;    ///< by its heading, without a unit; empty: the row as a whole
  QString read;     ///< empty where there was nothing to read
  QString expected; ///< goes on from "expected"
};

} // namespace hangbook::exchange
