// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/fleet_model.h"

#include <set>
#include <utility>

#include <QHash>

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
void FleetModel::setFacts(std::shared_ptr<const Overview> facts) {
  const auto before = std::exchange(facts_, std::move(facts)); // until no row points into it
  today_ = facts_->today;
  texts_ = {.noRule = Words::tr("no rule"),
            .noRuleMeans = Words::tr("No examination rule speaks of it."),
            .notWeighed = Words::tr("Not weighed; the maker's figure counts."),
            .own = Words::tr("own"),
            .kinds = {},
            .states = {}};
  std::vector<FleetLine> lines;
  lines.reserve(facts_->units.size());
  std::set<fleet::UnitKind> kinds;
  std::set<fleet::UnitState> states;
  for (std::size_t i = 0; i < facts_->units.size(); ++i) {
    const fleet::Unit& unit = facts_->units[i];
    const int soonest = facts_->soonest[i];
    lines.push_back({&unit, soonest < 0 ? nullptr : &facts_->due[static_cast<std::size_t>(soonest)].due});
    kinds.insert(unit.kind);
    states.insert(unit.state);
  }
  for (const fleet::UnitKind kind : kinds) {
    texts_.kinds.insert(kind, wordOf(kind));
  }
  for (const fleet::UnitState state : states) {
    texts_.states.insert(state, wordOf(state));
  }
  setRows(std::move(lines));
}

void FleetModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading FleetModel::headingOf(FleetColumn column) const {
  switch (column) {
  case FleetColumn::serial:
    return {.title = Words::tr("Serial"), .characters = 13, .wish = 14};
  case FleetColumn::kind:
    return {.title = Words::tr("Kind"), .characters = 10};
  case FleetColumn::type:
    return {.title = Words::tr("Type"), .characters = 18, .wish = 26};
  case FleetColumn::state:
    return {.title = Words::tr("State"), .characters = 15, .wish = 16};
  case FleetColumn::place:
    return {.title = Words::tr("Is at"), .characters = 17, .wish = 24};
  case FleetColumn::cart:
    return {.title = Words::tr("On cart"), .characters = 9, .wish = 16};
  case FleetColumn::due:
    return {.title = Words::tr("Next examination"), .characters = 17, .wish = 19};
  case FleetColumn::weighed:
    return {.title = Words::tr("Weighed"),
            .figure = true,
            .characters = 11,
            .toolTip = Words::tr("Mass as weighed by the crew; it stands before the maker's figure")};
  case FleetColumn::owner:
    return {.title = Words::tr("Owner"), .characters = 7, .wish = 24};
  case FleetColumn::count:
    break;
  }
  return {};
}

Cell FleetModel::stateOf(const fleet::Unit& unit) const {
  Cell cell{.text = texts_.states.value(unit.state), .number = static_cast<double>(unit.state)};
  if (unit.state == fleet::UnitState::quarantined || unit.state == fleet::UnitState::writtenOff) {
    cell.verdict = options::Verdict::fails;
    cell.toolTip = Words::tr("Not to be used.");
  } else if (unit.state == fleet::UnitState::inRepair) {
    cell.verdict = options::Verdict::tight;
    cell.toolTip = Words::tr("Not to be used before it is back.");
  }
  return cell;
}

Cell FleetModel::dueOf(const FleetLine& line) const {
  if (!line.due) {
    return {.text = texts_.noRule, .missing = true, .toolTip = texts_.noRuleMeans};
  }
  if (!line.due->due.isValid()) {
    const bool never = !line.due->last.isValid();
    return {.text = never ? Words::tr("none recorded") : Words::tr("not met"),
            .number = 0,
            .verdict = never ? options::Verdict::unproven : options::Verdict::fails,
            .toolTip = Words::tr("%1: %2").arg(line.due->rule, line.due->note)};
  }
  Cell cell{.text = dateText(line.due->due),
            .number = static_cast<double>(line.due->due.toJulianDay()),
            .toolTip = line.due->rule};
  if (line.due->overdue) {
    cell.verdict = options::Verdict::fails;
    cell.toolTip = Words::tr("%1, overdue").arg(line.due->rule);
  }
  return cell;
}

Cell FleetModel::cellOf(const FleetLine& line, FleetColumn column) const {
  const fleet::Unit& unit = *line.unit;
  switch (column) {
  case FleetColumn::serial:
    return {.text = unit.serial, .strong = true, .endMatters = true};
  case FleetColumn::kind:
    return {.text = texts_.kinds.value(unit.kind)};
  case FleetColumn::type:
    return {.text = unit.type};
  case FleetColumn::state:
    return stateOf(unit);
  case FleetColumn::place:
    return {.text = unit.place, .missing = unit.place.isEmpty(), .toolTip = unit.place, .endMatters = true};
  case FleetColumn::cart:
    if (unit.cart.isEmpty()) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = unit.cartPosition ? Words::tr("%1, place %2").arg(unit.cart).arg(*unit.cartPosition)
                                      : unit.cart};
  case FleetColumn::due:
    return dueOf(line);
  case FleetColumn::weighed:
    if (!unit.weighed) {
      return {.text = QStringLiteral("–"), .missing = true, .toolTip = texts_.notWeighed};
    }
    return {.text = figures_.mass(inKilograms(*unit.weighed)), .number = inKilograms(*unit.weighed)};
  case FleetColumn::owner:
    if (unit.owner.isEmpty()) {
      return {.text = texts_.own, .missing = false};
    }
    return {.text = unit.hiredUntil.isValid()
                        ? Words::tr("%1, until %2").arg(unit.owner, dateText(unit.hiredUntil))
                        : unit.owner};
  case FleetColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
