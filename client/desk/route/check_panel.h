// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>

#include <QWidget>

#include "desk/lists/table_model.h"
#include "desk/source/planning_source.h"
#include "desk/source/session.h"

class QPushButton;
class QTableView;

namespace hangbook::desk {

class WorkLine;

enum class CheckColumn {
  show,
  hang,
  options,
  holds,
  tight,
  unproven,
  fails,
  best,
  stack,
  chosen,
  because,
  checked,
  count
};

/// One hang of the checked tour as a row.
class CheckModel : public ListOf<CheckedHang, CheckColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(CheckColumn column) const override;
  Cell cellOf(const CheckedHang& hang, CheckColumn column) const override;
  QString keyOf(const CheckedHang& hang) const override { return hang.show + QLatin1Char('\n') + hang.hang; }
};

/// What a check of a tour came to, in one sentence.
QString sumOf(const RouteCheck& check);

/// Every option of every show of the tour, checked off the window's thread on all cores, with progress.
/// Stopped, it shows what was done by then; that is kept, and only what has changed since is checked again.
class CheckPanel : public QWidget {
  Q_OBJECT
public:
  explicit CheckPanel(Session& session, QWidget* parent = nullptr);
  ~CheckPanel() override;

  /// Of which tour; another one clears what is shown.
  void setTour(const QString& tour);
  void check(bool afresh);

Q_SIGNALS:
  void optionsWanted(const ShowKey& show);

private:
  void offer();
  void showFound(const RouteCheck& found);

  Session& session_;
  CheckModel model_;
  WorkLine* line_;
  QPushButton* afresh_;
  QTableView* table_;
  QString tour_;
  QString checked_;                         ///< the tour that is shown
  std::shared_ptr<std::atomic<bool>> stop_; ///< of the check that runs
};

} // namespace hangbook::desk
