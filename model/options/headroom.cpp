// SPDX-License-Identifier: GPL-3.0-or-later
// headroom: at each pick the hoist run in and its rigging fit under the point; hoists, bar and cabinets stay
// under low steel and obstructions at their own place in plan.
#include "options/headroom.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "options/bridle_pick.h"
#include "options/loads.h"
#include "options/rig_fold.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

constexpr const char* ruleId = "headroom";
using What = HeadroomCheck::What;
enum Missing { nothing, trim, figures };

/// Extent of some places along an axis.
struct Extent {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();
};

Extent extentOf(std::span<const Plan> places, Plan axis) {
  Extent extent;
  for (const Plan& each : places) {
    const double at = each.x * axis.x + each.y * axis.y;
    extent.low = std::min(extent.low, at);
    extent.high = std::max(extent.high, at);
  }
  return extent;
}

/// The rectangle along `along` around some places, seen in plan.
std::array<Plan, 4> rectangleAround(std::span<const Plan> places, Plan along) {
  const Plan across{-along.y, along.x};
  const Extent u = extentOf(places, along);
  const Extent v = extentOf(places, across);
  const auto corner = [&](double atU, double atV) {
    return Plan{atU * along.x + atV * across.x, atU * along.y + atV * across.y};
  };
  return {corner(u.low, v.low), corner(u.low, v.high), corner(u.high, v.low), corner(u.high, v.high)};
}

/// Two rectangles are apart if and only if a line along a side of one of them separates them.
bool isOver(const Ceiling& ceiling, const std::array<Plan, 4>& rectangle, Plan along) {
  const std::array<Plan, 4> box{{{ceiling.xFrom, ceiling.yFrom},
                                 {ceiling.xFrom, ceiling.yTo},
                                 {ceiling.xTo, ceiling.yFrom},
                                 {ceiling.xTo, ceiling.yTo}}};
  const std::array<Plan, 4> axes{{{1.0, 0.0}, {0.0, 1.0}, along, {-along.y, along.x}}};
  return std::none_of(axes.begin(), axes.end(), [&](Plan axis) {
    const Extent one = extentOf(box, axis);
    const Extent other = extentOf(rectangle, axis);
    return one.high < other.low || other.high < one.low;
  });
}

bool isOver(const Ceiling& ceiling, Plan place) {
  return place.x >= ceiling.xFrom && place.x <= ceiling.xTo && place.y >= ceiling.yFrom &&
         place.y <= ceiling.yTo;
}

/// Height of the highest corner of the bar, then of each cabinet, over the hang's origin; −∞ where an outline
/// is not known.
std::vector<double> highestCorners(const Case& option, const hang::Layout& layout) {
  const auto highestOf = [](const std::vector<hang::Vec3>& corners) {
    double highest = -std::numeric_limits<double>::infinity();
    for (const hang::Vec3& each : corners) {
      highest = std::max(highest, each.z);
    }
    return highest;
  };
  std::vector<double> all{highestOf(barCorners(option, layout))};
  for (std::size_t i = 0; i < layout.elements.size(); ++i) {
    all.push_back(highestOf(cabinetCorners(option, layout, i)));
  }
  return all;
}

class Collector {
public:
  Collector(const Case& option, const Settled& settled)
      : option_(option), limits_(*option.room), settled_(settled),
        placement_(placementOf(option, settled.layout)), lowest_(lowestEdge(option, settled)) {
    along_ = bearingOf(placement_, settled.layout);
  }

  HeadroomChecks collect() {
    missing(!lowest_.known(), QStringLiteral("the hang's outline, width or chain's links"));
    missing(!limits_.lowSteelKnown, QStringLiteral("the venue's low steel"));
    missing(std::isnan(limits_.clearance), QStringLiteral("the house's clearance above"));
    missing(std::isnan(limits_.closedLength), QStringLiteral("the hoist's closed length"));
    for (const QString& each : limits_.riggingMissing) {
      missing(true, QStringLiteral("the length of %1").arg(each));
    }
    picks();
    std::optional<std::vector<double>> here;
    const std::vector<double>& highest =
        keptIn(option_.fold == nullptr ? nullptr : option_.fold->highest(settled_), here,
               [&] { return highestCorners(option_, settled_.layout); });
    missing(std::isinf(highest.front()), QStringLiteral("the bar's outline"));
    body(What::bar, 0, highest.front(), option_.bar != nullptr && option_.bar->width.has_value());
    for (std::size_t i = 0; i + 1 < highest.size(); ++i) {
      body(What::cabinet, static_cast<int>(i), highest[i + 1], option_.cabinets[i]->width.has_value());
    }
    return std::move(result_);
  }

private:
  void missing(bool isMissing, const QString& what) {
    if (isMissing && !result_.missing.contains(what)) {
      result_.missing.append(what);
    }
  }

