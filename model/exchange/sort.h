// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "exchange/columns.h"
#include "exchange/work.h"

/// A sort of line: the word in the record column, its headings, and how a line goes into the data and out.
namespace hangbook::exchange {

inline bool isKey(Need need) {
  return need == Need::key || need == Need::keyOrEmpty;
}
inline bool isNeeded(Need need) {
  return need == Need::key || need == Need::needed;
}

struct Heading {
  QString name;
  const char* unit = "";
  Need need = Need::optional;
};

/// A heading of the file, as it goes with one sort.
struct FileHeading {
  QString written; ///< as it stands in the file
  QString unit;    ///< of bare numbers under it
};

/// One line of a file as a sort sees it. The lists live as long as the import.
struct LineView {
  int number = 0;                                     ///< in the file, from 1
  const QStringList* cells = nullptr;                 ///< without spaces around them
  const std::vector<int>* where = nullptr;            ///< for each column of the sort: its cell, or -1
  const std::vector<FileHeading>* headings = nullptr; ///< for each cell
  NumberForm form;
  QString dateFormat = {};
};

/// Where a fault about a line is put down. Lives as long as the file's rows and the sort do.
class At {
public:
  At(Work& work, const LineView& view, const std::vector<QString>& names)
      : work_(&work), view_(view), names_(&names) {}
  /// Names the cell under `heading`, or the line where the file has none.
  void fault(const QString& heading, const QString& read, const QString& expected) const;
  /// What stands under `heading`, without spaces; empty where the file has no such heading.
  QString cell(const QString& heading) const;
  int line() const { return view_.number; }

private:
  int columnOf(const QString& heading) const; ///< from 0; -1 where there is none

  Work* work_;
  LineView view_;
  const std::vector<QString>* names_;
};

class Sort {
public:
  explicit Sort(QString word) : word_(std::move(word)) {}
  virtual ~Sort() = default;
  Sort(const Sort&) = delete;
  Sort& operator=(const Sort&) = delete;

  const QString& word() const { return word_; }
  virtual std::vector<Heading> headings() const = 0;
  /// Throws Unreadable where the unit in the heading of `column` is not one of its.
  virtual void checkHeading(std::size_t column, const Cell& heading) const = 0;
  virtual void read(Work& work, const LineView& view) const = 0;
  /// One list of texts for each line, in the order of the headings.
  virtual std::vector<std::vector<QString>> write(const Data& data) const = 0;

private:
  QString word_;
};

/// What a sort does with its lines. Line: a struct with `typed` and ==.
template <class Line>
struct Handling {
  std::function<std::optional<Line>(Work&, const Line&)> fetch; ///< as it stands, by its keys
  std::function<void(Work&, Line&, const At&)> put;             ///< may put down a fault instead
  std::function<void(Work&, const Line&, const At&)> check;     ///< once every line is in; may be null
  std::function<std::vector<Line>(const Data&)> all;            ///< for writing
  bool unique = true;                                           ///< a file names each key once
  bool countsItself = false;                                    ///< put does
};

template <class Line>
class SortOf : public Sort {
public:
  SortOf(const char* word, Columns<Line> columns, Handling<Line> handling)
      : Sort(QString::fromLatin1(word)), columns_(std::move(columns)), handling_(std::move(handling)) {
    for (const auto& column : columns_) {
      names_.push_back(column.name);
    }
  }

  std::vector<Heading> headings() const override {
    std::vector<Heading> all;
    for (const auto& column : columns_) {
      all.push_back({column.name, column.unit, column.need});
    }
    return all;
  }

  void checkHeading(std::size_t column, const Cell& heading) const override {
    columns_[column].checkHeading(heading);
  }

