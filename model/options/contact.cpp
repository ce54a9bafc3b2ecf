// SPDX-License-Identifier: GPL-3.0-or-later
// contact: every seated joint stays shut. Where the chain has slack it carries nothing, so the joint is
// judged at tension 0; one that opens then takes a shape that this version does not solve.
#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/seated.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

/// Less than this is no slack, m.
constexpr double leastSlack = 1e-9;

enum Why { judged, noSeated, opensWithSlack, opensWithoutChain, opensTaut };

bool isSeated(const Case& option, std::size_t element) {
  return option.joins[element]->kind == catalogue::JointKind::seated;
}

Use evaluate(const Case& option, const Settled* settled, double) {
  Use least;
  least.verdict = Verdict::holds;
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    if (!isSeated(option, i)) {
      continue;
    }
    const double push = seatedPush(option, *settled, i) / 1000.0;
    if (least.which < 0 || !(push >= least.value)) {
      least.value = push;
      least.limit = 0.0;
      least.which = static_cast<int>(i);
    }
  }
  if (least.which < 0) {
    least.applies = false;
    least.why = noSeated;
    return least;
  }
  least.verdict = againstLowerLimit(least.value, 0.0, 0.0);
  if (least.verdict == Verdict::fails) {
    if (!settled->statics.chain) {
      least.why = opensWithoutChain;
    } else if (chainHasSlack(*settled)) {
      least.verdict = Verdict::unproven;
      least.why = opensWithSlack;
    } else {
      least.why = opensTaut;
    }
  }
  return least;
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("contact", QStringLiteral("no joint of this stack is seated."));
  }
  Finding finding = findingFor("contact", use, "kN");
  finding.source = QStringLiteral("mechanics: a seated joint can only push");
  const auto element = static_cast<std::size_t>(use.which);
  const QString where =
      QStringLiteral("element %1 (%2)").arg(element + 1).arg(option.cabinets[element]->name);
  if (use.why == judged) {
    finding.text =
        QStringLiteral("Of the seated joints that of %1 is pressed least: %2; it must not come below 0.")
            .arg(where, inKn(use.value * 1000.0));
    return finding;
  }
  finding.text = QStringLiteral("The seated joint of %1 would have to pull %2, so it opens")
                     .arg(where, inKn(-use.value * 1000.0));
  if (use.why == opensWithSlack) {
    finding.text +=
        QStringLiteral(" until the chain's slack of %1 mm is used up; the shape with slack is not solved.")
            .arg(settled->statics.chain->slack * 1000.0, 0, 'f', 1);
  } else {
    finding.text += use.why == opensTaut ? QStringLiteral(" in spite of the chain.")
                                         : QStringLiteral(", and no chain holds it.");
  }
  return finding;
}

} // namespace

bool chainHasSlack(const Settled& settled) {
  return settled.statics.chain && settled.statics.chain->slack > leastSlack;
}

double seatedPush(const Case& option, const Settled& settled, std::size_t element) {
  const hang::JointStatics& joint = settled.statics.joints[element];
  if (settled.statics.chain && !chainHasSlack(settled)) {
    return joint.contact.value_or(notKnown);
  }
  const std::optional<catalogue::Position>& contact = option.cabinets[element]->rearContact;
  return contact ? joint.gravityMoment / inMetres(contact->x) : notKnown;
}

int opensAtRest(const Case& option, const Settled& settled) {
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    if (isSeated(option, i) && !(seatedPush(option, settled, i) >= 0.0)) {
      return static_cast<int>(i);
    }
  }
  return -1;
}

const Rule contactRule{"contact", true, evaluate, nullptr, explain};

} // namespace hangbook::options
