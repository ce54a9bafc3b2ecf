// SPDX-License-Identifier: GPL-3.0-or-later
// What other hangs put onto the structures that a hang uses: chosen, mirrored, or not known.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "options/freeze_others.h"
#include "options/zones.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

const QString left = QStringLiteral("left");
const QString right = QStringLiteral("right");

/// All four points on one truss, so that what the right hang puts there counts for the left one.
Snapshot oneTruss() {
  Snapshot show = testing::harbourShow();
  for (venue::Point& each : show.venue.points) {
    each.zone = QStringLiteral("left truss");
  }
  return show;
}

WeightLimits limitsOf(const Snapshot& show,
                      const QStringList& points = {QStringLiteral("L1"), QStringLiteral("L2")}) {
  Case option;
  option.snapshot = &show;
  option.hang = &show.show.hangs.front();
  for (const QString& name : points) {
    option.carriers.push_back({catalogue::find(show.venue.points, name), {}});
  }
  WeightLimits limits;
  lookUpZones(option, limits);
  return limits;
}

ZoneLoad zoneOf(const Snapshot& show) {
  const WeightLimits limits = limitsOf(show);
  BOOST_REQUIRE(!limits.zones.empty());
  return limits.zones.front();
}

PointResult loaded(const char* point, double atRest, double dynamic) {
  PointResult result;
  result.point = QLatin1String(point);
  result.staticKn = atRest;
  result.dynamicKn = dynamic;
  return result;
}

Choice chosen(const QString& hang, std::vector<PointResult> points, int revision = 1) {
  Choice choice;
  choice.hang = hang;
  choice.points = std::move(points);
  choice.revision = revision;
  return choice;
}

} // namespace

BOOST_AUTO_TEST_SUITE(zones)

BOOST_AUTO_TEST_CASE(a_mirrored_hang_counts_as_often_as_its_points_are_on_the_truss) {
  const ZoneLoad zone = zoneOf(oneTruss());
  BOOST_TEST(zone.times.size() == 2U);
  BOOST_TEST(zone.times[0] == 2); // its own and the mirrored one's
  BOOST_TEST(zone.times[1] == 2);
  BOOST_TEST(zone.otherHangsAtRest == 0.0);
  BOOST_REQUIRE(zone.otherHangs.size() == 1);
  BOOST_TEST((zone.otherHangs[0] == QStringLiteral("right by the same option mirrored")));
  Snapshot half = oneTruss();
  half.venue.points[3].zone = QStringLiteral("right truss"); // R2, the mirror image of L1
  BOOST_TEST(zoneOf(half).times[0] == 1);
  BOOST_TEST(zoneOf(half).times[1] == 2);
}

/// The mirror image of L1 (0.5, 10.5) is (0.5, −10.5), where R2 stands.
BOOST_AUTO_TEST_CASE(a_mirror_image_is_looked_for_within_a_metre) {
  const auto moved = [](double dx, double dy) {
    Snapshot show = oneTruss();
    show.venue.points[3].x += metres(dx);
    show.venue.points[3].y += metres(dy);
    return zoneOf(show);
  };
  BOOST_TEST(moved(0.999, 0.0).times[0] == 2);
  BOOST_TEST(moved(0.0, -0.999).times[0] == 2);
  BOOST_TEST(moved(1.0, 0.0).times[0] == 2);
  BOOST_TEST(moved(0.6, -0.79).times[0] == 2);
  // Beyond that R1, one metre off, is the nearest; without it nobody knows.
  const auto alone = [](double dx, double dy) {
    Snapshot show = oneTruss();
    show.venue.points[2].y = metres(-7);
    show.venue.points[3].x += metres(dx);
    show.venue.points[3].y += metres(dy);
    return zoneOf(show);
  };
  for (const auto& [dx, dy] : {std::pair{1.001, 0.0}, {0.0, -1.001}, {-1.001, 0.0}, {0.8, -0.61}}) {
    const ZoneLoad zone = alone(dx, dy);
    BOOST_TEST(std::isnan(zone.otherHangsAtRest));
    BOOST_TEST(std::isnan(zone.otherHangsDynamic));
    BOOST_REQUIRE(zone.otherHangs.size() == 1);
    BOOST_TEST(
        (zone.otherHangs[0] == QStringLiteral("right, which has no point at the mirror image of point L1")));
  }
}

