// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QAbstractTableModel>

#include "options/option.h"

namespace hangbook::desk {

/// What a model tells besides the text.
enum Role {
  orderRole = Qt::UserRole, ///< double or text; invalid = not known, sorts last in either direction
  verdictRole,              ///< int of options::Verdict where the cell is one
  useRole,                  ///< double: share of a limit in %, where the cell is one
  figureRole,               ///< bool: stands right-aligned
  keyRole,                  ///< what the row is known by elsewhere
  endMattersRole,           ///< bool: where there is no room, the middle is left out
};

/// One cell, as a value.
struct Cell {
  QString text{};
  std::optional<double> number{}; ///< what it sorts by, where it is a figure
  bool missing = false;           ///< the figure is not known
  std::optional<options::Verdict> verdict{};
  std::optional<double> usePercent{};
  QString toolTip{};
  bool strong = false;
  bool endMatters = false; ///< as of names that begin alike: where there is no room, the middle is left out
};

/// One column's heading. `figure` columns stand right-aligned.
struct Heading {
  QString title{};
  bool figure = false;
  int characters = 12; ///< the least width that it can do with
  int wish = 0;        ///< the width that it would have, where there is room
  QString toolTip{};
};

/// The index plumbing of a list over a snapshot, written once. A list says how many rows and columns it has
/// and what stands in a cell.
class TableModel : public QAbstractTableModel {
public:
  using QAbstractTableModel::QAbstractTableModel;

  int rowCount(const QModelIndex& parent = {}) const final;
  int columnCount(const QModelIndex& parent = {}) const final;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const final;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const final;

  virtual Heading heading(int column) const = 0;

  /// What the row is known by elsewhere.
  QString keyAt(int row) const { return key(row); }
  /// What stands in a row, all of it in one text, small letters: what is searched.
  QString searched(int row) const;

private:
  virtual int rows() const = 0;
  virtual int columns() const = 0;
  virtual Cell cell(int row, int column) const = 0;
  virtual QString key(int row) const = 0;
};

/// A list of values of one kind with its columns as an enum that ends in `count`.
template <class Row, class Column>
class ListOf : public TableModel {
public:
  using TableModel::TableModel;

  void setRows(std::vector<Row> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
  }
  const std::vector<Row>& all() const { return rows_; }
  const Row& at(int row) const { return rows_.at(static_cast<std::size_t>(row)); }

  Heading heading(int column) const final { return headingOf(static_cast<Column>(column)); }

protected:
  /// All cells read differently, as when the units were switched.
  void refresh() {
    if (!rows_.empty()) {
      Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
  }

private:
  virtual Heading headingOf(Column column) const = 0;
  virtual Cell cellOf(const Row& row, Column column) const = 0;
  virtual QString keyOf(const Row& row) const = 0;

  int rows() const final { return static_cast<int>(rows_.size()); }
  int columns() const final { return static_cast<int>(Column::count); }
  Cell cell(int row, int column) const final { return cellOf(at(row), static_cast<Column>(column)); }
  QString key(int row) const final { return keyOf(at(row)); }

  std::vector<Row> rows_{};
};

} // namespace hangbook::desk
