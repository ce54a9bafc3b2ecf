// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "reports/parts.h"

namespace hangbook::reports {

Drawing planOf(const ShowAsIs& show) {
  Drawing drawing;
  drawing.caption = QStringLiteral("Points from above, the audience at the bottom");
  // The venue's x runs towards the audience (down the page), its y to stage left (to the right of it, seen
  // so).
  const auto place = [](double x, double y) { return QPointF(y, -x); };
  drawing.strokes.push_back({{place(0.25, 0), place(-0.25, 0)}, false, false, false});
  drawing.strokes.push_back({{place(0, -0.25), place(0, 0.25)}, false, false, false});
  drawing.notes.push_back({place(0, 0), QStringLiteral("datum"), false, false});
  double widest = 2.0;
  double farthest = 0.0;
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    std::vector<const venue::Point*> points;
    for (const options::PointResult& result : hang.now->points) {
      const auto found = std::ranges::find(show.snapshot.venue.points, result.point, &venue::Point::name);
      if (found != show.snapshot.venue.points.end()) {
        points.push_back(&*found);
      }
    }
    double front = -1e9;
    double beside = 0.0;
    for (const venue::Point* point : points) {
      const double x = inMetres(point->x);
      const double y = inMetres(point->y);
      constexpr double arm = 0.18;
      drawing.strokes.push_back({{place(x - arm, y - arm), place(x + arm, y + arm)}, false, true, false});
      drawing.strokes.push_back({{place(x - arm, y + arm), place(x + arm, y - arm)}, false, true, false});
      // The name alone, over its own cross: beside another's it would name the wrong point.
      drawing.notes.push_back({place(x, y), point->name, false, true, true});
      front = std::max(front, x);
      beside += y / static_cast<double>(points.size());
      widest = std::max(widest, std::abs(y));
      farthest = std::max(farthest, x);
    }
    if (!points.empty()) {
      Drawing::Note name{place(front, beside), QStringLiteral("hang %1").arg(hang.hang), false, false};
      name.below = true;
      drawing.notes.push_back(name);
    }
  }
  const auto along = [&](double y, const QString& text) {
    Drawing::Note note{place(farthest + widest / 4, y), text, false, true};
    note.below = true;
    drawing.notes.push_back(note);
  };
  along(-widest, QStringLiteral("← stage right"));
  along(0.0, QStringLiteral("↓ audience ↓"));
  along(widest, QStringLiteral("stage left →"));
  drawing.height = 180;
  drawing.share = 0.75;
  return drawing;
}

} // namespace hangbook::reports
