// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/style/figures.h"
#include "options/hung_places.h"

namespace hangbook::desk {

enum class HungColumn { place, type, serial, mass, from, missing, count };

/// The places of a hang from the bar down, with the unit that hangs there.
class HungModel : public ListOf<options::HungPlace, HungColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures) {
    figures_ = figures;
    refresh();
  }
  /// The first place from `from` on, going round, at which nobody recorded a unit; -1: none.
  int openFrom(int from) const;

private:
  Heading headingOf(HungColumn column) const override;
  Cell cellOf(const options::HungPlace& place, HungColumn column) const override;
  QString keyOf(const options::HungPlace& place) const override { return options::placeOf(place); }

  Figures figures_;
};

/// "Bar", "Cabinet 3".
QString hungPlaceWords(const options::HungPlace& place);

} // namespace hangbook::desk
