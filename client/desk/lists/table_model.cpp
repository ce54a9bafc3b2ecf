// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/table_model.h"

#include <QFont>

#include "desk/style/verdict_mark.h"

namespace hangbook::desk {
namespace {

constexpr qsizetype usualLine = 160; // letters

} // namespace

int TableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : rows();
}

int TableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : columns();
}

QVariant TableModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
    return {};
  }
  if (role == keyRole) {
    return key(index.row());
  }
  if (role == Qt::TextAlignmentRole || role == figureRole) {
    const bool figure = heading(index.column()).figure;
    if (role == figureRole) {
      return figure;
    }
    return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft)));
  }
  const Cell here = cell(index.row(), index.column());
  switch (role) {
  case Qt::DisplayRole:
    return here.text;
  case Qt::AccessibleTextRole:
    return heading(index.column()).title + QStringLiteral(": ") + here.text;
  case Qt::ToolTipRole:
    if (here.toolTip.isEmpty() && here.verdict) {
      return verdictMeaning(*here.verdict);
    }
    return here.toolTip.isEmpty() ? QVariant() : QVariant(here.toolTip);
  case orderRole:
    if (here.missing) {
      return {};
    }
    return here.number ? QVariant(*here.number) : QVariant(here.text);
  case verdictRole:
    return here.verdict ? QVariant(static_cast<int>(*here.verdict)) : QVariant();
  case useRole:
    return here.usePercent ? QVariant(*here.usePercent) : QVariant();
  case endMattersRole:
    return here.endMatters;
  case Qt::FontRole:
    if (here.strong) {
      QFont font;
      font.setBold(true);
      return font;
    }
    return {};
  default:
    return {};
  }
}

QString TableModel::searched(int row) const {
  QString line;
  line.reserve(usualLine);
  for (int column = 0; column < columns(); ++column) {
    line += cell(row, column).text;
    line += QLatin1Char('\n');
  }
  return line.toCaseFolded();
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columns()) {
    return {};
  }
  const Heading title = heading(section);
  switch (role) {
  case Qt::DisplayRole:
    return title.title;
  case Qt::ToolTipRole:
    return title.toolTip.isEmpty() ? QVariant() : QVariant(title.toolTip);
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(
        Qt::Alignment(Qt::AlignVCenter | (title.figure ? Qt::AlignRight : Qt::AlignLeft)));
  default:
    return {};
  }
}

} // namespace hangbook::desk
