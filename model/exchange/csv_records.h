// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "exchange/fault.h"

namespace hangbook::exchange {

inline constexpr int mostCsvColumns = 1000;
inline constexpr int mostCsvRecords = 1'000'000;

/// One record as it stands in the file: cells untouched, their quotes taken off.
struct CsvRecord {
  int line = 0; ///< of the file, on which it begins, from 1
  QStringList cells;
  bool operator==(const CsvRecord&) const = default;
};

/// Splits text into records as RFC 4180 has it: a cell in quotes may hold separators, line breaks and
/// doubled quotes. Lines end with CR LF, LF or CR. Lines without any character are skipped. A quote inside
/// a cell that does not begin with one is an ordinary character (32' 6"). Faults: a quote that is never
/// closed (by the line on which it opens), something after a closing quote, spaces before an opening one,
/// too many columns or records. Splits at most `most` records.
std::vector<CsvRecord> splitCsv(QStringView text, QChar separator, std::vector<Fault>& faults,
                                int most = mostCsvRecords);

} // namespace hangbook::exchange
