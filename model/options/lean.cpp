// SPDX-License-Identifier: GPL-3.0-or-later
// lean: where two points do not stand as far apart as the picks, the hoists' chains stand off the vertical;
// up to a few degrees that counts as vertical.
#include <cmath>

#include "hang/vec2.h"
#include "options/loads.h"
#include "options/placement.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

Use leanOf(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  Use use;
  use.value = leanDeg(option, settled, trimM, pick);
  use.limit = option.weight->leanMost.value;
  use.which = static_cast<int>(pick);
  // At the very trim that the limit gives, rounding alone would take it beyond.
  if (std::abs(use.value - use.limit) < hang::angleSlackDeg) {
    use.value = use.limit;
  }
  use.verdict = againstUpperLimit(use.value, use.limit, 0.0);
  return use;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  if (option.points.size() < 2) {
    Use use;
    use.verdict = Verdict::holds;
    use.applies = false;
    return use;
  }
  WorstUse picks;
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    picks.add(leanOf(option, *settled, trimM, pick));
  }
  return picks.get().value();
}

/// The higher the hang, the shorter the chain, the more it leans.
TrimRange trimRange(const Case& option, const Settled& settled) {
  TrimRange range;
  const double off = chainOff(option, settled);
  if (off == 0.0) {
    return range; // the chains stand plumb at any trim
  }
  const double needed = off / std::tan(hang::toRadians(option.weight->leanMost.value));
  const double origin = originHeight(option, settled, 0.0);
  for (std::size_t pick = 0; pick < option.points.size(); ++pick) {
    const double most = inMetres(option.points[pick]->z) - needed - origin - settled.layout.picks[pick].z -
                        heightDoubt(settled);
    range.high = std::isnan(most) ? range.high : std::min(range.high, most);
  }
  return range;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  if (!use.applies) {
    return doesNotApply("lean", QStringLiteral("a single pick hangs under its point."));
  }
  const WeightLimits& limits = *option.weight;
  Finding finding = findingFor("lean", use, "°");
  finding.source = limits.leanMost.source;
  QString text = QStringLiteral("The points stand %1 m apart and the picks %2 m")
                     .arg(QString::number(limits.spacing, 'f', 3))
                     .arg(QString::number(pickSpacing(*settled), 'f', 3));
  if (std::isnan(use.value)) {
    text += QStringLiteral(", so the chains lean; by how much is not known without a trim");
  } else {
    const auto pick = static_cast<std::size_t>(use.which);
    text += QStringLiteral(", so the chain at %1 leans %2 from the vertical and its load is × %3")
                .arg(pickName(*settled, pick), inDeg(use.value),
                     inTimes(pickForce(option, *settled, trimM, pick) / pickLoad(*settled, pick)));
  }
  finding.text = text + QStringLiteral("; at most %1 is allowed.").arg(inDeg(limits.leanMost.value));
  return finding;
}

} // namespace

const Rule leanRule{"lean", true, evaluate, trimRange, explain};

} // namespace hangbook::options
