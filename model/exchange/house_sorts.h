// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/columns.h"
#include "exchange/sort.h"
#include "venue/house.h"

namespace hangbook::exchange {

/// The columns of a house rule behind those that say whose it is. `Line` has `value`, a HouseFigure.
template <class Line>
Columns<Line> houseColumns(Columns<Line> whose) {
  using namespace venue;
  const Columns<Line> rest = {
      name<Line>(
          "figure", [](auto& line) -> auto& { return line.value.figure; }),
      number<Line>(
          "value", "", [](auto& line) -> auto& { return line.value.value; }, Bound::any, Need::needed),
      text<Line>(
          "unit", [](auto& line) -> auto& { return line.value.unit; }),
      text<Line>(
          "because", [](auto& line) -> auto& { return line.value.source; }),
      text<Line>(
          "signed by", [](auto& line) -> auto& { return line.value.signedBy; }, Need::keyOrEmpty),
      date<Line>(
          "signed on", [](auto& line) -> auto& { return line.value.signedOn; }, Need::keyOrEmpty),
  };
  whose.insert(whose.end(), rest.begin(), rest.end());
  return whose;
}

/// A figure that no rule reads, or in another unit, would do nothing: it is a fault.
void checkHouseFigure(const At& at, const venue::HouseFigure& figure);

/// A later statement of a figure stands beside an earlier one: who signed it and when tell them apart.
QString labelOfHouse(const venue::HouseFigure& figure);

} // namespace hangbook::exchange
