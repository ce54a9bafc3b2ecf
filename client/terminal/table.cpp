// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/table.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "terminal/both_units.h"

namespace hangbook::terminal {
namespace {

constexpr int gap = 2;
constexpr int narrowest = 6;
constexpr int widestKept = 13; ///< longer words are cut where room is short

bool takesNoPlace(char32_t letter) {
  switch (QChar::category(letter)) {
  case QChar::Mark_NonSpacing:
  case QChar::Mark_Enclosing:
  case QChar::Other_Format:
    return true;
  default:
    return false;
  }
}

/// Most terminals give these two places: East Asian wide letters and pictures.
bool takesTwoPlaces(char32_t letter) {
  return (letter >= 0x1100 && letter <= 0x115F) || (letter >= 0x2E80 && letter <= 0xA4CF) ||
         (letter >= 0xAC00 && letter <= 0xD7A3) || (letter >= 0xF900 && letter <= 0xFAFF) ||
         (letter >= 0xFE30 && letter <= 0xFE6F) || (letter >= 0xFF00 && letter <= 0xFF60) ||
         (letter >= 0x1F300 && letter <= 0x1FAFF) || (letter >= 0x20000 && letter <= 0x3FFFD);
}

/// Where a line may end: behind a space, or behind a hyphen between letters.
QStringList pieces(const QString& text) {
  QStringList all;
  for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    qsizetype from = 0;
    for (qsizetype at = 1; at + 1 < word.size(); ++at) {
      if (word[at] == QLatin1Char('-') && word[at - 1].isLetter() && word[at + 1].isLetter()) {
        all << word.mid(from, at + 1 - from);
        from = at + 1;
      }
    }
    all << word.mid(from) + QLatin1Char(' ');
  }
  return all;
}

int widestWord(const QString& text) {
  int width = 0;
  for (const QString& piece : pieces(text)) {
    width = std::max(width, shownWidth(piece.trimmed()));
  }
  return width;
}

QString padded(const QString& text, int width, Column::Kind kind) {
  const QString space(std::max(0, width - shownWidth(text)), QLatin1Char(' '));
  return kind == Column::Kind::figure ? space + text : text + space;
}

/// The unit in which a column's figures are: "mass [kg]", "load kN".
QString unitIn(const QString& heading) {
  const QString last = heading.section(QLatin1Char(' '), -1);
  return last.startsWith(QLatin1Char('[')) && last.endsWith(QLatin1Char(']')) ? last.mid(1, last.size() - 2)
         : heading.contains(QLatin1Char(' '))                                 ? last
                                                                              : QString();
}

} // namespace

int shownWidth(const QString& text) {
  int width = 0;
  for (const char32_t letter : text.toStdU32String()) {
    width += takesNoPlace(letter) ? 0 : takesTwoPlaces(letter) ? 2 : 1;
  }
  return width;
}

QStringList brokenInto(const QString& text, int width) {
  QStringList lines;
  QString line;
  const auto end = [&] {
    if (!line.trimmed().isEmpty()) {
      lines << line.trimmed();
    }
    line.clear();
  };
  for (const QString& piece : pieces(text)) {
    if (shownWidth(line) + shownWidth(piece.trimmed()) <= width) {
      line += piece;
      continue;
    }
    end();
    for (const char32_t letter : piece.toStdU32String()) {
      const QString one = QString::fromUcs4(&letter, 1);
      if (shownWidth(line) + shownWidth(one.trimmed()) > width) {
        end();
      }
      line += one;
    }
  }
  end();
  return lines.isEmpty() ? QStringList{QString()} : lines;
}

void Table::print(std::ostream& out, const QString& indent, int width) const {
  if (inBothUnits(out)) {
    constexpr int room = 22; // for the figures in brackets
    forReadersOf(out).lay(asIs(out), indent, width + room);
  } else {
    lay(out, indent, width);
  }
}