BOOST_AUTO_TEST_CASE(of_two_near_points_the_nearer_one_is_the_image) {
  for (const bool nearer : {true, false}) {
    Snapshot show = oneTruss();
    show.venue.points[2].y = metres(nearer ? -10.3 : -10.9); // R1, 0.2 or 0.4 m from the image of L1
    show.venue.points[3].y = metres(-10.8);                  // R2, 0.3 m
    show.venue.points[2].zone = QStringLiteral("right truss");
    show.venue.points[1].y = metres(10.4); // so that L2 has an image too
    BOOST_TEST(zoneOf(show).times[0] == (nearer ? 1 : 2));
  }
}

BOOST_AUTO_TEST_CASE(either_may_name_the_other_as_its_mirror) {
  Snapshot show = oneTruss();
  show.show.hangs[0].mirrors = right;
  show.show.hangs[1].mirrors.clear();
  BOOST_TEST(zoneOf(show).times[0] == 2);
  show.show.hangs[0].mirrors.clear();
  const ZoneLoad zone = zoneOf(show);
  BOOST_TEST(zone.times[0] == 1);
  BOOST_TEST(std::isnan(zone.otherHangsAtRest));
  BOOST_TEST(std::isnan(zone.otherHangsDynamic));
  BOOST_TEST((zone.otherHangs.front() == QStringLiteral("right, for which nothing is chosen")));
  for (venue::Point& each : show.venue.points) { // which cannot reach this truss does not matter
    each.zone = each.name.startsWith(u'R') ? QStringLiteral("right truss") : each.zone;
  }
  BOOST_TEST(zoneOf(show).otherHangsAtRest == 0.0);
  BOOST_TEST(zoneOf(show).otherHangs.isEmpty());
}

BOOST_AUTO_TEST_CASE(what_is_chosen_counts_at_its_worst_and_by_its_newest_revision) {
  Snapshot show = oneTruss();
  PointResult worst = loaded("R2", 2.0, 3.0);
  worst.worstStaticKn = 2.5;
  worst.worstDynamicKn = 3.75;
  show.choices = {chosen(right, {loaded("R1", 7.0, 8.0)}, 1),
                  chosen(right, {loaded("R1", 1.0, 1.5), worst, loaded("no such point", 90.0, 90.0)}, 3),
                  chosen(right, {loaded("R1", 5.0, 6.0)}, 2), chosen(left, {loaded("L1", 50.0, 60.0)}, 9)};
  const ZoneLoad zone = zoneOf(show);
  BOOST_TEST(zone.otherHangsAtRest == 3500.0);
  BOOST_TEST(zone.otherHangsDynamic == 5250.0);
  BOOST_TEST(zone.times[0] == 1);
  BOOST_TEST((zone.otherHangs.front() == QStringLiteral("right by its chosen option")));
  show.venue.points[2].zone = QStringLiteral("right truss");
  BOOST_TEST(zoneOf(show).otherHangsAtRest == 2500.0);
  show.venue.points[3].zone = QStringLiteral("right truss");
  BOOST_TEST(zoneOf(show).otherHangsAtRest == 0.0);
  BOOST_TEST(zoneOf(show).otherHangs.isEmpty());
}

BOOST_AUTO_TEST_CASE(a_point_that_two_hangs_may_use_is_a_structure_by_itself) {
  Snapshot show = testing::harbourShow();
  show.show.hangs[1].points.append(QStringLiteral("L1"));
  show.show.hangs[1].mirrors.clear();
  const WeightLimits limits = limitsOf(show);
  BOOST_REQUIRE(limits.zones.size() == 2U); // the truss, and L1
  const ZoneLoad& point = limits.zones.back();
  BOOST_TEST(point.onePoint);
  BOOST_TEST((point.name == QStringLiteral("L1")));
  BOOST_TEST(point.capacity == 11800.0);
  BOOST_TEST(point.others == 0.0);
  BOOST_TEST(point.times[0] == 1);
  BOOST_TEST(point.times[1] == 0);
  BOOST_TEST(std::isnan(point.otherHangsAtRest));
  show.choices = {chosen(right, {loaded("L1", 1.25, 1.5), loaded("R1", 4.0, 5.0)})};
  const ZoneLoad now = limitsOf(show).zones.back();
  BOOST_TEST(now.otherHangsAtRest == 1250.0);
  BOOST_TEST(now.otherHangsDynamic == 1500.0);
}

