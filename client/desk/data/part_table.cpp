// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/part_table.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QTableWidget>
#include <QVBoxLayout>

#include "desk/data/typing_cells.h"
#include "desk/lists/flat_header.h"
#include "desk/lists/list_page.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

PartTable::PartTable(const QString& name, const QString& says, const QString& add,
                     std::vector<FormField> fields, QWidget* parent)
    : QWidget(parent), fields_(std::move(fields)), table_(new QTableWidget(this)),
      header_(new FlatHeader(table_, 2, 1 + table_->style()->pixelMetric(QStyle::PM_FocusFrameHMargin))),
      add_(new QPushButton(add, this)), remove_(new QPushButton(tr("&Remove the selected one"), this)),
      note_(new QLabel(this)), empty_(new QLabel(tr("No rows yet."), table_->viewport())) {
  setObjectName(name);
  table_->setObjectName(name + QStringLiteral("Table"));
  table_->setAccessibleName(says);
  table_->setColumnCount(static_cast<int>(fields_.size()) + 1);
  QStringList titles;
  for (const FormField& field : fields_) {
    titles << field.title;
  }
  table_->setHorizontalHeaderLabels(titles << tr("What is wrong"));
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    table_->horizontalHeaderItem(static_cast<int>(i))->setToolTip(fields_[i].hint);
  }
  table_->setItemDelegate(new TypingCells(table_));
  table_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed |
                          QAbstractItemView::DoubleClicked);
  table_->setTabKeyNavigation(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setShowGrid(true);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(rowHeight(font()));
  table_->setHorizontalHeader(header_);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  for (int column = 0; column < table_->columnCount(); ++column) {
    table_->horizontalHeaderItem(column)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  }
  table_->setWordWrap(false);
  add_->setObjectName(name + QStringLiteral("Add"));
  add_->setAutoDefault(false);
  remove_->setObjectName(name + QStringLiteral("Remove"));
  remove_->setAutoDefault(false);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(space::small);
  buttons->addWidget(add_);
  buttons->addWidget(remove_);
  buttons->addStretch(1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addWidget(table_, 1);
  all->addWidget(note_);
  all->addLayout(buttons);
  note_->setWordWrap(true);
  note_->setFont(fontFor(TextSize::note, font()));
  note_->hide();
  empty_->setAlignment(Qt::AlignCenter);
  empty_->setForegroundRole(QPalette::PlaceholderText);
  table_->viewport()->installEventFilter(this);
  connect(add_, &QPushButton::clicked, this, &PartTable::addRow);
  connect(remove_, &QPushButton::clicked, this, &PartTable::removeRow);
  connect(table_, &QTableWidget::cellChanged, this, [this] {
    if (!filling_) {
      Q_EMIT changed();
    }
  });
  connect(table_, &QTableWidget::currentCellChanged, this, [this] {
    remove_->setEnabled(table_->currentRow() >= 0);
    Q_EMIT currentChanged();
  });
  remove_->setEnabled(false);
}

void PartTable::setNote(const QString& note) {
  note_->setText(note);
  note_->setVisible(!note.isEmpty());
}

void PartTable::putRow(int row, const QStringList& texts) {
  for (int column = 0; column < table_->columnCount(); ++column) {
    auto* item = new QTableWidgetItem(texts.value(column)); // the table takes it
    if (column + 1 == table_->columnCount()) {
      item->setFlags(item->flags() & ~Qt::ItemIsEditable);
    }
    table_->setItem(row, column, item);
  }
}

void PartTable::fitColumns() {
  const int most = QFontMetrics(font()).averageCharWidth() * 18; // the whole text stands in the tooltip
  for (int column = 0; column + 1 < table_->columnCount(); ++column) {
    int widest = header_->leastWidth(column);
    for (int row = 0; row < table_->rowCount(); ++row) {
      widest = std::max(widest, QFontMetrics(font()).horizontalAdvance(table_->item(row, column)->text()));
    }
    table_->setColumnWidth(column, std::min(widest + space::step, most));
  }
  fitFaults();
}

/// They take what the others leave, and come forward where that is too little to read them.
void PartTable::fitFaults() {
  const int last = table_->columnCount() - 1;
  int others = 0;
  for (int column = 0; column < last; ++column) {
    others += table_->columnWidth(column);
  }
  const int least = QFontMetrics(font()).averageCharWidth() * 30;
  const int room = table_->viewport()->width() - others;
  header_->moveSection(header_->visualIndex(last), room < least ? std::min(1, last) : last);
  header_->setStretchLastSection(room >= least);
  if (room < least) {
    table_->setColumnWidth(last, least);
  }
}

bool PartTable::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize && watched == table_->viewport()) {
    fitFaults();
    empty_->resize(table_->viewport()->size());
  }
  return QWidget::eventFilter(watched, event);
}

