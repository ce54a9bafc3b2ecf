// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include "options/easing_lever.h"

namespace hangbook::options {

/// Looks for the fewest steps of a lever, or of two, by running all rules on the changed show.
class EasingSearch {
public:
  /// `tell` is called before each run, and may throw.
  EasingSearch(Verdict goal, std::function<void()> tell) : goal_(goal), tell_(std::move(tell)) {}

  std::optional<Easing> single(const Trial& base, const Lever& lever);
  /// Of a swap its smallest that does with the other lever; of two levers of figures the fewest steps of the
  /// second one with the first at its most, then the fewest of the first.
  std::optional<Easing> pair(const Trial& base, const Lever& one, const Lever& other);
  qint64 runs() const { return runs_; }

private:
  /// Nothing where the trial is not possible at all, which mends nothing.
  std::optional<Option> run(const Trial& trial);
  std::optional<Option> runWith(const Trial& base, const Lever& lever, const Steps& steps);
  bool does(const std::optional<Option>& option) const { return option && option->verdict <= goal_; }
  bool doesWith(const Trial& base, const Lever& lever, const Steps& steps);

  std::optional<Steps> fewest(const Trial& base, const Lever& lever, bool gallop);
  std::optional<Steps> descend(const Trial& base, const Lever& lever, Steps steps);
  std::optional<Easing> bestSwap(const Trial& base, const Lever& lever);
  std::optional<Easing> swapWith(const Trial& base, const Lever& swaps, const Lever& other);
  std::optional<Easing> twoFigures(const Trial& base, const Lever& one, const Lever& other);
  std::optional<Easing> proven(const Trial& base, const Lever& lever, const Steps& steps);

  Verdict goal_;
  std::function<void()> tell_;
  qint64 runs_{};
};

} // namespace hangbook::options
