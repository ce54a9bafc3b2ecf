// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/part_table.h"

#include <algorithm>
#include <map>

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include "desk/data/typing_cells.h"
#include "desk/lists/flat_header.h"
#include "desk/lists/list_page.h"
#include "desk/style/colours.h"
#include "desk/style/scale.h"
#include "desk/words/words.h"

namespace hangbook::desk {

QString fieldWords(const QString& field) {
  static const std::map<QString, QString> titles{{QStringLiteral("town"), Words::tr("Town")},
                                                 {QStringLiteral("time zone"), Words::tr("Time zone")},
                                                 {QStringLiteral("datum"), Words::tr("Datum")},
                                                 {QStringLiteral("outdoors"), Words::tr("Outdoors")},
                                                 {QStringLiteral("low steel"), Words::tr("Low steel")},
                                                 {QStringLiteral("least trim"), Words::tr("Least trim")},
                                                 {QStringLiteral("most trim"), Words::tr("Most trim")},
                                                 {QStringLiteral("access"), Words::tr("Access")},
                                                 {QStringLiteral("source"), Words::tr("Source")},
                                                 {QStringLiteral("source date"), Words::tr("Dated")},
                                                 {QStringLiteral("name"), Words::tr("Name")},
                                                 {QStringLiteral("x"), Words::tr("To audience")},
                                                 {QStringLiteral("y"), Words::tr("To stage left")},
                                                 {QStringLiteral("z"), Words::tr("Height")},
                                                 {QStringLiteral("capacity"), Words::tr("Capacity")},
                                                 {QStringLiteral("basis"), Words::tr("Basis")},
                                                 {QStringLiteral("zone"), Words::tr("Bay")},
                                                 {QStringLiteral("others' load"), Words::tr("Others' load")},
                                                 {QStringLiteral("others' load by"), Words::tr("Said by")},
                                                 {QStringLiteral("others' load on"), Words::tr("Said on")}};
  const auto found = titles.find(field);
  return found == titles.end() ? field : found->second;
}

QString fieldTitle(const exchange::TextField& field, UnitSystem system) {
  const QString unit = exchange::unitOfField(field, system);
  return unit.isEmpty() ? fieldWords(field.name)
                        : QStringLiteral("%1 (%2)").arg(fieldWords(field.name), unit);
}

QString faultWords(const exchange::VenueFault& fault) {
  if (!fault.read.isEmpty() && fault.expected.contains(fault.read)) {
    return fault.expected; // it says itself what was read
  }
  return fault.read.isEmpty() ? Words::tr("expected %1").arg(fault.expected)
                              : Words::tr("read “%1”, expected %2").arg(fault.read.left(40), fault.expected);
}

PartTable::PartTable(const QString& name, const QString& says, const QString& add,
                     const std::vector<exchange::TextField>& fields, UnitSystem system, QWidget* parent)
    : QWidget(parent), fields_(fields), table_(new QTableWidget(this)), add_(new QPushButton(add, this)),
      remove_(new QPushButton(tr("Remove the selected one"), this)) {
  setObjectName(name);
  table_->setObjectName(name + QStringLiteral("Table"));
  table_->setAccessibleName(says);
  table_->setColumnCount(static_cast<int>(fields.size()) + 1);
  QStringList titles;
  for (const exchange::TextField& field : fields) {
    titles << fieldTitle(field, system);
  }
  table_->setHorizontalHeaderLabels(titles << tr("What is wrong"));
  table_->setItemDelegate(new TypingCells(table_));
  table_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed |
                          QAbstractItemView::DoubleClicked);
  table_->setTabKeyNavigation(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setShowGrid(true);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(rowHeight(font()));
  table_->setHorizontalHeader(new FlatHeader(table_));
  table_->horizontalHeader()->setStretchLastSection(true);
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
  all->addLayout(buttons);
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
    table_->resizeColumnToContents(column);
    table_->setColumnWidth(column, std::min(table_->columnWidth(column) + space::step, most));
  }
}

void PartTable::setRows(const std::vector<QStringList>& rows) {
  filling_ = true;
  table_->setRowCount(static_cast<int>(rows.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    putRow(row, rows[static_cast<std::size_t>(row)]);
  }
  filling_ = false;
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

void PartTable::setFaults(const std::vector<exchange::VenueFault>& faults) {
  filling_ = true;
  const Colours& colours = coloursOf(palette());
  for (int row = 0; row < table_->rowCount(); ++row) {
    QStringList says;
    for (int column = 0; column + 1 < table_->columnCount(); ++column) {
      QStringList here;
      for (const exchange::VenueFault& fault : faults) {
        if (fault.row == row && fault.field == fields_[static_cast<std::size_t>(column)].name) {
          here << faultWords(fault);
        }
      }
      QTableWidgetItem& item = *table_->item(row, column);
      item.setToolTip(here.isEmpty() ? item.text() : here.join(QLatin1Char('\n')));
      item.setForeground(here.isEmpty() ? QBrush() : QBrush(colours.fails));
      QFont bold = table_->font();
      bold.setUnderline(!here.isEmpty()); // told without colour too
      item.setFont(bold);
      for (const QString& each : here) {
        says << QStringLiteral("%1: %2").arg(fieldWords(fields_[static_cast<std::size_t>(column)].name),
                                             each);
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
  if (table_->rowCount() > 0) {
    table_->setCurrentCell(std::min(row, table_->rowCount() - 1), 0);
  }
  remove_->setEnabled(table_->currentRow() >= 0);
  Q_EMIT changed();
}

} // namespace hangbook::desk
