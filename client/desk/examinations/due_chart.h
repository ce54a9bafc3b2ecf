// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QChartView>

#include "calendar/where_best.h"

namespace hangbook::desk {

/// How many examinations fall due in each week of a year, against the days on which the gear is away.
class DueChart : public QChartView {
  Q_OBJECT
public:
  explicit DueChart(QWidget* parent = nullptr);

  void setFacts(const std::vector<calendar::Planned>& due, const std::vector<calendar::Show>& shows,
                QDate today);

protected:
  void changeEvent(QEvent* event) override;

private:
  void draw();

  std::vector<int> weeks_; ///< from this week's Monday on; the first holds what is overdue too
  int overdue_ = 0;
  std::vector<calendar::Show> shows_;
  QDate today_;
};

/// Examinations that fall due in each of so many weeks from the Monday of `today`'s week; what is overdue is
/// not among them.
std::vector<int> dueByWeek(const std::vector<calendar::Planned>& due, QDate today, int weeks);

} // namespace hangbook::desk
