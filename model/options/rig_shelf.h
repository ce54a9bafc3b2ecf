// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <list>
#include <memory>
#include <mutex>

#include "options/rig.h"

namespace hangbook::options {

/// Whether two rigs have the same settings to the bit: every figure that the statics and the doubts read is
/// the same, whatever the words about them. False where one of them is not known.
bool sameSettings(const Rig& one, const Rig& other);

/// Settings of rigs, solved once for all shows of a tour: a system travels, and what a venue changes (points,
/// heights, capacities, audience) is in no rig. Kept by the rig's own figures, so that nothing has to be told
/// when data changes. For any number of threads.
///
/// Shows ask for their rigs in the same order, so that throwing out the least lately used would throw out
/// each just before it is asked for: when the shelf is full a new one is kept only in the place of one that
/// nobody has asked for in some rounds.
class RigShelf {
public:
  /// `most`: settings that are kept, of all rigs together; some 4 KB each.
  explicit RigShelf(std::size_t most = 15000) : most_(most) {}

  /// As `options::settingsOf`. Two threads that ask for a new one at the same time both solve it.
  std::shared_ptr<const Settings> settingsOf(Rig& rig, double panDeg);
  std::size_t found() const { return found_; } ///< how often one was there

private:
  struct Kept {
    Rig rig;
    double panDeg;
    std::shared_ptr<const Settings> settings;
    std::size_t asked = 0; ///< when last, counted in questions
  };
  std::shared_ptr<const Settings> known(const Rig& rig, double panDeg);

  std::mutex mutex_;
  std::list<Kept> kept_; ///< the last used first
  std::size_t most_;
  std::size_t held_ = 0;
  std::size_t found_ = 0;
  std::size_t asked_ = 0;
};

} // namespace hangbook::options
