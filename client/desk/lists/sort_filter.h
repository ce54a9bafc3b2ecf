// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QAbstractProxyModel>
#include <QTimer>

#include "desk/lists/row_order.h"
#include "options/option.h"

namespace hangbook::desk {

class TableModel;

/// Sorts by figure or in natural order, what is not known last in either direction; lets through the rows
/// that contain every typed word in any column and, where asked, carry one verdict.
///
/// A list of at most `atOnce` rows is sorted and searched before the call returns. A longer one is worked
/// through in pieces between events, so that the window answers meanwhile: what is shown stays until the new
/// rows are known, and a newer wish replaces one that is still being worked on.
class SortFilter : public QAbstractProxyModel {
  Q_OBJECT
public:
  static constexpr int atOnce = 4096; ///< rows

  explicit SortFilter(QObject* parent = nullptr);

  /// Instead of `setSourceModel`: what is searched is asked of a table of ours.
  void setModel(TableModel& model);

  void setWords(const QString& typed);
  /// Lets through only the source rows for which `keeps` is true; none: all.
  void setKeeps(std::function<bool(int)> keeps);
  void setVerdict(std::optional<options::Verdict> verdict, int column);
  /// Whether rows are still being sorted or searched.
  bool working() const { return working_; }
  /// The source row at or next behind `sourceRow`, in the order of the list, that is shown; where none is,
  /// the one before it; -1 where nothing is shown.
  int nearestShown(int sourceRow) const;
  bool shows(int sourceRow) const;

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  bool hasChildren(const QModelIndex& parent = {}) const override;
  QModelIndex mapToSource(const QModelIndex& proxyIndex) const override;
  QModelIndex mapFromSource(const QModelIndex& sourceIndex) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
  void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

Q_SIGNALS:
  /// Before the rows change for a change of the filter: they come as a reset, however many they are.
  void aboutToFilter();
  /// Which rows are shown may be other than it was.
  void shownChanged();

private:
  bool accepts(int row) const;
  bool acceptsAll() const;
  const std::string& lineOf(int row) const;
  void sourceReset();
  void sourceChanged();
  /// `amongShown`: what is shown already holds all that can fit.
  void filterAgain(bool amongShown);
  void begin(bool amongShown = false);
  void startPass(bool amongShown);
  void work();
  bool step();
  void publish();
  void arrange();
  void setShown(std::vector<int> rows);

  RowOrder order_;
  std::vector<int> shown_;                 ///< source rows
  std::vector<int> place_;                 ///< of each source row among the shown; -1: not shown
  std::vector<int> next_;                  ///< source rows found so far
  std::size_t looked_ = 0;                 ///< how many rows, in their order, have been looked at
  mutable std::vector<std::string> lines_; ///< what is searched of each source row; empty until asked for
  int prepared_ = 0;
  std::vector<std::string> words_;
  std::function<bool(int)> keeps_;
  std::optional<options::Verdict> verdict_;
  int verdictColumn_ = 0;
  int sortColumn_ = -1;
  Qt::SortOrder sortOrder_ = Qt::AscendingOrder;
  bool working_ = false;
  bool filterChanged_ = false;
  bool amongShown_ = false;
  QTimer pieces_; ///< runs whenever no event waits
};

} // namespace hangbook::desk
