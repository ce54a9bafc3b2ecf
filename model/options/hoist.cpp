// SPDX-License-Identifier: GPL-3.0-or-later
// hoist: what each hoist lifts (the most that its pick carries during build and aiming, and where it climbs
// its own body, chain and bag) × dynamic factor × lift-group share is within its usable limit; over people it
// holds without a secondary suspension by its class, or there is one.
#include <algorithm>
#include <cmath>

#include "options/build_force.h"
#include "options/loads.h"

namespace hangbook::options {
namespace {

enum Why { judged, noSecondary, secondaryUnknown };

Use onHoist(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const WeightLimits& limits = *option.weight;
  const double load = highestLifted(option, settled, trimM, pick) * factorsFor(limits, false);
  const double limit =
      option.hoist->limit ? inNewtons(*option.hoist->limit) * limits.hoistPart.value : notKnown;
  return loadUse(load, limit, static_cast<int>(pick));
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  WorstUse hoists;
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    hoists.add(onHoist(option, *settled, trimM, pick));
  }
  Use worst = provenOver(*settled, hoists.get().value());
  const bool overPeople = option.snapshot->show.peopleBeneath.value_or(false);
  if (overPeople && option.weight->secondarySteel.empty()) {
    if (!option.hoist->holdsWithoutSecondary) {
      worst.verdict = std::max(worst.verdict, Verdict::unproven);
      worst.why = secondaryUnknown;
    } else if (!*option.hoist->holdsWithoutSecondary) {
      worst.verdict = Verdict::fails;
      worst.why = noSecondary;
    }
  }
  return worst;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  const WeightLimits& limits = *option.weight;
  const auto pick = static_cast<std::size_t>(use.which);
  Finding finding = loadFinding("hoist", use);
  finding.source =
      QStringLiteral("maker's data for %1: %2").arg(option.hoist->name, option.hoist->source.text);
  QString text = QStringLiteral("The %1 hoist lifts pick %2")
                     .arg(pickName(*settled, pick), inKn(highestPickForce(option, *settled, trimM, pick)));
  if (const QString when = momentWords(settled->build.mostAt[pick], option); !when.isEmpty()) {
    text += QStringLiteral(" at its most, ") + when;
  }
  if (!option.hoist->bodyClimbs) {
    text += QStringLiteral(" (whether its body climbs is not stated)");
  } else if (*option.hoist->bodyClimbs) {
    text += QStringLiteral(" + its own body %1, chain and bag %2")
                .arg(inKn(limits.hoistBody), inKn(limits.hoistChain));
  }
  text += QStringLiteral(", with %1: %2").arg(factorWords(limits, false), inKn(use.value * 1000.0));
  text += option.hoist->limit
              ? QStringLiteral("; %1 may lift %2").arg(option.hoist->name, inKn(use.limit * 1000.0))
              : QStringLiteral("; no working load limit is stated for it");
  text += peopleWords(option, limits.hoistPart);
  if (use.why == noSecondary) {
    text += QStringLiteral("; over people it needs a secondary suspension, and none is named");
  } else if (use.why == secondaryUnknown) {
    text += QStringLiteral("; whether its class holds over people without a secondary suspension is not "
                           "stated, and none is named");
  }
  finding.text = text + unknownMomentWords(option, *settled) + QStringLiteral(".");
  finding.worstFollows = !settled->build.unknown;
  return finding;
}

} // namespace

const Rule hoistRule{"hoist", true, evaluate, nullptr, explain};

} // namespace hangbook::options
