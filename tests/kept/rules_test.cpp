// SPDX-License-Identifier: GPL-3.0-or-later
// Every rule in its own numbers at many settings and trims, not only at those that a search would show, and
// the parts that rules share: wind, room above, cover, loads along a leaning chain; against what was kept.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "options/build_force.h"
#include "options/catching.h"
#include "options/cover.h"
#include "options/headroom.h"
#include "options/house_figures.h"
#include "options/judge_case.h"
#include "options/loads.h"
#include "options/ways.h"
#include "options/wind_joints.h"
#include "options/wind_limits.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::options;
using namespace hangbook::testing;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr std::uint64_t parts = 4;

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

void add(Line& line, const Use& use) {
  line.number(static_cast<int>(use.verdict));
  line.number(use.applies ? 1 : 0);
  line.number(use.value);
  line.number(use.limit);
  line.number(use.which);
  line.number(use.why);
}

void add(Line& line, const TrimRange& range) {
  line.number(range.low);
  line.number(range.high);
}

void add(Line& line, const hang::SidePush& push) {
  for (const double each : {push.inPlane, push.turning, push.across, push.acrossTurning}) {
    line.number(each);
  }
}

void rules(Line& line, const Case& option, const Settled& settled) {
  for (const Rule* rule : allRules()) {
    for (const double trim : {-infinite, 2.4, 5.1, 7.7, 9.9}) {
      add(line, rule->evaluate(option, &settled, trim));
    }
    if (rule->trimRange != nullptr) {
      add(line, rule->trimRange(option, settled));
    }
    const Finding told = rule->explain(option, &settled, 6.3, rule->evaluate(option, &settled, 6.3));
    word(line, told.text + told.source + told.unit);
    line.number(told.value);
    line.number(told.limit);
  }
}

void loads(Line& line, const Case& option, const Settled& settled) {
  for (std::size_t pick = 0; pick < settled.statics.pickCount; ++pick) {
    for (const double trim : {2.4, 7.7, 10.4}) {
      for (const double each :
           {leanDeg(option, settled, trim, pick), heightOver(option, settled, trim, pick),
            pickForce(option, settled, trim, pick), pointAtRest(option, settled, trim, pick),
            highestPickForce(option, settled, trim, pick), highestAtRest(option, settled, trim, pick),
            highestLifted(option, settled, trim, pick)}) {
        line.number(each);
      }
    }
    const Catching caught = catchingAt(option, settled, pick);
    line.number(caught.drop);
    line.number(caught.factor);
    line.number(caught.load);
    word(line, catchingWords(option, caught));
  }
}

void wind(Line& line, const Case& option, const Settled& settled) {
  const WindForce force = windForce(option, settled);
  word(line, force.missing.join(u';'));
  for (const double deg : {-77.0, 0.0, 13.0, 90.0, 141.0}) {
    line.number(force.forceFrom(deg));
    line.number(force.momentFrom(deg));
    line.number(force.greatestMomentAlong(deg).value);
    add(line, force.greatestBelow(0.3, {std::cos(deg), std::sin(deg)}));
  }
  line.number(force.greatestForce().value);
  line.number(force.greatestForce().fromDeg);
  for (const hang::SidePush& each : force.below) {
    add(line, each);
  }
  for (const double pressure : {0.0, 18.0, 240.0}) {
    const InGust gust(option, settled, 6.3, force, pressure);
    for (const double each : {gust.force(), gust.leanDeg(), gust.moved()}) {
      line.number(each);
    }
    for (const WindUse& each : gust.uses()) {
      add(line, each.use);
      word(line, wordsFor(each, option, settled));
      line.number(static_cast<double>(each.number + 10 * each.piece));
    }
    line.number(swingRadians(settled, force, pressure));
  }
  word(line, windStatementLacks(option, settled, 6.3).join(u';'));
  // Each limit in words, as the worst one would be told.
  const std::optional<Speed>& stated = option.snapshot->show.wind;
  const InGust now(option, settled, 6.3, force, gustPressure(stated ? inMetresPerSecond(*stated) : 0.0));
  const std::vector<WindUse> uses = now.uses();
  for (std::size_t i = 0; i < uses.size(); ++i) {
    Use told = uses[i].use;
    told.which = static_cast<int>(i);
    const Finding finding = windRule.explain(option, &settled, 6.3, told);
    word(line, finding.text + finding.source + finding.unit);
  }
}

