// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "options/frozen.h"
#include "options/snapshot.h"
#include "quantity/text.h"

/// A hang that is up, moved: what changes against the signed setting, and in which order it is done.
namespace hangbook::build {

/// What somebody wants of it. What is not named stays as signed, but for the trim: where nobody names one the
/// hooks stay where they are, and the lowest edge follows the tilt. The chain's mark and the holes are not
/// here: nobody changes them in the air.
struct FlownWish {
  std::optional<double> tiltDeg; ///< nose up positive
  std::optional<double> panDeg;  ///< positive to the left, seen from above
  std::optional<double> trimM;   ///< lowest edge above the datum
  std::optional<double> windMps; ///< the most that the show's hangs are to stand in
};

/// One figure or verdict that would be another one.
struct FlownChange {
  QString what;
  std::optional<double> was; ///< none: not known, or in words below
  std::optional<double> becomes;
  QString unit; ///< °, m, kN, m/s, %; empty: a verdict
  QString wasWord;
  QString becomesWord;
  bool worse = false; ///< a verdict that became worse
};

struct Flown {
  options::Snapshot snapshot; ///< with the wish's wind
  options::Option before;     ///< as frozen with the signed setting
  options::Option after;      ///< by what the store holds now
  bool moves = false;         ///< somebody touches actuator or hoists; else only the wind is another one
  std::vector<FlownChange> changes;
  QStringList steps; ///< in order, before anyone acts
};

/// Throws Error: badInput where a wind is wanted indoors or is no wind, or a tilt of a bar that has no
/// actuator; notPossible where the signed setting cannot be judged any more. A wish that the rules let fail
/// (beyond the actuator's travel, say) is answered with that verdict.
Flown flownTo(const options::Snapshot& snapshot, const options::Choice& standing, const FlownWish& wish,
              UnitSystem units = UnitSystem::metric);

/// What is another figure or verdict in `after`, both of one option.
std::vector<FlownChange> changesBetween(const options::Option& before, const options::Option& after);

/// What would bring a moved hang back to the setting of an earlier choice, its wind too. Throws Error
/// (notPossible) where that was built otherwise (stack, bar, points, mark or holes).
FlownWish wishBack(const options::Choice& standing, const options::Choice& earlier);

} // namespace hangbook::build
