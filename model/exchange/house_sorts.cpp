// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/house_sorts.h"

#include <algorithm>

#include "options/house_figures.h"

namespace hangbook::exchange {

void checkHouseFigure(const At& at, const venue::HouseFigure& figure) {
  const auto kinds = options::houseFigureKinds();
  const auto kind = std::ranges::find(kinds, figure.figure, &options::HouseFigureKind::id);
  if (kind == kinds.end()) {
    QStringList known;
    for (const auto& each : kinds) {
      known << each.id;
    }
    at.fault("figure", figure.figure, QStringLiteral("one of: ") + known.join(QStringLiteral(", ")));
  } else if (!figure.unit.isEmpty() && figure.unit != kind->unit) {
    at.fault("unit", figure.unit,
             kind->unit.isEmpty() ? QStringLiteral("no unit for this figure")
                                  : QStringLiteral("the unit ") + kind->unit);
  }
}

QString labelOfHouse(const venue::HouseFigure& figure) {
  return joined({figure.figure, figure.signedBy, writeDate(figure.signedOn)});
}

} // namespace hangbook::exchange
