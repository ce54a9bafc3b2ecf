// SPDX-License-Identifier: GPL-3.0-or-later
// contact: every seated joint stands shut in the shape that the hang really takes. One that opens, by as much
// as the chain's slack or its stop lets it, is compared with the house's most opening (usually none).
#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/seated.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

/// Less than this is no slack, m.
constexpr double leastSlack = 1e-9;

enum Why { pressed, noSeated, stopHolds, opens };

/// The joint that stands open farthest, counted from 0; −1: none does.
int mostOpen(const Settled& settled) {
  int most = -1;
  for (std::size_t i = 0; i < settled.statics.joints.size(); ++i) {
    const double open = settled.statics.joints[i].openDeg;
    if (open > 0.0 && (most < 0 || open > settled.statics.joints[static_cast<std::size_t>(most)].openDeg)) {
      most = static_cast<int>(i);
    }
  }
  return most;
}

/// The least push at a contact, N, at either end of what the taut chain may carry; nothing on a stop.
std::optional<double> leastPush(const Settled& settled, const hang::JointStatics& joint) {
  if (!joint.contact) {
    return std::nullopt;
  }
  const bool both = joint.end && joint.end->contact && !chainHasSlack(settled);
  return both ? std::min(*joint.contact, *joint.end->contact) : *joint.contact;
}

Use ofOpen(const Case& option, const Settled& settled, int element) {
  Use use;
  use.which = element;
  use.why = opens;
  use.value = settled.statics.joints[static_cast<std::size_t>(element)].openDeg;
  use.limit = option.weight->openMost.value;
  use.verdict = againstUpperLimit(use.value, use.limit, 0.0);
  return use;
}

Use evaluate(const Case& option, const Settled* settled, double) {
  if (const int open = mostOpen(*settled); open >= 0) {
    return boundedOver(*settled, ofOpen(option, *settled, open));
  }
  Use least;
  least.verdict = Verdict::holds;
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    if (!isSeated(option, i)) {
      continue;
    }
    const hang::JointStatics& joint = settled->statics.joints[i];
    if (const std::optional<double> push = leastPush(*settled, joint)) {
      // One that is not known stays the one that is told.
      if (least.which < 0 || least.why == stopHolds || std::isnan(*push) || *push / 1000.0 < least.value) {
        least.value = *push / 1000.0;
        least.limit = 0.0;
        least.which = static_cast<int>(i);
        least.why = pressed;
      }
    } else if (least.which < 0) {
      least.which = static_cast<int>(i);
      least.why = stopHolds;
    }
  }
  if (least.which < 0) {
    least.applies = false;
    least.why = noSeated;
  } else if (least.why == pressed) {
    least.verdict = againstLowerLimit(least.value, 0.0, 0.0);
  }
  return boundedOver(*settled, least);
}

QString openWords(const Settled& settled, const Use& use, const QString& where) {
  const hang::JointStatics& joint = settled.statics.joints[static_cast<std::size_t>(use.which)];
  QString text = QStringLiteral("The seated joint of %1 opens by %2").arg(where, inDeg(use.value));
  if (joint.stop) {
    text += QStringLiteral(", to its stop, which carries %1").arg(inKn(*joint.stop));
  } else if (settled.statics.chain && !chainHasSlack(settled)) {
    text += QStringLiteral(", until the chain is taut at %1").arg(inKn(settled.statics.chain->tension));
  }
  return text + QStringLiteral("; that cabinet then aims at %1. The house lets a joint open by %2.")
                    .arg(inDeg(joint.aimDeg),
                         std::isnan(use.limit) ? QStringLiteral("a figure not known") : inDeg(use.limit));
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("contact", QStringLiteral("no joint of this stack is seated."));
  }
  const auto element = static_cast<std::size_t>(use.which);
  const QString where =
      QStringLiteral("element %1 (%2)").arg(element + 1).arg(option.cabinets[element]->name);
  Finding finding = findingFor("contact", use, use.why == opens ? "°" : "kN");
  finding.source = use.why == opens ? option.weight->openMost.source
                                    : QStringLiteral("mechanics: a seated joint can only push");
  if (use.why == opens) {
    finding.text = openWords(*settled, use, where);
  } else if (use.why == stopHolds) {
    finding.source =
        QStringLiteral("stacking table %1: %2").arg(option.table->name, option.table->source.text);
    finding.text = QStringLiteral("The seated joint of %1 cannot open: its rear stop holds it with %2.")
                       .arg(where, inKn(settled->statics.joints[element].stop.value_or(notKnown)));
  } else {
    finding.text =
        QStringLiteral("Of the seated joints that of %1 is pressed least: %2; it must not come below 0.")
            .arg(where, inKn(use.value * 1000.0));
  }
  return finding;
}

} // namespace

bool isSeated(const Case& option, std::size_t element) {
  return option.joins[element]->kind == catalogue::JointKind::seated;
}

bool chainHasSlack(const Settled& settled) {
  return settled.statics.chain && settled.statics.chain->slack > leastSlack;
}

const Rule contactRule{"contact", true, evaluate, nullptr, explain};

} // namespace hangbook::options
