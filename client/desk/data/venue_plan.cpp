// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/venue_plan.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

using exchange::VenuePart;

namespace {

std::optional<double> metresTyped(const QString& text, UnitSystem system, NumberForm form) {
  try {
    return inMetres(parse<Length>(text.toStdString(), unitOf<Length>(system), form));
  } catch (const Error&) { // what is wrong stands beside the field
    return std::nullopt;
  }
}

bool isForce(const QString& text, UnitSystem system, NumberForm form) {
  try {
    parse<Force>(text.toStdString(), unitOf<Force>(system), form);
    return true;
  } catch (const Error&) {
    return false;
  }
}

} // namespace

std::vector<PlanPoint> planPoints(const std::vector<QStringList>& rows, UnitSystem system, NumberForm form) {
  std::vector<PlanPoint> points;
  for (const QStringList& row : rows) {
    PlanPoint point{.name = row.value(0), .height = row.value(3)};
    const auto x = metresTyped(row.value(1), system, form);
    const auto y = metresTyped(row.value(2), system, form);
    if (x && y) {
      point.place = QPointF(*x, *y);
    }
    point.capacityKnown = isForce(row.value(4), system, form);
    points.push_back(std::move(point));
  }
  return points;
}

VenuePlan::VenuePlan(UnitSystem system, QWidget* parent) : QWidget(parent), system_(system) {
  setObjectName(QStringLiteral("venuePlan"));
  setAccessibleName(tr("Plan of the venue"));
  setMinimumSize(260, 220);
}

void VenuePlan::setParts(const venue::Venue& readable) {
  parts_ = readable;
  constexpr double wide = 12.0; // of a block that is not said to end: more of it says nothing
  blocks_.clear();
  for (const venue::Section& each : parts_.sections) {
    if (auto block = seatBlock(each, wide, system_ == UnitSystem::usCustomary ? 10 * 0.3048 : 5.0)) {
      blocks_.push_back(std::move(*block));
    }
  }
  describe();
  update();
}

void VenuePlan::setPoints(std::vector<PlanPoint> points) {
  points_ = std::move(points);
  describe();
  update();
}

void VenuePlan::setCurrent(VenuePart part, int row, const QString& name) {
  currentPart_ = part;
  current_ = row;
  currentName_ = name;
  update();
}

bool VenuePlan::showsAll() const {
  return currentPart_ == VenuePart::section || currentPart_ == VenuePart::obstruction ||
         (points_.empty() && parts_.bridles.empty());
}

bool VenuePlan::isCurrent(VenuePart part, const QString& name) const {
  return part == currentPart_ && name == currentName_;
}

void VenuePlan::describe() {
  QStringList missing;
  for (const PlanPoint& point : points_) {
    if (!point.place) {
      missing << (point.name.isEmpty() ? tr("one without a name") : point.name);
    }
  }
  QString says = tr("Points drawn: %1 of %2.")
                     .arg(static_cast<qsizetype>(points_.size()) - missing.size())
                     .arg(points_.size());
  if (!missing.isEmpty()) {
    says += tr(" Not drawn, since the place cannot be read: %1.").arg(missing.join(QStringLiteral(", ")));
  }
  QStringList seats;
  for (const SeatBlock& each : blocks_) {
    seats << each.name;
  }
  if (!seats.isEmpty()) {
    says += tr(" Seats drawn: %1.").arg(seats.join(QStringLiteral(", ")));
  }
  if (!parts_.obstructions.empty()) {
    says += tr(" Obstructions drawn: %1.").arg(parts_.obstructions.size());
  }
  setAccessibleDescription(says);
}

VenuePlan::View VenuePlan::view() const {
  QRectF around(-1.0, -1.0, 2.0, 2.0); // the datum is always in it
  const auto take = [&around](double x, double y) {
    around = QRectF(QPointF(std::min(around.left(), x), std::min(around.top(), y)),
                    QPointF(std::max(around.right(), x), std::max(around.bottom(), y)));
  };
  for (const PlanPoint& point : points_) {
    if (point.place) {
      take(point.place->x(), point.place->y());
    }
  }
  for (const venue::Bridle& each : parts_.bridles) {
    if (each.x && each.y) {
      take(inMetres(*each.x), inMetres(*each.y));
    }
  }
  if (showsAll()) {
    for (const venue::Obstruction& each : parts_.obstructions) {
      take(inMetres(each.xFrom), inMetres(each.yFrom));
      take(inMetres(each.xTo), inMetres(each.yTo));
    }
    for (const SeatBlock& block : blocks_) {
      for (const QPolygonF& row : block.rows) {
        std::ranges::for_each(row, [&](const QPointF& place) { take(place.x(), place.y()); });
      }
    }
  }
  const double side = QFontMetrics(font()).averageCharWidth() * 14.0; // room for names beside the outermost
  const double ends = QFontMetrics(font()).height() * 3.5;
  View view;
  view.scale =
      std::max(0.01, std::min((width() - side) / around.height(), (height() - ends) / around.width()));
  view.middle = around.center();
  return view;
}

