// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "desk/fleet/stock_models.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

class QDateEdit;

namespace hangbook::desk {

class StockChart;

/// Stock against demand: each type on a day that can be set, the selected one through a year, and what shows
/// to come lack. Worked out off the window's thread, and only while somebody looks.
class StockPage : public QWidget {
  Q_OBJECT
public:
  explicit StockPage(Session& session, QWidget* parent = nullptr);

  QDateEdit& day() { return *day_; }

protected:
  void showEvent(QShowEvent* event) override;

private:
  void showFacts();
  void look();
  void lookThroughTime();
  void show(StockLook look);

  Session& session_;
  StockModel types_;
  ShortageModel lacks_;
  ListPage* page_;
  QDateEdit* day_;
  QLabel* says_;
  QLabel* lacksText_;
  QTableView* lacksTable_;
  QWidget* lacksPart_;
  StockChart* chart_;
  std::shared_ptr<Watch> looking_;
  std::shared_ptr<Watch> lookingThrough_;
  bool stale_ = true;
};

} // namespace hangbook::desk
