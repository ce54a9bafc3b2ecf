// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "options/option.h"
#include "options/snapshot.h"

/// The slow twin of the search: everything is listed by loops over everything, each setting is put together
/// from nothing (`hang::standing`) and judged by the rules' `evaluate` alone at many trims. It shares with
/// the search the rules, the look-up of their limits and the plain data; not how stacks, ways, settings,
/// windows or the best are found, and no bound.
namespace hangbook::testing {

struct Brute {
  options::OptionKey key;
  bool anySetting = false;
  /// Least verdict of all rules, at the trims that the search promises to look at: the middle of what the
  /// rules leave open.
  options::Verdict least = options::Verdict::fails;
  /// The most of the settings at which the rules that depend on the setting come out best, per cent.
  double cover = 0.0;
  /// Least verdict at any trim that was tried.
  options::Verdict anywhere = options::Verdict::fails;
  long settings = 0;
};

/// Every option of the show's one hang by its identifier.
std::map<QString, Brute> bruteForce(const options::Snapshot& snapshot);

/// The worst of all rules at a setting of somebody's own, and its cover: put together from nothing.
struct BruteAnswer {
  options::Verdict verdict = options::Verdict::unproven;
  double cover = 0.0;
};
BruteAnswer bruteAt(const options::Snapshot& snapshot, const options::Option& option);

} // namespace hangbook::testing
