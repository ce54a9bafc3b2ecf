// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "options/easing.h"

/// What can be moved to make an option hold, one kind a lever.
namespace hangbook::options {

/// A show with something changed, and the option that is then meant.
struct Trial {
  Snapshot snapshot;
  OptionKey key;
  std::optional<Setting> setting; ///< none: any of its settings
};

/// Steps of each of a lever's figures.
using Steps = std::vector<int>;

/// One thing put in another's place.
struct Swap {
  int steps{}; ///< how far from what is there: sizes of hoist, cabinets, cm of trim
  std::function<void(Trial&)> apply;
  Change change;
};

/// Either figures of which more is never worse (`most` not empty), or a list of swaps, the nearest first.
struct Lever {
  QString kind;
  QString unit;
  double step = 1.0;
  Steps most; ///< of each figure
  std::function<void(Trial&, const Steps&)> apply;
  std::function<Change(const Steps&)> change;
  std::vector<Swap> swaps;
};

/// A figure moved by so many steps, at the six places that people write: what is typed by hand then is the
/// same to the bit.
double movedBy(double from, int steps, double step);

/// Every lever there is for this trial; first what the crew does itself, then what it must ask for.
std::vector<Lever> leversFor(const Trial& trial);

void addSettingLevers(const Trial& trial, std::vector<Lever>& into); ///< tilt, trim, mark, hole
void addSwapLevers(const Trial& trial, std::vector<Lever>& into);    ///< hoist, cabinets, picks, points, bar
void addGearLevers(const Trial& trial, std::vector<Lever>& into);    ///< hire, examination
void addRoomLevers(const Trial& trial, std::vector<Lever>& into);    ///< trim, steel, spacing, cover, wind
void addStructureLevers(const Trial& trial, std::vector<Lever>& into); ///< points, trusses, beams

/// The hang of the trial's snapshot; it is there.
calendar::Hang& hangOf(Trial& trial);
const calendar::Hang& hangOf(const Trial& trial);

} // namespace hangbook::options
