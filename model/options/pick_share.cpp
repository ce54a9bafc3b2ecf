// SPDX-License-Identifier: GPL-3.0-or-later
// pick-share: no hoist is near unloading, and the two of a side pair carry alike, at every step of the build
// (from the first cabinet on) and of aiming.
#include <cmath>

#include "options/build_force.h"
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
  const hang::BuildWorst& build = settled->build;
  least.value = 100.0 * build.leastShare;
  least.limit = limits.pickShare.value;
  least.which = static_cast<int>(build.leastPick);
  least.why = leastShare;
  least.verdict = againstLowerLimit(least.value, least.limit, 0.0);
  if (!(build.leastShare > 0.0)) { // a hoist cannot push: whatever the house asks for
    least.verdict = Verdict::fails;
    return least;
  }
  if (!settled->statics.side) {
    return provenOver(*settled, least); // a fore-aft pair carries as its centre of gravity lies
  }
  Use unlike;
  unlike.value = 100.0 * build.unlike;
  unlike.limit = limits.sideUnlike.value;
  unlike.why = difference;
  unlike.verdict = againstUpperLimit(unlike.value, unlike.limit, 0.0);
  return provenOver(*settled, unlike.verdict > least.verdict ? unlike : least);
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("pick-share", QStringLiteral("one pick carries everything."));
  }
  const WeightLimits& limits = *option.weight;
  Finding finding = findingFor("pick-share", use, "%");
  finding.worstFollows = !settled->build.unknown;
  const auto percent = [](double value) {
    return std::isnan(value) ? QStringLiteral("not stated")
                             : QString::number(value, 'f', 1) + QStringLiteral(" %");
  };
  const QString loads = QStringLiteral("%1 carries %2 and %3 carries %4 as set")
                            .arg(pickName(*settled, 0), inKn(pickLoad(*settled, 0)), pickName(*settled, 1),
                                 inKn(pickLoad(*settled, 1)));
  const hang::BuildWorst& build = settled->build;
  const auto when = [&option](const hang::BuildMoment& moment) {
    const QString words = momentWords(moment, option);
    return words.isEmpty() ? QString() : words + QLatin1Char(' ');
  };
  const QString open = unknownMomentWords(option, *settled);
  if (use.why == difference) {
    finding.source = limits.sideUnlike.source;
    finding.text = QStringLiteral("Pick %1: %2they differ by %3 of their mean; at most %4 is wanted%5.")
                       .arg(loads, when(build.unlikeAt), percent(use.value), percent(use.limit), open);
    return finding;
  }
  finding.source = limits.pickShare.source;
  const QString lighter = momentWords(build.leastAt, option).isEmpty()
                              ? QStringLiteral("the lighter one has %1 of the total").arg(percent(use.value))
                              : QStringLiteral("%1%2 has %3 (%4 of what hangs then)")
                                    .arg(when(build.leastAt), pickName(*settled, build.leastPick),
                                         inKn(build.leastOther), percent(use.value));
  finding.text =
      QStringLiteral("Pick %1: %2; at least %3 is wanted%4.").arg(loads, lighter, percent(use.limit), open);
  return finding;
}

} // namespace

const Rule pickShareRule{"pick-share", true, evaluate, nullptr, explain};

} // namespace hangbook::options
