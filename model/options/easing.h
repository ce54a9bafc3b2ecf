// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/option.h"
#include "options/search.h"
#include "options/snapshot.h"

/// Why not, and what would do: the smallest change that keeps a failing option from failing. Each is found on
/// steps that people use (1 cm, 0.01 kN, 0.5°, one piece) and proved by running all rules again on the
/// changed show: at so many steps nothing fails, at one step less something does.
namespace hangbook::options {

/// One figure that changes, by a number of steps.
struct ChangedFigure {
  QString what;               ///< "low steel", "point L1", "Marram upper"
  std::optional<double> from; ///< in the change's unit; none where it is no figure
  std::optional<double> to;
  int steps{};
};

/// One change of one kind.
struct Change {
  QString kind;    ///< stable: "low-steel", "structure", "hoist" …; see README
  QString words;   ///< one sentence for the telephone
  QString unit;    ///< of the figures
  double step = 1; ///< in that unit
  std::vector<ChangedFigure> figures;
};

/// One change, or the smallest pair of two, with its proof.
struct Easing {
  std::vector<Change> changes;
  Verdict verdict = Verdict::unproven;  ///< with all of it
  Verdict oneStepLess = Verdict::fails; ///< the best of what is left with any one figure a step less
  QString option;                 ///< id of the option that then hangs; another one where a part changed
  std::optional<Setting> setting; ///< its best setting then
  double coveredPercent{};
};

/// A figure to be asked for, or what else leaves a rule unproven.
struct Asked {
  QString rule;
  QString text;
};

struct Easings {
  QString option;
  Verdict verdict = Verdict::unproven;
  /// The worst verdict that counts as mended: tight; unproven where a rule is unproven already, since what
  /// is not known cannot be mended by any of these.
  Verdict goal = Verdict::tight;
  std::vector<Easing> singles;
  std::vector<Easing> pairs; ///< looked for only where no single change does
  std::vector<Asked> ask;
  qint64 runs{}; ///< how often all rules were run again
};

/// For an option as `decide` gives it: all its settings count, so that another tilt, hole or link that would
/// do is found already. Nothing but `ask` where it does not fail. Pure; throws Cancelled.
Easings easingsOf(const Snapshot& snapshot, const Option& option, const Progress& progress = {});

/// For one setting of somebody's own, as `judge` gives it: also by another tilt, trim, mark or hole.
Easings easingsAt(const Snapshot& snapshot, const OptionKey& key, const Setting& setting,
                  const Progress& progress = {});

} // namespace hangbook::options
