// SPDX-License-Identifier: GPL-3.0-or-later
// stock: enough units of each type are free for the whole time away, with the spares that the house asks for.
#include <cmath>

#include "options/gear_needs.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "stock";
enum Missing { nothing, dates, spares };

bool sparesKnown(const Case& option) {
  for (const char* id :
       {"spare-cabinets", "spare-bars", "spare-hoists", "spare-chains", "hardware-by-serial"}) {
    if (!option.house->figure(QString::fromLatin1(id)).value) {
      return false;
    }
  }
  return true;
}

Use evaluate(const Case& option, const Settled*, double) {
  const GearNeeds& needs = *option.gear;
  Use use;
  std::optional<int> scarcest;
  for (std::size_t i = 0; i < needs.units.size(); ++i) {
    const UnitNeed& need = needs.units[i];
    const int over = need.left() - need.needed - need.spares;
    if (!scarcest || over < *scarcest) {
      scarcest = over;
      use.which = static_cast<int>(i);
      use.value = need.needed + need.spares;
      use.limit = need.left();
    }
  }
  use.verdict = !scarcest        ? Verdict::unproven
                : *scarcest < 0  ? Verdict::fails
                : *scarcest == 0 ? Verdict::tight
                                 : Verdict::holds;
  if (!needs.datesKnown) {
    use.why = dates;
  } else if (!sparesKnown(option)) {
    use.why = spares;
  }
  if (use.why != nothing) {
    use.verdict = worse(use.verdict, Verdict::unproven);
  }
  return use;
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  Finding finding = findingFor(ruleId, use, "units");
  finding.source = QStringLiteral("the fleet's list and the shows' chosen options");
  const GearNeeds& needs = *option.gear;
  if (use.which >= 0) {
    const UnitNeed& need = needs.units[static_cast<std::size_t>(use.which)];
    finding.text = QStringLiteral("%1 (%2): %3 needed").arg(need.type, wordFor(need.kind)).arg(need.needed);
    if (need.spares > 0) {
      finding.text += QStringLiteral(" and %1 spare").arg(need.spares);
    }
    if (!needs.hangs.isEmpty()) {
      finding.text += QStringLiteral(" (all hangs; %1)").arg(needs.hangs.join(QStringLiteral(", ")));
    }
    finding.text +=
        QStringLiteral("; %1 in the fleet, %2 of them fit for use until %3, %4 taken by other shows, "
                       "so %5 are free.")
            .arg(need.owned)
            .arg(need.free)
            .arg(needs.awayTo.isValid() ? needs.awayTo.toString(Qt::ISODate) : QStringLiteral("the end"))
            .arg(need.elsewhere)
            .arg(need.left());
  }
  if (use.why == dates) {
    finding.text += QStringLiteral(" The days away are not stated.");
  } else if (use.why == spares) {
    finding.text += QStringLiteral(" The house's spares cannot be read.");
  }
  finding.text = finding.text.trimmed();
  return finding;
}

} // namespace

const Rule stockRule{ruleId, false, evaluate, nullptr, explain};

} // namespace hangbook::options
