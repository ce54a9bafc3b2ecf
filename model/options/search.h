// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <vector>

#include "options/option.h"
#include "options/snapshot.h"
#include "quantity/error.h"

namespace hangbook::options {

/// Told now and then how far a search is (0…1). Answers false to cancel: the search then throws Cancelled.
using Progress = std::function<bool(double)>;

struct Cancelled {};

/// Every option of every hang of the show (or of the one hang named), each with its verdict and findings.
/// Pure: may run on any thread, and takes `threads` of its own (0: as many as there are cores; 1: the
/// caller's alone), with the same answer whatever their number; `progress` is asked on the caller's. `brief`:
/// of each option only its key, verdict, cover and mass, and of each rule that does not hold its verdict: no
/// words, no figures; of one that fails, unless all of a hang's do, its key and verdict alone. Throws Error
/// (badInput) where `hang` is not one of the show's.
ShowOptions decide(const Snapshot& snapshot, const std::optional<QString>& hang = {},
                   const Progress& progress = {}, int threads = 0, bool brief = false);

/// The same for those options alone whose id begins with `idStart`: what choosing or explaining one takes.
/// Each comes out as `decide` gives it; `decided` counts only what was done for them.
ShowOptions decideOnly(const Snapshot& snapshot, const QString& idStart,
                       const std::optional<QString>& hang = {}, const Progress& progress = {},
                       int threads = 0, bool brief = false);

struct DecidedShow {
  ShowOptions options;
  std::optional<Error> trouble; ///< why it could not be decided; `options` is then of no use
};

/// As `decide`, in brief, for several shows at once, each as it would be by itself: what they have in common
/// (a system travels) is worked out once. A show that cannot be decided says so and keeps no other from it.
std::vector<DecidedShow> decideTogether(std::span<const Snapshot* const> snapshots,
                                        const Progress& progress = {}, int threads = 0);

/// One option at a setting of somebody's own (dragging, explaining, re-checking). The mark and trim in
/// `setting` are taken as they are, and so is the tilt, on the grid or not.
Option judge(const Snapshot& snapshot, const OptionKey& key, const Setting& setting);

/// Ranking inside a group of like verdict.
enum class Order { coverFirst, lightestFirst, leastGear };
void rank(HangOptions& options, Order order);

} // namespace hangbook::options
