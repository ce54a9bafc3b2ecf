// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/scene.h"

#include <algorithm>
#include <cmath>

#include "hang/settle.h"
#include "options/carriers.h"
#include "options/headroom.h"
#include "options/room_limits.h"
#include "options/seating.h"
#include "options/ways.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

using hang::Vec3;

/// The part of a case that geometry reads.
Case caseFor(const Snapshot& snapshot, const House& house, const Option& option) {
  Case made;
  made.snapshot = &snapshot;
  made.house = &house;
  made.key = option.key;
  for (const calendar::Hang& each : snapshot.show.hangs) {
    if (each.name == option.key.hang) {
      made.hang = &each;
    }
  }
  if (made.hang == nullptr) {
    throw Error(Trouble::badInput, "the show has no hang “" + option.key.hang.toStdString() + "”", "hang");
  }
  const catalogue::Catalogue& catalogue = snapshot.catalogue;
  for (const QString& type : option.key.stack) {
    if (const auto* cabinet = catalogue::find(catalogue.cabinets, type)) {
      made.cabinets.push_back(cabinet);
    }
  }
  made.bar = catalogue::find(catalogue.bars, option.key.bar);
  made.hoist = catalogue::find(catalogue.hoists, option.key.hoist);
  made.table = catalogue::find(catalogue.tables, option.key.table);
  calendar::Hang asked;
  asked.points = option.key.points;
  const CandidatePoints found =
      candidatePoints(snapshot, House(snapshot.tour.house, snapshot.venue.house, snapshot.show.house), asked);
  made.points = found.points;
  findCarriers(found.bridles, made);
  if (option.hangInput && option.hangInput->chain && made.table != nullptr) {
    made.chain = catalogue::find(catalogue.chains, made.table->chain);
    made.held = option.hangInput->chain->held;
  }
  made.room = roomLimits(made);
  return made;
}

class Painter {
public:
  Painter(const Case& option, Scene& scene) : option_(option), scene_(scene) {
    if (!option.points.empty()) {
      placement_ = placementOf(option, {});
      bearing_ = placement_.forward;
    }
  }

  void hang(const Settled& settled, double trimM) {
    settled_ = &settled;
    trim_ = trimM;
    placement_ = placementOf(option_, settled.layout);
    bearing_ = bearingOf(placement_, settled.layout);
    origin_ = originHeight(option_, settled, trimM);
  }

  void paint() {
    sections();
    obstructions();
    if (settled_ != nullptr) {
      hoists();
      bar();
      cabinets();
      chain();
      centre();
      dimensions();
      cover();
    } else {
      for (const venue::Point* each : option_.points) {
        const ScenePlace at = planPlace({inMetres(each->x), inMetres(each->y)}, inMetres(each->z));
        scene_.hoists.push_back({each->name, at, {}, at, {}, {}});
        see(at);
      }
    }
    scene_.from = low_;
    scene_.to = high_;
  }

private:
  double alongOf(Plan place) const {
    return placement_.origin.x + (place.x - placement_.origin.x) * bearing_.x +
           (place.y - placement_.origin.y) * bearing_.y;
  }
  ScenePlace planPlace(Plan place, double height) const { return {alongOf(place), height}; }
  ScenePlace place(Vec3 world) const { return {alongOf(placement_.placeOf(world)), origin_ + world.z}; }
  ScenePlace rowPlace(double x, double yFrom, double yTo, double height) const {
    return {placement_.origin.x + distanceInPlan(placement_.origin, bearing_, x, yFrom, yTo), height};
  }
  /// Of a row behind a front line, the place that is nearest to the hang's line.
  ScenePlace nearestOf(const SweptSection& section, double behind, double height) const {
    const Plan at = section.placeOf(behind, section.partNearest(behind, placement_.origin, bearing_));
    return rowPlace(at.x, at.y, at.y, height);
  }
  void see(ScenePlace each) {
    if (!seen_) {
      low_ = high_ = each;
      seen_ = true;
    }
    low_ = {std::min(low_.along, each.along), std::min(low_.height, each.height)};
    high_ = {std::max(high_.along, each.along), std::max(high_.height, each.height)};
  }

