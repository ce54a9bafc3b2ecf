// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QPointF>
#include <QWidget>

#include "exchange/venue_text.h"

namespace hangbook::desk {

/// One point as it is typed; no place where that cannot be read.
struct PlanPoint {
  QString name{};
  std::optional<QPointF> place{}; ///< venue coordinates in metres: x to the audience, y to stage left
  QString height{};               ///< as typed
  bool capacityKnown = false;
};

/// As far as rows of a venue's points can be read; a bare number is in the unit of `system`.
std::vector<PlanPoint> planPoints(const std::vector<QStringList>& rows, UnitSystem system, NumberForm form);

/// A venue's points from above, to one scale both ways: the audience up, stage left at the left, as somebody
/// on stage sees them. What stands under the low steel is outlined.
class VenuePlan : public QWidget {
  Q_OBJECT
public:
  explicit VenuePlan(UnitSystem system, QWidget* parent = nullptr);

  void setObstructions(const std::vector<venue::Obstruction>& obstructions);
  void setPoints(std::vector<PlanPoint> points);
  void setCurrent(int row);
  const std::vector<PlanPoint>& points() const { return points_; }
  /// Where a place is drawn.
  QPointF onScreen(const QPointF& place) const;
  QSize sizeHint() const override { return {360, 420}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct View {
    double scale = 1.0; ///< pixels a metre
    QPointF middle{};   ///< of what is shown, venue coordinates
  };
  View view() const;
  void describe();

  UnitSystem system_; ///< of the bar that shows the scale
  std::vector<venue::Obstruction> obstructions_;
  std::vector<PlanPoint> points_;
  int current_ = -1;
};

} // namespace hangbook::desk
