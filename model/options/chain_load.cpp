// SPDX-License-Identifier: GPL-3.0-or-later
// chain: its tension, with factors, is within its usable limit, as set and at the worst step of the build and
// of aiming; where a pivot hangs on it, it is above 0 as set; and it runs straight, clear of the cabinets
// between anchor and eye.
#include <algorithm>
#include <cmath>

#include "hang/vec2.h"
#include "options/build_force.h"
#include "options/loads.h"
#include "options/seated.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

enum Why { judged, noChain, slackPivot, bearsOnCabinet, mayNotReach };

bool holdsPivot(const Case& option) {
  return option.joins[static_cast<std::size_t>(option.held) - 1]->kind == catalogue::JointKind::pivot;
}

/// A place in the hang's own plane, from any origin: only how places lie to each other is asked.
struct Plane {
  const hang::Layout& layout;
  hang::Vec2 of(const hang::Vec3& place) const {
    const auto along = [&](const hang::Vec3& axis) {
      return place.x * axis.x + place.y * axis.y + place.z * axis.z;
    };
    return {along(layout.forward), along(layout.up)};
  }
};

/// What the chain is judged at, N: the most that balance lets it carry. Where a pivot hangs on it or an open
/// joint decides, that is its tension; beside pinned joints, as if it alone carried one's moment.
double tensionOf(const Settled& settled) {
  return settled.statics.chain->most;
}

/// More than that on the way to the hang as set, N; 0 where nothing is.
double builtTension(const Settled& settled) {
  const double built = settled.build.carried.chain;
  return built > tensionOf(settled) * (1.0 + 1e-9) ? built : 0.0;
}

bool crosses(hang::Vec2 a, hang::Vec2 b, hang::Vec2 c, hang::Vec2 d) {
  const auto side = [](hang::Vec2 from, hang::Vec2 to, hang::Vec2 point) {
    return hang::moment(to - from, point - from);
  };
  return side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0;
}

/// The first cabinet above the held one (counted from 0) that stands in the chain's straight line, or −1.
int inTheWay(const Case& option, const Settled& settled) {
  const Plane plane{settled.layout};
  const auto held = static_cast<std::size_t>(option.held) - 1;
  const hang::Vec2 anchor = plane.of(*settled.layout.chainAnchor);
  const hang::Vec2 eye = plane.of(*settled.layout.elements[held].chainEye);
  for (std::size_t i = 0; i < held; ++i) {
    const std::vector<hang::Vec3>& outline = settled.layout.elements[i].outline;
    for (std::size_t k = 0; k < outline.size(); ++k) {
      if (crosses(anchor, eye, plane.of(outline[k]), plane.of(outline[(k + 1) % outline.size()]))) {
        return static_cast<int>(i);
      }
    }
  }
  return -1;
}

Use evaluate(const Case& option, const Settled* settled, double) {
  Use use;
  if (option.held == 0) {
    use.verdict = Verdict::holds;
    use.applies = false;
    use.why = noChain;
    return use;
  }
  const WeightLimits& limits = *option.weight;
  const double tension = std::max(tensionOf(*settled), builtTension(*settled));
  use = loadUse(tension * factorsFor(limits, option.chain->limitIncludesFactors),
                option.chain->limit ? inNewtons(*option.chain->limit) * limits.accessory.value : notKnown);
  if (holdsPivot(option) && !(settled->statics.chain->tension > 0.0)) {
    use.verdict = Verdict::fails;
    use.why = slackPivot;
    return use;
  }
  if (settled->doubt != nullptr && settled->doubt->worst.chainMayNotReach) {
    use.verdict = Verdict::fails;
    use.why = mayNotReach;
    return use;
  }
  if (use.verdict < Verdict::unproven) {
    use.which = inTheWay(option, *settled);
    if (use.which >= 0) {
      use.verdict = Verdict::unproven;
      use.why = bearsOnCabinet;
    }
  }
  return carriedOver(*settled, boundedOver(*settled, use));
}

/// How much more it pulls on the way, and when.
QString builtWords(const Case& option, const Settled& settled) {
  const double built = builtTension(settled);
  return built > 0.0 ? QStringLiteral(", and %1 %2")
                           .arg(inKn(built), momentWords(settled.build.carried.chainAt, option))
                     : QString();
}

/// How sure that pull is.
QString shareWords(const Settled& settled) {
  const hang::ChainStatics& chain = *settled.statics.chain;
  if (chain.most > chain.tension) {
    return chainHasSlack(settled)
               ? QStringLiteral(" (nothing while its slack of %1 mm lasts; as much if it alone carried the "
                                "moment of a pinned joint)")
                     .arg(QString::number(chain.slack * 1000.0, 'f', 1))
               : QStringLiteral(" (between %1 and that: balance leaves open who carries how much)")
                     .arg(inKn(chain.tension));
  }
  return chainHasSlack(settled)
             ? QStringLiteral(" (it has %1 mm of slack)").arg(QString::number(chain.slack * 1000.0, 'f', 1))
             : QString();
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply("chain", QStringLiteral("no chain holds this stack."));
  }
  const WeightLimits& limits = *option.weight;
  Finding finding = loadFinding("chain", use);
  finding.source =
      QStringLiteral("maker's data for %1: %2").arg(option.chain->name, option.chain->source.text);
  const double tension = tensionOf(*settled);
  const QString held = option.cabinets[static_cast<std::size_t>(option.held) - 1]->name;
  if (use.why == slackPivot) {
    finding.text =
        QStringLiteral(
            "Nothing pulls at the chain that holds %1 (%2): it is slack, and the angle is not held.")
            .arg(held, inKn(settled->statics.chain->tension));
    return finding;
  }
  if (use.why == mayNotReach) {
    finding.text =
        QStringLiteral("At its shortest (pitch and places at their unfavourable end) the chain does not "
                       "reach the eye of %1 at this mark.")
            .arg(held);
    return finding;
  }
  QString text = QStringLiteral("The chain pulls %1 at %2%3, with %4: %5")
                     .arg(inKn(tension), held, shareWords(*settled) + builtWords(option, *settled),
                          factorWords(limits, option.chain->limitIncludesFactors), inKn(use.value * 1000.0));
  text += option.chain->limit ? QStringLiteral("; it may take %1").arg(inKn(use.limit * 1000.0))
                              : QStringLiteral("; no limit is stated for it");
  text += peopleWords(option, limits.accessory);
  if (use.why == bearsOnCabinet) {
    text +=
        QStringLiteral("; element %1 (%2) stands in its straight line, so its length and pull are not known")
            .arg(use.which + 1)
            .arg(option.cabinets[static_cast<std::size_t>(use.which)]->name);
  }
  finding.text = text + carriedUnknownWords(option, *settled) + QStringLiteral(".");
  return finding;
}

} // namespace

const Rule chainRule{"chain", true, evaluate, nullptr, explain};

} // namespace hangbook::options
