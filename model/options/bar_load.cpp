// SPDX-License-Identifier: GPL-3.0-or-later
// bar: everything below the hooks, with factors, is within the bar's usable limit for this way of picking it
// up. Each step of the build adds to it, so that the whole stack is the worst step.
#include <algorithm>
#include <cmath>

#include "options/loads.h"

namespace hangbook::options {
namespace {

Use evaluate(const Case& option, const Settled* settled, double) {
  const WeightLimits& limits = *option.weight;
  const catalogue::PickArrangement& picks = *option.arrangement;
  return boundedOver(*settled,
                     loadUse(weightBelow(*settled) * factorsFor(limits, picks.limitIncludesFactors),
                             picks.limit ? inNewtons(*picks.limit) * limits.accessory.value : notKnown));
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  const WeightLimits& limits = *option.weight;
  Finding finding = loadFinding("bar", use);
  finding.source = QStringLiteral("maker's data for %1: %2").arg(option.bar->name, option.bar->source.text);
  QString text =
      QStringLiteral("%1 below the hooks weigh %2 when all of it hangs, with %3: %4")
          .arg(QString::number(settled->statics.mass, 'f', 0) + QStringLiteral(" kg"),
               inKn(weightBelow(*settled)), factorWords(limits, option.arrangement->limitIncludesFactors),
               inKn(use.value * 1000.0));
  text += option.arrangement->limit
              ? QStringLiteral("; %1 picked up as %2 may carry %3")
                    .arg(option.bar->name, wordFor(option.arrangement->picks), inKn(use.limit * 1000.0))
              : QStringLiteral("; the maker states no limit for %1 picked up as %2")
                    .arg(option.bar->name, wordFor(option.arrangement->picks));
  finding.text = text + peopleWords(option, limits.accessory) + QStringLiteral(".");
  return finding;
}

} // namespace

const Rule barRule{"bar", true, evaluate, nullptr, explain};

} // namespace hangbook::options
