// SPDX-License-Identifier: GPL-3.0-or-later
// same-chain: the mark counts links of one pitch, so a chain of that very type must be at hand.
#include <algorithm>
#include <cmath>

#include "options/gear_needs.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "same-chain";
enum Reason { nothing, noChain, noPitch, notInFleet };

Use evaluate(const Case& option, const Settled*, double) {
  Use use;
  if (option.chain == nullptr) {
    use.verdict = Verdict::holds;
    use.applies = false;
    use.why = noChain;
    return use;
  }
  const auto& units = option.snapshot->units;
  const bool there = std::any_of(units.begin(), units.end(), [&](const fleet::Unit& unit) {
    return unit.kind == fleet::UnitKind::chain && unit.type == option.chain->name &&
           (unit.state == fleet::UnitState::ready || unit.state == fleet::UnitState::away);
  });
  if (option.chain->pitch) {
    use.value = inMetres(*option.chain->pitch) * 1000.0;
  }
  if (!there) {
    use.verdict = Verdict::fails;
    use.why = notInFleet;
  } else if (!option.chain->pitch) {
    use.why = noPitch;
  } else {
    use.verdict = Verdict::holds;
  }
  return use;
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply(ruleId, QStringLiteral("this stack has no chain, so there is no mark."));
  }
  Finding finding = findingFor(ruleId, use, "mm");
  finding.source = makerSource(option.chain->name, option.chain->source);
  switch (use.why) {
  case notInFleet:
    finding.text =
        QStringLiteral("The fleet has no %1 fit for use; a mark on another chain means another length.")
            .arg(option.chain->name);
    break;
  case noPitch:
    finding.text =
        QStringLiteral("The pitch of %1 is not known, so a mark has no length.").arg(option.chain->name);
    break;
  default:
    finding.text = QStringLiteral("The mark counts links of %1, pitch %2 mm; the fleet has it.")
                       .arg(option.chain->name, QString::number(use.value, 'f', 1));
  }
  return finding;
}

} // namespace

const Rule sameChainRule{ruleId, false, evaluate, nullptr, explain};

} // namespace hangbook::options