void PartTable::tellEmpty() {
  empty_->setVisible(table_->rowCount() == 0);
}

void PartTable::setRows(const std::vector<QStringList>& rows) {
  filling_ = true;
  table_->setRowCount(static_cast<int>(rows.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    putRow(row, rows[static_cast<std::size_t>(row)]);
  }
  filling_ = false;
  tellEmpty();
  fitColumns();
  if (!rows.empty()) {
    table_->setCurrentCell(0, 0);
  }
}

std::vector<QStringList> PartTable::rows() const {
  std::vector<QStringList> all;
  for (int row = 0; row < table_->rowCount(); ++row) {
    QStringList texts;
    for (int column = 0; column + 1 < table_->columnCount(); ++column) {
      texts << table_->item(row, column)->text().trimmed();
    }
    all.push_back(std::move(texts));
  }
  return all;
}

void PartTable::setFaults(const std::vector<exchange::FieldFault>& faults) {
  filling_ = true;
  const Colours& colours = coloursOf(palette());
  for (int row = 0; row < table_->rowCount(); ++row) {
    QStringList says;
    for (int column = 0; column + 1 < table_->columnCount(); ++column) {
      const FormField& field = fields_[static_cast<std::size_t>(column)];
      const QString here = faultsOf(faults, row, field.name);
      QTableWidgetItem& item = *table_->item(row, column);
      item.setToolTip(here.isEmpty() ? item.text() : here);
      item.setForeground(here.isEmpty() ? QBrush() : QBrush(colours.fails));
      QFont bold = table_->font();
      bold.setUnderline(!here.isEmpty()); // told without colour too
      item.setFont(bold);
      for (const QString& each : here.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        says << QStringLiteral("%1: %2").arg(field.words, each);
      }
    }
    for (const exchange::FieldFault& fault : faults) { // of the row as a whole
      if (fault.row == row && std::ranges::count(fields_, fault.field, &FormField::name) == 0) {
        says << faultWords(fault);
      }
    }
    QTableWidgetItem& wrong = *table_->item(row, table_->columnCount() - 1);
    wrong.setText(says.join(QStringLiteral("; ")));
    wrong.setToolTip(says.join(QLatin1Char('\n')));
    wrong.setForeground(colours.fails);
  }
  filling_ = false;
}

int PartTable::currentRow() const {
  return table_->currentRow();
}

void PartTable::addRow() {
  filling_ = true;
  const int row = table_->rowCount();
  table_->insertRow(row);
  putRow(row, {});
  filling_ = false;
  tellEmpty();
  Q_EMIT changed();
  table_->setFocus();
  table_->setCurrentCell(row, 0);
  table_->editItem(table_->item(row, 0));
}

void PartTable::removeRow() {
  const int row = table_->currentRow();
  if (row < 0) {
    return;
  }
  table_->removeRow(row);
  tellEmpty();
  if (table_->rowCount() > 0) {
    table_->setCurrentCell(std::min(row, table_->rowCount() - 1), 0);
  }
  remove_->setEnabled(table_->currentRow() >= 0);
  Q_EMIT changed();
}

} // namespace hangbook::desk
