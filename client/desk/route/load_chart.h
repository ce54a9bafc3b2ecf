// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QChartView>

#include "desk/route/route_model.h"

namespace hangbook::desk {

/// The heaviest point of each stop beside what that point may carry, through the tour.
class LoadChart : public QChartView {
  Q_OBJECT
public:
  explicit LoadChart(QWidget* parent = nullptr);

  void setStops(const std::vector<Stop>& stops, const Figures& figures);

protected:
  void changeEvent(QEvent* event) override;

private:
  void draw();

  std::vector<Stop> stops_;
  Figures figures_;
};

/// The same in words, for screen readers.
QString describeLoads(const std::vector<Stop>& stops, const Figures& figures);

} // namespace hangbook::desk
