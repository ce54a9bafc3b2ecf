// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/option.h"
#include "options/search.h"
#include "options/snapshot.h"

/// What breaks first, and how far away it is: an option that does not fail, at its own setting, moved in one
/// direction at a time until a rule stops holding. Proved by running all rules on both sides.
namespace hangbook::options {

struct Reserve {
  QString kind; ///< mass, low-steel, trim-down, trim-up, tilt-down, tilt-up, mark-down, mark-up, wind
  QString unit;
  double step = 1;
  int steps{};                   ///< the first number of steps at which it does not stand
  int most{};                    ///< where `steps` is 0: it stands at each of so many
  double from{};                 ///< the figure as it is now
  double last{};                 ///< the last figure at which it stands
  Verdict then = Verdict::holds; ///< at `steps`
  QString rule;                  ///< that breaks first
  QString text;                  ///< its sentence there
  QString words;                 ///< what is moved and how far it may: "186 kg more on the bar"
};

/// The nearest within each unit first: kg, m, °, links, m/s. Empty where the option fails, is unproven or has
/// no setting. Pure; throws Cancelled.
std::vector<Reserve> reservesOf(const Snapshot& snapshot, const Option& option,
                                const Progress& progress = {});

} // namespace hangbook::options
