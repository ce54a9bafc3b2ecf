// SPDX-License-Identifier: GPL-3.0-or-later
// lowest-edge: the lowest edge hangs at or above the highest of all lower bounds, and not above the venue's
// upper one.
#include <algorithm>
#include <cmath>
#include <limits>

#include "options/loads.h"
#include "options/rig_fold.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "lowest-edge";
/// `which`, where it is none of the bounds stated: the floor beneath, the venue's upper bound.
constexpr int byFloor = std::numeric_limits<int>::max();
constexpr int byMostTrim = std::numeric_limits<int>::min();
enum Missing { nothing, trim, outline, width, tail, bound };

struct Lowest {
  double metres = -std::numeric_limits<double>::infinity();
  int which{};
};

double highestFloor(const Case& option, const hang::Layout& layout) {
  const Placement placement = placementOf(option, layout);
  const venue::Venue& venue = option.snapshot->venue;
  double highest = floorBeneath(venue, placement.origin);
  for (const hang::PlacedElement& element : layout.elements) {
    for (const hang::Vec3& corner : element.outline) {
      highest = std::max(highest, floorBeneath(venue, placement.placeOf(corner)));
    }
  }
  return highest;
}

Lowest lowerBound(const Case& option, const Settled& settled) {
  const RoomLimits& limits = *option.room;
  Lowest lowest;
  for (std::size_t i = 0; i < limits.leastTrim.size(); ++i) {
    if (limits.leastTrim[i].metres > lowest.metres) {
      lowest = {limits.leastTrim[i].metres, static_cast<int>(i)};
    }
  }
  const double highest = keptOr(option.fold == nullptr ? nullptr : option.fold->floor(settled),
                                [&] { return highestFloor(option, settled.layout); });
  const double overFloor = highest + limits.leastAboveFloor.metres;
  return overFloor > lowest.metres ? Lowest{overFloor, byFloor} : lowest;
}

double upperBound(const RoomLimits& limits) {
  return limits.mostTrim ? limits.mostTrim->metres : std::numeric_limits<double>::infinity();
}

int missingFor(const Case& option, const Settled& settled) {
  const LowestEdge edge = lowestEdge(option, settled);
  if (edge.outlineMissing) {
    return outline;
  }
  if (edge.widthMissing) {
    return width;
  }
  if (edge.tailMissing) {
    return tail;
  }
  const auto& bounds = option.room->leastTrim;
  return std::any_of(bounds.begin(), bounds.end(), [](const Bound& each) { return std::isnan(each.metres); })
             ? bound
             : nothing;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  Use use;
  const Lowest low = lowerBound(option, *settled);
  const double high = upperBound(*option.room);
  if (std::isnan(trimM)) {
    use.limit = low.metres;
    use.which = low.which;
    use.why = trim;
    return use;
  }
  // The crew may set it by the bar's datum as well as by the edge itself: it is then off by the hang's own
  // height.
  const double off = heightDoubt(*settled);
  const bool fromAbove = high - trimM < trimM - low.metres;
  const double slack = fromAbove ? high - trimM - off : trimM - off - low.metres;
  use.value = fromAbove ? trimM + off : trimM - off;
  use.limit = fromAbove ? high : low.metres;
  use.which = fromAbove ? byMostTrim : low.which;
  use.verdict = bySlack(slack, option.room->trimMargin);
  use.why = missingFor(option, *settled);
  if (use.why != nothing) {
    use.verdict = worse(use.verdict, Verdict::unproven);
  }
  return boundedOver(*settled, use);
}

TrimRange trimRange(const Case& option, const Settled& settled) {
  const double off = heightDoubt(settled);
  return {lowerBound(option, settled).metres + off, upperBound(*option.room) - off};
}

QString sentenceFor(int missing) {
  switch (missing) {
  case trim:
    return QStringLiteral("No trim is decided.");
  case outline:
    return QStringLiteral("The outline of a cabinet is not known, so neither is the lowest edge.");
  case width:
    return QStringLiteral("The hang rolls, and a width is not known: one lower corner may hang deeper.");
  case tail:
    return QStringLiteral(
        "The chain's number of links is not known, so neither is how far its end hangs down.");
  case bound:
    return QStringLiteral("The house's least height cannot be read.");
  default:
    return {};
  }
}

/// What the crew must know where unused links are tied up but would reach lower than the lowest edge.
QString tailSentence(const Case& option, const Settled& settled, double trimM) {
  const double tail = unusedChain(option, settled);
  if (option.room->chainTail != 0.0 || !(tail > 0.0) || std::isnan(trimM)) {
    return {};
  }
  const auto& eye = settled.layout.elements[static_cast<std::size_t>(option.held - 1)].chainEye;
  const double end = originHeight(option, settled, trimM) + eye->z - tail;
  return end < trimM ? QStringLiteral(" Tie up the chain beyond its mark: loose, it would hang down to %1.")
                           .arg(inM(end))
                     : QString();
}

Finding explain(const Case& option, const Settled* settled, double, const Use& use) {
  Finding finding = findingFor(ruleId, use, "m");
  const RoomLimits& limits = *option.room;
  QString what = QStringLiteral("must hang at %1 or higher").arg(inM(use.limit));
  if (use.which == byMostTrim) {
    finding.source = limits.mostTrim->source;
    what = QStringLiteral("may hang at %1 at most").arg(inM(use.limit));
  } else if (use.which == byFloor) {
    finding.source = limits.leastAboveFloor.source;
    what += QStringLiteral(" (%1 above the floor beneath, which is at %2)")
                .arg(inM(limits.leastAboveFloor.metres), inM(highestFloor(option, settled->layout)));
  } else if (use.which >= 0) {
    finding.source = limits.leastTrim[static_cast<std::size_t>(use.which)].source;
  }
  finding.text =
      std::isnan(use.value)
          ? QStringLiteral("The lowest edge %1.").arg(what)
          : QStringLiteral("The lowest edge hangs at %1 above the datum; it %2.").arg(inM(use.value), what);
  finding.text += tailSentence(option, *settled, use.value);
  if (use.why != nothing) {
    finding.text += QLatin1Char(' ') + sentenceFor(use.why);
  }
  return finding;
}

} // namespace

const Rule lowestEdgeRule{ruleId, true, evaluate, trimRange, explain};

} // namespace hangbook::options
