// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/loads.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "hang/vec2.h"
#include "options/placement.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

/// Points and picks that stand alike to within this are taken to stand plumb, m.
constexpr double plumbSlack = 1e-6;

double useOf(const Use& use) {
  return std::abs(use.limit) > 0.0 ? use.value / use.limit : use.value;
}

/// How far each chain stands off plumb: half of what points and picks are apart more or less than each other.
double offPlumb(const Case& option, double picksApart) {
  const double off = 0.5 * std::abs(option.weight->spacing - picksApart);
  return off < plumbSlack ? 0.0 : off;
}

} // namespace

double pickSpacing(const Settled& settled) {
  const std::vector<hang::Vec3>& picks = settled.layout.picks;
  return picks.size() < 2 ? 0.0 : std::hypot(picks[0].x - picks[1].x, picks[0].y - picks[1].y);
}

double chainOff(const Case& option, const Settled& settled) {
  if (settled.layout.picks.size() < 2) {
    return 0.0;
  }
  return offPlumb(option, pickSpacing(settled));
}

double leanDeg(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const double off = chainOff(option, settled);
  if (off == 0.0 || trimM == -std::numeric_limits<double>::infinity()) {
    return 0.0;
  }
  return hang::toDegrees(std::atan2(off, heightOver(option, settled, trimM, pick)));
}

double heightOver(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  return inMetres(option.points[pick]->z) - originHeight(option, settled, trimM) -
         settled.layout.picks[pick].z - heightDoubt(settled);
}

double leanFactor(double off, double above) {
  if (std::isnan(above)) {
    return notKnown;
  }
  const double slope = off / above; // as steep as can be where nothing is above
  return std::signbit(above) ? std::numeric_limits<double>::infinity() : std::sqrt(1.0 + slope * slope);
}

double pickForce(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const double load = pickLoad(settled, pick);
  const double off = chainOff(option, settled);
  if (off == 0.0 || trimM == -std::numeric_limits<double>::infinity()) {
    return load;
  }
  const double factor = leanFactor(off, heightOver(option, settled, trimM, pick));
  return std::isinf(factor) ? factor : load * factor;
}

double levelOff(const Case& option) {
  const catalogue::PickArrangement& picks = *option.arrangement;
  if (picks.picks != catalogue::Picks::foreAftPair || !picks.front || !picks.rear) {
    return 0.0;
  }
  const double apart = std::abs(inMetres(picks.front->x) - inMetres(picks.rear->x));
  return offPlumb(option, apart);
}

double pointAtRest(const Case& option, const Settled& settled, double trimM, std::size_t pick) {
  const WeightLimits& limits = *option.weight;
  return pickForce(option, settled, trimM, pick) +
         settled.gearHeavier * (limits.hoistBody + limits.hoistChain + limits.rigging);
}

double factorsFor(const WeightLimits& limits, bool limitIncludesFactors) {
  return limitIncludesFactors ? 1.0 : limits.dynamic.value * limits.liftShare.value;
}

bool chainsLean(const Case& option, const Settled& settled) {
  return option.points.size() > 1 && std::max(chainOff(option, settled), levelOff(option)) != 0.0;
}

Use boundedOver(const Settled& settled, Use use) {
  if (settled.doubt != nullptr && !settled.doubt->worst.bounded && use.applies) {
    use.verdict = worse(use.verdict, Verdict::unproven);
  }
  return use;
}

Use worseOf(const Use& one, const Use& other) {
  if (one.verdict != other.verdict) {
    return std::ranges::max(one, other, {}, &Use::verdict);
  }
  const double first = useOf(one);
  const double second = useOf(other);
  return std::isnan(first) || first >= second ? one : other;
}

Use loadUse(double valueN, double limitN, int which) {
  Use use;
  use.value = valueN / 1000.0;
  use.limit = limitN / 1000.0;
  use.verdict = againstLoadLimit(use.value, use.limit);
  use.which = which;
  return use;
}

QString inKn(double newtonsOrNan) {
  return std::isfinite(newtonsOrNan) ? QString::number(newtonsOrNan / 1000.0, 'f', 2) + QStringLiteral(" kN")
                                     : QStringLiteral("not known");
}

QString inTimes(double factor) {
  return std::isfinite(factor) ? QString::number(factor, 'g', 4) : QStringLiteral("not known");
}

QString pickName(const Settled& settled, std::size_t pick) {
  const std::string_view name = hang::nameOf(settled.statics.pickLoads[pick].name);
  return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

Finding loadFinding(const char* rule, const Use& use) {
  Finding finding = findingFor(rule, use, "kN");
  if (finding.value && finding.limit && *finding.limit > 0.0) {
    finding.usePercent = 100.0 * *finding.value / *finding.limit;
  }
  return finding;
}

QString factorWords(const WeightLimits& limits, bool limitIncludesFactors) {
  if (limitIncludesFactors) {
    return QStringLiteral("dynamic factor and share are in the maker's limit");
  }
  QString text = QStringLiteral("dynamic factor %1").arg(inTimes(limits.dynamic.value));
  if (limits.liftShare.value != 1.0) {
    text += QStringLiteral(", lift-group share %1").arg(inTimes(limits.liftShare.value));
  }
  return text;
}

QString peopleWords(const Case& option, const Factor& part) {
  if (!option.snapshot->show.peopleBeneath) {
    return QStringLiteral("; whether people are beneath is not stated");
  }
  if (part.value == 1.0) {
    return {};
  }
  return QStringLiteral(" (%1 of its working load limit, people beneath)").arg(inTimes(part.value));
}

} // namespace hangbook::options
