// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>

#include "exchange/fault.h"

namespace hangbook::exchange {

/// Largest file that is read, in bytes.
inline constexpr qsizetype mostCsvBytes = 64 * 1024 * 1024;

/// The file's text: UTF-8 with or without a byte order mark, or UTF-16 with one. Anything else, NUL
/// characters and files larger than mostCsvBytes are faults that name line and byte; the text is then empty.
/// Nothing is ever replaced.
QString decodeCsv(const QByteArray& bytes, std::vector<Fault>& faults);

} // namespace hangbook::exchange
