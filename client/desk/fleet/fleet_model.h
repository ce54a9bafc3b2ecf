// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"
#include "fleet/due.h"

namespace hangbook::desk {

/// A unit with what it owes next.
struct FleetLine {
  fleet::Unit unit{};
  std::optional<fleet::Due> due{}; ///< none: no rule speaks of it
};

enum class FleetColumn { serial, kind, type, state, place, cart, due, weighed, owner, count };

class FleetModel : public ListOf<FleetLine, FleetColumn> {
public:
  using ListOf::ListOf;
  void setFacts(const Overview& overview);
  void setFigures(const Figures& figures);

private:
  Heading headingOf(FleetColumn column) const override;
  Cell cellOf(const FleetLine& line, FleetColumn column) const override;
  QString keyOf(const FleetLine& line) const override { return line.unit.serial; }
  Cell stateOf(const fleet::Unit& unit) const;
  Cell dueOf(const FleetLine& line) const;

  Figures figures_;
  QDate today_{};
};

} // namespace hangbook::desk