Table Table::forReadersOf(const std::ostream& out) const {
  Table made = *this;
  QStringList units; // of each column
  qsizetype unitsOfRows = -1;
  for (qsizetype at = 0; at < static_cast<qsizetype>(columns_.size()); ++at) {
    Column& column = made.columns_[static_cast<std::size_t>(at)];
    const QString unit = column.kind == Column::Kind::figure ? unitIn(column.heading) : QString();
    const bool bound = column.kind == Column::Kind::figure && (column.heading == QLatin1String("at most") ||
                                                               column.heading == QLatin1String("at least"));
    units << (bound && at > 0 ? units.back() : unit);
    if (!unit.isEmpty() && !bound) {
      column.heading.replace(column.heading.lastIndexOf(unit), unit.size(), unitForReaders(out, unit));
    }
    unitsOfRows = column.heading == QLatin1String("unit") ? at : unitsOfRows;
  }
  for (QStringList& row : made.rows_) {
    const QString ofRow = unitsOfRows < 0 ? QString() : row[unitsOfRows];
    for (qsizetype at = 0; at < row.size(); ++at) {
      const Column& column = columns_[static_cast<std::size_t>(at)];
      if (at == unitsOfRows) {
        row[at] = unitForReaders(out, row[at]);
      } else if (const QString& unit = units[at].isEmpty() ? ofRow : units[at];
                 column.kind == Column::Kind::figure && !unit.isEmpty()) {
        row[at] = figureForReaders(out, row[at], unit);
      } else { // words, or a figure that brings its unit
        row[at] = forReaders(out, row[at]);
      }
    }
  }
  for (QStringList& note : made.notes_) {
    for (QString& line : note) {
      line = forReaders(out, line);
    }
  }
  return made;
}

void Table::lay(std::ostream& out, const QString& indent, int width) const {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const auto at = static_cast<qsizetype>(i);
    if (std::any_of(rows_.begin(), rows_.end(), [&](const QStringList& row) { return !row[at].isEmpty(); })) {
      shown.push_back(i);
    }
  }
  std::vector<int> widths(columns_.size());
  int total = shownWidth(indent);
  for (const std::size_t i : shown) {
    widths[i] = shownWidth(columns_[i].heading);
    for (const QStringList& row : rows_) {
      widths[i] = std::max(widths[i], shownWidth(row[static_cast<qsizetype>(i)]));
    }
    total += widths[i] + (i == shown.back() ? 0 : gap);
  }
  const std::vector<int> natural = widths;
  std::vector<int> least(columns_.size());
  for (const std::size_t i : shown) {
    least[i] = std::max(widestWord(columns_[i].heading), narrowest);
    for (const QStringList& row : rows_) {
      least[i] = std::max(least[i], std::min(widestWord(row[static_cast<qsizetype>(i)]), widestKept));
    }
  }
  // What is long keeps more of its width, though not in proportion: the rows then stay low.
  const auto roomOf = [&](std::size_t i) { return widths[i] / std::sqrt(static_cast<double>(natural[i])); };
  bool wordsCut = false;
  while (total > width) {
    std::size_t widest = columns_.size();
    for (const std::size_t i : shown) {
      if (columns_[i].kind == Column::Kind::text && widths[i] > least[i] &&
          (widest == columns_.size() || roomOf(i) > roomOf(widest))) {
        widest = i;
      }
    }
    if (widest == columns_.size()) {
      if (wordsCut) {
        break; // nothing can give way any more: better wide than without a column
      }
      wordsCut = true;
      std::fill(least.begin(), least.end(), narrowest);
      continue;
    }
    --widths[widest];
    --total;
  }

  const auto printRow = [&](const std::function<QString(std::size_t)>& cell) {
    std::vector<QStringList> lines(columns_.size());
    qsizetype height = 1;
    for (const std::size_t i : shown) {
      lines[i] =
          columns_[i].kind == Column::Kind::text ? brokenInto(cell(i), widths[i]) : QStringList{cell(i)};
      height = std::max(height, lines[i].size());
    }
    for (qsizetype at = 0; at < height; ++at) {
      QString line = indent;
      for (const std::size_t i : shown) {
        const QString part = at < lines[i].size() ? lines[i][at] : QString();
        line += padded(part, widths[i], columns_[i].kind) + QString(gap, QLatin1Char(' '));
      }
      while (line.endsWith(QLatin1Char(' '))) {
        line.chop(1);
      }
      out << line.toStdString() << '\n';
    }
  };
  printRow([&](std::size_t i) { return columns_[i].heading; });
  const QString deeper = indent + QStringLiteral("    ");
  for (std::size_t number = 0; number < rows_.size(); ++number) {
    printRow([&](std::size_t i) { return rows_[number][static_cast<qsizetype>(i)]; });
    for (const QString& note : notes_[number]) {
      for (const QString& line : brokenInto(note, width - shownWidth(deeper))) {
        out << (deeper + line).toStdString() << '\n';
      }
    }
  }
}

} // namespace hangbook::terminal
