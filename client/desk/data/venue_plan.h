// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QPointF>
#include <QWidget>

#include "desk/data/seat_blocks.h"
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

/// A venue from above, to one scale both ways: the audience up, stage left at the left, as somebody on stage
/// sees it. Points and bridles; blocks of seats with a line for each of their rows that is given; what stands
/// under the low steel, outlined. While seats or obstructions are typed all of the room is shown, else what
/// stands about the points.
class VenuePlan : public QWidget {
  Q_OBJECT
public:
  explicit VenuePlan(UnitSystem system, QWidget* parent = nullptr);

  void setPoints(std::vector<PlanPoint> points);
  /// Obstructions, sections and bridles, as far as they can be read.
  void setParts(const venue::Venue& readable);
  /// Which row is being typed: `row` of the points, or the part of that name.
  void setCurrent(exchange::VenuePart part, int row, const QString& name);
  const std::vector<PlanPoint>& points() const { return points_; }
  /// The blocks of seats that are drawn.
  const std::vector<SeatBlock>& blocks() const { return blocks_; }
  bool showsAll() const;
  /// Where a place is drawn.
  QPointF onScreen(const QPointF& place) const;
  QSize sizeHint() const override { return {420, 340}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct View {
    double scale = 1.0; ///< pixels a metre
    QPointF middle{};   ///< of what is shown, venue coordinates
  };
  View view() const;
  QPolygonF onScreen(const QPolygonF& line) const;
  bool isCurrent(exchange::VenuePart part, const QString& name) const;
  void describe();
  void paintSeats(QPainter& painter) const;
  void paintSeatNames(QPainter& painter) const;
  void paintObstructions(QPainter& painter) const;
  void paintBridles(QPainter& painter) const;
  void paintPoints(QPainter& painter) const;
  void paintGround(QPainter& painter) const;

  UnitSystem system_; ///< of the bar that shows the scale
  venue::Venue parts_;
  std::vector<SeatBlock> blocks_;
  std::vector<PlanPoint> points_;
  exchange::VenuePart currentPart_ = exchange::VenuePart::point;
  int current_ = -1;
  QString currentName_;
};

} // namespace hangbook::desk
