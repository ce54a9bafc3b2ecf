// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <variant>
#include <vector>

#include "actions/edit_plugs.h"
#include "actions/edit_record.h"
#include "actions/hung.h"
#include "actions/import_undo.h"
#include "actions/run.h"
#include "fleet/unit.h"
#include "options/frozen.h"
#include "options/house_change.h"

/// Edits of plans that can be undone and done again: choosing, withdrawing, house rules, venues, records of
/// makers' data, plugs, imports, swapping a unit, which units hang where. What is remembered is how a plan
/// stood before and after; going back is an edit of its own, held to the same rules and judged on the data of
/// today. Facts are not among them: they are corrected by name, and units that were swapped move back by
/// movements of their own.
namespace hangbook::actions {

/// What stands chosen for a hang.
struct ChosenFor {
  QString tour;
  QString show;
  QString hang;
  std::optional<options::Choice> choice{};
};

/// What one place states of one house figure.
struct StatedFor {
  options::HouseSite site;
  QString figure;
  std::vector<venue::HouseFigure> statements{};
};

/// A venue with its parts; its house rules are not part of it.
struct VenueAs {
  QString name;
  std::optional<venue::Venue> venue{};
};

/// Where a unit is, and in which state.
struct UnitAt {
  QString serial;
  QString place{};
  fleet::UnitState state = fleet::UnitState::ready;
  QString cart{};
  std::optional<int> cartPosition{};
  bool operator==(const UnitAt&) const = default;
};

/// A unit that another one stands in for at a show, and what stands chosen for the hangs that take its type.
struct SwappedFor {
  UnitAt dead;
  UnitAt stand;
  std::vector<ChosenFor> hangs;
  std::optional<HungFor> hung{}; ///< the hang in which the dead one is recorded as hanging
};

using PlanPart =
    std::variant<ChosenFor, StatedFor, VenueAs, RecordAs, SwappedFor, ImportedAs, PluggedFor, HungFor>;

struct PlanEdit {
  PlanPart before;
  PlanPart after;
  QString by;
};

/// The same part of the plans as the store has it now.
PlanPart asItStands(store::Store& store, const PlanPart& part);
/// Whether both say the same; revisions and instants do not count.
bool sameAs(const PlanPart& a, const PlanPart& b);

/// Runs `work`, which edits that part, and answers what it changed; none where it changed nothing. One
/// transaction.
std::optional<PlanEdit> noted(store::Store& store, const PlanPart& part, const QString& by,
                              const std::function<void()>& work);

/// Puts the part back to what it was before the edit and answers that as an edit, which undone in turn does
/// the first one again. An option is chosen again by today's rules. Throws Error (notPossible) where the part
/// is not as the edit left it any more, and whatever choosing or saving throws; nothing is written then.
PlanEdit undo(store::Store& store, const PlanEdit& edit, const QDate& today);

/// The edits that one person at one window made, for undo and redo, the newest last.
class PlanEdits {
public:
  /// A new edit; what was undone before cannot be done again after it.
  void add(PlanEdit edit);
  const PlanEdit* toUndo() const { return done_.empty() ? nullptr : &done_.back(); }
  const PlanEdit* toRedo() const { return undone_.empty() ? nullptr : &undone_.back(); }
  /// As `actions::undo`. An edit that cannot be gone back behind any more (notPossible, badInput) is
  /// forgotten.
  void undo(store::Store& store, const QDate& today) { move(store, today, done_, undone_); }
  void redo(store::Store& store, const QDate& today) { move(store, today, undone_, done_); }

private:
  static void move(store::Store& store, const QDate& today, std::vector<PlanEdit>& from,
                   std::vector<PlanEdit>& to);

  std::vector<PlanEdit> done_;
  std::vector<PlanEdit> undone_; ///< as edits that lead back to before they were done
};

} // namespace hangbook::actions