QPointF VenuePlan::onScreen(const QPointF& place) const {
  const View now = view();
  return {width() / 2.0 - (place.y() - now.middle.y()) * now.scale,
          height() / 2.0 - (place.x() - now.middle.x()) * now.scale};
}

QPolygonF VenuePlan::onScreen(const QPolygonF& line) const {
  QPolygonF drawn;
  for (const QPointF& each : line) {
    drawn << onScreen(each);
  }
  return drawn;
}

void VenuePlan::paintSeats(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.setFont(fontFor(TextSize::note, font()));
  for (const SeatBlock& block : blocks_) {
    const bool current = isCurrent(VenuePart::section, block.name);
    const QPolygonF first = onScreen(block.rows.front());
    const QPolygonF last = onScreen(block.rows.back());
    QPolygonF outline = first;
    std::for_each(last.rbegin(), last.rend(), [&outline](const QPointF& each) { outline << each; });
    painter.setPen(Qt::NoPen);
    painter.setBrush(current ? colours.chosen : colours.raised);
    painter.drawPolygon(outline);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.line, 1));
    for (const QPolygonF& each : block.depth) {
      painter.drawPolyline(onScreen(each));
    }
    painter.setPen(QPen(current ? colours.accent : colours.steel, current ? 2 : 1));
    for (const QPolygonF& each : block.rows) {
      painter.drawPolyline(onScreen(each));
    }
    if (!block.acrossTheRoom) { // else nobody said where its sides are
      painter.drawLine(first.front(), last.front());
      painter.drawLine(first.back(), last.back());
    }
  }
}

/// After all lines: none goes through a name.
void VenuePlan::paintSeatNames(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.setFont(fontFor(TextSize::note, font()));
  for (const SeatBlock& block : blocks_) {
    const bool current = isCurrent(VenuePart::section, block.name);
    const QPolygonF first = onScreen(block.rows.front());
    const QPolygonF last = onScreen(block.rows.back());
    const QPointF middle = (first[first.size() / 2] + first[(first.size() - 1) / 2] + last[last.size() / 2] +
                            last[(last.size() - 1) / 2]) /
                           4.0;
    QRectF box =
        painter.boundingRect(QRectF(middle - QPointF(100, 10), QSizeF(200, 20)), Qt::AlignCenter, block.name);
    box.moveLeft(std::clamp(box.left(), 2.0, std::max(2.0, width() - box.width() - 2.0)));
    painter.fillRect(box, current ? colours.chosen : colours.raised);
    painter.setPen(current ? colours.accent : colours.text);
    painter.drawText(box, Qt::AlignCenter, block.name);
  }
}

void VenuePlan::paintObstructions(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.setFont(fontFor(TextSize::note, font()));
  painter.setBrush(Qt::NoBrush);
  for (const venue::Obstruction& each : parts_.obstructions) {
    const bool current = isCurrent(VenuePart::obstruction, each.name);
    const QRectF box(onScreen(QPointF(inMetres(each.xTo), inMetres(each.yTo))),
                     onScreen(QPointF(inMetres(each.xFrom), inMetres(each.yFrom))));
    painter.setPen(QPen(current ? colours.accent : colours.steel, current ? 2 : 1, Qt::DashLine));
    painter.drawRect(box);
    painter.setPen(current ? colours.accent : colours.quiet);
    painter.drawText(QRectF(box.center() - QPointF(100, 10), QSizeF(200, 20)), Qt::AlignCenter, each.name);
  }
}

