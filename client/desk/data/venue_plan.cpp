// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/venue_plan.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
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
  setAccessibleName(tr("Plan of the points"));
  setMinimumSize(260, 260);
}

void VenuePlan::setObstructions(const std::vector<venue::Obstruction>& obstructions) {
  obstructions_ = obstructions;
  update();
}

void VenuePlan::setPoints(std::vector<PlanPoint> points) {
  points_ = std::move(points);
  describe();
  update();
}

void VenuePlan::setCurrent(int row) {
  current_ = row;
  update();
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
  for (const venue::Obstruction& each : obstructions_) {
    take(inMetres(each.xFrom), inMetres(each.yFrom));
    take(inMetres(each.xTo), inMetres(each.yTo));
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

void VenuePlan::paintEvent(QPaintEvent* /*event*/) {
  const Colours& colours = coloursOf(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), colours.sheet);
  painter.setPen(QPen(colours.line, 1));
  const QPointF datum = onScreen({0.0, 0.0});
  painter.drawLine(QPointF(0, datum.y()), QPointF(width(), datum.y()));
  painter.drawLine(QPointF(datum.x(), 0), QPointF(datum.x(), height()));
  painter.setPen(QPen(colours.steel, 1, Qt::DashLine));
  for (const venue::Obstruction& each : obstructions_) {
    painter.drawRect(QRectF(onScreen({inMetres(each.xTo), inMetres(each.yTo)}),
                            onScreen({inMetres(each.xFrom), inMetres(each.yFrom)})));
  }
  const QFontMetrics metrics(font());
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
  if (points_.empty()) {
    painter.setFont(font());
    painter.drawText(rect(), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                     QStringLiteral("\n\n") + tr("No points yet. Add one, and it is drawn here."));
  }
  painter.setFont(font());
  for (std::size_t i = 0; i < points_.size(); ++i) {
    const PlanPoint& point = points_[i];
    if (!point.place) {
      continue;
    }
    const bool isCurrent = static_cast<int>(i) == current_;
    const QPointF at = onScreen(*point.place);
    painter.setPen(QPen(isCurrent ? colours.accent : colours.text, isCurrent ? 3 : 2));
    painter.setBrush(point.capacityKnown ? QBrush(isCurrent ? colours.accent : colours.text) : Qt::NoBrush);
    painter.drawEllipse(at, 4, 4);
    if (isCurrent) {
      painter.setBrush(Qt::NoBrush);
      painter.drawEllipse(at, 9, 9);
    }
    painter.setPen(isCurrent ? colours.accent : colours.text);
    // Neighbours stand a metre apart as a rule: every other name goes below its point.
    const QString says = isCurrent ? QStringLiteral("%1, %2").arg(point.name, point.height) : point.name;
    const double down =
        i % 2 == 0 ? -space::wide + space::small : space::wide + metrics.ascent() - space::small;
    painter.drawText(at + QPointF(-metrics.horizontalAdvance(says) / 2.0, down), says);
  }
}

} // namespace hangbook::desk