  void sections() {
    see({placement_.origin.x, 0.0});
    for (const venue::Section& section : option_.snapshot->venue.sections) {
      SceneSection drawn;
      drawn.name = section.name;
      drawn.mustBeCovered = option_.hang->sections.isEmpty() || option_.hang->sections.contains(section.name);
      const std::optional<SweptSection> swept = sweptSection(section);
      if (section.swept() && !swept) {
        continue; // where it lies is not known
      }
      const double yFrom =
          section.yFrom ? inMetres(*section.yFrom) : -std::numeric_limits<double>::infinity();
      const double yTo = section.yTo ? inMetres(*section.yTo) : std::numeric_limits<double>::infinity();
      for (const venue::ProfilePoint& each : section.profile) {
        const double x = inMetres(each.x);
        const auto rowAt = [&](double height) {
          return swept ? nearestOf(*swept, x, height) : rowPlace(x, yFrom, yTo, height);
        };
        drawn.floor.push_back(rowAt(inMetres(each.z)));
        see(drawn.floor.back());
        if (section.earHeight) {
          drawn.ears.push_back(rowAt(inMetres(each.z) + inMetres(*section.earHeight)));
          see(drawn.ears.back());
        }
        lowestFloor_ = std::min(lowestFloor_, inMetres(each.z));
      }
      scene_.sections.push_back(std::move(drawn));
    }
  }

  void obstructions() {
    QStringList over;
    if (settled_ != nullptr) {
      for (const HeadroomCheck& check : headroomChecks(option_, *settled_).checks) {
        if (check.ceiling >= 0) {
          over.append(option_.room->ceilings[static_cast<std::size_t>(check.ceiling)].name);
        }
      }
    }
    for (const Ceiling& each : option_.room->ceilings) {
      if (std::isinf(each.xTo)) {
        scene_.lowSteel = each.underside;
        see({placement_.origin.x, each.underside});
        continue;
      }
      SceneObstruction drawn;
      drawn.name = each.name;
      drawn.underside = each.underside;
      drawn.overHang = over.contains(each.name);
      drawn.from = std::numeric_limits<double>::infinity();
      drawn.to = -drawn.from;
      for (const Plan corner : {Plan{each.xFrom, each.yFrom}, Plan{each.xFrom, each.yTo},
                                Plan{each.xTo, each.yFrom}, Plan{each.xTo, each.yTo}}) {
        drawn.from = std::min(drawn.from, alongOf(corner));
        drawn.to = std::max(drawn.to, alongOf(corner));
      }
      see({drawn.from, drawn.underside});
      see({drawn.to, drawn.underside});
      scene_.obstructions.push_back(std::move(drawn));
    }
  }

  void hoists() {
    const RoomLimits& limits = *option_.room;
    const auto& picks = settled_->layout.picks;
    for (std::size_t i = 0; i < picks.size() && i < option_.points.size(); ++i) {
      const venue::Point& point = *option_.points[i];
      SceneHoist drawn;
      drawn.point = point.name;
      drawn.pointAt = planPlace({inMetres(point.x), inMetres(point.y)}, inMetres(point.z));
      drawn.hook = place(picks[i]);
      if (i < option_.bridles.size() && option_.bridles[i] != nullptr) {
        for (const BridleLeg& leg : option_.bridles[i]->legs) {
          drawn.legs.push_back(
              planPlace({inMetres(leg.point->x), inMetres(leg.point->y)}, inMetres(leg.point->z)));
          see(drawn.legs.back());
        }
      }
      see(drawn.pointAt);
      see(drawn.hook);
      if (!std::isnan(limits.closedLength) && option_.hoist != nullptr && option_.hoist->bodyClimbs) {
        if (*option_.hoist->bodyClimbs) {
          drawn.bodyBottom = drawn.hook;
          drawn.bodyTop = ScenePlace{drawn.hook.along, drawn.hook.height + limits.closedLength};
        } else if (!std::isnan(limits.riggingLength)) {
          drawn.bodyTop = ScenePlace{drawn.pointAt.along, drawn.pointAt.height - limits.riggingLength};
          drawn.bodyBottom = ScenePlace{drawn.pointAt.along, drawn.bodyTop->height - limits.closedLength};
        }
      }
      scene_.hoists.push_back(std::move(drawn));
    }
  }

