// SPDX-License-Identifier: GPL-3.0-or-later
// zone-load: all that hangs on one truss, beam or bay, or on one point that two hangs use (this hang, the
// show's other hangs, every other department), is within its capacity.
#include <algorithm>
#include <cmath>

#include "options/build_force.h"
#include "options/carriers.h"
#include "options/loads.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

enum Why { judged, notStated, zoneUnknown, pointOutside, basisUnknown };

/// Picks of one hang carry most at unlike steps; together they carry most when all of it hangs.
double ownAtRest(const Case& option, const Settled& settled, double trimM, const ZoneLoad& zone) {
  double sum = 0.0;
  const bool all = std::all_of(zone.times.begin(), zone.times.end(),
                               [&zone](int times) { return times == zone.times.front(); });
  for (std::size_t carrier = 0; carrier < zone.times.size(); ++carrier) {
    if (zone.times[carrier] != 0) {
      sum += zone.times[carrier] * (all ? carriedAtRest(option, settled, trimM, carrier)
                                        : carriedAtMost(option, settled, trimM, carrier));
    }
  }
  return sum;
}

bool dynamicBasis(const ZoneLoad& zone) {
  return zone.basis == catalogue::Basis::dynamic;
}

/// Other departments' load is taken as stated: on the basis of the zone's own capacity.
double loadOf(const Case& option, const Settled& settled, double trimM, const ZoneLoad& zone) {
  const double own = ownAtRest(option, settled, trimM, zone);
  return dynamicBasis(zone) ? own * option.weight->dynamic.value + zone.otherHangsDynamic + zone.others
                            : own + zone.otherHangsAtRest + zone.others;
}

Use onZone(const Case& option, const Settled& settled, double trimM, std::size_t number) {
  const ZoneLoad& zone = option.weight->zones[number];
  Use use = loadUse(loadOf(option, settled, trimM, zone), zone.capacity, static_cast<int>(number));
  if (zone.basis == catalogue::Basis::unknown) {
    use.verdict = std::max(use.verdict, Verdict::unproven); // too much at rest fails either way
    use.why = basisUnknown;
  }
  return use;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const WeightLimits& limits = *option.weight;
  Use worst;
  worst.verdict = Verdict::holds;
  if (limits.zones.empty() && limits.zonesUnknown.isEmpty() && !limits.zonesStated &&
      limits.pointsHaveSource) {
    worst.applies = false;
    worst.why = notStated;
    return worst;
  }
  WorstUse zones;
  for (std::size_t i = 0; i < limits.zones.size(); ++i) {
    zones.add(onZone(option, *settled, trimM, i));
  }
  worst = zones.get().value_or(worst);
  const bool outside = limits.pointsWithoutZone && (limits.zonesStated || !limits.pointsHaveSource);
  if ((!limits.zonesUnknown.isEmpty() || outside) && worst.verdict < Verdict::unproven) {
    worst = Use{};
    worst.why = limits.zonesUnknown.isEmpty() ? pointOutside : zoneUnknown;
  }
  return boundedOver(*settled, worst);
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  const WeightLimits& limits = *option.weight;
  if (!use.applies) {
    return doesNotApply("zone-load",
                        QStringLiteral("the venue's sheet states no shared structure for these points."));
  }
  Finding finding = loadFinding("zone-load", use);
  if (use.why == zoneUnknown) {
    finding.text = QStringLiteral("The points belong to %1, of which the venue's sheet says nothing.")
                       .arg(limits.zonesUnknown.join(QStringLiteral(", ")));
    return finding;
  }
  if (use.why == pointOutside) {
    finding.text =
        QStringLiteral("The venue's sheet does not say which truss, beam or bay these points share.");
    return finding;
  }
  const ZoneLoad& zone = limits.zones[static_cast<std::size_t>(use.which)];
  finding.source = QStringLiteral("venue's sheet: %1").arg(zone.source);
  const double own = ownAtRest(option, *settled, trimM, zone);
  QString text = QStringLiteral("%1 carries %2 of this hang")
                     .arg(zone.onePoint ? QStringLiteral("Point ") + zone.name : zone.name, inKn(own));
  if (!zone.otherHangs.isEmpty()) {
    text += QStringLiteral(" (with %1)").arg(zone.otherHangs.join(QStringLiteral(", ")));
  }
  const double others = dynamicBasis(zone) ? zone.otherHangsDynamic : zone.otherHangsAtRest;
  if (others != 0.0) {
    text += QStringLiteral(" + %1 of other hangs").arg(inKn(others));
  }
  if (!zone.onePoint) {
    text += std::isnan(zone.others) ? QStringLiteral("; %1").arg(zone.othersWhy)
                                    : QStringLiteral(" + %1 (%2)").arg(inKn(zone.others), zone.othersWhy);
  }
  if (dynamicBasis(zone)) {
    text += QStringLiteral(", this hang × dynamic factor %1").arg(inTimes(limits.dynamic.value));
  }
  text += std::isnan(use.value) ? QStringLiteral("; the sum is not known")
                                : QStringLiteral("; together %1").arg(inKn(use.value * 1000.0));
  if (std::isnan(zone.capacity)) {
    text += QStringLiteral("; the venue's sheet states no capacity for it.");
  } else if (use.why == basisUnknown) {
    text += QStringLiteral("; the venue's sheet states %1, but not whether at rest or dynamic.")
                .arg(inKn(zone.capacity));
  } else {
    text += QStringLiteral("; the venue's sheet allows %1.").arg(inKn(zone.capacity));
  }
  finding.text = text;
  return finding;
}

} // namespace

const Rule zoneLoadRule{"zone-load", true, evaluate, nullptr, explain};

} // namespace hangbook::options
