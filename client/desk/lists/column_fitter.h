// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QObject>

class QTableView;

namespace hangbook::desk {

class TableModel;

/// Gives each column the width that its heading asks for, and shares what the view has over among those that
/// wish for more, as far as they wish; what is then left goes to the stretch column. Done anew whenever the
/// view's width changes.
class ColumnFitter : public QObject {
  Q_OBJECT
public:
  ColumnFitter(QTableView& table, const TableModel& model, int stretchColumn);
  /// After columns were hidden or shown.
  void refit();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void fit();

  QTableView& table_;
  int stretch_;
  std::vector<int> least_;
  std::vector<int> wished_;
  int fittedTo_ = 0;
};

} // namespace hangbook::desk
