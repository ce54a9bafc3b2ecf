// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "build/plan.h"
#include "calendar/cabling.h"
#include "calendar/hung.h"
#include "fleet/due.h"
#include "options/option.h"
#include "options/scene.h"
#include "options/snapshot.h"
#include "reports/figures.h"
#include "reports/sheet.h"

/// What is printed about shows, and the sheets that it becomes. Pure: same in, same sheet out.
namespace hangbook::reports {

/// One hang as it was chosen, and as today's data judge that.
struct HangAsIs {
  QString hang;
  std::optional<options::Choice> choice;
  std::optional<options::Option> now; ///< none: nothing chosen, or `trouble`
  QString trouble;
  bool outdated = false; ///< the data changed since it was chosen
};

struct ShowAsIs {
  options::Snapshot snapshot;
  std::vector<HangAsIs> hangs;
  build::Plan plan;
  std::vector<calendar::Plug> plugs{};        ///< as stated for the show
  std::vector<calendar::Hung> hung{};         ///< which unit hangs where, as far as it is recorded
  std::map<QString, QString> hungElsewhere{}; ///< by serial: that it is recorded at another show too
};

/// Everything judged by what the snapshot holds, at the settings that were chosen; the plan's words in
/// `units`.
ShowAsIs showAsIs(const options::Snapshot& snapshot, const calendar::Cabling& cabling,
                  UnitSystem units = UnitSystem::metric);

/// Every unit that has to be examined, with what is recorded.
struct Register {
  QString title; ///< the show's name, or the whole fleet
  QString tour;
  QDate asOf;
  QDate until;
  std::vector<fleet::Due> due;
  std::vector<fleet::Unit> kept; ///< quarantined or in repair
};

/// For the venue's rigger: points, loads at rest and dynamic, hoists, weights, elevation, approval.
Sheet loadSheet(const ShowAsIs& show, const Figures& figures);
/// For the crew: mark, trim, angles, steps with room for names, and the way down.
Sheet buildSheet(const ShowAsIs& show, const Figures& figures);
/// What to put onto the truck, by type, with spares, cart by cart.
Sheet prepList(const ShowAsIs& show, const Figures& figures);
Sheet examinationRegister(const Register& units, const Figures& figures);
/// One line a show, and charts of what hangs and how high.
Sheet tourSummary(const QString& tour, const std::vector<ShowAsIs>& shows, const Figures& figures);

} // namespace hangbook::reports