BOOST_AUTO_TEST_CASE(what_others_hang_there_must_be_stated_by_somebody) {
  const auto with = [](std::optional<Force> load, const char* by, QDate on) {
    Snapshot show = testing::harbourShow();
    venue::Zone& zone = show.venue.zones.front();
    zone.othersLoad = load;
    zone.othersBy = QLatin1String(by);
    zone.othersOn = on;
    return zoneOf(show);
  };
  const QDate day(2026, 10, 20);
  BOOST_TEST(with(kilonewtons(4), "Runa Vell", day).others == 4000.0);
  BOOST_TEST((with(kilonewtons(4), "Runa Vell", day).othersWhy ==
              QStringLiteral("other departments, by Runa Vell")));
  BOOST_TEST(with(kilonewtons(4), "", {}).others == 4000.0);
  BOOST_TEST((with(kilonewtons(4), "", {}).othersWhy == QStringLiteral("other departments")));
  BOOST_TEST(with(kilonewtons(0), "Runa Vell", day).others == 0.0);
  for (const ZoneLoad& open : {with(kilonewtons(0), "", day), with(kilonewtons(0), "Runa Vell", {})}) {
    BOOST_TEST(std::isnan(open.others));
    BOOST_TEST((open.othersWhy ==
                QStringLiteral("that nothing else hangs there is stated without a name and a date")));
  }
  for (const ZoneLoad& open :
       {with(std::nullopt, "Runa Vell", day), with(kilonewtons(-1), "Runa Vell", day)}) {
    BOOST_TEST(std::isnan(open.others));
    BOOST_TEST((open.othersWhy == QStringLiteral("what other departments hang there is not stated")));
  }
}

BOOST_AUTO_TEST_CASE(a_zone_that_the_sheet_does_not_have_is_told_once) {
  Snapshot show = testing::harbourShow();
  show.venue.points[0].zone = show.venue.points[1].zone = QStringLiteral("nowhere");
  BOOST_TEST((limitsOf(show).zonesUnknown == QStringList{QStringLiteral("nowhere")}));
  BOOST_TEST(limitsOf(show).zones.empty());
  BOOST_TEST(!limitsOf(show).pointsWithoutZone);
  BOOST_TEST(limitsOf(show).zonesStated);
  show.venue.points[0].zone.clear();
  BOOST_TEST(limitsOf(show).pointsWithoutZone);
  show.venue.zones.clear();
  BOOST_TEST(!limitsOf(show).zonesStated);
}

/// What was put there then against what is now, as the frozen record of a choice keeps it.
BOOST_AUTO_TEST_CASE(a_choice_knows_whether_others_put_the_same_there) {
  Snapshot show = oneTruss();
  Choice own = chosen(left, {loaded("L1", 3.0, 4.0), loaded("L2", 2.0, 2.5)});
  own.key.points = {QStringLiteral("L1"), QStringLiteral("L2")};
  const auto others = [&](std::vector<PointResult> points) {
    Snapshot other = show;
    other.choices = {own};
    if (!points.empty()) {
      other.choices.push_back(chosen(right, std::move(points)));
    }
    return otherHangs(other, left);
  };
  const auto same = [&](const QJsonArray& then, const QJsonArray& now) {
    return sameFromOthers(show, own, then, now) && sameFromOthers(show, own, now, then);
  };
  const QJsonArray nobody = others({});
  const QJsonArray mirrored = others({loaded("R2", 3.0, 4.0), loaded("R1", 2.0, 2.5)});
  BOOST_TEST(nobody.isEmpty());
  BOOST_TEST(same(nobody, mirrored)); // it was taken to be just that
  BOOST_TEST(
      same(nobody, others({loaded("R2", 2.0, 2.5), loaded("R1", 3.0, 4.0)}))); // one truss: the sum counts
  BOOST_TEST(!same(nobody, others({loaded("R2", 3.0, 4.0), loaded("R1", 2.0, 2.6)})));
  BOOST_TEST(!same(nobody, others({loaded("R2", 3.1, 4.0), loaded("R1", 2.0, 2.5)})));
  BOOST_TEST(!same(nobody, others({loaded("R2", 3.0, 4.0)})));
  BOOST_TEST(same(mirrored, others({loaded("R2", 3.0, 4.0 + 1e-12), loaded("R1", 2.0, 2.5)})));
  BOOST_TEST(!same(mirrored, others({loaded("R2", 3.0, 4.00001), loaded("R1", 2.0, 2.5)})));
  // At its worst, where every one has a worst; else as stated.
  const auto worst = [](PointResult result, double more) {
    result.worstStaticKn = result.staticKn * more;
    result.worstDynamicKn = result.dynamicKn * more;
    return result;
  };
  const QJsonArray doubted = others({worst(loaded("R2", 3.0, 4.0), 1.2), worst(loaded("R1", 2.0, 2.5), 1.2)});
  BOOST_TEST(same(mirrored, doubted)); // its own have none
  own.points = {worst(own.points[0], 1.2), worst(own.points[1], 1.2)};
  BOOST_TEST(same(nobody, doubted));
  BOOST_TEST(
      !same(doubted, others({worst(loaded("R2", 3.0, 4.0), 1.3), worst(loaded("R1", 2.0, 2.5), 1.2)})));
  BOOST_TEST(same(doubted, others({worst(loaded("R2", 2.4, 3.2), 1.5), worst(loaded("R1", 1.6, 2.0), 1.5)})));
  BOOST_TEST(same(mirrored, doubted)); // one record is from before there was a worst
  Choice strange = own;
  strange.hang = QStringLiteral("none");
  BOOST_TEST(!sameFromOthers(show, strange, nobody, nobody));
  // A point of its own of which the choice does not know what it put there is not the same as anything.
  own.points.pop_back();
  BOOST_TEST(!same(nobody, doubted));
}

