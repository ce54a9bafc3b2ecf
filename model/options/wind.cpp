// SPDX-License-Identifier: GPL-3.0-or-later
// wind (outdoors): in the gust at hang height, from whatever direction, and wet, the hoists' chains lean no
// more than allowed, no pick is unloaded, every joint stays shut and a pivot's chain taut, and points,
// hoists, hardware, bar, shared structure, chain and joints stay within their limits. With the factors of
// lifting: a crew that brings the hang down in that gust needs them.
#include <algorithm>
#include <cmath>

#include "options/loads.h"
#include "options/sentence.h"
#include "options/wind_limits.h"

namespace hangbook::options {
namespace {

enum Why { judged, indoors, placeUnknown, notStated };

double pressureOf(const Case& option) {
  const std::optional<Speed>& wind = option.snapshot->show.wind;
  return wind ? gustPressure(inMetresPerSecond(*wind)) : 0.0;
}

/// What is missing for a pass, in words.
QStringList lacking(const Case& option, const Settled& settled, double trimM, const WindForce& wind) {
  QStringList lacks = windStatementLacks(option, settled, trimM) + wind.missing;
  for (std::size_t pick = 0; pick < option.bridles.size(); ++pick) {
    lacks += bridleLacks(option, settled, pick);
  }
  lacks.removeDuplicates();
  return lacks;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  Use worst;
  if (!option.snapshot->venue.outdoors) {
    worst.why = placeUnknown;
    return worst;
  }
  if (!*option.snapshot->venue.outdoors) {
    worst.verdict = Verdict::holds;
    worst.applies = false;
    worst.why = indoors;
    return worst;
  }
  std::optional<WindForce> here;
  const WindForce& wind = windForce(option, *settled, here);
  const InGust gust(option, *settled, trimM, wind, pressureOf(option));
  const std::vector<WindUse> uses = gust.uses();
  for (std::size_t i = 0; i < uses.size(); ++i) {
    if (i == 0 || uses[i].use.verdict > worst.verdict) {
      worst = uses[i].use;
      worst.which = static_cast<int>(i);
      worst.why = judged;
    }
  }
  if (worst.verdict < Verdict::unproven && !lacking(option, *settled, trimM, wind).isEmpty()) {
    worst.verdict = Verdict::unproven;
    worst.why = notStated;
  }
  return boundedOver(*settled, worst);
}

QString gustWords(const Case& option, const WindForce& wind, const InGust& gust) {
  if (!option.snapshot->show.wind) {
    return QStringLiteral("The gust is not stated");
  }
  const double speed = inMetresPerSecond(*option.snapshot->show.wind);
  return QStringLiteral("A gust of %1 m/s (%2 N/m²) pushes at most %3 on the hang (from %4° off its front)")
      .arg(speed)
      .arg(QString::number(gustPressure(speed), 'f', 0))
      .arg(inKn(gust.force()))
      .arg(QString::number(std::abs(wind.greatestForce().fromDeg), 'f', 0));
}

Finding legFinding(const Case& option, const Settled& settled, const Use& use, const WindUse& named,
                   const QString& words, const QString& open) {
  if (named.limit == WindLimit::legSlack) {
    Finding finding = findingFor("wind", use, "kN");
    finding.source = QStringLiteral("mechanics: a leg can only pull");
    finding.text = QStringLiteral("%1 and pulls the apex sideways; %2: %3 is left, and it must stay above 0, "
                                  "or the apex leaves its place%4.")
                       .arg(words, wordsFor(named, option, settled), inKn(use.value * 1000.0), open);
    return finding;
  }
  const WeightLimits& limits = *option.weight;
  Finding finding = findingFor("wind", use, "°");
  finding.source = limits.legAngleLeast.source;
  finding.text =
      QStringLiteral("%1 and swings the legs; %2: %3 from the horizontal; at least %4 is asked for, "
                     "and %5 preferred (%6)%7.")
          .arg(words, wordsFor(named, option, settled), inDeg(use.value), inDeg(use.limit),
               inDeg(limits.legAnglePreferred.value), limits.legAnglePreferred.source, open);
  return finding;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  if (!use.applies) {
    return doesNotApply("wind", QStringLiteral("the venue is indoors."));
  }
  if (use.why == placeUnknown) {
    Finding finding = findingFor("wind", use, "°");
    finding.source = QStringLiteral("venue's sheet");
    finding.text = QStringLiteral("Whether the venue is outdoors is not stated, so the wind is not judged.");
    return finding;
  }
  const WindForce wind = windForce(option, *settled);
  const QStringList lacks = lacking(option, *settled, trimM, wind);
  if (use.why == notStated) {
    Finding finding = findingFor("wind", Use{}, "");
    finding.text = QStringLiteral("Not stated: %1.").arg(lacks.join(QStringLiteral("; ")));
    return finding;
  }
  const InGust gust(option, *settled, trimM, wind, pressureOf(option));
  const WindUse named = gust.uses()[static_cast<std::size_t>(use.which)];
  const QString open =
      lacks.isEmpty() ? QString() : QStringLiteral(". Not stated: ") + lacks.join(QStringLiteral("; "));
  const QString words = gustWords(option, wind, gust);
  if (named.limit == WindLimit::lean) {
    Finding finding = findingFor("wind", use, "°");
    finding.source = option.weight->leanMost.source;
    finding.text = QStringLiteral("%1; against %2 of weight the chains lean %3, and %4 is allowed%5.")
                       .arg(words, inKn(weightBelow(*settled)), inDeg(use.value), inDeg(use.limit), open);
    return finding;
  }
  if (named.limit == WindLimit::unloads) {
    Finding finding = findingFor("wind", use, "kN");
    finding.source = QStringLiteral("mechanics: a hoist can only pull");
    finding.text =
        QStringLiteral("%1, which takes %2 off pick %3: %4 is left, and it must stay above 0%5.")
            .arg(words, inKn(gust.moved()), pickName(*settled, named.number), inKn(use.value * 1000.0), open);
    return finding;
  }
  if (named.limit == WindLimit::legSlack || named.limit == WindLimit::legAngle) {
    return legFinding(option, *settled, use, named, words, open);
  }
  if (named.limit == WindLimit::slack || named.limit == WindLimit::opens) {
    Finding finding = findingFor("wind", use, "kN");
    finding.source = named.limit == WindLimit::slack
                         ? QStringLiteral("mechanics: a chain can only pull")
                         : QStringLiteral("mechanics: a seated joint can only push");
    finding.text =
        QStringLiteral("%1 and turns what hangs below; %2: %3 is left, and it must stay above 0%4.")
            .arg(words, wordsFor(named, option, *settled), inKn(use.value * 1000.0), open);
    return finding;
  }
  Finding finding = loadFinding("wind", use);
  finding.source = named.limit == WindLimit::point || named.limit == WindLimit::zone
                       ? QStringLiteral("venue's sheet")
                       : QStringLiteral("maker's data");
  finding.text = QStringLiteral("%1, moves %2 from one pick to the other and leans the chains by %3; %4: %5, "
                                "and %6 is allowed%7.")
                     .arg(words, inKn(gust.moved()), inDeg(gust.leanDeg()), wordsFor(named, option, *settled),
                          inKn(use.value * 1000.0), inKn(use.limit * 1000.0), open);
  return finding;
}

} // namespace

const Rule windRule{"wind", true, evaluate, nullptr, explain};

} // namespace hangbook::options