  void picks() {
    const auto& picks = settled_.layout.picks;
    if (std::isnan(limits_.closedLength)) {
      return;
    }
    const std::size_t number = std::min(picks.size(), limits_.pointHeight.size());
    for (std::size_t i = 0; i < number; ++i) {
      const double rise = picks[i].z - lowest_.z + heightDoubt(settled_);
      const double point = limits_.pointHeight[i];
      const double hoist = pieceDoubt(settled_);
      const double all = hoist * static_cast<double>(1 + limits_.riggingPieces) + apexLower(i);
      missing(std::isnan(apexLower(i)), QStringLiteral("how low the bridle's apex may hang"));
      if (!std::isnan(limits_.riggingLength) && !std::isnan(all)) {
        result_.checks.push_back({What::hookToPoint, static_cast<int>(i), -1, rise,
                                  limits_.closedLength + limits_.riggingLength + all, all, point});
      }
      for (std::size_t k = 0; k < limits_.ceilings.size(); ++k) {
        const Ceiling& ceiling = limits_.ceilings[k];
        if (!isOver(ceiling, placement_.placeOf(picks[i]))) {
          continue;
        }
        // What the hoist hangs from needs no clearance to it.
        const double clear = ceiling.underside < point ? limits_.clearance : 0.0;
        if (!std::isnan(clear)) {
          result_.checks.push_back({What::hoistTop, static_cast<int>(i), static_cast<int>(k), rise,
                                    limits_.closedLength + clear + hoist, hoist, ceiling.underside});
        }
      }
    }
  }

  /// How much lower than computed the apex of a pick's bridle may hang, its legs longer than stated.
  double apexLower(std::size_t pick) const {
    const bool bridled = pick < option_.bridles.size() && option_.bridles[pick] != nullptr;
    return bridled && settled_.doubt != nullptr ? option_.bridles[pick]->apexLower : 0.0;
  }

  /// What a body covers in plan.
  std::array<Plan, 4> rectangle(What what, int number) const {
    const auto corners = what == What::bar
                             ? barCorners(option_, settled_.layout)
                             : cabinetCorners(option_, settled_.layout, static_cast<std::size_t>(number));
    std::vector<Plan> places;
    places.reserve(corners.size());
    for (const hang::Vec3& each : corners) {
      places.push_back(placement_.placeOf(each));
    }
    return rectangleAround(places, along_);
  }

  void body(What what, int number, double highest, bool widthKnown) {
    if (std::isinf(highest) || std::isnan(limits_.clearance)) {
      return;
    }
    std::optional<std::array<Plan, 4>> beneath;
    for (std::size_t k = 0; k < limits_.ceilings.size(); ++k) {
      const Ceiling& ceiling = limits_.ceilings[k];
      if (!ceiling.overAll()) { // its place only where it is needed: searched often
        missing(!widthKnown, what == What::bar ? QStringLiteral("the bar's width")
                                               : QStringLiteral("the width of cabinet %1").arg(number + 1));
        beneath = beneath ? beneath : rectangle(what, number);
      }
      if (ceiling.overAll() || isOver(ceiling, *beneath, along_)) {
        result_.checks.push_back({what, number, static_cast<int>(k),
                                  highest - lowest_.z + heightDoubt(settled_), limits_.clearance, 0.0,
                                  ceiling.underside});
      }
    }
  }

  const Case& option_;
  const RoomLimits& limits_;
  const Settled& settled_;
  Placement placement_;
  LowestEdge lowest_;
  Plan along_;
  HeadroomChecks result_;
};

const HeadroomCheck* narrowest(const HeadroomChecks& checks) {
  const auto found = std::min_element(
      checks.checks.begin(), checks.checks.end(),
      [](const HeadroomCheck& a, const HeadroomCheck& b) { return a.mostTrim() < b.mostTrim(); });
  return found == checks.checks.end() ? nullptr : &*found;
}