  void bar() {
    const hang::Layout& layout = settled_->layout;
    if (option_.bar != nullptr) {
      for (const catalogue::Position& corner : option_.bar->outline) {
        scene_.barOutline.push_back(
            place(layout.frameOrigin + inMetres(corner.x) * layout.forward + inMetres(corner.z) * layout.up));
        see(scene_.barOutline.back());
      }
    }
    if (option_.key.picks == catalogue::Picks::sidePair) {
      scene_.head = {place({}), place(layout.frameOrigin)};
    }
  }

  void cabinets() {
    const auto& elements = settled_->layout.elements;
    for (std::size_t i = 0; i < elements.size(); ++i) {
      SceneCabinet drawn;
      drawn.name = option_.key.stack.value(static_cast<qsizetype>(i));
      drawn.element = static_cast<int>(i) + 1;
      drawn.aimDeg = elements[i].aimDeg;
      drawn.covers = i < option_.cabinets.size() && option_.cabinets[i]->coversAudience;
      for (const Vec3& corner : elements[i].outline) {
        drawn.outline.push_back(place(corner));
        see(drawn.outline.back());
      }
      scene_.cabinets.push_back(std::move(drawn));
    }
  }

  void chain() {
    const hang::Layout& layout = settled_->layout;
    if (option_.held <= 0 || !layout.chainAnchor || !settled_->setting.mark ||
        static_cast<std::size_t>(option_.held) > layout.elements.size()) {
      return;
    }
    const auto& eye = layout.elements[static_cast<std::size_t>(option_.held - 1)].chainEye;
    if (!eye) {
      return;
    }
    SceneChain drawn{place(*layout.chainAnchor), place(*eye), *settled_->setting.mark, {}};
    const double unused = unusedChain(option_, *settled_);
    if (!std::isnan(unused)) {
      drawn.unused = unused;
    }
    see(drawn.eye);
    scene_.chain = drawn;
  }

  void centre() {
    scene_.centreOfGravity = place(settled_->statics.cg);
    Vec3 middle;
    for (const Vec3& each : settled_->layout.picks) {
      middle = middle + each;
    }
    const ScenePlace top = place((1.0 / static_cast<double>(settled_->layout.picks.size())) * middle);
    scene_.pickLine = {top, {top.along, std::min(trim_, scene_.centreOfGravity->height)}};
  }

  void dimensions() {
    const double along = scene_.pickLine.front().along;
    scene_.dimensions.push_back({QStringLiteral("trim"), {along, 0.0}, {along, trim_}, trim_});
    const HeadroomChecks checks = headroomChecks(option_, *settled_);
    const auto narrow = std::min_element(
        checks.checks.begin(), checks.checks.end(),
        [](const HeadroomCheck& a, const HeadroomCheck& b) { return a.mostTrim() < b.mostTrim(); });
    if (narrow != checks.checks.end()) {
      const double from = trim_ + narrow->rise;
      scene_.dimensions.push_back(
          {QStringLiteral("headroom"), {along, from}, {along, narrow->highest}, narrow->highest - from});
    }
  }

  /// Where a ray ends: at its throw, or at the lowest floor if that comes first.
  ScenePlace endOf(ScenePlace from, double elevationDeg, double throwM) const {
    const double sine = std::sin(hang::toRadians(elevationDeg));
    double length = throwM;
    if (sine < 0.0) {
      length = std::min(length, (lowestFloor_ - from.height) / sine);
    }
    length = std::max(0.0, length);
    return {from.along + length * std::cos(hang::toRadians(elevationDeg)), from.height + length * sine};
  }

