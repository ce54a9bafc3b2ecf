// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/scene_drawing.h"

#include <algorithm>
#include <cmath>

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

using options::Scene;
using options::ScenePlace;

QPointF at(const ScenePlace& place) {
  return {place.along, place.height};
}

QPolygonF line(const std::vector<ScenePlace>& places) {
  QPolygonF points;
  for (const ScenePlace& each : places) {
    points << at(each);
  }
  return points;
}

void addRoom(Drawing& drawing, const Scene& scene, const Figures& figures) {
  const double thick = 0.25; // how deep structure is hatched, on paper only
  if (scene.lowSteel) {
    const double low = *scene.lowSteel;
    drawing.shapes.push_back({Ink::steel,
                              QPolygonF({{scene.from.along, low},
                                         {scene.to.along, low},
                                         {scene.to.along, low + thick},
                                         {scene.from.along, low + thick}}),
                              true});
    drawing.labels.push_back({.at = {scene.to.along, low},
                              .text = Words::tr("low steel %1").arg(figures.length(low)),
                              .side = Side::below,
                              .rank = 6});
  }
  for (const options::SceneObstruction& each : scene.obstructions) {
    drawing.shapes.push_back({Ink::steel,
                              QPolygonF({{each.from, each.underside},
                                         {each.to, each.underside},
                                         {each.to, each.underside + thick},
                                         {each.from, each.underside + thick}}),
                              true});
    drawing.labels.push_back({.at = {(each.from + each.to) / 2, each.underside},
                              .text = each.name,
                              .side = Side::below,
                              .rank = each.overHang ? 4 : 8});
  }
  for (const options::SceneSection& each : scene.sections) {
    drawing.shapes.push_back({Ink::floor, line(each.floor), false});
    if (!each.ears.empty()) {
      drawing.shapes.push_back({each.mustBeCovered ? Ink::covered : Ink::row, line(each.ears), false});
    }
    if (!each.floor.empty()) {
      const QPointF middle = (at(each.floor.front()) + at(each.floor.back())) / 2;
      drawing.labels.push_back({.at = middle, .text = each.name, .side = Side::below, .rank = 7});
    }
  }
}

/// A hatched patch at each stretch of ears that nothing covers.
void addMissed(Drawing& drawing, const Scene& scene) {
  const double half = 0.25; // the rows are sampled every half metre
  for (const options::SceneMissed& each : scene.missed) {
    for (const ScenePlace& ear : each.ears) {
      drawing.shapes.push_back({Ink::notCovered,
                                QPolygonF({{ear.along - half, ear.height - 0.5},
                                           {ear.along + half, ear.height - 0.5},
                                           {ear.along + half, ear.height + 0.3},
                                           {ear.along - half, ear.height + 0.3}}),
                                true});
    }
    if (!each.ears.empty()) {
      drawing.labels.push_back(
          {.at = at(each.ears[each.ears.size() / 2]) + QPointF(0, 0.4),
           .text = each.partly ? Words::tr("partly not covered") : Words::tr("not covered"),
           .side = Side::above,
           .strong = true,
           .rank = 2});
    }
  }
}

/// Elevation of an edge, in radians.
double slope(const options::SceneEdge& edge) {
  return std::atan2(edge.to.height - edge.from.height, edge.to.along - edge.from.along);
}

void addCover(Drawing& drawing, const Scene& scene) {
  QPolygonF covered; // of all cabinets together; gaps between them stay gaps
  for (const options::SceneEdge& upper : scene.edges) {
    if (!upper.upper) {
      continue;
    }
    const auto lower =
        std::find_if(scene.edges.begin(), scene.edges.end(), [&](const options::SceneEdge& each) {
          return !each.upper && each.element == upper.element;
        });
    if (lower != scene.edges.end()) {
      covered = covered.united(QPolygonF({at(upper.from), at(upper.to), at(lower->to), at(lower->from)}));
    }
  }
  if (!covered.isEmpty()) {
    drawing.shapes.push_back({Ink::cover, covered, true});
  }
  // Only the outermost edges are drawn as lines: those between would be a thicket.
  const options::SceneEdge* highest = nullptr;
  const options::SceneEdge* lowest = nullptr;
  for (const options::SceneEdge& each : scene.edges) {
    if (each.upper && (highest == nullptr || slope(each) > slope(*highest))) {
      highest = &each;
    }
    if (!each.upper && (lowest == nullptr || slope(each) < slope(*lowest))) {
      lowest = &each;
    }
  }
  for (const options::SceneEdge* each : {highest, lowest}) {
    if (each != nullptr) {
      drawing.shapes.push_back({Ink::cover, QPolygonF({at(each->from), at(each->to)}), false});
    }
  }
}

