// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/box.h"
#include "options/load_span.h"
#include "options/rig_fold.h"

namespace hangbook::options {

/// What the rules that a load decides (`LoadSpan::speaksOf`) can say of the settings of an option, without
/// asking them at a trim: no better than with every chain plumb, and, at trims at which the lean rule holds,
/// no worse than with every chain leaning by the most that it allows. Each of them is asked of all settings
/// in one go, when it is asked first.
class LoadBounds {
public:
  /// Both outlive it; `fold` has the option's settings, of which there are `settings`.
  LoadBounds(const Case& option, RigFold& fold, std::size_t settings);

  /// Over all settings, at no lean; `which` counts `weightRules()`.
  const OverAll& overAll(std::size_t which) const { return plumb_.overAll[which]; }
  /// The verdict at no lean; nothing for a rule that it does not speak of.
  std::optional<Verdict> least(std::size_t which, std::size_t setting) { return of(plumb_, which, setting); }
  /// The verdict at the most lean; nothing where that is no bound.
  std::optional<Verdict> most(std::size_t which, std::size_t setting) { return of(leaning_, which, setting); }
  /// The verdict at any trim at which the lean rule holds; nothing where it hangs on the trim.
  std::optional<Verdict> atAnyLean(std::size_t which, std::size_t setting);

private:
  struct Asked {
    const LoadColumns* columns = nullptr; ///< nullptr: not to be asked
    std::optional<LoadSpan> span{};
    std::vector<OverAll> overAll{};
    std::vector<std::vector<double>> verdicts{}; ///< by weight rule, empty until it is asked
  };
  void take(Asked& asked, const LoadColumns& columns, const std::optional<LoadColumns>& corners) const;
  std::optional<Verdict> of(Asked& asked, std::size_t which, std::size_t setting) const;

  const Case& option_;
  std::size_t settings_;
  Asked plumb_;
  Asked leaning_;
};

} // namespace hangbook::options
