// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include <QAbstractItemModel>

namespace hangbook::desk {

/// The rows of a model in the order of one column, worked out in pieces of a few milliseconds: a house may
/// have 100,000 units. Rows that are alike stay in the model's order; what is not known comes last in either
/// direction.
class RowOrder {
public:
  /// Starts anew; until it is `done`, `rows()` is the order that was, or the model's own where the number of
  /// rows is another. Column -1: the model's own order.
  void begin(const QAbstractItemModel& source, int column, Qt::SortOrder direction);
  /// One piece. The model must not have changed since `begin`.
  void step();
  bool done() const { return stage_ == Stage::done; }
  const std::vector<int>& rows() const { return rows_; }

private:
  /// What a cell sorts by, asked of the model once for each row.
  struct Key {
    enum class Is { number, text, missing } is = Is::missing;
    double number = 0.0;
    QString text{};
  };
  enum class Stage { asking, sorting, merging, done };

  void ask();
  void sortRuns();
  void mergeRuns();
  void finish();
  bool before(int one, int other) const;
  static int compare(const Key& one, const Key& other);

  const QAbstractItemModel* source_ = nullptr;
  int column_ = -1;
  Qt::SortOrder direction_ = Qt::AscendingOrder;
  Stage stage_ = Stage::done;
  std::vector<Key> keys_;
  std::vector<int> rows_;
  std::vector<int> sorting_;
  std::vector<int> merged_;
  std::size_t at_ = 0;
  std::size_t run_ = 0;
};

} // namespace hangbook::desk
