// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QPolygonF>
#include <QRectF>
#include <QString>

namespace hangbook::desk {

/// What a line or area of the elevation stands for; decides how it is drawn in either set of colours.
enum class Ink {
  floor,
  row,
  covered,
  notCovered,
  steel,
  point,
  hoist,
  rigging,
  bar,
  cabinet,
  downfill,
  chain,
  gravity,
  cover,
  dimension
};

/// A line or area, in metres: x towards the audience, y is the height (up positive).
struct Shape {
  Ink ink = Ink::floor;
  QPolygonF points{};
  bool closed = false;
};

enum class Side { right, left, above, below };

/// A text beside a place. `rank`: where two would overlap, the lower rank is drawn.
struct Label {
  QPointF at{};
  QString text{};
  Side side = Side::right;
  bool strong = false;
  int rank = 5;
  bool mayMove = false; ///< to the other side, where there is no room on this one
  bool ofHang = false;  ///< left out where the hang is shown larger beside it
};

/// A measured distance with its end marks.
struct Dimension {
  QPointF from{};
  QPointF to{};
  QString text{};
};

/// The elevation as plain values, so that it can be made and tested without a widget and painted anywhere.
struct Drawing {
  std::vector<Shape> shapes{};
  std::vector<Label> labels{};
  std::vector<Dimension> dimensions{};
  QRectF room{};         ///< all of it; y up, so top() is the lowest height
  QRectF hang{};         ///< the hang alone
  QString description{}; ///< in words, for screen readers
};

} // namespace hangbook::desk
