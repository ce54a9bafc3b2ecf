// SPDX-License-Identifier: GPL-3.0-or-later
// examined: enough of the free units of each type have every examination that applies to them standing until
// the last day away, not only the first.
#include "options/gear_needs.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "examined";
enum Missing { nothing, dates, noRule, margin, chainType };

Verdict verdictFor(const GearNeeds& needs, const UnitNeed& need) {
  if (!need.ruled) {
    return need.mustBeRuled ? Verdict::unproven : Verdict::holds;
  }
  const int over = need.examined - need.elsewhere - need.needed;
  if (over < 0) {
    return needs.datesKnown ? Verdict::fails : Verdict::unproven;
  }
  return over == 0 || need.examinedLonger - need.elsewhere < need.needed ? Verdict::tight : Verdict::holds;
}

Use evaluate(const Case& option, const Settled*, double) {
  const GearNeeds& needs = *option.gear;
  Use use;
  int scarcest{};
  for (std::size_t i = 0; i < needs.units.size(); ++i) {
    const UnitNeed& need = needs.units[i];
    const Verdict verdict = verdictFor(needs, need);
    const int over = need.examined - need.elsewhere - need.needed;
    if (use.which >= 0 && (verdict < use.verdict || (verdict == use.verdict && over >= scarcest))) {
      continue;
    }
    use.verdict = verdict;
    use.which = static_cast<int>(i);
    use.value = need.ruled ? need.needed : notKnown;
    use.limit = need.ruled ? need.examined - need.elsewhere : notKnown;
    use.why = need.ruled ? nothing : noRule;
    scarcest = over;
  }
  if (!needs.datesKnown) {
    use.why = dates;
    use.verdict = worse(use.verdict, Verdict::unproven);
  } else if (!option.house->figure(QStringLiteral("examination-margin")).value ||
             !option.house->figure(QStringLiteral("examine-cabinets")).value) {
    use.why = margin;
    use.verdict = worse(use.verdict, Verdict::unproven);
  } else if (option.held != 0 && option.table->chain.isEmpty() && use.verdict < Verdict::unproven) {
    use.why = chainType;
    use.verdict = Verdict::unproven;
  }
  return use;
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  Finding finding = findingFor(ruleId, use, "units");
  finding.source = QStringLiteral("rules for examination and what is recorded of the fleet");
  if (use.why == chainType) {
    finding.text = QStringLiteral(
        "The table does not say which type of chain holds this stack, so none is known to be examined.");
    return finding;
  }
  if (use.why == dates || use.why == margin || use.which < 0) {
    finding.text = use.why == margin ? QStringLiteral("The house's figures for examinations cannot be read.")
                                     : QStringLiteral("The days away are not stated.");
    return finding;
  }
  const GearNeeds& needs = *option.gear;
  const UnitNeed& need = needs.units[static_cast<std::size_t>(use.which)];
  const QString type = QStringLiteral("%1 (%2)").arg(need.type, wordFor(need.kind));
  if (!need.ruled) {
    finding.text =
        need.mustBeRuled
            ? QStringLiteral("%1: no rule says how often it must be examined, so nothing shows that it is.")
                  .arg(type)
            : QStringLiteral("%1: the house asks for no examination.").arg(type);
    return finding;
  }
  finding.text =
      QStringLiteral("%1: %2 needed; of %3 free ones %4 are examined until the last day away, %5, and "
                     "other shows take %6.")
          .arg(type)
          .arg(need.needed)
          .arg(need.free)
          .arg(need.examined)
          .arg(needs.awayTo.toString(Qt::ISODate))
          .arg(need.elsewhere);
  if (need.firstDue.isValid()) {
    finding.text += QStringLiteral(" The earliest of the free ones falls due on %1.")
                        .arg(need.firstDue.toString(Qt::ISODate));
  }
  return finding;
}

} // namespace

const Rule examinedRule{ruleId, false, evaluate, nullptr, explain};

} // namespace hangbook::options
