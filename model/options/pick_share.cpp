// SPDX-License-Identifier: GPL-3.0-or-later
// pick-share: no hoist is near unloading, and the two of a side pair carry alike.
#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

enum Why { leastShare, difference, onePick };

Use evaluate(const Case& option, const Settled* settled, double) {
  const WeightLimits& limits = *option.weight;
  Use least;
  if (settled->statics.pickCount < 2) {
    least.verdict = Verdict::holds;
    least.applies = false;
    least.why = onePick;
    return least;
  }
  const double first = pickLoad(*settled, 0);
  const double second = pickLoad(*settled, 1);
  least.value = 100.0 * std::min(first, second) / (first + second);
  least.limit = limits.pickShare.value;
  least.which = first <= second ? 0 : 1;
  least.why = leastShare;
  least.verdict = againstLowerLimit(least.value, least.limit, 0.0);
  if (!(std::min(first, second) > 0.0)) { // a hoist cannot push: whatever the house asks for
    least.verdict = Verdict::fails;
    return least;
  }
  if (!settled->statics.side) {
    return least; // a fore-aft pair carries as its centre of gravity lies
  }
  Use unlike;
  unlike.value = 100.0 * std::abs(first - second) / (0.5 * (first + second));
  unlike.limit = limits.sideUnlike.value;
  unlike.why = difference;
  unlike.verdict = againstUpperLimit(unlike.value, unlike.limit, 0.0);
  return unlike.verdict > least.verdict ? unlike : least;
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("pick-share", QStringLiteral("one pick carries everything."));
  }
  const WeightLimits& limits = *option.weight;
  Finding finding = findingFor("pick-share", use, "%");
  const auto percent = [](double value) {
    return std::isnan(value) ? QStringLiteral("not stated")
                             : QString::number(value, 'f', 1) + QStringLiteral(" %");
  };
  const QString loads = QStringLiteral("%1 carries %2 and %3 carries %4")
                            .arg(pickName(*settled, 0), inKn(pickLoad(*settled, 0)), pickName(*settled, 1),
                                 inKn(pickLoad(*settled, 1)));
  if (use.why == difference) {
    finding.source = limits.sideUnlike.source;
    finding.text = QStringLiteral("Pick %1: they differ by %2 of their mean; at most %3 is wanted.")
                       .arg(loads, percent(use.value), percent(use.limit));
    return finding;
  }
  finding.source = limits.pickShare.source;
  finding.text = QStringLiteral("Pick %1: the lighter one has %2 of the total; at least %3 is wanted.")
                     .arg(loads, percent(use.value), percent(use.limit));
  return finding;
}

} // namespace

const Rule pickShareRule{"pick-share", true, evaluate, nullptr, explain};

} // namespace hangbook::options
