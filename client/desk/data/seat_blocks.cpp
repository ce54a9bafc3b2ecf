// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/seat_blocks.h"

#include <cmath>

#include "options/seating.h"

namespace hangbook::desk {
namespace {

/// A row of a section in plan, `behind` being the profile's own x.
class Rows {
public:
  static std::optional<Rows> of(const venue::Section& section, double halfWidth) {
    if (section.profile.size() < 2) {
      return std::nullopt;
    }
    Rows rows;
    if (section.swept()) {
      rows.swept_ = options::sweptSection(section);
      return rows.swept_ ? std::optional(rows) : std::nullopt;
    }
    rows.right_ = section.yFrom ? inMetres(*section.yFrom) : -halfWidth;
    rows.left_ = section.yTo ? inMetres(*section.yTo) : halfWidth;
    rows.middle_ = section.yFrom && section.yTo ? (rows.right_ + rows.left_) / 2.0 : 0.0;
    return rows;
  }

  QPolygonF at(double behind) const {
    if (!swept_) {
      return QPolygonF({{behind, right_}, {behind, left_}});
    }
    const int pieces = swept_->radius == 0.0 ? 1 : 32; // of an arc: no corner is seen
    QPolygonF row;
    for (int i = 0; i <= pieces; ++i) {
      const options::Plan place = swept_->placeOf(behind, static_cast<double>(i) / pieces - 0.5);
      row << QPointF(place.x, place.y);
    }
    return row;
  }

  QPointF middle(double behind) const {
    if (!swept_) {
      return {behind, middle_};
    }
    const options::Plan place = swept_->placeOf(behind, 0.0);
    return {place.x, place.y};
  }

private:
  std::optional<options::SweptSection> swept_;
  double right_ = 0.0;
  double left_ = 0.0;
  double middle_ = 0.0;
};

} // namespace

std::optional<SeatBlock> seatBlock(const venue::Section& section, double halfWidth, double every) {
  const auto rows = Rows::of(section, halfWidth);
  if (!rows) {
    return std::nullopt;
  }
  SeatBlock block{.name = section.name};
  block.acrossTheRoom = !section.swept() && (!section.yFrom || !section.yTo);
  for (const venue::ProfilePoint& each : section.profile) {
    block.rows.push_back(rows->at(inMetres(each.x)));
  }
  const double first = inMetres(section.profile.front().x);
  const double last = inMetres(section.profile.back().x);
  for (int i = 1; first + i * every < last; ++i) {
    block.depth.push_back(rows->at(first + i * every));
  }
  return block;
}

std::optional<SeatProfile> seatProfile(const venue::Section& section) {
  const auto rows = Rows::of(section, 0.0);
  if (!rows) {
    return std::nullopt;
  }
  SeatProfile profile{.name = section.name};
  for (const venue::ProfilePoint& each : section.profile) {
    const QPointF middle = rows->middle(inMetres(each.x));
    const double away = std::hypot(middle.x(), middle.y());
    profile.floor << QPointF(away, inMetres(each.z));
    if (section.earHeight) {
      profile.ears << QPointF(away, inMetres(each.z) + inMetres(*section.earHeight));
    }
  }
  return profile;
}

} // namespace hangbook::desk
