// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "reports/ink.h"
#include "reports/sheet.h"

namespace hangbook::reports {

/// Something that stands on one page undivided.
struct Piece {
  double height = 0;
  std::function<void(Ink&, const QRectF&)> draw;
  bool keepWithNext = false;
  bool newPage = false;
  std::shared_ptr<Piece> again; ///< a table's heading, which stands again on top of the next page
  double least = 0;             ///< height that it may be squeezed to where it ends a page; 0: none
  bool blank = false;           ///< nothing but room: never the first on a page
  int group = 0; ///< pieces of one group are not torn where they fill little of a page; 0: none
};

/// A sheet cut into pieces for a page of this width.
std::vector<Piece> piecesOf(const Sheet& sheet, Ink ink, double width);

/// Pieces put onto pages of this height, a heading never alone at the foot.
std::vector<std::vector<Piece>> paginated(const std::vector<Piece>& pieces, double height);

} // namespace hangbook::reports
