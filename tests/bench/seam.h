// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "options/judge_case.h"

namespace hangbook::bench {

/// One option: its case, its rig's settings.
struct OneOption {
  options::Case option;
  std::size_t rig = 0;
  std::size_t way = 0; ///< of the rig, counted on
};

/// Every option of a show's first hang, put together once: what is left is to judge. Owns the show.
class Seam {
public:
  explicit Seam(options::Snapshot snapshot);
  Seam(const Seam&) = delete;
  Seam& operator=(const Seam&) = delete;

  /// Every rule that depends on the setting, on every setting of every option, at the middle of the trims
  /// that the rules leave; nothing skipped. How many settings that were.
  long checkAll() const;
  /// Comparisons of a value with a limit that all rules together take, on the average.
  double comparisonsASetting() const;

  const std::vector<OneOption>& all() const { return options_; }
  const std::vector<options::Settled>& settingsOf(const OneOption& one) const { return settings_[one.rig]; }

private:
  std::unique_ptr<options::Snapshot> snapshot_;
  std::unique_ptr<options::House> house_;
  std::vector<std::vector<options::Settled>> settings_; ///< of each rig
  std::vector<OneOption> options_;
};

/// All options of a show's first hang, each once, in words: what a solver lists too. Nothing is judged.
std::vector<QString> listOptions(const options::Snapshot& snapshot);

/// The show as data of tests/twin/discrete.mzn, into `folder`/discrete.dzn, and how many solutions there are
/// into `folder`/discrete.count.
void writeDiscrete(const options::Snapshot& snapshot, const char* folder);

} // namespace hangbook::bench
