// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
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
  /// Of a long tour the stops around this one are shown.
  void showAround(const ShowKey& show);

protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
  void draw();
  std::span<const Stop> shown() const;
  bool anyLoad() const;
  /// Every how manieth stop has its name under it, so that no two of them meet.
  int namedStep() const;

  std::vector<Stop> stops_;
  Figures figures_;
  ShowKey around_;
  int step_ = 1; ///< as drawn
};

/// So many stops stand beside each other with their names legible.
inline constexpr std::size_t mostBars = 11;

/// At most `mostBars` stops in a row, with that show in the middle where there are as many on both sides of
/// it; of a show that is none of them the last ones.
std::span<const Stop> stopsAround(const std::vector<Stop>& stops, const ShowKey& show);

/// The same in words, for screen readers.
QString describeLoads(std::span<const Stop> stops, const Figures& figures);

} // namespace hangbook::desk
