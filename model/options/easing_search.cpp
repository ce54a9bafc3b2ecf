// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/easing_search.h"

#include <algorithm>
#include <utility>

#include "quantity/error.h"

namespace hangbook::options {
namespace {

Steps atMost(const Lever& lever, int steps) {
  Steps each;
  for (const int most : lever.most) {
    each.push_back(std::min(steps, most));
  }
  return each;
}

Easing easingFrom(const Option& option, std::vector<Change> changes, Verdict oneStepLess) {
  return {std::move(changes), option.verdict, oneStepLess, option.id, option.setting, option.coveredPercent};
}

} // namespace

std::optional<Option> EasingSearch::run(const Trial& trial) {
  tell_();
  ++runs_;
  try {
    if (trial.setting) {
      return judge(trial.snapshot, trial.key, *trial.setting);
    }
    ShowOptions found = decideOnly(trial.snapshot, idOf(trial.key), trial.key.hang);
    for (HangOptions& hang : found.hangs) {
      for (Option& option : hang.options) {
        return std::move(option); // there is one at most
      }
    }
  } catch (const Error&) { // as good as no such option
  }
  return std::nullopt;
}

std::optional<Option> EasingSearch::runWith(const Trial& base, const Lever& lever, const Steps& steps) {
  Trial trial = base;
  lever.apply(trial, steps);
  return run(trial);
}

bool EasingSearch::doesWith(const Trial& base, const Lever& lever, const Steps& steps) {
  return does(runWith(base, lever, steps));
}

/// Doubling until it does, then halving between the last that does not and the first that does.
std::optional<Steps> EasingSearch::fewest(const Trial& base, const Lever& lever, bool gallop) {
  const int most = std::ranges::max(lever.most); // what goes by steps has a figure
  if (most == 0 || (!gallop && !doesWith(base, lever, lever.most))) {
    return std::nullopt;
  }
  int fails{};
  int enough{};
  for (int steps = 1; enough == 0; steps = std::min(2 * steps, most)) {
    if (doesWith(base, lever, atMost(lever, steps))) {
      enough = steps;
    } else if (steps == most) {
      return std::nullopt;
    } else {
      fails = steps;
    }
  }
  while (enough - fails > 1) {
    const int middle = fails + (enough - fails) / 2;
    (doesWith(base, lever, atMost(lever, middle)) ? enough : fails) = middle;
  }
  return descend(base, lever, atMost(lever, enough));
}

/// Each figure as low as the others allow.
std::optional<Steps> EasingSearch::descend(const Trial& base, const Lever& lever, Steps steps) {
  if (steps.size() == 1) {
    return steps;
  }
  for (int& each : steps) {
    int enough = each;
    int fails = -1;
    while (enough - fails > 1) {
      each = fails + (enough - fails) / 2;
      (doesWith(base, lever, steps) ? enough : fails) = each;
    }
    each = enough;
  }
  return steps;
}

/// The proof, once more on both sides: it does with these steps, and with any figure one step less it does
/// not.
std::optional<Easing> EasingSearch::proven(const Trial& base, const Lever& lever, const Steps& steps) {
  const std::optional<Option> with = runWith(base, lever, steps);
  if (!does(with)) {
    return std::nullopt;
  }
  Verdict less = Verdict::fails;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (steps[i] == 0) {
      continue;
    }
    Steps fewer = steps;
    --fewer[i];
    const std::optional<Option> without = runWith(base, lever, fewer);
    if (does(without)) {
      return std::nullopt;
    }
    less = without ? std::min(less, without->verdict) : less;
  }
  return easingFrom(*with, {lever.change(steps)}, less);
}

/// Of the nearest swaps that do, the one that does best; all nearer ones were run, and do not.
std::optional<Easing> EasingSearch::bestSwap(const Trial& base, const Lever& lever) {
  std::optional<Easing> best;
  int bestSteps{};
  Verdict nearer = Verdict::fails;
  for (const Swap& swap : lever.swaps) {
    if (best && swap.steps > bestSteps) {
      break;
    }
    Trial trial = base;
    swap.apply(trial);
    const std::optional<Option> with = run(trial);
    if (!does(with)) {
      nearer = with ? std::min(nearer, with->verdict) : nearer;
      continue;
    }
    const auto rank = [](const auto& each) { return std::pair(each.verdict, -each.coveredPercent); };
    if (!best || rank(*with) < rank(*best)) {
      best = easingFrom(*with, {swap.change}, nearer);
      bestSteps = swap.steps;
    }
  }
  return best;
}

std::optional<Easing> EasingSearch::single(const Trial& base, const Lever& lever) {
  if (!lever.swaps.empty()) {
    return bestSwap(base, lever);
  }
  const std::optional<Steps> steps = fewest(base, lever, true);
  return steps ? proven(base, lever, *steps) : std::nullopt;
}

/// With each swap, the nearest first, the other lever's smallest step.
std::optional<Easing> EasingSearch::swapWith(const Trial& base, const Lever& swaps, const Lever& other) {
  for (const Swap& swap : swaps.swaps) {
    Trial trial = base;
    swap.apply(trial);
    for (const Lever& there : leversFor(trial)) { // it may need another hoist, another type on hire
      if (there.kind != other.kind) {
        continue;
      }
      std::optional<Easing> found;
      if (!there.swaps.empty()) {
        found = bestSwap(trial, there);
      } else if (const auto steps = fewest(trial, there, false)) {
        found = proven(trial, there, *steps);
      }
      if (found) {
        found->changes.insert(found->changes.begin(), swap.change);
        return found;
      }
    }
  }
  return std::nullopt;
}

std::optional<Easing> EasingSearch::twoFigures(const Trial& base, const Lever& one, const Lever& other) {
  const Lever both{one.kind,
                   {},
                   {},
                   {},
                   [&](Trial& trial, const Steps& steps) {
                     const auto cut = steps.begin() + static_cast<std::ptrdiff_t>(one.most.size());
                     one.apply(trial, Steps(steps.begin(), cut));
                     other.apply(trial, Steps(cut, steps.end()));
                   },
                   [&](const Steps&) { return Change{}; },
                   {}};
  Steps most = one.most;
  most.insert(most.end(), other.most.begin(), other.most.end());
  if (!doesWith(base, both, most)) {
    return std::nullopt;
  }
  const std::optional<Steps> steps = descend(base, both, most);
  const auto easing = steps ? proven(base, both, *steps) : std::nullopt;
  if (!easing) {
    return std::nullopt;
  }
  const auto cut = steps->begin() + static_cast<std::ptrdiff_t>(one.most.size());
  Easing found = *easing;
  found.changes = {one.change(Steps(steps->begin(), cut)), other.change(Steps(cut, steps->end()))};
  return found;
}

std::optional<Easing> EasingSearch::pair(const Trial& base, const Lever& one, const Lever& other) {
  if (!one.swaps.empty()) {
    return swapWith(base, one, other);
  }
  return other.swaps.empty() ? twoFigures(base, one, other) : swapWith(base, other, one);
}

} // namespace hangbook::options
