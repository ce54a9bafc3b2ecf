// SPDX-License-Identifier: GPL-3.0-or-later
// cover: the share of the audience that lies in the cover of a cabinet that is there to cover, within its
// throw: of the positions, or of the floor area that they stand for where a section has a front line. 100 %
// cannot be exceeded, so whether it is tight is told by an angle: it holds where the share is reached with
// the house's margin taken off each edge of cover.
#include <cmath>

#include "options/cover.h"
#include "options/loads.h"
#include "options/room_limits.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "cover";
enum Missing { nothing, trim, figures };

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const RoomLimits& limits = *option.room;
  return coverUse(limits, *settled, trimM, [&](bool inside) {
    return coveredAt(limits.audience,
                     viewOf(option, limits.audience, *settled, inside ? limits.coverMargin : 0.0), trimM);
  });
}

TrimRange trimRange(const Case& option, const Settled& settled) {
  return widestWithin(coverStretches(option, settled), {});
}

/// Block, row and side of a seat, or the row of a section that is judged along the hang's line.
QString rowAt(const Audience& audience, int position) {
  const AudiencePosition& at = audience.positions[static_cast<std::size_t>(position)];
  const QString& section = audience.sections[at.section];
  if (!audience.blocks[static_cast<std::size_t>(at.section)].swept) {
    return QStringLiteral("%1 at x = %2").arg(section, inM(at.x));
  }
  const QString row = at.behind == 0.0 ? QStringLiteral("the front row")
                                       : QStringLiteral("the row %1 behind its front").arg(inM(at.behind));
  const QString side =
      std::abs(at.side) < 0.05
          ? QStringLiteral("in the middle")
          : QStringLiteral("%1 to the %2")
                .arg(inM(std::abs(at.side)), QLatin1String(std::signbit(at.side) ? "right" : "left"));
  return QStringLiteral("%1, %2, %3 (x = %4, y = %5)").arg(section, row, side, inM(at.x), inM(at.yFrom));
}

QString howCounted(const Audience& audience, const Covered& covered) {
  const QString positions = QStringLiteral("%1 of %2 audience positions (one each %3")
                                .arg(covered.covered)
                                .arg(covered.positions)
                                .arg(inM(audienceStepM));
  return audience.anySwept()
             ? positions +
                   QStringLiteral(", at most %1 apart in a row) lie between the edges of cover and within "
                                  "throw; of the floor area ")
                       .arg(inM(audienceStepAcrossM))
             : positions + QStringLiteral(") lie between the edges of cover and within throw: ");
}

/// Each section's own share, where there are several.
QString bySection(const Audience& audience, const CoverView& view, double trimM) {
  if (!audience.anySwept() || audience.blocks.size() < 2) {
    return {};
  }
  QStringList parts;
  for (std::size_t i = 0; i < audience.blocks.size(); ++i) {
    parts.append(QStringLiteral("%1 %2 %").arg(
        audience.sections[static_cast<qsizetype>(i)],
        QString::number(coveredAt(audience, view, trimM, i).percent(), 'f', 1)));
  }
  return QStringLiteral(" By section: %1.").arg(parts.join(QStringLiteral(", ")));
}

/// Where the covers of two cabinets that should join leave the audience out between them.
QString holes(const Case& option, const Audience& audience, const CoverView& view, double trimM) {
  QString text;
  for (const CoverHole& hole : holesAt(audience, view, trimM)) {
    const auto named = [&](std::size_t cabinet) {
      const std::size_t element = audience.cabinets[cabinet].element;
      return QStringLiteral("%1 (%2 from the bar)").arg(option.cabinets[element]->name).arg(element + 1);
    };
    text += QStringLiteral(" Between the covers of %1 and %2 there is a hole of %3 positions, the first %4.")
                .arg(named(hole.above), named(hole.above + 1))
                .arg(hole.positions)
                .arg(rowAt(audience, static_cast<int>(hole.first)));
  }
  return text;
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
  const CoverView view = viewOf(option, audience, *settled);
  const Covered covered = coveredAt(audience, view, trimM);
  finding.text = howCounted(audience, covered) +
                 QStringLiteral("%1 %, asked for are %2 %.")
                     .arg(QString::number(use.value, 'f', 1), QString::number(use.limit, 'f', 1)) +
                 bySection(audience, view, trimM);
  if (audience.cabinets.empty()) {
    finding.text += QStringLiteral(" No cabinet of this stack is there to cover the audience.");
  } else if (covered.firstMissed >= 0) {
    finding.text += QStringLiteral(" First missed: %1; last missed: %2.")
                        .arg(rowAt(audience, covered.firstMissed), rowAt(audience, covered.lastMissed)) +
                    holes(option, audience, view, trimM);
  } else if (use.verdict == Verdict::tight) {
    finding.text += QStringLiteral(" Some lie less than %1 inside an edge.").arg(inDeg(limits.coverMargin));
  }
  return finding;
}

} // namespace

Use coverUse(const RoomLimits& limits, const Settled& settled, double trimM,
             const std::function<Covered(bool inside)>& covered) {
  Use use;
  use.limit = limits.coverShare;
  if (!limits.audience.missing.isEmpty() || std::isnan(limits.coverShare) || std::isnan(limits.coverMargin)) {
    use.why = figures;
    return use;
  }
  if (std::isnan(trimM)) {
    use.why = trim;
    return use;
  }
  const Covered all = covered(false);
  use.value = all.percent();
  use.which = all.firstMissed;
  if (!all.reaches(use.limit)) {
    use.verdict = Verdict::fails;
    return use;
  }
  use.verdict = covered(true).reaches(use.limit) ? Verdict::holds : Verdict::tight;
  return boundedOver(settled, use);
}

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
