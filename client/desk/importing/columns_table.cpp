// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/importing/columns_table.h"

#include <algorithm>

#include <QComboBox>
#include <QHeaderView>
#include <QStyle>

#include "desk/lists/flat_header.h"
#include "desk/lists/list_page.h"

namespace hangbook::desk {
namespace {

enum Part { theirs, holds, ours };

/// How a column is named: by its heading, or by its number where that stands twice or is empty.
QString nameOf(const QStringList& headings, int column) {
  const QString& heading = headings[column];
  return heading.isEmpty() || headings.count(heading) > 1 ? QStringLiteral("#%1").arg(column + 1) : heading;
}

/// The mapping's entry for that column, if it has one.
const exchange::Mapping::Column* entryFor(const exchange::Mapping& mapping, const QStringList& headings,
                                          int column) {
  const auto found = std::ranges::find_if(mapping.columns, [&](const exchange::Mapping::Column& each) {
    return each.from == QStringLiteral("#%1").arg(column + 1) ||
           exchange::foldedName(each.from) == exchange::foldedName(headings[column]);
  });
  return found == mapping.columns.end() ? nullptr : &*found;
}

QString firstCells(const ImportLook& look, int column) {
  QStringList cells;
  for (const QStringList& row : look.firstRows) {
    if (column < row.size() && !row[column].isEmpty() && !cells.contains(row[column])) {
      cells << row[column];
    }
  }
  return cells.mid(0, 3).join(QStringLiteral(" · "));
}

} // namespace

ColumnsTable::ColumnsTable(QWidget* parent) : QTableWidget(0, 3, parent) {
  setObjectName(QStringLiteral("importColumns"));
  setAccessibleName(tr("Columns of the file and what they are read as"));
  setHorizontalHeaderLabels({tr("In the file"), tr("Holds"), tr("Is read as")});
  const int margin = 1 + style()->pixelMetric(QStyle::PM_FocusFrameHMargin); // as left and right of a cell
  setHorizontalHeader(new FlatHeader(this, 1, margin));
  for (int column = theirs; column <= ours; ++column) {
    horizontalHeaderItem(column)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  }
  verticalHeader()->hide();
  verticalHeader()->setDefaultSectionSize(desk::rowHeight(font()) + 10);
  horizontalHeader()->setSectionResizeMode(theirs, QHeaderView::ResizeToContents);
  horizontalHeader()->setSectionResizeMode(holds, QHeaderView::Stretch);
  horizontalHeader()->setSectionResizeMode(ours, QHeaderView::Fixed);
  horizontalHeader()->resizeSection(ours, QFontMetrics(font()).averageCharWidth() * 30);
  setEditTriggers(NoEditTriggers);
  setSelectionMode(NoSelection);
  setFocusPolicy(Qt::NoFocus); // the boxes in it take the keyboard
  setShowGrid(false);
}

void ColumnsTable::setLook(const ImportLook& look, exchange::Kind kind) {
  headings_ = look.headings;
  setRowCount(static_cast<int>(headings_.size()));
  for (int row = 0; row < rowCount(); ++row) {
    setItem(row, theirs,
            new QTableWidgetItem(headings_[row].isEmpty() ? tr("(no heading)") : headings_[row]));
    auto* cells = new QTableWidgetItem(firstCells(look, row));
    cells->setToolTip(cells->text());
    setItem(row, holds, cells);
    auto* box = new QComboBox(this);
    box->setObjectName(QStringLiteral("importColumn%1").arg(row + 1));
    box->setAccessibleName(tr("What column %1 is read as").arg(headings_[row]));
    box->addItem(tr("as it stands"));
    box->addItem(tr("left out"), QString());
    for (const QString& heading : exchange::headingsOf(kind)) {
      box->addItem(heading, heading);
    }
    if (const exchange::Mapping::Column* entry = entryFor(look.form.mapping, headings_, row)) {
      int place = entry->to.isEmpty() ? 1 : box->findData(entry->to);
      for (int i = 2; place < 0 && i < box->count(); ++i) {
        if (exchange::readHeading(box->itemText(i)).name == exchange::readHeading(entry->to).name) {
          place = i;
        }
      }
      if (place < 0) {
        box->addItem(entry->to, entry->to);
        place = box->count() - 1;
      }
      box->setCurrentIndex(place);
    }
    connect(box, &QComboBox::currentIndexChanged, this, &ColumnsTable::changed);
    setCellWidget(row, ours, box);
  }
}

std::vector<exchange::Mapping::Column> ColumnsTable::columns() const {
  std::vector<exchange::Mapping::Column> columns;
  for (int row = 0; row < rowCount(); ++row) {
    const auto* box = qobject_cast<const QComboBox*>(cellWidget(row, ours));
    if (box != nullptr && box->currentIndex() > 0) {
      // Their own unit stands in the heading; without it ours counts.
      const QString to = box->currentData().toString();
      const bool theirUnit = !exchange::readHeading(headings_[row]).unit.isEmpty();
      const QString bare = to.left(to.indexOf(QStringLiteral(" ["))); // the whole where there is none
      columns.push_back({nameOf(headings_, row), theirUnit && to.contains(QStringLiteral(" [")) ? bare : to});
    }
  }
  return columns;
}

} // namespace hangbook::desk
