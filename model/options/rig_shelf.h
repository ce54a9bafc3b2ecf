// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "options/rig.h"

namespace hangbook::options {

/// Whether two rigs have the same settings to the bit: every figure that the statics and the doubts read is
/// the same, whatever the words about them. False where one of them is not known.
bool sameSettings(const Rig& one, const Rig& other);

/// Rigs that were solved for one show or hang, for others that have the same: known by their own figures, so
/// that nothing has to be told what changed. For one thread.
class RigShelf {
public:
  /// As `options::settingsOf`, solved when first asked for.
  std::shared_ptr<const Settings> settingsOf(Rig& rig, double panDeg);

private:
  struct Kept {
    Rig rig;
    double panDeg;
    std::shared_ptr<const Settings> settings;
  };
  std::vector<Kept> kept_;
};

} // namespace hangbook::options
