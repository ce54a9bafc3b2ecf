// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QStringList>

namespace hangbook::exchange {

struct CsvWriting {
  char separator = ',';       ///< ',' ';' or '\t'
  bool windowsBreaks = false; ///< lines end with CR LF, else LF
  bool byteOrderMark = false; ///< some spreadsheets take a file for UTF-8 only with it
};

/// The records as UTF-8. Cells are quoted where the text needs it and written as they are: reading gives
/// back every text to the character. Throws Error for what text cannot hold (NUL, half a surrogate pair), a
/// record without cells, or another separator.
QByteArray writeCsv(const std::vector<QStringList>& records, const CsvWriting& writing = {});

} // namespace hangbook::exchange
