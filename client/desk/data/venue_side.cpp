// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/venue_side.h"

#include <algorithm>
#include <limits>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

using exchange::VenuePart;

std::vector<SideTrim> trimsIn(const Overview& overview, const QString& venue) {
  std::vector<SideTrim> trims;
  for (const calendar::Show& show : overview.shows) {
    if (show.venue != venue) {
      continue;
    }
    for (const calendar::Hang& hang : show.hangs) {
      if (const auto* choice = findChoice(overview, {show.tour, show.name}, hang.name)) {
        trims.push_back({show.name, hang.name, choice->setting.trimM});
      }
    }
  }
  return trims;
}

VenueSide::VenueSide(const Figures& figures, QWidget* parent) : QWidget(parent), figures_(figures) {
  setObjectName(QStringLiteral("venueSide"));
  setAccessibleName(tr("The venue from the side"));
  setMinimumSize(260, 130);
}

void VenueSide::setVenue(const venue::Venue& readable) {
  venue_ = readable;
  profiles_.clear();
  for (const venue::Section& each : venue_.sections) {
    if (auto profile = seatProfile(each)) {
      profiles_.push_back(std::move(*profile));
    }
  }
  describe();
  update();
}

void VenueSide::setTrims(std::vector<SideTrim> trims) {
  trims_ = std::move(trims);
  describe();
  update();
}

void VenueSide::setCurrent(VenuePart part, const QString& name) {
  currentPart_ = part;
  currentName_ = name;
  update();
}

std::vector<VenueSide::Level> VenueSide::levels() const {
  std::vector<Level> all;
  const auto add = [&](const QString& words, std::optional<Length> height) {
    if (height) {
      all.push_back({words.arg(figures_.length(inMetres(*height))), inMetres(*height), false});
    }
  };
  add(tr("low steel %1"), venue_.lowSteel);
  add(tr("most trim %1"), venue_.mostTrim);
  add(tr("least trim %1"), venue_.leastTrim);
  // Hangs of one show as a rule have one trim: named together.
  std::vector<SideTrim> left = trims_;
  while (!left.empty()) {
    const SideTrim first = left.front();
    QStringList hangs;
    std::erase_if(left, [&](const SideTrim& each) {
      const bool same = each.trim == first.trim && each.show == first.show;
      if (same) {
        hangs << each.hang;
      }
      return same;
    });
    all.push_back(
        {tr("%1: %2, trim %3").arg(first.show, hangs.join(QStringLiteral(", ")), figures_.length(first.trim)),
         first.trim, true});
  }
  return all;
}

void VenueSide::describe() {
  QStringList says;
  for (const SeatProfile& each : profiles_) {
    const QPolygonF& line = each.ears.isEmpty() ? each.floor : each.ears;
    says << (each.ears.isEmpty() ? tr("%1: ears not known, floor from %2 at %3 to %4 at %5")
                                 : tr("%1: ears from %2 at %3 to %4 at %5"))
                .arg(each.name, figures_.length(line.front().y()), figures_.length(line.front().x()),
                     figures_.length(line.back().y()), figures_.length(line.back().x()));
  }
  for (const Level& each : levels()) {
    says << each.words;
  }
  setAccessibleDescription(says.join(QStringLiteral(". ")));
}

QRectF VenueSide::extent() const {
  double right = 10.0;
  double low = 0.0;
  double high = 3.0;
  const auto take = [&](double x, double z) {
    right = std::max(right, x);
    low = std::min(low, z);
    high = std::max(high, z);
  };
  for (const SeatProfile& each : profiles_) {
    for (const QPolygonF* line : {&each.floor, &each.ears}) {
      std::ranges::for_each(*line, [&](const QPointF& at) { take(at.x(), at.y()); });
    }
  }
  for (const venue::Point& each : venue_.points) {
    take(inMetres(each.x), inMetres(each.z));
  }
  for (const venue::Obstruction& each : venue_.obstructions) {
    take(inMetres(each.xTo), inMetres(each.underside));
  }
  for (const Level& each : levels()) {
    take(0.0, each.height);
  }
  return {QPointF(-2.0, low), QPointF(right, high)};
}

void VenueSide::paintSeats(QPainter& painter, const QTransform& to) const {
  const Colours& colours = coloursOf(palette());
  const QFontMetrics metrics(painter.font());
  for (const SeatProfile& each : profiles_) {
    const bool current = currentPart_ == VenuePart::section && each.name == currentName_;
    painter.setPen(QPen(colours.steel, 1));
    painter.drawPolyline(to.map(each.floor));
    painter.setPen(QPen(current ? colours.accent : colours.text, current ? 3 : 2));
    painter.drawPolyline(to.map(each.ears));
    const QPolygonF line = to.map(each.ears.isEmpty() ? each.floor : each.ears);
    QStringList names; // blocks to the left and right stand over one another here
    for (const SeatProfile& other : profiles_) {
      if (other.floor == each.floor && other.ears == each.ears) {
        names << other.name;
      }
    }
    if (names.front() != each.name) {
      continue; // named already
    }
    const QString called = names.join(QStringLiteral(", "));
    const QString says = each.ears.isEmpty() ? tr("%1: ears not known").arg(called) : called;
    const double wide = metrics.horizontalAdvance(says);
    const QPointF middle = (line.front() + line.back()) / 2.0;
    const double back = line.back().y() < line.front().y() - 2.0 ? wide : wide / 2.0; // clear of what rises
    painter.setPen(names.contains(currentName_) && currentPart_ == VenuePart::section ? colours.accent
                                                                                      : colours.text);
    painter.drawText(QPointF(std::clamp(middle.x() - back, 2.0, std::max(2.0, width() - wide - 2.0)),
                             middle.y() - space::step),
                     says);
  }
}

