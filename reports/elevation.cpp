// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "reports/parts.h"

namespace hangbook::reports {
namespace {

/// Metres of hoist chain that are drawn.
constexpr double mostChain = 1.5;

QPointF at(options::ScenePlace place) {
  return {place.along, place.height};
}

std::vector<QPointF> all(const std::vector<options::ScenePlace>& places) {
  std::vector<QPointF> made;
  std::ranges::transform(places, std::back_inserter(made), at);
  return made;
}

} // namespace

Drawing elevationOf(const ShowAsIs& show, const options::Option& option, const Figures& figures) {
  const options::Scene scene = options::sceneOf(show.snapshot, option);
  Drawing drawing;
  drawing.caption =
      QStringLiteral("Hang %1 from its side, the audience to the right; heights above the datum")
          .arg(option.key.hang);
  double from = 1e9;
  double to = -1e9;
  for (const options::SceneCabinet& cabinet : scene.cabinets) {
    for (const options::ScenePlace& corner : cabinet.outline) {
      from = std::min(from, corner.along);
      to = std::max(to, corner.along);
    }
  }
  if (scene.cabinets.empty() || from > to) {
    return drawing;
  }
  drawing.strokes.push_back({all(scene.barOutline), true, false, false});
  for (const options::SceneCabinet& cabinet : scene.cabinets) {
    drawing.strokes.push_back({all(cabinet.outline), true, true, false});
    double height = 0;
    for (const options::ScenePlace& corner : cabinet.outline) {
      height += corner.height / static_cast<double>(cabinet.outline.size());
    }
    drawing.notes.push_back(
        {{to + 0.2, height},
         QStringLiteral("%1  %2  %3").arg(cabinet.element).arg(cabinet.name, figures.angle(cabinet.aimDeg)),
         false,
         false});
  }
  QStringList named;
  for (const options::SceneHoist& hoist : scene.hoists) {
    // Long chains are cut off, so that the cabinets are large enough to be read.
    const double top = std::min(hoist.pointAt.height, hoist.hook.height + mostChain);
    drawing.strokes.push_back({{{hoist.hook.along, top}, at(hoist.hook)}, false, false, false});
    named << QStringLiteral("%1 at %2").arg(hoist.point, figures.length(hoist.pointAt.height));
    if (named.size() == static_cast<qsizetype>(scene.hoists.size())) {
      drawing.notes.push_back(
          {{from - 0.2, top}, QStringLiteral("up to ") + named.join(QStringLiteral(", ")), true, false});
    }
  }
  if (!scene.hoists.empty()) {
    drawing.notes.push_back({{from - 0.2, scene.hoists.front().hook.height},
                             QStringLiteral("hooks %1").arg(figures.length(scene.hoists.front().hook.height)),
                             true,
                             false});
  }
  if (scene.chain) {
    drawing.strokes.push_back({{at(scene.chain->anchor), at(scene.chain->eye)}, false, false, true});
  }
  if (scene.lowSteel) {
    const double shown = scene.hoists.empty()
                             ? *scene.lowSteel
                             : std::min(*scene.lowSteel, scene.hoists.front().hook.height + mostChain);
    drawing.notes.push_back({{to + 0.2, shown},
                             QStringLiteral("low steel %1").arg(figures.length(scene.lowSteel)),
                             false,
                             false});
  }
  if (option.setting) {
    const double trim = option.setting->trimM;
    drawing.strokes.push_back({{{from - 0.5, trim}, {to + 0.5, trim}}, false, false, true});
    drawing.notes.push_back(
        {{from - 0.5, trim}, QStringLiteral("lowest edge %1").arg(figures.length(trim)), true, true});
  }
  drawing.height = 210;
  return drawing;
}

} // namespace hangbook::reports
