// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QTableView>
#include <QWidget>

#include "desk/lists/sort_filter.h"
#include "desk/lists/table_model.h"

class QLabel;
class QLineEdit;

namespace hangbook::desk {

/// How a table of ours looks and moves: whole rows, no grid, Tab leaves it, columns as wide as their
/// headings ask, one of them taking what is left.
void prepareTable(QTableView& table, const TableModel& model, int stretchColumn);

/// One row's height for the font.
int rowHeight(const QFont& font);

/// A list with a search field, a count and words for when it is empty.
class ListPage : public QWidget {
  Q_OBJECT
public:
  /// Takes no ownership of the model. `name` names the page's widgets for tests and screen readers.
  ListPage(const QString& name, const QString& title, TableModel& model, int stretchColumn, int sortColumn,
           Qt::SortOrder order, QWidget* parent = nullptr);

  QTableView& table() { return *table_; }
  SortFilter& proxy() { return *proxy_; }
  QLineEdit& searchField() { return *search_; }
  /// Room for a place's own controls, between the search field and the count.
  void addControl(QWidget* control);
  /// What stands where the rows would be: when there are none at all, and when none fits the search.
  void setEmptyTexts(const QString& none, const QString& noneFits);
  /// Selects and shows the row of that key. Answers whether there is one.
  bool showKey(const QString& key);
  /// Makes the row of that key the current one, where it is listed and the search lets it through; the search
  /// and where the list is scrolled to stay. Where a long list is still being searched, as soon as it is
  /// found.
  bool select(const QString& key);
  /// Source row of the current selection, -1 where nothing is selected.
  int currentRow() const;

Q_SIGNALS:
  void currentRowChanged(int sourceRow);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void refreshCount();
  void keepCurrent();
  void restoreCurrent();

  TableModel& model_;
  SortFilter* proxy_;
  QTableView* table_;
  QLineEdit* search_;
  QLabel* count_;
  QLabel* empty_;
  QWidget* controls_;
  QString none_;
  QString noneFits_;
  QString wanted_;          ///< key of the row to select when a search that is under way has found it
  std::optional<int> kept_; ///< current source row while the filter changes
  bool selected_ = false;
  bool restoring_ = false;
};

} // namespace hangbook::desk