/// Bounds are named under their line, trims over theirs; over the stage, where there are no seats.
void VenueSide::paintLevels(QPainter& painter, const QTransform& to) const {
  const Colours& colours = coloursOf(palette());
  const QFontMetrics metrics(painter.font());
  const double left = to.map(QPointF(0.0, 0.0)).x() + space::step;
  const double most = std::numeric_limits<double>::max();
  double under = 0.0; // the baseline above which no further bound is named
  double over = most; // the one under which no further trim is
  std::vector<Level> all = levels();
  std::ranges::sort(all, std::greater<>(), &Level::height);
  const auto name = [&](const Level& each, double base) {
    painter.setPen(each.trim ? colours.accent : colours.quiet);
    painter.drawText(QPointF(left, base),
                     metrics.elidedText(each.words, Qt::ElideRight, width() - static_cast<int>(left)));
  };
  for (const Level& each : all) {
    const double y = to.map(QPointF(0.0, each.height)).y();
    painter.setPen(
        QPen(each.trim ? colours.accent : colours.steel, 1, each.trim ? Qt::DashLine : Qt::SolidLine));
    painter.drawLine(QPointF(0, y), QPointF(width(), y));
    if (!each.trim) {
      under = std::max(y + metrics.ascent() + 1, under);
      name(each, under);
      under += metrics.height();
    }
  }
  for (auto each = all.rbegin(); each != all.rend(); ++each) { // from below
    if (each->trim) {
      over = std::min(to.map(QPointF(0.0, each->height)).y() - 3, over);
      name(*each, over);
      over -= metrics.height();
    }
  }
}

void VenueSide::paintSteel(QPainter& painter, const QTransform& to) const {
  const Colours& colours = coloursOf(palette());
  for (const venue::Obstruction& each : venue_.obstructions) {
    const bool current = currentPart_ == VenuePart::obstruction && each.name == currentName_;
    painter.setPen(QPen(current ? colours.accent : colours.steel, 2, Qt::DashLine));
    painter.drawLine(to.map(QLineF(inMetres(each.xFrom), inMetres(each.underside), inMetres(each.xTo),
                                   inMetres(each.underside))));
  }
  painter.setPen(Qt::NoPen);
  for (const venue::Point& each : venue_.points) {
    const bool current = currentPart_ == VenuePart::point && each.name == currentName_;
    painter.setBrush(current ? colours.accent : colours.text);
    painter.drawEllipse(to.map(QPointF(inMetres(each.x), inMetres(each.z))), 2.5, 2.5);
  }
}

void VenueSide::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = coloursOf(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colours.sheet);
  painter.setFont(fontFor(TextSize::note, font()));
  const double line = QFontMetrics(painter.font()).height();
  const QRectF shown = extent();
  const QRectF room = QRectF(rect()).adjusted(space::step, line, -space::step, -1.5 * line);
  const double scale = std::max(0.01, std::min(room.width() / shown.width(), room.height() / shown.height()));
  QTransform to;
  to.translate(room.left(), room.bottom());
  to.scale(scale, -scale);
  to.translate(-shown.left(), -shown.top());
  painter.setPen(QPen(colours.line, 1));
  painter.drawLine(QPointF(0, to.map(QPointF(0, 0)).y()), QPointF(width(), to.map(QPointF(0, 0)).y()));
  painter.drawLine(to.map(QLineF(0.0, 0.0, 0.0, shown.bottom())));
  painter.setPen(colours.quiet);
  painter.drawText(to.map(QPointF(0, 0)) + QPointF(2, line), tr("datum"));
  const QString far = tr("%1 from it").arg(figures_.length(shown.right(), 0));
  painter.drawText(
      QPointF(to.map(QPointF(shown.right(), 0)).x() - QFontMetrics(painter.font()).horizontalAdvance(far),
              to.map(QPointF(0, 0)).y() + line),
      far);
  paintLevels(painter, to);
  paintSteel(painter, to);
  paintSeats(painter, to);
  if (profiles_.empty()) {
    painter.setPen(colours.quiet);
    painter.drawText(rect(), Qt::AlignCenter, tr("No seats yet: add a section, and it is drawn here."));
  }
}

} // namespace hangbook::desk
