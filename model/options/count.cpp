// SPDX-License-Identifier: GPL-3.0-or-later
// count: no more cabinets below this bar than its maker allows for this way of picking it up.
#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

Use evaluate(const Case& option, const Settled*, double) {
  Use use;
  use.value = static_cast<double>(option.cabinets.size());
  use.limit = option.arrangement->mostCabinets ? *option.arrangement->mostCabinets : notKnown;
  use.verdict = againstUpperLimit(use.value, use.limit, 0.0);
  return use;
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  Finding finding = findingFor("count", use, "");
  finding.source = QStringLiteral("maker's data for %1: %2").arg(option.bar->name, option.bar->source.text);
  finding.text =
      QStringLiteral("%1 cabinets hang below %2; ").arg(option.cabinets.size()).arg(option.bar->name) +
      (option.arrangement->mostCabinets
           ? QStringLiteral("its maker allows %1.").arg(*option.arrangement->mostCabinets)
           : QStringLiteral("its maker states no most."));
  return finding;
}

} // namespace

const Rule countRule{"count", false, evaluate, nullptr, explain};

} // namespace hangbook::options
