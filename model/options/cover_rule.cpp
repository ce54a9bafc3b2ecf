// SPDX-License-Identifier: GPL-3.0-or-later
// cover: the share of the audience positions that lie in the vertical cover of a cabinet that is there to
// cover, within its throw. 100 % cannot be exceeded, so whether it is tight is told by an angle: it holds
// where the share is reached with the house's margin taken off each edge of cover.
#include <cmath>

#include "options/cover.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "cover";
enum Missing { nothing, trim, figures };

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const RoomLimits& limits = *option.room;
  const Audience& audience = limits.audience;
  Use use;
  use.limit = limits.coverShare;
  if (!audience.missing.isEmpty() || std::isnan(limits.coverShare) || std::isnan(limits.coverMargin)) {
    use.why = figures;
    return use;
  }
  if (std::isnan(trimM)) {
    use.why = trim;
    return use;
  }
  const Covered covered = coveredAt(audience, viewOf(option, audience, *settled), trimM);
  use.value = covered.percent();
  use.which = covered.firstMissed;
  if (use.value < use.limit) {
    use.verdict = Verdict::fails;
    return use;
  }
  const CoverView inside = viewOf(option, audience, *settled, limits.coverMargin);
  use.verdict = coveredAt(audience, inside, trimM).percent() >= use.limit ? Verdict::holds : Verdict::tight;
  return use;
}

TrimRange trimRange(const Case& option, const Settled& settled) {
  return widestWithin(coverStretches(option, settled), {});
}

QString rowAt(const Audience& audience, int position) {
  const AudiencePosition& at = audience.positions[static_cast<std::size_t>(position)];
  return QStringLiteral("%1 at x = %2").arg(audience.sections[at.section], inM(at.x));
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  Finding finding = findingFor(ruleId, use, "%");
  const RoomLimits& limits = *option.room;
  const Audience& audience = limits.audience;
  finding.source = option.house->figure(QStringLiteral("cover-share")).source;
  if (use.why == figures) {
    finding.text = audience.missing.isEmpty()
                       ? QStringLiteral("The house's share or margin of cover cannot be read.")
                       : QStringLiteral("Not known: %1.").arg(audience.missing.join(QStringLiteral(", ")));
    return finding;
  }
  if (use.why == trim) {
    finding.text = QStringLiteral("No trim is decided.");
    return finding;
  }
  const Covered covered = coveredAt(audience, viewOf(option, audience, *settled), trimM);
  finding.text =
      QStringLiteral("%1 of %2 audience positions (one each %3) lie between the edges of cover and "
                     "within throw: %4 %, asked for are %5 %.")
          .arg(covered.covered)
          .arg(covered.positions)
          .arg(inM(audienceStepM), QString::number(use.value, 'f', 1), QString::number(use.limit, 'f', 1));
  if (audience.cabinets.empty()) {
    finding.text += QStringLiteral(" No cabinet of this stack is there to cover the audience.");
  } else if (covered.firstMissed >= 0) {
    finding.text += QStringLiteral(" First missed: %1; last missed: %2.")
                        .arg(rowAt(audience, covered.firstMissed), rowAt(audience, covered.lastMissed));
  } else if (use.verdict == Verdict::tight) {
    finding.text += QStringLiteral(" Some lie less than %1 inside an edge.").arg(inDeg(limits.coverMargin));
  }
  return finding;
}

} // namespace

std::vector<TrimRange> coverStretches(const Case& option, const Settled& settled) {
  const RoomLimits& limits = *option.room;
  if (!limits.audience.missing.isEmpty() || std::isnan(limits.coverShare)) {
    return {TrimRange{}};
  }
  return stretchesThatCoverShare(limits.audience, viewOf(option, limits.audience, settled),
                                 limits.coverShare);
}

const Rule coverRule{ruleId, true, evaluate, trimRange, explain};

} // namespace hangbook::options
