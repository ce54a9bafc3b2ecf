// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
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
  /// Widths that somebody gave columns by hand, and the order of all columns, as one line; empty where the
  /// list is as it was made. They stay while the rest is fitted to the view.
  QString byHand() const;
  /// Makes it so again; a line of a list with other columns, or one that cannot be read, is passed over.
  void restore(const QString& line);

Q_SIGNALS:
  void changedByHand();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void fit();

  QTableView& table_;
  int stretch_;
  std::vector<int> least_;
  std::vector<int> wished_;
  std::map<int, int> own_; ///< widths given by hand
  bool fitting_ = false;
  int fittedTo_ = 0;
};

} // namespace hangbook::desk
