// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/easing_lever.h"

#include <algorithm>
#include <cmath>

namespace hangbook::options {

double movedBy(double from, int steps, double step) {
  return std::round((from + steps * step) * 1e6) / 1e6;
}

calendar::Hang& hangOf(Trial& trial) {
  return *std::find_if(trial.snapshot.show.hangs.begin(), trial.snapshot.show.hangs.end(),
                       [&](const calendar::Hang& hang) { return hang.name == trial.key.hang; });
}

const calendar::Hang& hangOf(const Trial& trial) {
  return *std::find_if(trial.snapshot.show.hangs.begin(), trial.snapshot.show.hangs.end(),
                       [&](const calendar::Hang& hang) { return hang.name == trial.key.hang; });
}

std::vector<Lever> leversFor(const Trial& trial) {
  std::vector<Lever> all;
  if (trial.setting) {
    addSettingLevers(trial, all);
  } else {
    addSwapLevers(trial, all);
  }
  addGearLevers(trial, all);
  addRoomLevers(trial, all);
  addStructureLevers(trial, all);
  return all;
}

} // namespace hangbook::options
