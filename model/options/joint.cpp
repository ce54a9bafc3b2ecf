// SPDX-License-Identifier: GPL-3.0-or-later
// joint: the worst pin of each joint and the push at each seated contact, with factors and the share of the
// more loaded side, are within their usable limits.
#include <algorithm>
#include <cmath>

#include "options/loads.h"

namespace hangbook::options {
namespace {

/// `which` = element (counted from 0) × 4 + pin (0, 1) or contact.
constexpr int contactPart = 2;
/// The statics share a joint's force evenly between its two sides.
constexpr double evenShare = 0.5;

double sideShare(const Case& option, const catalogue::Join& join) {
  const double share = join.sideShare ? *join.sideShare : option.weight->jointSide.value;
  return share >= evenShare && share <= 1.0 ? share : notKnown;
}

double usable(const Case& option, const std::optional<Force>& limit) {
  return limit ? inNewtons(*limit) * option.weight->accessory.value : notKnown;
}

double pinLoad(const Case& option, const Settled& settled, std::size_t element, std::size_t pin) {
  const catalogue::Join& join = *option.joins[element];
  return settled.statics.joints[element].pinForces[pin] * (sideShare(option, join) / evenShare) *
         factorsFor(*option.weight, join.limitIncludesFactors);
}

Use evaluate(const Case& option, const Settled* settled, double) {
  Use worst;
  bool any = false;
  const auto add = [&](const Use& use) {
    worst = any ? worseOf(worst, use) : use;
    any = true;
  };
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    const catalogue::Join& join = *option.joins[i];
    const hang::JointStatics& joint = settled->statics.joints[i];
    const int first = static_cast<int>(i) * 4;
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(joint.pinCount); ++pin) {
      add(loadUse(pinLoad(option, *settled, i, pin), usable(option, join.pinLimit),
                  first + static_cast<int>(pin)));
    }
    if (joint.contact) {
      add(loadUse(*joint.contact * factorsFor(*option.weight, join.limitIncludesFactors),
                  usable(option, join.contactLimit), first + contactPart));
    }
  }
  return worst;
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  const WeightLimits& limits = *option.weight;
  const auto element = static_cast<std::size_t>(use.which / 4);
  const int part = use.which % 4;
  const catalogue::Join& join = *option.joins[element];
  const hang::JointStatics& joint = settled->statics.joints[element];
  Finding finding = loadFinding("joint", use);
  finding.source = QStringLiteral("stacking table %1: %2").arg(option.table->name, option.table->source.text);
  const QString where =
      QStringLiteral("element %1 (%2)").arg(element + 1).arg(option.cabinets[element]->name);
  QString text;
  bool stated = true;
  if (part == contactPart) {
    text = QStringLiteral("The rear contact of %1 pushes %2, with %3: %4")
               .arg(where, inKn(*joint.contact), factorWords(limits, join.limitIncludesFactors),
                    inKn(use.value * 1000.0));
    stated = join.contactLimit.has_value();
  } else {
    const double force = joint.pinForces[static_cast<std::size_t>(part)];
    const QString pin =
        joint.pinCount == 2 ? QStringLiteral("Pin %1").arg(part + 1) : QStringLiteral("The pin");
    const double share = sideShare(option, join);
    text = QStringLiteral("%1 of %2 takes %3 on each side, × %4 for the more loaded side, with %5: %6")
               .arg(pin, where, inKn(force), inTimes(share / evenShare),
                    factorWords(limits, join.limitIncludesFactors), inKn(use.value * 1000.0));
    stated = join.pinLimit.has_value();
  }
  text += stated ? QStringLiteral("; it may take %1").arg(inKn(use.limit * 1000.0))
                 : QStringLiteral("; the maker states no limit for it");
  finding.text = text + peopleWords(option, limits.accessory) + QStringLiteral(".");
  return finding;
}

} // namespace

const Rule jointRule{"joint", true, evaluate, nullptr, explain};

} // namespace hangbook::options