void addRigging(Drawing& drawing, const Scene& scene) {
  for (const options::SceneHoist& each : scene.hoists) {
    drawing.shapes.push_back({Ink::rigging, QPolygonF({at(each.pointAt), at(each.hook)}), false});
    for (const options::ScenePlace& leg : each.legs) {
      drawing.shapes.push_back({Ink::rigging, QPolygonF({at(leg), at(each.pointAt)}), false});
    }
    if (each.bodyTop && each.bodyBottom) {
      constexpr double half = 0.11; // a hoist's body is drawn as wide as it usually is; no rule reads this
      const QPointF across(half, 0);
      drawing.shapes.push_back({Ink::hoist,
                                QPolygonF({at(*each.bodyTop) - across, at(*each.bodyTop) + across,
                                           at(*each.bodyBottom) + across, at(*each.bodyBottom) - across}),
                                true});
    }
    drawing.shapes.push_back({Ink::point, QPolygonF({at(each.pointAt)}), false});
    drawing.labels.push_back(
        {.at = at(each.pointAt), .text = each.point, .side = Side::above, .rank = 3, .mayMove = true});
  }
  if (!scene.head.empty()) {
    drawing.shapes.push_back({Ink::bar, line(scene.head), false});
  }
  if (!scene.barOutline.empty()) {
    drawing.shapes.push_back({Ink::bar, line(scene.barOutline), true});
  }
}

void addStack(Drawing& drawing, const Scene& scene, const Figures& figures) {
  for (const options::SceneCabinet& each : scene.cabinets) {
    drawing.shapes.push_back({Ink::cabinet, line(each.outline), true});
    if (!each.outline.empty()) {
      const QRectF box = line(each.outline).boundingRect();
      drawing.labels.push_back({.at = {box.right(), box.center().y()},
                                .text = figures.angle(each.aimDeg),
                                .side = Side::right,
                                .rank = 5,
                                .ofHang = true});
    }
  }
  if (scene.chain) {
    drawing.shapes.push_back({Ink::chain, QPolygonF({at(scene.chain->anchor), at(scene.chain->eye)}), false});
    drawing.labels.push_back({.at = (at(scene.chain->anchor) + at(scene.chain->eye)) / 2,
                              .text = Words::tr("mark %1").arg(scene.chain->mark),
                              .side = Side::left,
                              .strong = true,
                              .rank = 0,
                              .mayMove = true,
                              .ofHang = true});
  }
  if (scene.pickLine.size() > 1) {
    drawing.shapes.push_back({Ink::gravity, line(scene.pickLine), false});
  }
  if (scene.centreOfGravity) {
    const QPointF centre = at(*scene.centreOfGravity);
    constexpr double arm = 0.12;
    drawing.shapes.push_back(
        {Ink::rigging, QPolygonF({centre - QPointF(arm, 0), centre + QPointF(arm, 0)}), false});
    drawing.shapes.push_back(
        {Ink::rigging, QPolygonF({centre - QPointF(0, arm), centre + QPointF(0, arm)}), false});
  }
}

/// As the window says it; the scene's own names are those of its JSON.
QString wordOf(const options::SceneDimension& dimension) {
  return dimension.name == QLatin1String("trim")       ? Words::tr("trim")
         : dimension.name == QLatin1String("headroom") ? Words::tr("headroom")
                                                       : dimension.name;
}

void addDimensions(Drawing& drawing, const Scene& scene, const Figures& figures) {
  for (const options::SceneDimension& each : scene.dimensions) {
    drawing.dimensions.push_back({.from = at(each.from),
                                  .to = at(each.to),
                                  .text = wordOf(each) + QLatin1Char(' ') + figures.length(each.metres)});
  }
}

QRectF around(const Scene& scene) {
  QPolygonF all = line(scene.barOutline);
  for (const options::SceneCabinet& each : scene.cabinets) {
    all += line(each.outline);
  }
  for (const options::SceneHoist& each : scene.hoists) {
    all << at(each.hook);
    if (each.bodyTop) {
      all << at(*each.bodyTop);
    }
  }
  return all.isEmpty() ? QRectF() : all.boundingRect().adjusted(-0.4, -0.4, 0.4, 0.4);
}

QString describe(const Scene& scene, const Figures& figures) {
  QStringList says;
  says << Words::tr("Side elevation of the hang %1 with %2 cabinets.")
              .arg(scene.hang)
              .arg(scene.cabinets.size());
  for (const options::SceneDimension& each : scene.dimensions) {
    says << Words::tr("%1: %2.").arg(wordOf(each), figures.length(each.metres));
  }
  if (scene.chain) {
    says << Words::tr("Chain at mark %1.").arg(scene.chain->mark);
  }
  says << (scene.missed.empty() ? Words::tr("Every sampled row is covered.")
                                : Words::tr("Some rows are not covered."));
  return says.join(QLatin1Char(' '));
}

} // namespace

Drawing drawingOf(const Scene& scene, const Figures& figures) {
  Drawing drawing;
  addCover(drawing, scene);
  addRoom(drawing, scene, figures);
  addMissed(drawing, scene);
  addRigging(drawing, scene);
  addStack(drawing, scene, figures);
  addDimensions(drawing, scene, figures);
  drawing.room =
      QRectF(QPointF(scene.from.along, scene.from.height), QPointF(scene.to.along, scene.to.height))
          .normalized();
  drawing.hang = around(scene);
  drawing.description = describe(scene, figures);
  return drawing;
}

} // namespace hangbook::desk
