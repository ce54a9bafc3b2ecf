// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QString>

namespace hangbook::venue {

/// A house rule: one figure that a tour, a venue or a show sets for itself, dated and signed. Which figures
/// there are, their units and their usual values stands in options/house_figures.h.
struct HouseFigure {
  QString figure; ///< its id, such as "dynamic-factor"
  double value = 0;
  QString unit;
  QString source; ///< why
  QString signedBy;
  QDate signedOn;
  bool operator==(const HouseFigure&) const = default;
};

} // namespace hangbook::venue