void room(Line& line, const Case& option, const Settled& settled) {
  const HeadroomChecks headroom = headroomChecks(option, settled);
  word(line, headroom.missing.join(u';'));
  for (const HeadroomCheck& each : headroom.checks) {
    line.number(static_cast<int>(each.what));
    line.number(each.number);
    line.number(each.ceiling);
    for (const double figure : {each.rise, each.needed, each.inDoubt, each.highest, each.mostTrim()}) {
      line.number(figure);
    }
  }
  const LowestEdge edge = lowestEdge(option, settled);
  line.number(edge.z);
  line.word(edge.known() ? "known" : edge.outlineMissing ? "outline" : edge.widthMissing ? "width" : "tail");
  line.number(unusedChain(option, settled));
  line.number(originHeight(option, settled, 4.2));
  const Placement placement = placementOf(option, settled.layout);
  for (const Plan& each : {placement.origin, placement.forward, placement.placeOf({0.4, 0.7, -2.0}),
                           placement.directionOf({0.6, -0.8, 0.3})}) {
    line.number(each.x);
    line.number(each.y);
  }
  for (const Plan place : {Plan{1.0, 0.0}, Plan{9.0, 1.0}, Plan{24.0, 4.0}, Plan{33.0, -3.0}}) {
    line.number(floorBeneath(option.snapshot->venue, place));
    line.number(floorBeneath(option.snapshot->venue, place, UnclearSections::nowhere));
  }
}

void cover(Line& line, const Case& option, const Settled& settled) {
  const Audience audience = audienceOf(option);
  word(line, audience.missing.join(u';'));
  line.number(audience.weight);
  line.number(static_cast<double>(audience.positions.size()));
  line.number(aimAboveWantedDeg(option, settled, 6.0));
  if (!audience.missing.isEmpty()) {
    return;
  }
  for (const double inside : {0.0, 1.5}) {
    const CoverView view = viewOf(option, audience, settled, inside);
    for (std::size_t i = 0; i < audience.positions.size(); i += 37) {
      line.number(view.distance[i]);
      line.number(audience.positions[i].ear);
      line.number(audience.positions[i].weight);
      for (const CoverView::Source& source : view.sources) {
        add(line, trimsThatCover(audience, view, source, i));
      }
    }
    for (const double trim : {1.0, 4.4, 8.3}) {
      const Covered all = coveredAt(audience, view, trim);
      line.number(all.percent());
      line.number(all.firstMissed);
      line.number(all.lastMissed);
      for (const CoverHole& hole : holesAt(audience, view, trim)) {
        line.number(static_cast<double>(hole.positions));
        line.number(static_cast<double>(hole.first));
      }
    }
    for (const double percent : {30.0, 70.0, 97.0}) {
      const auto stretches = stretchesThatCoverShare(audience, view, percent);
      for (const TrimRange& each : stretches) {
        add(line, each);
      }
      add(line, widestWithin(stretches, {5.0, 7.0}));
    }
  }
}

/// A case of every third stack, and some of its settings.
template <class Look>
void overSome(const Snapshot& snapshot, Chance& by, Look look) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const calendar::Hang& hang = snapshot.show.hangs.front();
  const auto candidates = candidatePoints(snapshot, house, hang);
  const Search search{&snapshot, &house, &hang, candidates.bridles};
  const catalogue::StackingTable& table = snapshot.catalogue.tables.front();
  const catalogue::BarType& bar = snapshot.catalogue.bars.front();
  const catalogue::ChainType* named = catalogue::find(snapshot.catalogue.chains, table.chain);
  int number = 0;
  for (const Stack& stack : stacksOf(snapshot.catalogue, table)) {
    const catalogue::PickArrangement& picks = bar.arrangements[static_cast<std::size_t>(by.oneOf(3))];
    const auto ways = waysToReach(candidates.points, picks.picks);
    if (!by.oneIn(3) || ways.empty() || number > 4) {
      continue;
    }
    Rig rig = rigFor(stack, bar, picks, stack.held == 0 ? nullptr : named, hang, snapshot, house);
    if (!rig.missing.isEmpty()) {
      continue;
    }
    const std::vector<Settled> settings = settingsOf(rig, inDegrees(hang.pan)).settled;
    const Case option =
        caseOf(search, table, stack, bar, picks, snapshot.catalogue.hoists.front(),
               ways[static_cast<std::size_t>(by.oneOf(static_cast<int>(ways.size())))], rig.missing);
    for (std::size_t i = 0; i < settings.size(); i += 1 + settings.size() / 2) {
      look(number, option, settings[i]);
    }
    number += settings.empty() ? 0 : 1;
  }
}