void VenuePlan::paintBridles(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  painter.setFont(fontFor(TextSize::note, font()));
  for (const venue::Bridle& each : parts_.bridles) {
    std::vector<QPointF> from;
    QPointF middle;
    for (const PlanPoint& point : points_) {
      if (point.place && each.points.contains(point.name)) {
        from.push_back(*point.place);
        middle += *point.place;
      }
    }
    if (from.empty()) {
      continue;
    }
    const QPointF apex = each.x && each.y ? QPointF(inMetres(*each.x), inMetres(*each.y))
                                          : middle / static_cast<double>(from.size());
    const bool current = isCurrent(VenuePart::bridle, each.name);
    painter.setPen(QPen(current ? colours.accent : colours.steel, current ? 2 : 1));
    for (const QPointF& place : from) {
      painter.drawLine(onScreen(place), onScreen(apex));
    }
    const QPointF at = onScreen(apex);
    painter.setBrush(colours.sheet);
    painter.drawPolygon(QPolygonF({at + QPointF(0, 5), at + QPointF(-5, -4), at + QPointF(5, -4)}));
    painter.drawText(at + QPointF(space::step, space::small), each.name);
  }
}

void VenuePlan::paintPoints(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  const QFontMetrics metrics(font());
  painter.setFont(font());
  for (std::size_t i = 0; i < points_.size(); ++i) {
    const PlanPoint& point = points_[i];
    if (!point.place) {
      continue;
    }
    const bool current = currentPart_ == VenuePart::point && static_cast<int>(i) == current_;
    const QPointF at = onScreen(*point.place);
    const double size = showsAll() ? 2 : 4;
    painter.setPen(QPen(current ? colours.accent : colours.text, current ? 3 : size / 2));
    painter.setBrush(point.capacityKnown ? QBrush(current ? colours.accent : colours.text) : Qt::NoBrush);
    painter.drawEllipse(at, size, size);
    if (showsAll()) {
      continue; // in so small a scale names would stand over one another
    }
    if (current) {
      painter.setBrush(Qt::NoBrush);
      painter.drawEllipse(at, 9, 9);
    }
    painter.setPen(current ? colours.accent : colours.text);
    // Neighbours stand a metre apart as a rule: every other name goes below its point.
    const QString says = current ? QStringLiteral("%1, %2").arg(point.name, point.height) : point.name;
    const double down =
        i % 2 == 0 ? -space::wide + space::small : space::wide + metrics.ascent() - space::small;
    painter.drawText(at + QPointF(-metrics.horizontalAdvance(says) / 2.0, down), says);
  }
}

void VenuePlan::paintGround(QPainter& painter) const {
  const Colours& colours = coloursOf(palette());
  const QFontMetrics metrics(font());
  const QPointF datum = onScreen(QPointF(0.0, 0.0));
  painter.setFont(fontFor(TextSize::note, font()));
  painter.setPen(colours.quiet);
  const QRect inner = rect().adjusted(space::step, space::small, -space::step, -space::small);
  painter.drawText(inner, Qt::AlignTop | Qt::AlignLeft, tr("audience ↑"));
  painter.drawText(inner, Qt::AlignBottom | Qt::AlignLeft, tr("← stage left"));
  painter.drawText(QPointF(datum.x() + space::small, datum.y() + metrics.height()), tr("datum"));
  // How long a metre (or foot) is here: a bar of a round number of them.
  const bool feet = system_ == UnitSystem::usCustomary;
  const double unit = feet ? 0.3048 : 1.0;
  const double wanted = width() / 4.0 / view().scale / unit;
  const double power = std::pow(10.0, std::floor(std::log10(wanted)));
  const double bar = wanted >= 5.0 * power ? 5.0 * power : wanted >= 2.0 * power ? 2.0 * power : power;
  const QPointF end(width() - space::step, height() - metrics.height() - space::step);
  painter.setPen(QPen(colours.quiet, 2));
  painter.drawLine(end, end - QPointF(bar * unit * view().scale, 0));
  painter.drawText(inner, Qt::AlignBottom | Qt::AlignRight,
                   QStringLiteral("%1 %2").arg(bar).arg(feet ? QStringLiteral("ft") : QStringLiteral("m")));
}

void VenuePlan::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = coloursOf(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colours.sheet);
  paintSeats(painter);
  const QPointF datum = onScreen(QPointF(0.0, 0.0));
  painter.setPen(QPen(colours.line, 1));
  painter.drawLine(QPointF(0, datum.y()), QPointF(width(), datum.y()));
  painter.drawLine(QPointF(datum.x(), 0), QPointF(datum.x(), height()));
  if (showsAll()) {
    paintSeatNames(painter);
  }
  paintObstructions(painter);
  paintBridles(painter);
  paintPoints(painter);
  paintGround(painter);
  if (points_.empty() && blocks_.empty()) {
    painter.setFont(font());
    painter.setPen(colours.quiet);
    painter.drawText(rect(), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                     QStringLiteral("\n\n") + tr("No points yet. Add one, and it is drawn here."));
  }
}

} // namespace hangbook::desk
