// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/column_fitter.h"

#include <algorithm>
#include <numeric>

#include <QEvent>
#include <QHeaderView>
#include <QSet>
#include <QTableView>

#include "desk/lists/table_model.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

ColumnFitter::ColumnFitter(QTableView& table, const TableModel& model, int stretchColumn)
    : QObject(&table), table_(table), stretch_(stretchColumn) {
  const int character = QFontMetrics(table.font()).averageCharWidth();
  for (int column = 0; column < model.columnCount(); ++column) {
    const Heading heading = model.heading(column);
    // A heading is read whole, in whatever language.
    const int title = QFontMetrics(table.font()).horizontalAdvance(heading.title) + 1;
    const auto widthFor = [&](int characters) {
      return std::max(characters * character, title) + 2 * space::cell;
    };
    least_.push_back(widthFor(heading.characters));
    wished_.push_back(widthFor(std::max(heading.wish, heading.characters)));
  }
  table.viewport()->installEventFilter(this);
  fit();
  const QHeaderView* header = table.horizontalHeader();
  connect(header, &QHeaderView::sectionResized, this, [this](int column, int before, int now) {
    if (!fitting_ && before > 0 && now > 0) { // 0: hidden or shown
      own_[column] = now;
      Q_EMIT changedByHand();
    }
  });
  connect(header, &QHeaderView::sectionMoved, this, [this] {
    if (!fitting_) {
      Q_EMIT changedByHand();
    }
  });
}

QString ColumnFitter::byHand() const {
  const QHeaderView& header = *table_.horizontalHeader();
  QStringList order;
  QStringList widths;
  bool moved = false;
  for (int place = 0; place < header.count(); ++place) {
    order << QString::number(header.logicalIndex(place));
    moved = moved || header.logicalIndex(place) != place;
    const auto own = own_.find(place);
    widths << QString::number(own == own_.end() ? 0 : own->second);
  }
  return moved || !own_.empty()
             ? order.join(QLatin1Char(' ')) + QLatin1Char('/') + widths.join(QLatin1Char(' '))
             : QString();
}

void ColumnFitter::restore(const QString& line) {
  QHeaderView& header = *table_.horizontalHeader();
  const QStringList order = line.section(QLatin1Char('/'), 0, 0).split(QLatin1Char(' '));
  const QStringList widths = line.section(QLatin1Char('/'), 1, 1).split(QLatin1Char(' '));
  if (order.size() != header.count() || widths.size() != header.count() ||
      QSet<QString>(order.begin(), order.end()).size() != order.size()) {
    return;
  }
  fitting_ = true;
  for (int place = 0; place < header.count(); ++place) {
    bool read = false;
    const int column = order[place].toInt(&read);
    if (read && column >= 0 && column < header.count()) {
      header.moveSection(header.visualIndex(column), place);
    }
    constexpr int widest = 4000;
    if (const int width = widths[place].toInt(); width > 0) {
      own_[place] = std::min(width, widest);
    }
  }
  fitting_ = false;
  refit();
}

bool ColumnFitter::eventFilter(QObject* watched, QEvent* event) {
  // The kind of event first: while the table is being destroyed its viewport still sends some, and by then
  // the table is a table no more.
  if (event->type() == QEvent::Resize && watched == table_.viewport()) {
    fit();
  }
  return QObject::eventFilter(watched, event);
}

void ColumnFitter::refit() {
  fittedTo_ = 0;
  fit();
}

void ColumnFitter::fit() {
  const int width = table_.viewport()->width();
  if (width == fittedTo_) {
    return; // columns that somebody drew wider by hand stay so
  }
  fittedTo_ = width;
  std::vector<int> widths = least_;
  std::vector<int> wished = wished_;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (table_.isColumnHidden(static_cast<int>(i))) {
      widths[i] = wished[i] = 0;
    } else if (const auto own = own_.find(static_cast<int>(i)); own != own_.end()) {
      widths[i] = wished[i] = own->second;
    }
  }
  const int least = std::accumulate(widths.begin(), widths.end(), 0);
  const int spare = std::max(0, width - least);
  const int wanted = std::accumulate(wished.begin(), wished.end(), 0) - least;
  for (std::size_t i = 0; i < widths.size() && wanted > 0; ++i) {
    widths[i] +=
        static_cast<int>(static_cast<qint64>(wished[i] - widths[i]) * std::min(spare, wanted) / wanted);
  }
  if (stretch_ >= 0 && own_.count(stretch_) == 0) {
    const int used = std::accumulate(widths.begin(), widths.end(), 0);
    widths[static_cast<std::size_t>(stretch_)] += std::max(0, width - used);
  }
  fitting_ = true;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (table_.isColumnHidden(static_cast<int>(i))) {
      continue; // a width would show it again
    }
    table_.horizontalHeader()->resizeSection(static_cast<int>(i), widths[i]);
  }
  fitting_ = false;
}

} // namespace hangbook::desk