Use evaluate(const Case& option, const Settled* settled, double trimM) {
  const HeadroomChecks checks = headroomChecks(option, *settled);
  Use use;
  if (const HeadroomCheck* narrow = narrowest(checks)) {
    const double slack = narrow->mostTrim() - trimM;
    use.value = narrow->needed + slack;
    use.limit = narrow->needed;
    use.which = static_cast<int>(narrow - checks.checks.data());
    use.verdict = bySlack(slack, option.room->headroomMargin);
  }
  if (std::isnan(trimM)) {
    use.why = trim;
  } else if (!checks.missing.isEmpty() || checks.checks.empty()) {
    use.why = figures;
    use.verdict = worse(use.verdict, Verdict::unproven);
  }
  return boundedOver(*settled, use);
}

TrimRange trimRange(const Case& option, const Settled& settled) {
  const HeadroomChecks checks = headroomChecks(option, settled);
  const HeadroomCheck* narrow = narrowest(checks);
  TrimRange range;
  if (narrow != nullptr) {
    range.high = narrow->mostTrim();
  }
  return range;
}

QString nameOf(const Case& option, const HeadroomCheck& check) {
  switch (check.what) {
  case What::hookToPoint:
  case What::hoistTop:
    return QStringLiteral("the hook under point %1")
        .arg(option.points[static_cast<std::size_t>(check.number)]->name);
  case What::bar:
    return QStringLiteral("the highest corner of the bar");
  case What::cabinet:
    return QStringLiteral("the highest corner of cabinet %1").arg(check.number + 1);
  }
  return {};
}

QString inDoubtWords(const HeadroomCheck& check) {
  return check.inDoubt > 0.0 ? QStringLiteral(", %1 of it since lengths may be off").arg(inM(check.inDoubt))
                             : QString();
}

QString needOf(const RoomLimits& limits, const HeadroomCheck& check) {
  switch (check.what) {
  case What::hookToPoint:
    return QStringLiteral("hoist run in %1 and rigging %2 need %3")
               .arg(inM(limits.closedLength), inM(limits.riggingLength), inM(check.needed)) +
           inDoubtWords(check);
  case What::hoistTop:
    return QStringLiteral("hoist run in %1 and clearance %2 need %3")
               .arg(inM(limits.closedLength), inM(check.needed - check.inDoubt - limits.closedLength),
                    inM(check.needed)) +
           inDoubtWords(check);
  default:
    return QStringLiteral("a clearance of %1 is asked for").arg(inM(check.needed));
  }
}

QString sourceOf(const Case& option, const HeadroomCheck& check) {
  QString source = venueSource(option.snapshot->venue);
  if (check.what == What::hookToPoint || check.what == What::hoistTop) {
    source += QStringLiteral("; ") + makerSource(option.hoist->name, option.hoist->source);
  }
  if (check.what != What::hookToPoint) {
    source += QStringLiteral("; ") + option.house->figure(QStringLiteral("headroom-clearance")).source;
  }
  return source;
}

Finding explain(const Case& option, const Settled* settled, double trimM, const Use& use) {
  Finding finding = findingFor(ruleId, use, "m");
  const HeadroomChecks all = headroomChecks(option, *settled);
  if (use.which >= 0 && !std::isnan(trimM)) {
    const HeadroomCheck& check = all.checks.at(static_cast<std::size_t>(use.which));
    const QString above = check.ceiling < 0
                              ? QStringLiteral("the point")
                              : option.room->ceilings[static_cast<std::size_t>(check.ceiling)].name;
    QString text = QStringLiteral("%1 is at %2 and %3 at %4, so there is %5 of room; %6.")
                       .arg(nameOf(option, check), inM(trimM + check.rise), above, inM(check.highest),
                            inM(use.value), needOf(*option.room, check));
    text[0] = text[0].toUpper();
    finding.text = text;
    finding.source = sourceOf(option, check);
  }
  if (use.why == trim) {
    finding.text = QStringLiteral("No trim is decided.");
  } else if (use.why == figures) {
    finding.text += (finding.text.isEmpty() ? QString() : QStringLiteral(" ")) +
                    QStringLiteral("Not known: %1.")
                        .arg(all.missing.isEmpty() ? QStringLiteral("what is above the hang")
                                                   : all.missing.join(QStringLiteral(", ")));
  }
  if (finding.source.isEmpty()) {
    finding.source = venueSource(option.snapshot->venue);
  }
  return finding;
}

} // namespace

HeadroomChecks headroomChecks(const Case& option, const Settled& settled) {
  return Collector(option, settled).collect();
}

const Rule headroomRule{ruleId, true, evaluate, trimRange, explain};

} // namespace hangbook::options
