// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/lists/sort_filter.h"

#include <algorithm>

#include "desk/lists/natural.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {

SortFilter::SortFilter(QObject* parent) : QSortFilterProxyModel(parent) {
  setSortRole(orderRole);
  setDynamicSortFilter(true);
}

void SortFilter::setWords(const QString& typed) {
  words_ = typed.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  invalidateFilter();
}

void SortFilter::setKeeps(std::function<bool(int)> keeps) {
  keeps_ = std::move(keeps);
  invalidateFilter();
}

void SortFilter::setVerdict(std::optional<options::Verdict> verdict, int column) {
  verdict_ = verdict;
  verdictColumn_ = column;
  invalidateFilter();
}

bool SortFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
  const QVariant a = left.data(orderRole);
  const QVariant b = right.data(orderRole);
  if (!a.isValid() || !b.isValid()) {
    const bool oneIsKnown = a.isValid() != b.isValid();
    return oneIsKnown && b.isValid() == (sortOrder() == Qt::DescendingOrder);
  }
  if (a.typeId() == QMetaType::Double && b.typeId() == QMetaType::Double) {
    return a.toDouble() < b.toDouble();
  }
  return compareNatural(a.toString(), b.toString()) < 0;
}

bool SortFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
  if (keeps_ && !keeps_(row)) {
    return false;
  }
  const QAbstractItemModel* source = sourceModel();
  if (verdict_) {
    const QVariant verdict = source->index(row, verdictColumn_, parent).data(verdictRole);
    if (!verdict.isValid() || verdict.toInt() != static_cast<int>(*verdict_)) {
      return false;
    }
  }
  if (words_.isEmpty()) {
    return true;
  }
  QString line;
  for (int column = 0; column < source->columnCount(parent); ++column) {
    line += source->index(row, column, parent).data().toString() + QLatin1Char('\n');
  }
  return std::all_of(words_.begin(), words_.end(),
                     [&](const QString& word) { return line.contains(word, Qt::CaseInsensitive); });
}

} // namespace hangbook::desk