/// Points that do not stand as the picks do, share nothing or are shared with another hang, whose sheet says
/// less; a drop that is too much; steel and screens just above.
Snapshot strange(Snapshot show, Chance& by) {
  venue::Venue& hall = show.venue;
  const double apart = by.between(-0.4, 0.4);
  const bool noZone = by.oneIn(4);
  const bool noSource = by.oneIn(4);
  for (std::size_t i = 0; i < hall.points.size(); ++i) {
    venue::Point& point = hall.points[i];
    point.y = metres(inMetres(point.y) + (i % 2 == 0 ? apart : -apart));
    point.z = metres(inMetres(point.z) + by.between(-0.5, 0.5));
    if (noZone || by.oneIn(8)) {
      point.zone.clear();
    }
    if (noSource) {
      point.source.text.clear();
    }
  }
  if (by.oneIn(3)) {
    hall.zones.clear();
  }
  if (by.oneIn(2) && show.show.hangs.size() > 1) {
    show.show.hangs[1].points = show.show.hangs[0].points;
  }
  if (by.oneIn(2)) {
    hall.lowSteel = metres(by.between(7, 11));
  }
  if (by.oneIn(3)) {
    hall.obstructions.push_back({QStringLiteral("beam"), metres(-2), metres(2), metres(by.between(8, 10)),
                                 metres(11), metres(by.between(6, 11))});
  }
  if (by.oneIn(4)) {
    show.show.hangs[0].secondarySlack = metres(by.between(0.1, 0.4));
  }
  if (by.oneIn(4)) {
    show.show.house.push_back(
        {QStringLiteral("chain-tail"), 1.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 12, 1)});
  }
  for (catalogue::CabinetType& type : show.catalogue.cabinets) {
    if (type.coversAudience && by.oneIn(5)) { // beyond upright once it aims up or down
      type.coverLowest = degrees(-by.between(80, 130));
      type.coverHighest = degrees(by.between(80, 130));
    }
  }
  if (by.oneIn(2)) { // a figure of the house that cannot be read, or is none
    const auto& kinds = houseFigureKinds();
    const HouseFigureKind& kind = kinds[static_cast<std::size_t>(by.oneOf(static_cast<int>(kinds.size())))];
    show.show.house.push_back(
        {kind.id, by.oneIn(2) ? std::nan("") : -1.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 12, 1)});
  }
  if (by.oneIn(8)) {
    hall.points.front().capacity = kilonewtons(-1);
  }
  const bool every = by.oneIn(2);
  for (fleet::Unit& unit : show.units) {
    if (unit.kind == fleet::UnitKind::bar && (every || by.oneIn(2))) {
      unit.weighed = kilograms(by.between(70, 150));
    }
  }
  return show;
}

void partOfThem(std::uint64_t part) {
  std::vector<Line> lines;
  for (std::uint64_t seed = 800 + part; seed < 1040; seed += parts) {
    Chance by(seed);
    const Snapshot snapshot = seed % 8 < 4 ? unlikeShow(seed) : strange(unlikeShow(seed), by);
    const auto line = [&](int number, const char* what) -> Line& {
      return lines.emplace_back("rules " + std::to_string(seed) + ' ' + std::to_string(number) + what);
    };
    int before = -1;
    overSome(snapshot, by, [&](int number, const Case& option, const Settled& settled) {
      const bool again = number == before;
      before = number;
      rules(line(number, again ? " again" : ""), option, settled);
      loads(line(number, again ? " loads again" : " loads"), option, settled);
      wind(line(number, again ? " wind again" : " wind"), option, settled);
      room(line(number, again ? " room again" : " room"), option, settled);
      cover(line(number, again ? " cover again" : " cover"), option, settled);
    });
  }
  compareWithKept(lines, partFile("rules", part));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(rules_at_many_settings_come_out_as_kept_1) {
  partOfThem(0);
}
BOOST_AUTO_TEST_CASE(rules_at_many_settings_come_out_as_kept_2) {
  partOfThem(1);
}
BOOST_AUTO_TEST_CASE(rules_at_many_settings_come_out_as_kept_3) {
  partOfThem(2);
}
BOOST_AUTO_TEST_CASE(rules_at_many_settings_come_out_as_kept_4) {
  partOfThem(3);
}

BOOST_AUTO_TEST_SUITE_END()
