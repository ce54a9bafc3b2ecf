// SPDX-License-Identifier: GPL-3.0-or-later
// lift-height: the hoist's chain reaches from its point down to where the bar is met on its case. Rigging
// between point and hoist would save some of it; it is not counted, to be on the safe side.
#include <algorithm>
#include <cmath>

#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "lift-height";
enum Missing { nothing, figures };

double metHeight(const Case& option, std::size_t pick) {
  const venue::Point& point = *option.points[pick];
  return floorBeneath(option.snapshot->venue, {inMetres(point.x), inMetres(point.y)},
                      UnclearSections::nowhere) +
         option.room->barMetHeight;
}

Use evaluate(const Case& option, const Settled*, double) {
  const RoomLimits& limits = *option.room;
  Use use;
  use.limit = limits.chainLength - limits.chainShorter;
  for (std::size_t i = 0; i < option.points.size(); ++i) {
    const double needed = limits.pointHeight[i] - metHeight(option, i);
    if (use.which < 0 || needed > use.value) {
      use.value = needed;
      use.which = static_cast<int>(i);
    }
  }
  use.verdict = bySlack(use.limit - use.value, limits.liftMargin);
  use.why =
      std::isnan(use.value) || std::isnan(use.limit) || std::isnan(limits.liftMargin) ? figures : nothing;
  return use;
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  Finding finding = findingFor(ruleId, use, "m");
  const RoomLimits& limits = *option.room;
  if (option.hoist != nullptr) {
    finding.source = makerSource(option.hoist->name, option.hoist->source);
  }
  if (use.why == figures) {
    finding.text = std::isnan(limits.chainLength)
                       ? QStringLiteral("The chain length of the hoist is not known.")
                       : QStringLiteral("The height at which the bar is met, or its margin, cannot be read.");
    return finding;
  }
  const auto pick = static_cast<std::size_t>(use.which);
  finding.text =
      QStringLiteral(
          "From point %1 at %2 down to the bar on its case at %3 the chain must reach %4; the hoist has "
          "%5.")
          .arg(option.points[pick]->name, inM(limits.pointHeight[pick]), inM(metHeight(option, pick)),
               inM(use.value), inM(limits.chainLength));
  if (limits.chainShorter > 0.0) {
    finding.text.chop(1);
    finding.text += QStringLiteral(", %1 of which may be missing.").arg(inM(limits.chainShorter));
  }
  return finding;
}

} // namespace

const Rule liftHeightRule{ruleId, false, evaluate, nullptr, explain};

} // namespace hangbook::options