  void cover() {
    const Audience& audience = option_.room->audience;
    for (const CoverEdges& each : audience.cabinets) {
      if (std::isnan(each.lowestDeg + each.highestDeg + each.throwM) ||
          each.element >= settled_->layout.elements.size()) {
        continue;
      }
      const hang::PlacedElement& element = settled_->layout.elements[each.element];
      const ScenePlace from = place(sourceOf(element));
      const int number = static_cast<int>(each.element) + 1;
      scene_.edges.push_back(
          {number, true, from, endOf(from, element.aimDeg + each.highestDeg, each.throwM)});
      scene_.edges.push_back(
          {number, false, from, endOf(from, element.aimDeg + each.lowestDeg, each.throwM)});
    }
    if (!audience.missing.isEmpty() || audience.positions.empty()) {
      return; // what is covered is not known, so nothing is said of it
    }
    const CoverView view = viewOf(option_, audience, *settled_);
    missed(audience, view);
    if (!audience.cabinets.empty()) {
      sights(audience, view);
    }
  }

  ScenePlace earOf(const Audience& audience, std::size_t position) const {
    const AudiencePosition& each = audience.positions[position];
    return rowPlace(each.x, each.yFrom, each.yTo, each.ear);
  }

  /// Row by row; a stretch ends where a row is covered, or missed in another way.
  void missed(const Audience& audience, const CoverView& view) {
    for (std::size_t number = 0; number < audience.blocks.size(); ++number) {
      const AudienceBlock& block = audience.blocks[number];
      const QString& name = audience.sections[static_cast<qsizetype>(number)];
      std::size_t before = 0; // seats missed in the row before
      for (std::size_t row = block.first; row < block.first + block.count; row += block.seats) {
        std::size_t seats = 0;
        for (std::size_t i = row; i < row + block.seats; ++i) {
          seats += isCovered(audience, view, i, trim_) ? 0 : 1;
        }
        const bool partly = seats < block.seats;
        if (seats > 0) {
          if (before == 0 || partly != scene_.missed.back().partly) {
            scene_.missed.push_back({name, {}, partly});
          }
          scene_.missed.back().ears.push_back(block.swept ? earOfRow(audience, block, row)
                                                          : earOf(audience, row));
        }
        before = seats;
      }
    }
  }

  ScenePlace earOfRow(const Audience& audience, const AudienceBlock& block, std::size_t row) const {
    const AudiencePosition* nearest = &audience.positions[row];
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = row; i < row + block.seats; ++i) {
      const AudiencePosition& each = audience.positions[i];
      const Plan from{each.x - placement_.origin.x, each.yFrom - placement_.origin.y};
      const bool ahead = from.x * bearing_.x + from.y * bearing_.y > 0.0;
      const double off = std::abs(bearing_.x * from.y - bearing_.y * from.x) + (ahead ? 0.0 : 1e6);
      if (off < least) {
        least = off;
        nearest = &each;
      }
    }
    return rowPlace(nearest->x, nearest->yFrom, nearest->yTo, nearest->ear);
  }

  void sights(const Audience& audience, const CoverView& view) {
    const ScenePlace from = place(sourceOf(settled_->layout.elements[audience.cabinets.front().element]));
    const auto [near, far] = std::minmax_element(view.distance.begin(), view.distance.end());
    for (const auto& each : {near, far}) {
      const auto position = static_cast<std::size_t>(each - view.distance.begin());
      scene_.sights.push_back(
          {from, earOf(audience, position), each == far, isCovered(audience, view, position, trim_)});
    }
  }

  const Case& option_;
  Scene& scene_;
  const Settled* settled_ = nullptr;
  Placement placement_;
  Plan bearing_{1.0, 0.0};
  double trim_ = notKnown;
  double origin_ = 0.0;
  double lowestFloor_ = 0.0;
  bool seen_ = false;
  ScenePlace low_;
  ScenePlace high_;
};

} // namespace

Scene sceneOf(const Snapshot& snapshot, const Option& option) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const Case made = caseFor(snapshot, house, option);
  Scene scene;
  scene.hang = option.key.hang;
  Painter painter(made, scene);
  Settled settled;
  if (option.setting && option.hangInput && !std::isnan(option.setting->trimM) &&
      made.cabinets.size() == option.hangInput->stack.size()) {
    settled.setting = *option.setting;
    settled.statics = hang::standing(*option.hangInput);
    settled.layout = hang::layOut(*option.hangInput, settled.statics);
    painter.hang(settled, option.setting->trimM);
  }
  painter.paint();
  return scene;
}

} // namespace hangbook::options
