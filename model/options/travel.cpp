// SPDX-License-Identifier: GPL-3.0-or-later
// travel: actuator, pan and pivot stay within their travel, the head within its swing, and the two hoists'
// trims no farther apart than the bar allows.
#include <cmath>

#include "options/loads.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "travel";
enum What { actuator, pan, swing, joint, hoistOffset }; // Use::which
enum Missing { nothing, notKnownHere, notApplicable };  // Use::why

/// One thing that moves: where it stands, its limit on the nearer side, and what is left.
struct Movement {
  What what;
  double value = notKnown;
  double limit = notKnown;
  double slack = notKnown;
};

using Travel = std::optional<std::array<Angle, 2>>;

Movement within(What what, double value, const Travel& travel) {
  if (!travel) {
    return {what, value, notKnown, notKnown};
  }
  const double low = inDegrees((*travel)[0]); // one the other way round is refused before anything is solved
  const double high = inDegrees((*travel)[1]);
  const bool nearLow = value - low < high - value;
  return {what, value, nearLow ? low : high, nearLow ? value - low : high - value};
}

/// The same of whatever the doubts of figures let it be: at the end that is nearer to its limit.
Movement within(What what, hang::Span values, const Travel& travel) {
  const Movement low = within(what, values.low, travel);
  const Movement high = within(what, values.high, travel);
  return high.slack < low.slack ? high : low;
}

Movement upTo(What what, double value, std::optional<double> limit) {
  const double most = limit.value_or(notKnown);
  return {what, std::abs(value), most, most - std::abs(value)};
}

std::vector<Movement> movementsOf(const Case& option, const Settled& settled) {
  std::vector<Movement> movements;
  const catalogue::BarType& bar = *option.bar;
  const hang::Unfavourable* worst =
      settled.doubt != nullptr && !settled.doubt->worst.jointDeg.empty() ? &settled.doubt->worst : nullptr;
  if (settled.statics.side) {
    const double stands = settled.statics.side->actuatorDeg;
    movements.push_back(within(actuator, worst ? worst->actuatorDeg : hang::Span(stands), bar.tiltTravel));
    movements.push_back(within(pan, settled.setting.panDeg, bar.panTravel));
    movements.push_back(upTo(swing, worst ? worst->swingDeg.magnitude() : settled.statics.side->headSwingDeg,
                             bar.swingLimit ? std::optional(inDegrees(*bar.swingLimit)) : std::nullopt));
  }
  for (std::size_t i = 0; i < option.joins.size(); ++i) {
    if (option.joins[i]->kind == catalogue::JointKind::pivot) {
      const hang::Span angle = worst ? worst->jointDeg[i] : hang::Span(settled.statics.joints[i].angleDeg);
      movements.push_back(within(joint, angle, option.joins[i]->travel));
    }
  }
  if (option.key.picks == catalogue::Picks::foreAftPair) {
    movements.push_back(
        upTo(hoistOffset, settled.layout.picks[0].z - settled.layout.picks[1].z,
             bar.hoistOffsetLimit ? std::optional(inMetres(*bar.hoistOffsetLimit)) : std::nullopt));
  }
  return movements;
}

Use evaluate(const Case& option, const Settled* settled, double) {
  Use use;
  double slackShown = notKnown;
  bool first = true;
  for (Movement each : movementsOf(option, *settled)) {
    // Solving leaves rounding: an angle at the end of its travel is at it, not beyond.
    if (std::abs(each.slack) < hang::angleSlackDeg) {
      each.slack = 0.0;
      each.value = each.limit;
    }
    const double margin = each.what == hoistOffset ? option.room->headroomMargin : option.room->angleMargin;
    const Verdict verdict = bySlack(each.slack, margin);
    if (first || verdict > use.verdict || (verdict == use.verdict && each.slack < slackShown)) {
      use.verdict = verdict;
      use.value = each.value;
      use.limit = each.limit;
      use.which = each.what;
      use.why = verdict == Verdict::unproven ? notKnownHere : nothing;
      slackShown = each.slack;
      first = false;
    }
  }
  if (first) {
    use.verdict = Verdict::holds;
    use.applies = false;
    use.why = notApplicable;
  }
  return boundedOver(*settled, use);
}

QString nameOf(int what) {
  switch (what) {
  case actuator:
    return QStringLiteral("The actuator");
  case pan:
    return QStringLiteral("The pan");
  case swing:
    return QStringLiteral("The swing of the head");
  case joint:
    return QStringLiteral("The pivoting joint");
  default:
    return QStringLiteral("The difference between the two hoists' trims");
  }
}

Finding explain(const Case& option, const Settled*, double, const Use& use) {
  if (!use.applies) {
    return doesNotApply(ruleId, QStringLiteral("a single pick and no pivot, so nothing is set."));
  }
  const bool length = use.which == hoistOffset;
  Finding finding = findingFor(ruleId, use, length ? "m" : "°");
  finding.source = use.which == joint && option.table != nullptr
                       ? makerSource(option.table->name, option.table->source)
                       : makerSource(option.bar->name, option.bar->source);
  const auto written = [&](double value) { return length ? inM(value) : inDeg(value); };
  finding.text = std::isnan(use.limit) ? QStringLiteral("%1 stands at %2; how far it may go is not known.")
                                             .arg(nameOf(use.which), written(use.value))
                                       : QStringLiteral("%1 stands at %2; its travel ends at %3.")
                                             .arg(nameOf(use.which), written(use.value), written(use.limit));
  return finding;
}

} // namespace

const Rule travelRule{ruleId, true, evaluate, nullptr, explain};

} // namespace hangbook::options
