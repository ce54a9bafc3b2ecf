// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv_form.h"

#include <algorithm>
#include <array>

#include <QDate>
#include <QSet>

namespace hangbook::exchange {
namespace {

constexpr std::array separators = {',', ';', '\t'};

/// Lines looked at where the headings alone do not tell.
constexpr int linesCompared = 200;

/// Every line has as many cells as the headings, two or more.
bool fits(QStringView text, char separator) {
  std::vector<Fault> faults;
  const std::vector<CsvRecord> records = splitCsv(text, QLatin1Char(separator), faults, linesCompared);
  return faults.empty() && records.size() > 1 && records.front().cells.size() > 1 &&
         std::ranges::all_of(records, [&](const CsvRecord& record) {
           return record.cells.size() == records.front().cells.size();
         });
}

bool isDigit(QChar c) {
  return c >= u'0' && c <= u'9';
}

bool isSign(QChar c) {
  return c == u'-' || c == u'+' || c == QChar(0x2212);
}

/// What a figure's mark tells: nothing where the word is no figure with exactly one mark.
struct Mark {
  QChar mark;
  bool mayGroup = false; ///< "1,234": also one thousand and more
};

std::optional<Mark> markOf(QStringView word) {
  qsizetype at = !word.isEmpty() && isSign(word[0]) ? 1 : 0;
  const qsizetype start = at;
  const auto digits = [&]() {
    const qsizetype from = at;
    while (at < word.size() && isDigit(word[at])) {
      ++at;
    }
    return at - from;
  };
  const qsizetype before = digits();
  if (before == 0 || at >= word.size() || (word[at] != u'.' && word[at] != u',')) {
    return std::nullopt;
  }
  const QChar mark = word[at++];
  const qsizetype after = digits();
  const bool more = at < word.size() && (word[at] == u'.' || word[at] == u',');
  if (after == 0 || more) {
    return std::nullopt;
  }
  return Mark{mark, after == 3 && before <= 3 && word[start] != u'0'};
}

} // namespace

std::optional<char> findSeparator(QStringView text, std::vector<Fault>& faults) {
  std::vector<char> shown;
  int line = 1;
  for (const char separator : separators) {
    std::vector<Fault> ignored; // they are found again with the separator that is taken
    const std::vector<CsvRecord> first = splitCsv(text, QLatin1Char(separator), ignored, 1);
    if (!first.empty() && first.front().cells.size() > 1) {
      shown.push_back(separator);
      line = first.front().line;
    }
  }
  if (shown.size() > 1) {
    std::erase_if(shown, [&](char separator) { return !fits(text, separator); });
    if (shown.size() != 1) {
      faults.push_back({line,
                        {},
                        {},
                        QStringLiteral("headings with one separator: say which it is, or put headings that "
                                       "hold another in quotation marks")});
      return std::nullopt;
    }
  }
  return shown.empty() ? ',' : shown.front();
}

std::optional<char> findDecimalMark(const std::vector<CsvRecord>& rows, std::vector<Fault>& faults) {
  struct Seen {
    int line = 0; ///< of the first, 0 = none
    QString cell;
    bool clear = false; ///< one at least that cannot be a grouping mark
  };
  Seen points;
  Seen commas;
  for (const CsvRecord& row : rows) {
    for (const QString& cell : row.cells) {
      if (cell.isEmpty() || !(isDigit(cell[0]) || isSign(cell[0]))) {
        continue; // words, not figures
      }
      for (const QStringView word : QStringView(cell).tokenize(u' ')) {
        const std::optional<Mark> mark = markOf(word.endsWith(u';') ? word.chopped(1) : word);
        if (!mark) {
          continue;
        }
        Seen& seen = mark->mark == u',' ? commas : points;
        if (seen.line == 0) {
          seen.line = row.line;
          seen.cell = cell;
        }
        seen.clear = seen.clear || !mark->mayGroup;
      }
    }
  }
  const QString which = QStringLiteral("one decimal mark all through: say which it is");
  if (points.line > 0 && commas.line > 0) {
    const Seen& later = points.line > commas.line ? points : commas;
    const Seen& earlier = points.line > commas.line ? commas : points;
    faults.push_back({later.line,
                      {},
                      later.cell,
                      which + QStringLiteral(" (line %1 has “%2”)").arg(earlier.line).arg(earlier.cell)});
    return std::nullopt;
  }
  const Seen& only = commas.line > 0 ? commas : points;
  if (only.line > 0 && !only.clear) {
    faults.push_back(
        {only.line,
         {},
         only.cell,
         QStringLiteral("a figure that cannot be a grouped thousand: say which the decimal mark is")});
    return std::nullopt;
  }
  return commas.line > 0 ? ',' : '.';
}

bool tellsEveryDay(const QString& format) {
  if (!format.contains(QLatin1String("yyyy"))) {
    return false;
  }
  // Two years, one of them a leap year, show every form that a day's text can take.
  QSet<QString> texts;
  for (QDate day(2027, 1, 1); day.year() < 2029; day = day.addDays(1)) {
    const QString text = day.toString(format);
    if (texts.contains(text) || QDate::fromString(text, format) != day) {
      return false;
    }
    texts.insert(text);
  }
  return true;
}

} // namespace hangbook::exchange
