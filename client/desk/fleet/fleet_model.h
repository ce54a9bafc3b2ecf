// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QHash>

#include "desk/lists/table_model.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"
#include "fleet/due.h"

namespace hangbook::desk {

/// A unit with what it owes next, both out of the facts that the model keeps: nothing of 100,000 units is
/// copied.
struct FleetLine {
  const fleet::Unit* unit = nullptr;
  const fleet::Due* due = nullptr; ///< none: no rule speaks of it
};

enum class FleetColumn { serial, kind, type, state, place, cart, due, weighed, owner, count };

class FleetModel : public ListOf<FleetLine, FleetColumn> {
public:
  using ListOf::ListOf;
  /// Of `workedOut` facts.
  void setFacts(std::shared_ptr<const Overview> facts);
  void setFigures(const Figures& figures);

private:
  Heading headingOf(FleetColumn column) const override;
  Cell cellOf(const FleetLine& line, FleetColumn column) const override;
  QString keyOf(const FleetLine& line) const override { return line.unit->serial; }
  Cell stateOf(const fleet::Unit& unit) const;
  Cell dueOf(const FleetLine& line) const;

  /// Looked up in the window's language once for all rows.
  struct Texts {
    QString noRule;
    QString noRuleMeans;
    QString notWeighed;
    QString own;
    QHash<fleet::UnitKind, QString> kinds;
    QHash<fleet::UnitState, QString> states;
  };
  Texts texts_;
  std::shared_ptr<const Overview> facts_;
  Figures figures_;
  QDate today_{};
};

} // namespace hangbook::desk
