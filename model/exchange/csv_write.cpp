// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_write.h"

#include <QString>

#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

void mustBeText(const QString& cell) {
  if (cell.contains(QChar(u'\0')) || !cell.isValidUtf16()) {
    throw Error(Trouble::badInput, "a cell holds what is no text: NUL or half a character");
  }
}

bool needsQuotes(const QString& cell, QChar separator, bool only, bool first) {
  if (cell.isEmpty()) {
    return only; // else the record would be an empty line, which is skipped
  }
  // A byte order mark, and a line that names the separator, mean something at the start of a file.
  const bool special = first && (cell.startsWith(QChar(0xFEFF)) ||
                                 cell.startsWith(QLatin1String("sep="), Qt::CaseInsensitive));
  return special || cell.front().isSpace() || cell.back().isSpace() || cell.contains(separator) ||
         cell.contains(u'"') || cell.contains(u'\n') || cell.contains(u'\r');
}

} // namespace

QByteArray writeCsv(const std::vector<QStringList>& records, const CsvWriting& writing) {
  if (writing.separator != ',' && writing.separator != ';' && writing.separator != '\t') {
    throw Error(Trouble::badInput, "cells are separated by a comma, a semicolon or a tab");
  }
  const QLatin1Char separator(writing.separator);
  QString text;
  for (const QStringList& record : records) {
    if (record.isEmpty()) {
      throw Error(Trouble::badInput, "a record without cells cannot be written");
    }
    for (qsizetype at = 0; at < record.size(); ++at) {
      const QString& cell = record[at];
      mustBeText(cell);
      if (at > 0) {
        text += separator;
      }
      if (needsQuotes(cell, separator, record.size() == 1, text.isEmpty())) {
        QString doubled = cell;
        doubled.replace(QLatin1String("\""), QLatin1String("\"\""));
        text += QLatin1Char('"') + doubled + QLatin1Char('"');
      } else {
        text += cell;
      }
    }
    text += writing.windowsBreaks ? QLatin1String("\r\n") : QLatin1String("\n");
  }
  return (writing.byteOrderMark ? QByteArray("\xEF\xBB\xBF") : QByteArray()) + text.toUtf8();
}

} // namespace hangbook::exchange