/// Right comes to hang from left's own point, which is on no structure: it was not listed then, and is now.
BOOST_AUTO_TEST_CASE(a_point_that_another_hang_has_come_to_use_is_not_the_same) {
  Snapshot show = testing::harbourShow();
  show.venue.zones.clear();
  for (venue::Point& each : show.venue.points) {
    each.zone.clear();
  }
  Choice own = chosen(left, {loaded("L1", 3.0, 4.0), loaded("L2", 2.0, 2.5)});
  own.key.points = {QStringLiteral("L1"), QStringLiteral("L2")};
  const auto with = [&](const char* point) {
    Snapshot other = show;
    other.choices = {chosen(right, {loaded(point, 1.0, 1.0)})};
    return otherHangs(other, left);
  };
  BOOST_TEST(sameFromOthers(show, own, with("R1"), with("R1")));
  BOOST_TEST(!sameFromOthers(show, own, with("R1"), with("L1")));
  BOOST_TEST(!sameFromOthers(show, own, with("L1"), with("R1")));
  BOOST_TEST(!sameFromOthers(show, own, with("L1"), with("L2")));
}

/// Of one point it is not known what the choice puts there; on the other's structure that says nothing.
BOOST_AUTO_TEST_CASE(what_one_point_carries_says_nothing_of_another_structure) {
  Snapshot show = testing::harbourShow();
  show.show.hangs[1].mirrors.clear();
  BOOST_REQUIRE(show.venue.zones.size() > 1U);
  for (venue::Point& each : show.venue.points) {
    each.zone = show.venue.zones[each.name == QStringLiteral("L2") ? 1 : 0].name;
  }
  Choice own = chosen(left, {loaded("L1", 3.0, 4.0)});
  own.key.points = {QStringLiteral("L1"), QStringLiteral("L2")};
  const auto with = [&](double kn) {
    Snapshot other = show;
    other.choices = {chosen(right, {loaded("R1", kn, kn)})};
    return otherHangs(other, left);
  };
  BOOST_TEST(sameFromOthers(show, own, with(1.0), with(1.0)));
  BOOST_TEST(!sameFromOthers(show, own, with(1.0), with(1.5)));
}

/// What hangs from a bridle loads the bridle's points.
BOOST_AUTO_TEST_CASE(a_bridle_stands_for_its_points) {
  Snapshot show = testing::harbourShow();
  show.show.hangs[1].mirrors.clear();
  show.show.hangs[1].points = {QStringLiteral("L1"), QStringLiteral("R1")};
  venue::Bridle bridle;
  bridle.name = QStringLiteral("B");
  bridle.points = {QStringLiteral("L1"), QStringLiteral("L2")};
  show.venue.bridles = {bridle};
  Choice own = chosen(left, {loaded("L1", 3.0, 4.0), loaded("L2", 2.0, 2.5)});
  own.key.points = {QStringLiteral("B")};
  const auto with = [&](double kn) {
    Snapshot other = show;
    other.choices = {chosen(right, {loaded("L1", kn, kn)})};
    return otherHangs(other, left);
  };
  BOOST_TEST(sameFromOthers(show, own, with(1.0), with(1.0)));
  BOOST_TEST(!sameFromOthers(show, own, with(1.0), with(1.5)));
  own.key.points = {QStringLiteral("R2")}; // another truss
  BOOST_TEST(sameFromOthers(show, own, with(1.0), with(1.5)));
}

BOOST_AUTO_TEST_SUITE_END()
