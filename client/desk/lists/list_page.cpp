// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/list_page.h"

#include <utility>

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "desk/lists/column_fitter.h"
#include "desk/lists/flat_header.h"
#include "desk/lists/row_painter.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

int rowHeight(const QFont& font) {
  return QFontMetrics(font).height() + 5;
}

void prepareTable(QTableView& table, const TableModel& model, int stretchColumn) {
  table.setHorizontalHeader(new FlatHeader(&table));
  table.setItemDelegate(new RowPainter(&table));
  table.setShowGrid(false);
  table.setFrameShape(QFrame::StyledPanel);
  table.setSelectionBehavior(QAbstractItemView::SelectRows);
  table.setSelectionMode(QAbstractItemView::SingleSelection);
  table.setEditTriggers(QAbstractItemView::NoEditTriggers);
  table.setTabKeyNavigation(false);
  table.setWordWrap(false);
  table.setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table.verticalHeader()->hide();
  table.verticalHeader()->setMinimumSectionSize(1);
  table.verticalHeader()->setDefaultSectionSize(rowHeight(table.font()));
  QHeaderView& header = *table.horizontalHeader();
  header.setSectionsMovable(true);
  header.setMinimumSectionSize(24);
  header.setFixedHeight(rowHeight(table.font()) + 3);
  new ColumnFitter(table, model, stretchColumn); // lives with the table
}

ListPage::ListPage(const QString& name, const QString& title, TableModel& model, int stretchColumn,
                   int sortColumn, Qt::SortOrder order, QWidget* parent)
    : QWidget(parent), model_(model), proxy_(new SortFilter(this)), table_(new QTableView(this)),
      search_(new QLineEdit(this)), count_(new QLabel(this)), empty_(new QLabel(table_->viewport())),
      controls_(new QWidget(this)) {
  setObjectName(name);
  proxy_->setModel(model);
  table_->setObjectName(name + QStringLiteral("Table"));
  table_->setAccessibleName(title);
  table_->setModel(proxy_);
  prepareTable(*table_, model, stretchColumn);
  table_->setSortingEnabled(true);
  table_->sortByColumn(sortColumn, order);
  search_->setObjectName(name + QStringLiteral("Search"));
  search_->setAccessibleName(tr("Search in %1").arg(title));
  search_->setPlaceholderText(tr("Words to look for"));
  search_->setClearButtonEnabled(true);
  search_->setMaximumWidth(260);
  count_->setObjectName(name + QStringLiteral("Count"));
  count_->setForegroundRole(QPalette::PlaceholderText);
  empty_->setObjectName(name + QStringLiteral("Empty"));
  empty_->setAlignment(Qt::AlignCenter);
  empty_->setWordWrap(true);
  empty_->setForegroundRole(QPalette::PlaceholderText);
  empty_->setMargin(space::broad);
  table_->viewport()->installEventFilter(this);

  auto* inControls = new QHBoxLayout(controls_);
  inControls->setContentsMargins(0, 0, 0, 0);
  inControls->setSpacing(space::step);
  auto* top = new QHBoxLayout;
  top->setSpacing(space::step);
  top->addWidget(search_, 1);
  top->addWidget(controls_);
  top->addStretch(1);
  top->addWidget(count_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::step);
  all->addLayout(top);
  all->addWidget(table_, 1);

  connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) { proxy_->setWords(text); });
  connect(proxy_, &SortFilter::aboutToFilter, this, &ListPage::keepCurrent);
  connect(proxy_, &SortFilter::shownChanged, this, [this] {
    refreshCount();
    restoreCurrent();
  });
  connect(proxy_, &QAbstractItemModel::modelReset, this, [this] { refreshCount(); });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
    wanted_.clear();
    if (!restoring_) {
      Q_EMIT currentRowChanged(currentRow());
    }
  });
  refreshCount();
}

void ListPage::addControl(QWidget* control) {
  controls_->layout()->addWidget(control);
}

void ListPage::setEmptyTexts(const QString& none, const QString& noneFits) {
  none_ = none;
  noneFits_ = noneFits;
  refreshCount();
}

bool ListPage::showKey(const QString& key) {
  if (!search_->text().isEmpty()) {
    search_->clear();
  }
  if (!select(key)) {
    return false;
  }
  table_->scrollTo(table_->currentIndex(), QAbstractItemView::PositionAtCenter);
  return true;
}

bool ListPage::select(const QString& key) {
  for (int row = 0; row < proxy_->rowCount(); ++row) {
    const QModelIndex index = proxy_->index(row, 0);
    if (model_.keyAt(proxy_->mapToSource(index).row()) == key) {
      table_->setCurrentIndex(index);
      return true;
    }
  }
  for (int row = 0; proxy_->working() && row < model_.rowCount(); ++row) {
    if (model_.keyAt(row) == key) {
      wanted_ = key;
      return true;
    }
  }
  return false;
}

void ListPage::keepCurrent() {
  kept_ = currentRow();
  selected_ = table_->selectionModel()->hasSelection();
}

/// A filter changes its rows by a reset, which takes the current one away without a word.
void ListPage::restoreCurrent() {
  const int before = std::exchange(kept_, {}).value_or(-1);
  if (!wanted_.isEmpty()) {
    if (const QString key = std::exchange(wanted_, {}); select(key)) {
      table_->scrollTo(table_->currentIndex(), QAbstractItemView::PositionAtCenter);
    }
    return;
  }
  if (before < 0) {
    return;
  }
  const int now = proxy_->nearestShown(before);
  if (now < 0) {
    Q_EMIT currentRowChanged(-1);
    return;
  }
  restoring_ = now == before; // for whom it is the same row, nothing has happened
  const auto how = selected_ || now != before
                       ? QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows
                       : QItemSelectionModel::SelectionFlags(QItemSelectionModel::NoUpdate);
  table_->selectionModel()->setCurrentIndex(proxy_->mapFromSource(model_.index(now, 0)), how);
  restoring_ = false;
  table_->scrollTo(table_->currentIndex());
}

int ListPage::currentRow() const {
  const QModelIndex index = table_->currentIndex();
  return index.isValid() ? proxy_->mapToSource(index).row() : -1;
}

bool ListPage::eventFilter(QObject* watched, QEvent* event) {
  if (watched == table_->viewport() && event->type() == QEvent::Resize) {
    empty_->setGeometry(table_->viewport()->rect());
  }
  return QWidget::eventFilter(watched, event);
}

void ListPage::refreshCount() {
  const int shown = proxy_->rowCount();
  const int all = model_.rowCount();
  const QString rows = all == 1 ? tr("1 row") : tr("%1 rows").arg(all);
  count_->setText(shown == all ? rows : tr("%1 of %2").arg(shown).arg(rows));
  empty_->setText(all == 0 ? none_ : proxy_->working() ? tr("Looking …") : noneFits_);
  empty_->setVisible(shown == 0);
  empty_->setGeometry(table_->viewport()->rect());
}

} // namespace hangbook::desk
