// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "desk/options/drawing.h"
#include "desk/style/colours.h"

namespace hangbook::desk {

/// Where metres land on the paper or screen. One scale for both directions: the drawing is true.
struct Scale {
  double pixelsPerMetre = 20.0;
  QPointF origin; ///< where (0, 0) lands

  QPointF toScreen(QPointF metres) const {
    return {origin.x() + metres.x() * pixelsPerMetre, origin.y() - metres.y() * pixelsPerMetre};
  }
  QPointF toMetres(QPointF screen) const {
    return {(screen.x() - origin.x()) / pixelsPerMetre, (origin.y() - screen.y()) / pixelsPerMetre};
  }
};

/// The largest scale at which `metres` (y up) fits into `box`.
Scale fitted(const QRectF& metres, const QRectF& box);

/// Paints as vectors into whatever the painter draws on, clipped to `box`, with a scale bar in its corner.
/// `barText` writes a length with its unit for the scale bar.
void paintDrawing(QPainter& painter, const Drawing& drawing, const Scale& scale, const QRectF& box,
                  const Colours& colours, const QFont& font, QString (*barText)(int metres));

} // namespace hangbook::desk
