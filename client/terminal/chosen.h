// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/frozen.h"
#include "options/snapshot.h"

namespace hangbook::terminal {

/// A chosen option as it was frozen, and as the same rules judge it by what the store holds today.
struct Chosen {
  const options::Choice* choice = nullptr; ///< nullptr: nothing is chosen
  std::optional<options::Option> now;      ///< none: it cannot be judged any more, and `trouble` says why
  QString trouble;

  /// None where nothing is chosen; unproven where it cannot be judged.
  std::optional<options::Verdict> verdict() const;
};

/// What is chosen for a hang of the snapshot's show. `choice` points into the snapshot.
Chosen chosenFor(const options::Snapshot& snapshot, const QString& hang);

} // namespace hangbook::terminal