  void read(Work& work, const LineView& view) const override {
    const At at(work, view, names_);
    const std::size_t faultsBefore = work.faults.size();
    Line keys;
    for (std::size_t column = 0; column < columns_.size(); ++column) {
      if (isKey(columns_[column].need)) {
        take(columns_[column], keys, at, view, column, true);
      }
    }
    if (work.faults.size() != faultsBefore || (handling_.unique && isSecond(work, keys, at))) {
      return;
    }
    const std::optional<Line> before = handling_.fetch(work, keys);
    Line line = before.value_or(keys);
    for (std::size_t column = 0; column < columns_.size(); ++column) {
      if (!isKey(columns_[column].need)) {
        take(columns_[column], line, at, view, column, !before);
      }
    }
    if (work.faults.size() != faultsBefore) {
      return;
    }
    handling_.put(work, line, at);
    if (before && work.faults.size() == faultsBefore) {
      tell(work, *before, line, view.number);
    }
    if (work.faults.size() != faultsBefore) {
      return;
    }
    if (!handling_.countsItself) {
      Count& count = work.count(word());
      (!before ? count.added : line == *before ? count.same : count.changed) += 1;
    }
    if (handling_.check) {
      work.later.push_back([this, &work, line, at] { handling_.check(work, line, at); });
    }
  }

  std::vector<std::vector<QString>> write(const Data& data) const override {
    std::vector<std::vector<QString>> rows;
    for (const Line& line : handling_.all(data)) {
      std::vector<QString> row;
      for (const auto& column : columns_) {
        row.push_back(column.write(line));
      }
      rows.push_back(std::move(row));
    }
    return rows;
  }

private:
  /// Puts down every column whose text becomes another one.
  void tell(Work& work, const Line& before, const Line& line, int number) const {
    if (before == line) {
      return;
    }
    QStringList key;
    for (const auto& column : columns_) {
      if (isKey(column.need)) {
        key << column.write(before);
      }
    }
    key.removeAll(QString());
    for (const auto& column : columns_) {
      const QString was = column.write(before);
      const QString becomes = column.write(line);
      if (was != becomes) {
        work.differences.push_back(
            {number, word(), key.join(QStringLiteral(", ")), column.name, was, becomes});
      }
    }
  }

  void take(const Column<Line>& column, Line& line, const At& at, const LineView& view, std::size_t index,
            bool wanted) const {
    const int cell = (*view.where)[index];
    if (cell < 0) {
      if (wanted && isNeeded(column.need)) {
        at.fault(column.name, {},
                 QStringLiteral("a column \"%1\": a new %2 needs it").arg(column.name, word()));
      }
      return;
    }
    const QString& words = (*view.cells)[cell];
    if (words.isEmpty()) {
      if (isNeeded(column.need)) {
        at.fault(column.name, {}, QStringLiteral("a figure or word: %1 needs it").arg(word()));
      } else {
        column.clear(line);
      }
      return;
    }
    try {
      column.read(line,
                  {words, (*view.headings)[static_cast<std::size_t>(cell)].unit, view.form, view.dateFormat});
    } catch (const Unreadable& trouble) {
      at.fault(column.name, trouble.read, trouble.expected);
    }
  }

  bool isSecond(Work& work, const Line& keys, const At& at) const {
    QStringList parts(word());
    for (const auto& column : columns_) {
      if (isKey(column.need)) {
        parts << column.write(keys);
      }
    }
    const auto [first, fresh] = insertSeen(work, joined(parts), at.line());
    if (!fresh) {
      at.fault(columns_.front().name, parts.mid(1).join(QStringLiteral(", ")),
               QStringLiteral("each %1 once; this one stands in line %2 already").arg(word()).arg(first));
    }
    return !fresh;
  }

  static std::pair<int, bool> insertSeen(Work& work, const QString& key, int line) {
    const auto found = work.seen.constFind(key);
    if (found != work.seen.constEnd()) {
      return {*found, false};
    }
    work.seen.insert(key, line);
    return {line, true};
  }

  Columns<Line> columns_;
  std::vector<QString> names_;
  Handling<Line> handling_;
};

using Sorts = std::vector<std::unique_ptr<Sort>>;

/// The sorts of each kind of file, in the order in which their lines are taken in and written.
const Sorts& typeSorts();
const Sorts& unitSorts();
const Sorts& venueSorts();
const Sorts& showSorts();
const Sorts& peopleSorts();
const Sorts& markSorts();

} // namespace hangbook::exchange
