// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QPainter>

#include "desk/style/colours.h"
#include "desk/style/figures.h"
#include "options/setting_map.h"

namespace hangbook::desk {

/// A map of settings with the place that somebody is at in it.
struct MapShown {
  options::SettingMap map{};
  options::Setting at{};
  std::optional<options::Verdict> verdict{}; ///< of that place; none while it is being judged
};

/// Where tilts and trims land. Tilt grows to the right, trim upwards.
struct MapScale {
  QRectF trims{}; ///< the map itself
  QRectF marks{}; ///< under it, one line a link, on the same tilts
  double firstTilt = 0.0;
  double lastTilt = 1.0;
  double lowTrim = 0.0;
  double highTrim = 1.0;
  double tiltStep = 0.5;

  double x(double tilt) const {
    return trims.left() + (tilt - firstTilt) / (lastTilt - firstTilt) * trims.width();
  }
  double y(double trim) const {
    return trims.bottom() - (trim - lowTrim) / (highTrim - lowTrim) * trims.height();
  }
  double tiltAt(double x) const {
    return firstTilt + (x - trims.left()) / trims.width() * (lastTilt - firstTilt);
  }
  double trimAt(double y) const {
    return lowTrim + (trims.bottom() - y) / trims.height() * (highTrim - lowTrim);
  }
};

MapScale scaleOf(const MapShown& shown, const QRectF& box, const QFont& font);

/// One stretch of an edge along which the same rule ends the window.
struct EdgeName {
  QString rule{};
  bool high = false; ///< the upper end
  double firstTilt = 0.0;
  double lastTilt = 0.0;
  double trimM = 0.0; ///< of the edge, where its name stands
};
std::vector<EdgeName> edgeNames(const options::SettingMap& map);
/// What ends the window towards lower (`first`) or higher tilts; empty: no tilt stands.
QString sideName(const options::SettingMap& map, bool first);

/// As vectors. Told apart by pattern and word as well: what holds is full, tight is hatched, unproven dotted,
/// and what fails is left blank.
void paintSettingMap(QPainter& painter, const MapShown& shown, const MapScale& scale, const Colours& colours,
                     const QFont& font, const Figures& figures);

/// The same in words, for screen readers.
QString describeMap(const MapShown& shown, const Figures& figures);

} // namespace hangbook::desk
