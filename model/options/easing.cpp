// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/easing.h"

#include <algorithm>
#include <utility>

#include "options/easing_search.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

/// What is told while singles are looked for; pairs are the rest.
constexpr double singlesPart = 0.2;

bool anyUnproven(const Option& option) {
  return std::any_of(option.findings.begin(), option.findings.end(),
                     [](const Finding& finding) { return finding.verdict == Verdict::unproven; });
}

/// By which they come: the fewest things to ask others for first, then the fewest steps.
std::pair<Verdict, int> rankOf(const Easing& easing) {
  int steps{};
  for (const Change& change : easing.changes) {
    for (const ChangedFigure& figure : change.figures) {
      steps += figure.steps;
    }
  }
  return {easing.verdict, steps};
}

Easings search(const Trial& base, const Option& option, const Progress& progress) {
  Easings all;
  all.option = option.id;
  all.verdict = option.verdict;
  all.goal = anyUnproven(option) ? Verdict::unproven : Verdict::tight;
  for (const Finding& finding : option.findings) {
    if (finding.verdict == Verdict::unproven) {
      all.ask.push_back({finding.rule, finding.text});
    }
  }
  if (option.verdict != Verdict::fails) {
    return all;
  }
  double done{};
  EasingSearch search(all.goal, [&] {
    if (progress && !progress(done)) {
      throw Cancelled{};
    }
  });
  const std::vector<Lever> levers = leversFor(base);
  const auto part = [&levers](std::size_t of) {
    return static_cast<double>(of) / static_cast<double>(levers.size());
  };
  for (std::size_t i = 0; i < levers.size(); ++i) {
    done = singlesPart * part(i);
    if (auto found = search.single(base, levers[i])) {
      all.singles.push_back(std::move(*found));
    }
  }
  for (std::size_t i = 0; all.singles.empty() && i < levers.size(); ++i) {
    done = singlesPart + (1.0 - singlesPart) * part(i);
    for (std::size_t j = i + 1; j < levers.size(); ++j) {
      if (auto found = search.pair(base, levers[i], levers[j])) {
        all.pairs.push_back(std::move(*found));
      }
    }
  }
  std::ranges::stable_sort(all.pairs, {}, rankOf);
  all.runs = search.runs();
  return all;
}

} // namespace

Easings easingsOf(const Snapshot& snapshot, const Option& option, const Progress& progress) {
  return search({snapshot, option.key, std::nullopt}, option, progress);
}

Easings easingsAt(const Snapshot& snapshot, const OptionKey& key, const Setting& setting,
                  const Progress& progress) {
  return search({snapshot, key, setting}, judge(snapshot, key, setting), progress);
}

} // namespace hangbook::options
