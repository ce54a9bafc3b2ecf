// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "exchange/csv_records.h"

/// Finds out how a file is written. Nothing is guessed: what could be two things is a fault.
namespace hangbook::exchange {

/// The separator that the first line shows; ',' where it shows none (one column).
std::optional<char> findSeparator(QStringView text, std::vector<Fault>& faults);

/// The decimal mark that the figures show.
std::optional<char> findDecimalMark(const std::vector<CsvRecord>& rows, std::vector<Fault>& faults);

/// Whether a date format has a year of four digits and gives each day a text of its own that reads back.
bool tellsEveryDay(const QString& format);

} // namespace hangbook::exchange
