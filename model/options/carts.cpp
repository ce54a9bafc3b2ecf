// SPDX-License-Identifier: GPL-3.0-or-later
// carts: cabinets travel on whole carts, or on one that the hangs share, and there are enough carts.
#include <cmath>

#include "options/gear_needs.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "carts";
enum Missing { nothing, noCart, noMost, dates };

int missingFor(const GearNeeds& needs, const CartNeed& need) {
  if (need.cart.isEmpty()) {
    return noCart;
  }
  if (!need.most) {
    return noMost;
  }
  return needs.datesKnown ? nothing : dates;
}

Verdict verdictFor(const GearNeeds& needs, const CartNeed& need) {
  const int missing = missingFor(needs, need);
  if (missing == noCart || missing == noMost) {
    return Verdict::unproven;
  }
  if (need.needed > need.left()) {
    return Verdict::fails;
  }
  if (missing == dates) {
    return Verdict::unproven;
  }
  return need.notFull > 0 || need.needed == need.left() ? Verdict::tight : Verdict::holds;
}

Use evaluate(const Case& option, const Settled*, double) {
  const GearNeeds& needs = *option.gear;
  Use use;
  int scarcest{};
  for (std::size_t i = 0; i < needs.carts.size(); ++i) {
    const CartNeed& need = needs.carts[i];
    const Verdict verdict = verdictFor(needs, need);
    const int over = need.left() - need.needed;
    if (use.which >= 0 && (verdict < use.verdict || (verdict == use.verdict && over >= scarcest))) {
      continue;
    }
    use.verdict = verdict;
    use.which = static_cast<int>(i);
    use.why = missingFor(needs, need);
    use.value = need.most ? need.needed : notKnown;
    use.limit = need.most ? need.left() : notKnown;
    scarcest = over;
  }
  return use;
}

QString numbersOf(const CartNeed& need) {
  QStringList each;
  for (const int number : need.cabinets) {
    each.append(QString::number(number));
  }
  return each.join(QStringLiteral(" + "));
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  Finding finding = findingFor(ruleId, use, "carts");
  finding.source = QStringLiteral("makers' data for carts and the fleet's list");
  if (use.which < 0) {
    finding.text = QStringLiteral("No cabinet is known.");
    return finding;
  }
  const CartNeed& need = option.gear->carts[static_cast<std::size_t>(use.which)];
  if (use.why == noCart) {
    finding.text = QStringLiteral("No type of cart is known that carries %1.").arg(need.cabinet);
    return finding;
  }
  if (use.why == noMost) {
    finding.text = QStringLiteral("How many %1 ride on a %2 is not known.").arg(need.cabinet, need.cart);
    return finding;
  }
  finding.text =
      QStringLiteral(
          "%1: %2 cabinets, %3 to one %4. Carts needed: %5; fit for use: %6; taken by other shows: "
          "%7.")
          .arg(need.cabinet, numbersOf(need))
          .arg(*need.most)
          .arg(need.cart)
          .arg(need.needed)
          .arg(need.free)
          .arg(need.elsewhere);
  if (need.shared > 0) {
    finding.text += QStringLiteral(" Of these, shared between the hangs: %1.").arg(need.shared);
  }
  if (need.notFull > 0) {
    finding.text += QStringLiteral(" One travels with a place left over.");
  }
  if (use.why == dates) {
    finding.text += QStringLiteral(" The days away are not stated.");
  }
  return finding;
}

} // namespace

const Rule cartsRule{ruleId, false, evaluate, nullptr, explain};

} // namespace hangbook::options
