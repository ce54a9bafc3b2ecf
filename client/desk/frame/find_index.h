// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include "desk/source/overview.h"

namespace hangbook::desk {

/// Something that one can go to.
struct Findable {
  QString text{};  ///< what is looked through and shown: "MB-014 · Marram bass · bay 3"
  QString place{}; ///< object name of the place that shows it; "help" for what the window says of itself
  QString key{};   ///< what it is known by there
  QString part{};  ///< of the place; empty: as it is
  bool operator==(const Findable&) const = default;
};

/// All that the window knows by name, in the order in which it is listed among equals: places and help,
/// shows, what is chosen, venues with their points, units by serial, marks used, what is due, makers' data,
/// people.
std::vector<Findable> findablesOf(const Overview& overview);

struct Found {
  std::vector<Findable> first{}; ///< the best ones
  int more = 0;                  ///< that contain all words as well
};

/// Looks through everything. Takes long on a large store: refuses the window's thread (std::logic_error).
class FindIndex {
public:
  explicit FindIndex(const Overview& overview);

  /// What contains all of the words, whatever their case: first what is called just that, then what somebody
  /// went to before (`recent`, the newest first), then what begins with it, then what has a word that does,
  /// then the rest. Without words: the recent ones that are still there, then the places.
  Found find(const QString& words, const std::vector<Findable>& recent, int most,
             const std::function<bool()>& stop = {}) const;

private:
  std::vector<Findable> all_;
};

} // namespace hangbook::desk
