// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include <QSortFilterProxyModel>
#include <QStringList>

#include "options/option.h"

namespace hangbook::desk {

/// Sorts by figure or in natural order, what is not known last in either direction; lets through the rows
/// that contain every typed word in any column and, where asked, carry one verdict.
class SortFilter : public QSortFilterProxyModel {
  Q_OBJECT
public:
  explicit SortFilter(QObject* parent = nullptr);

  void setWords(const QString& typed);
  /// Lets through only the source rows for which `keeps` is true; none: all.
  void setKeeps(std::function<bool(int)> keeps);
  void setVerdict(std::optional<options::Verdict> verdict, int column);

protected:
  bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;
  bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
  QStringList words_;
  std::function<bool(int)> keeps_;
  std::optional<options::Verdict> verdict_;
  int verdictColumn_ = 0;
};

} // namespace hangbook::desk
