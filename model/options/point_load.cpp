// SPDX-License-Identifier: GPL-3.0-or-later
// point-load: what each point carries is within the capacity that the venue states for it. A capacity stated
// for the load at rest is compared with the load at rest, one stated as dynamic with the load × dynamic
// factor; of unknown basis it proves nothing. Judged at the step of the build at which the pick carries most.
#include <algorithm>
#include <cmath>

#include "options/build_force.h"
#include "options/carriers.h"
#include "options/loads.h"

namespace hangbook::options {
namespace {

enum Why { judged, basisUnknown, capacityUnknown, dynamicUnknown, loadUnknown };

Use onPoint(const Case& option, const Settled& settled, double trimM, std::size_t carrier) {
  const WeightLimits& limits = *option.weight;
  const catalogue::Basis basis = option.carriers[carrier].point->basis;
  const double atRest = carriedAtMost(option, settled, trimM, carrier);
  const double load = basis == catalogue::Basis::dynamic ? atRest * limits.dynamic.value : atRest;
  Use use = loadUse(load, limits.capacity[carrier], static_cast<int>(carrier));
  if (basis == catalogue::Basis::unknown) {
    // More at rest than the figure fails whichever way it is meant.
    use.verdict = std::max(use.verdict, Verdict::unproven);
    use.why = basisUnknown;
  }
  if (std::isnan(atRest)) {
    use.why = loadUnknown;
  } else if (std::isnan(limits.capacity[carrier])) {
    use.why = capacityUnknown;
  } else if (std::isnan(load)) {
    use.why = dynamicUnknown;
  }
  return use;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  WorstUse points;
  for (std::size_t carrier = 0; carrier < option.carriers.size(); ++carrier) {
    points.add(onPoint(option, *settled, trimM, carrier));
  }
  return provenOver(*settled, points.get().value());
}

QString missingLoad(const Case& option, const Carrier& carrier) {
  const WeightLimits& limits = *option.weight;
  QStringList missing = limits.riggingUnknown;
  for (const Carrier::From& from : carrier.from) {
    if (from.leg >= 0) {
      const BridledPick& bridle = *option.bridles[from.pick];
      missing += bridle.missing;
      if (!bridle.fault.isEmpty()) {
        missing.append(QStringLiteral("a bridle that can be rigged (%1)").arg(bridle.fault));
      }
    }
  }
  missing.removeDuplicates();
  if (std::isnan(limits.hoistBody)) {
    missing.append(QStringLiteral("mass of hoist %1").arg(option.hoist->name));
  }
  if (std::isnan(limits.hoistChain)) {
    missing.append(
        QStringLiteral("chain mass, chain length or chain bag mass of hoist %1").arg(option.hoist->name));
  }
  return missing.isEmpty() ? QStringLiteral("the height at which the hang stands")
                           : missing.join(QStringLiteral(", "));
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  const WeightLimits& limits = *option.weight;
  const auto carrier = static_cast<std::size_t>(use.which);
  const venue::Point& point = *option.carriers[carrier].point;
  Finding finding = loadFinding("point-load", use);
  finding.worstFollows = !settled->build.unknown;
  finding.source = QStringLiteral("venue's sheet: %1").arg(point.source.text);
  const PointResult result = pointResult(option, *settled, trimM, carrier, true);
  const Carrier::From& first = option.carriers[carrier].from.front();
  const QString when = momentWords(settled->build.mostAt[first.pick], option);
  QString text =
      use.why == loadUnknown
          ? QStringLiteral("What point %1 carries is not known: %2 is missing")
                .arg(point.name, missingLoad(option, option.carriers[carrier]))
          : QStringLiteral("Point %1 carries %2 at rest%3 (pick %4 + hoist %5 + chain %6 + rigging %7)")
                .arg(point.name, inKn(carriedAtMost(option, *settled, trimM, carrier)),
                     when.isEmpty() ? QString() : QStringLiteral(" at its most, ") + when)
                .arg(QString::number(result.parts[0].kn, 'f', 2))
                .arg(QString::number(result.parts[1].kn, 'f', 2))
                .arg(QString::number(result.parts[2].kn, 'f', 2))
                .arg(QString::number(result.parts[3].kn, 'f', 2));
  if (first.leg >= 0 && use.why != loadUnknown) {
    text += QStringLiteral(", by a bridle's leg that also pulls it %1 sideways")
                .arg(inKn(result.horizontalKn * 1000.0));
  }
  if (point.basis == catalogue::Basis::dynamic && use.why != loadUnknown) {
    text += QStringLiteral(", × dynamic factor %1 = %2")
                .arg(inTimes(limits.dynamic.value), inKn(use.value * 1000.0));
  }
  text += unknownMomentWords(option, *settled);
  switch (use.why) {
  case basisUnknown:
    text += QStringLiteral("; the venue's sheet states %1, but not whether at rest or dynamic.")
                .arg(inKn(limits.capacity[carrier]));
    break;
  case capacityUnknown:
    text += QStringLiteral("; the venue's sheet states no capacity for it.");
    break;
  case dynamicUnknown:
    text += QStringLiteral("; the venue's figure is dynamic, and %1.").arg(limits.dynamic.source);
    break;
  case loadUnknown:
    text += QStringLiteral(".");
    break;
  default:
    text += QStringLiteral("; the venue's sheet allows %1 %2.")
                .arg(inKn(limits.capacity[carrier]), point.basis == catalogue::Basis::dynamic
                                                         ? QStringLiteral("with the dynamic factor")
                                                         : QStringLiteral("at rest"));
  }
  finding.text = text;
  return finding;
}

} // namespace

const Rule pointLoadRule{"point-load", true, evaluate, nullptr, explain};

} // namespace hangbook::options
