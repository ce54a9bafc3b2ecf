// SPDX-License-Identifier: GPL-3.0-or-later
// bridle: where a pick hangs from points that do not stand over it, its legs can be made up from the steels
// that there are, every leg pulls at no flatter an angle than allowed, and no steel or shackle in it takes
// more than its usable limit; of three legs, two alone must be able to carry everything (29 CFR 1910.184).
#include <algorithm>
#include <cmath>

#include "options/bridle_limits.h"
#include "options/carriers.h"
#include "options/loads.h"
#include "options/sentence.h"
#include "options/working_limit.h"

namespace hangbook::options {
namespace {

enum Why { pull, angle, slack, fault, figures, none };

/// `which` = leg × picks + pick.
std::size_t pickOf(const Case& option, const Use& use) {
  return static_cast<std::size_t>(use.which) % option.bridles.size();
}
std::size_t legOf(const Case& option, const Use& use) {
  return static_cast<std::size_t>(use.which) / option.bridles.size();
}

Use ofPick(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const BridledPick& bridle = *option.bridles[pick];
  Use worst;
  worst.which = static_cast<int>(pick);
  worst.why = figures;
  if (!bridle.fault.isEmpty()) {
    worst.verdict = Verdict::fails;
    worst.why = fault;
    return worst;
  }
  const std::vector<hang::LegForce> forces = legForces(option, settled, trimM, pick, true);
  if (forces.empty() || !bridle.missing.isEmpty()) {
    worst.verdict = Verdict::unproven;
  } else {
    worst.verdict = Verdict::holds;
  }
  bool any = worst.verdict != Verdict::holds;
  const double factors = factorsFor(*option.weight, false);
  for (std::size_t i = 0; i < forces.size(); ++i) {
    const auto which = static_cast<int>(i * option.bridles.size() + pick);
    Use load = loadUse(worstTension(option, settled, trimM, pick, i) * factors,
                       weakestOf(option, bridle.legs[i]).limit, which);
    load.why = pull;
    Use flat = legAngleUse(*option.weight, forces[i].fromHorizontalDeg -
                                               (settled.doubt == nullptr ? 0.0 : bridle.legs[i].flatterDeg));
    flat.which = which;
    flat.why = angle;
    if (forces[i].slack || (settled.doubt != nullptr && bridle.legs[i].mayHangSlack)) {
      flat.verdict = Verdict::fails;
      flat.why = slack;
    }
    for (const Use& each : {load, flat}) {
      // Of like verdict the pull is told: it is the figure that says by how much.
      const bool tellThis = !any || each.verdict > worst.verdict ||
                            (each.verdict == worst.verdict && each.why == pull && worst.why == pull &&
                             each.value / each.limit > worst.value / worst.limit);
      worst = tellThis ? each : worst;
      any = true;
    }
  }
  return worst;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  Use worst;
  worst.verdict = Verdict::holds;
  worst.applies = false;
  worst.why = none;
  for (std::size_t pick = 0; pick < option.bridles.size(); ++pick) {
    if (option.bridles[pick] == nullptr) {
      continue;
    }
    const Use use = ofPick(option, *settled, trimM, pick);
    if (!worst.applies || use.verdict > worst.verdict ||
        (use.verdict == worst.verdict && use.why == pull && worst.why == pull &&
         use.value / use.limit > worst.value / worst.limit)) {
      worst = use;
    }
  }
  return boundedOver(*settled, worst);
}

QString madeOf(const BridleLeg& leg) {
  QStringList pieces;
  for (const LegPiece& piece : leg.pieces) {
    pieces.append(QStringLiteral("%1 × %2").arg(piece.count).arg(piece.type->name));
  }
  return pieces.join(QStringLiteral(" + "));
}

QString stretchWords(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  double down{};
  for (const hang::LegForce& force : legForces(option, settled, trimM, pick, true)) {
    down += force.vertical();
  }
  const double shift = option.bridles[pick]->shiftUnder(down);
  return std::isnan(shift)
             ? QStringLiteral("; how far the load stretches it is not known")
             : QStringLiteral("; the load moves the apex %1 mm").arg(QString::number(shift * 1000.0, 'f', 0));
}

QString legWords(const Case& option, const Settled& settled, double trimM, const Use& use) {
  const std::size_t pick = pickOf(option, use);
  const std::size_t number = legOf(option, use);
  const BridledPick& bridle = *option.bridles[pick];
  const BridleLeg& leg = bridle.legs[number];
  const hang::LegForce force = legForces(option, settled, trimM, pick, true).at(number);
  QString text =
      QStringLiteral("Leg to point %1 of bridle %2 (%3, %4 long where %5 was wanted) stands %6 from the "
                     "horizontal and pulls %7 at rest, %8 of it sideways")
          .arg(leg.point->name, bridle.apex.name, madeOf(leg), inM(leg.length), inM(leg.wanted),
               inDeg(force.fromHorizontalDeg), inKn(tensionAtTop(leg, force)), inKn(force.horizontal()));
  const double worst = worstTension(option, settled, trimM, pick, number);
  if (worst > tensionAtTop(leg, force)) {
    text += QStringLiteral(", or %1 where it and one other carry all").arg(inKn(worst));
  }
  return text;
}

QString slackWords(const Case& option, const Settled& settled, double trimM, const Use& use) {
  const std::size_t pick = pickOf(option, use);
  const std::size_t number = legOf(option, use);
  return legForces(option, settled, trimM, pick, true).at(number).slack
             ? QStringLiteral(": it hangs slack, so the apex does not stand where it should.")
             : QStringLiteral(": with its bridle's legs as long or short as their pieces may be it hangs "
                              "slack, and the apex does not stand where it should.");
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  if (!use.applies) {
    return doesNotApply("bridle", QStringLiteral("every pick hangs straight down from its point."));
  }
  const std::size_t pick = pickOf(option, use);
  const BridledPick& bridle = *option.bridles[pick];
  const WeightLimits& limits = *option.weight;
  if (use.why == fault) {
    Finding finding = findingFor("bridle", use, "");
    finding.source = QStringLiteral("geometry of the bridle");
    finding.text = QStringLiteral("Bridle %1 cannot be rigged: %2.").arg(bridle.apex.name, bridle.fault);
    return finding;
  }
  if (use.why == figures) {
    Finding finding = findingFor("bridle", use, "kN");
    finding.text =
        bridle.missing.isEmpty()
            ? QStringLiteral("What hangs from the apex of bridle %1 is not known.").arg(bridle.apex.name)
            : QStringLiteral("Of bridle %1 these are not stated: %2.")
                  .arg(bridle.apex.name, bridle.missing.join(QStringLiteral(", ")));
    return finding;
  }
  const QString leg = legWords(option, *settled, trimM, use);
  if (use.why == angle || use.why == slack) {
    Finding finding = findingFor("bridle", use, "°");
    finding.source = limits.legAngleLeast.source;
    finding.text =
        use.why == slack
            ? leg + slackWords(option, *settled, trimM, use)
            : leg + QStringLiteral("; at least %1 is asked for, and %2 preferred (%3).")
                        .arg(inDeg(limits.legAngleLeast.value), inDeg(limits.legAnglePreferred.value),
                             limits.legAnglePreferred.source);
    return finding;
  }
  Finding finding = loadFinding("bridle", use);
  const BridleLeg& of = bridle.legs[legOf(option, use)];
  const Weakest weakest = weakestOf(option, of);
  QString text =
      leg + QStringLiteral("; with %1: %2").arg(factorWords(limits, false), inKn(use.value * 1000.0));
  if (weakest.type == nullptr) {
    text += QStringLiteral("; what it is made of is not known");
  } else {
    finding.source =
        QStringLiteral("maker's data for %1: %2; %3")
            .arg(weakest.type->name, weakest.type->source.text, usableSource(limits, *weakest.type));
    text += QStringLiteral("; %1 may take %2").arg(weakest.type->name, inKn(use.limit * 1000.0)) +
            peopleWords(option, limits.accessory);
  }
  finding.text = text + stretchWords(option, *settled, trimM, pick) + QStringLiteral(".");
  return finding;
}

} // namespace

const Rule bridleRule{"bridle", true, evaluate, nullptr, explain};

} // namespace hangbook::options
