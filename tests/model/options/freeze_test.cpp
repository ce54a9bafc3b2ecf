// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <functional>
#include <limits>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <boost/test/unit_test.hpp>

#include "options/freeze.h"
#include "options/freeze_others.h"
#include "options/option_json.h"
#include "options/search.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Choice;
using options::Option;
using options::Snapshot;
using options::Standing;

namespace {

Choice chosen(const Snapshot& snapshot, const Option& option) {
  const options::Frozen frozen = options::freeze(snapshot, option);
  Choice choice;
  choice.hang = option.key.hang;
  choice.option = option.id;
  choice.key = option.key;
  choice.frozen = frozen.json;
  choice.sha256 = frozen.sha256;
  choice.program = frozen.program;
  choice.points = option.points;
  return choice;
}

} // namespace

BOOST_AUTO_TEST_SUITE(freezing)

BOOST_AUTO_TEST_CASE(readsBackAndKnowsWhenItIsOutdated) {
  const Snapshot snapshot = testing::smallHarbourShow();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  const Option& first = all.hangs[0].options.front();
  const Choice choice = chosen(snapshot, first);
  BOOST_TEST(choice.sha256.size() == 64);
  BOOST_TEST((chosen(snapshot, first).frozen == choice.frozen));
  BOOST_TEST((options::standingOf(snapshot, choice) == Standing::current));
  BOOST_TEST((options::toJson(options::thaw(choice.frozen)) == options::toJson(first)));

  const std::vector<std::function<void(Snapshot&)>> changes{
      [](Snapshot& s) { s.catalogue.cabinets[0].mass = kilograms(93); },
      [](Snapshot& s) { s.catalogue.cabinets[3].coverHighest.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].arrangements[0].limit = kilonewtons(29); },
      [](Snapshot& s) { s.catalogue.hoists[0].speed = metresPerSecond(0.1); },
      [](Snapshot& s) { s.catalogue.tables[0].joins[2].pinLimit = kilonewtons(1); },
      [](Snapshot& s) { s.catalogue.hardware[1].limit = kilonewtons(1); },
      [](Snapshot& s) { s.venue.points[0].capacity = kilonewtons(5); },
      [](Snapshot& s) { s.venue.zones[0].othersLoad = kilonewtons(9); },
      [](Snapshot& s) { s.venue.sections[0].earHeight = metres(1.6); },
      [](Snapshot& s) { s.venue.sections[0].radius = metres(0); },
      [](Snapshot& s) { s.catalogue.cabinets[3].coverAcross = degrees(90); },
      [](Snapshot& s) { s.show.pressure = 101.3; },
      [](Snapshot& s) { s.show.peopleBeneath = false; },
      [](Snapshot& s) { s.show.hangs[0].cableMass = kilograms(13); },
      [](Snapshot& s) {
        s.tour.house.push_back(
            {QStringLiteral("dynamic-factor"), 1.3, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
      },
  };
  for (const auto& change : changes) {
    Snapshot other = snapshot;
    change(other);
    BOOST_TEST((options::standingOf(other, choice) == Standing::outdated));
  }
  Snapshot moved = snapshot; // the fleet moves daily and is judged anew
  moved.units[0].place = QStringLiteral("truck 1");
  BOOST_TEST((options::standingOf(moved, choice) == Standing::current));
}

/// Left's option as if it were chosen for right: the points that mirror its own, `times` as loaded.
Choice mirrored(const Choice& left, double times, double timesWorst) {
  Choice right;
  right.hang = QStringLiteral("right");
  for (options::PointResult point : left.points) {
    point.point.replace(QLatin1Char('L'), QLatin1Char('R'));
    point.staticKn *= times;
    point.dynamicKn *= times;
    point.worstStaticKn = *point.worstStaticKn * timesWorst;
    point.worstDynamicKn = *point.worstDynamicKn * timesWorst;
    right.points.push_back(point);
  }
  return right;
}

Standing withRight(Snapshot snapshot, const Choice& choice, const Choice& right) {
  snapshot.choices.push_back(right);
  return options::standingOf(snapshot, choice);
}

BOOST_AUTO_TEST_CASE(anotherHangsChoiceCountsByWhatItPutsOntoSharedStructures) {
  Snapshot snapshot = testing::smallHarbourShow();
  const QString left = QStringLiteral("left");
  const auto apart = options::decide(snapshot, left);
  Choice choice = chosen(snapshot, apart.hangs[0].options.front());
  BOOST_TEST((withRight(snapshot, choice, mirrored(choice, 2.0, 2.0)) == Standing::current)); // another truss
  for (venue::Point& point : snapshot.venue.points) {
    point.zone = snapshot.venue.zones[0].name;
  }
  const auto together = options::decide(snapshot, left);
  choice = chosen(snapshot, together.hangs[0].options.front());
  BOOST_TEST((withRight(snapshot, choice, mirrored(choice, 1.0, 1.0)) == Standing::current)); // as taken
  BOOST_TEST(
      (withRight(snapshot, choice, mirrored(choice, 1.01, 1.0)) == Standing::current)); // judged at the worst
  BOOST_TEST((withRight(snapshot, choice, mirrored(choice, 1.0, 1.01)) == Standing::outdated));
  Snapshot both = snapshot;
  both.choices.push_back(mirrored(choice, 1.2, 1.2));
  const Choice after = [&] {
    const auto again = options::decide(both, left);
    return chosen(both, again.hangs[0].options.front());
  }();
  BOOST_TEST((options::standingOf(both, after) == Standing::current));
  both.choices.back().points[0].worstStaticKn = 0.0;
  BOOST_TEST((options::standingOf(both, after) == Standing::outdated));
  both.choices.clear(); // withdrawn: taken as left's mirror image once more, which is another load
  BOOST_TEST((options::standingOf(both, after) == Standing::outdated));
}

/// Both unfavourable ends of a point are frozen, or neither.
BOOST_AUTO_TEST_CASE(anUnfavourableEndAloneIsNotFrozen) {
  Snapshot snapshot;
  Choice right;
  right.hang = QStringLiteral("right");
  options::PointResult point;
  point.point = QStringLiteral("R1");
  point.staticKn = 4.0;
  point.dynamicKn = 5.0;
  right.points = {point, point, point, point};
  right.points[1].worstStaticKn = 4.2;
  right.points[2].worstDynamicKn = 5.2;
  right.points[3].worstStaticKn = 4.2;
  right.points[3].worstDynamicKn = 5.2;
  snapshot.choices = {right};
  const QJsonValue loads =
      options::otherHangs(snapshot, QStringLiteral("left"))[0][QLatin1String("loads_kn")];
  const QJsonArray plain{QStringLiteral("R1"), 4.0, 5.0};
  const QJsonArray whole{QStringLiteral("R1"), 4.0, 5.0, 4.2, 5.2};
  BOOST_TEST((loads.toArray() == QJsonArray{plain, plain, plain, whole}));
}

/// Records that lack the unfavourable ends are compared by what is stated in both.
BOOST_AUTO_TEST_CASE(whatIsMissingOnOneSideIsNotCompared) {
  Snapshot snapshot = testing::smallHarbourShow();
  for (venue::Point& point : snapshot.venue.points) {
    point.zone = snapshot.venue.zones[0].name;
  }
  const auto found = options::decide(snapshot, QStringLiteral("left"));
  Choice choice = chosen(snapshot, found.hangs[0].options.front());
  const auto listOf = [](std::vector<double> figures) {
    QJsonArray load{QStringLiteral("R1")};
    for (const double each : figures) {
      load.append(std::isfinite(each) ? QJsonValue(each) : QJsonValue(QJsonValue::Null));
    }
    return QJsonArray{QJsonObject{{QStringLiteral("hang"), QStringLiteral("right")},
                                  {QStringLiteral("option"), QStringLiteral("x")},
                                  {QStringLiteral("loads_kn"), QJsonArray{load}}}};
  };
  const QJsonArray plain = listOf({4.0, 5.0});
  const QJsonArray whole = listOf({4.0, 5.0, 4.2, 5.2});
  const QJsonArray worse = listOf({4.0, 5.0, 4.3, 5.2});
  const QJsonArray more = listOf({4.1, 5.0, 4.2, 5.2});
  const auto same = [&](const QJsonArray& then, const QJsonArray& now) {
    return options::sameFromOthers(snapshot, choice, then, now);
  };
  BOOST_TEST(same(plain, plain));
  BOOST_TEST(same(plain, whole));
  BOOST_TEST(same(whole, plain));
  BOOST_TEST(same(whole, whole));
  BOOST_TEST(!same(whole, worse));
  BOOST_TEST(same(plain, worse));
  BOOST_TEST(same(whole, more)); // judged at the worst
  BOOST_TEST(!same(plain, more));
  BOOST_TEST(same({}, {}));
  const double open = std::numeric_limits<double>::quiet_NaN(); // what was not known and is, or the reverse
  BOOST_TEST(!same(plain, listOf({open, 5.0})));
  BOOST_TEST(!same(listOf({4.0, open}), plain));
  BOOST_TEST(same(listOf({open, open}), listOf({open, open})));
  choice.points[0].worstStaticKn.reset(); // chosen before there were unfavourable ends
  BOOST_TEST(same(whole, worse));
  BOOST_TEST(!same(whole, more));
}

/// Left's outer point is on one truss with right's outer one, the inner two are on another. While right has
/// nothing chosen it counts as left's mirror image, 2 kN outside and 1 kN inside: just that changes nothing,
/// and the two the other way round do.
BOOST_AUTO_TEST_CASE(aMirrorImageIsComparedPointByPoint) {
  Snapshot snapshot;
  const auto point = [&snapshot](const char* name, double y, const char* zone) {
    venue::Point& made = snapshot.venue.points.emplace_back();
    made.name = QString::fromLatin1(name);
    made.x = metres(0.0);
    made.y = metres(y);
    made.zone = QString::fromLatin1(zone);
  };
  point("L1", 6.0, "outer");
  point("L2", 3.0, "inner");
  point("R1", -6.0, "outer");
  point("R2", -3.0, "inner");
  for (const char* name : {"outer", "inner"}) {
    snapshot.venue.zones.emplace_back().name = QString::fromLatin1(name);
  }
  calendar::Hang left;
  left.name = QStringLiteral("left");
  left.points = {QStringLiteral("L1"), QStringLiteral("L2")};
  calendar::Hang right;
  right.name = QStringLiteral("right");
  right.points = {QStringLiteral("R1"), QStringLiteral("R2")};
  right.mirrors = left.name;
  snapshot.show.hangs = {left, right};
  Choice choice;
  choice.hang = left.name;
  choice.key.points = left.points;
  for (const auto& [name, kn] : {std::pair("L1", 2.0), std::pair("L2", 1.0)}) {
    options::PointResult& result = choice.points.emplace_back();
    result.point = QString::fromLatin1(name);
    result.staticKn = kn;
    result.dynamicKn = 1.5 * kn;
  }
  const auto rightWith = [](double outer, double inner, double dynamicOuter) {
    const QJsonArray loads{QJsonArray{QStringLiteral("R1"), outer, dynamicOuter},
                           QJsonArray{QStringLiteral("R2"), inner, 1.5 * inner}};
    return QJsonArray{QJsonObject{{QStringLiteral("hang"), QStringLiteral("right")},
                                  {QStringLiteral("option"), QStringLiteral("x")},
                                  {QStringLiteral("loads_kn"), loads}}};
  };
  const auto same = [&](const QJsonArray& then, const QJsonArray& now) {
    return options::sameFromOthers(snapshot, choice, then, now);
  };
  BOOST_TEST(same({}, rightWith(2.0, 1.0, 3.0)));
  BOOST_TEST(same(rightWith(2.0, 1.0, 3.0), {}));
  BOOST_TEST(!same({}, rightWith(1.0, 2.0, 1.5)));
  BOOST_TEST(!same({}, rightWith(2.0, 1.1, 3.0)));
  BOOST_TEST(!same({}, rightWith(2.0, 1.0, 3.1)));
  BOOST_TEST(!same(rightWith(2.0, 1.0, 3.1), {}));
}

/// Both hangs share the point in the middle, which no truss is stated for: as its mirror image right puts
/// left's own load there once more.
BOOST_AUTO_TEST_CASE(aSharedPointIsComparedByWhatTheOtherPutsThere) {
  Snapshot snapshot;
  for (const auto& [name, y] : {std::pair("L", 3.0), std::pair("C", 0.0), std::pair("R", -3.0)}) {
    venue::Point& made = snapshot.venue.points.emplace_back();
    made.name = QString::fromLatin1(name);
    made.x = metres(0.0);
    made.y = metres(y);
  }
  calendar::Hang left;
  left.name = QStringLiteral("left");
  left.points = {QStringLiteral("L"), QStringLiteral("C")};
  calendar::Hang right;
  right.name = QStringLiteral("right");
  right.points = {QStringLiteral("R"), QStringLiteral("C")};
  right.mirrors = left.name;
  snapshot.show.hangs = {left, right};
  Choice choice;
  choice.hang = left.name;
  choice.key.points = left.points;
  for (const auto& [name, kn] : {std::pair("L", 2.0), std::pair("C", 1.0)}) {
    options::PointResult& result = choice.points.emplace_back();
    result.point = QString::fromLatin1(name);
    result.staticKn = kn;
    result.dynamicKn = 1.5 * kn;
  }
  const auto rightWith = [](double outer, double shared) {
    const QJsonArray loads{QJsonArray{QStringLiteral("R"), outer, 1.5 * outer},
                           QJsonArray{QStringLiteral("C"), shared, 1.5 * shared}};
    return QJsonArray{QJsonObject{{QStringLiteral("hang"), QStringLiteral("right")},
                                  {QStringLiteral("option"), QStringLiteral("x")},
                                  {QStringLiteral("loads_kn"), loads}}};
  };
  BOOST_TEST(options::sameFromOthers(snapshot, choice, {}, rightWith(2.0, 1.0)));
  BOOST_TEST(options::sameFromOthers(snapshot, choice, {}, rightWith(5.0, 1.0))); // on its own point alone
  BOOST_TEST(!options::sameFromOthers(snapshot, choice, {}, rightWith(2.0, 1.1)));
  BOOST_TEST(!options::sameFromOthers(snapshot, choice, {}, rightWith(2.0, 2.0)));
  // On its own point alone, or with nothing on the shared one, is the same.
  const QJsonArray alone{QJsonArray{QStringLiteral("R"), 2.0, 3.0}};
  const QJsonArray apart{QJsonObject{{QStringLiteral("hang"), QStringLiteral("right")},
                                     {QStringLiteral("option"), QStringLiteral("x")},
                                     {QStringLiteral("loads_kn"), alone}}};
  BOOST_TEST(options::sameFromOthers(snapshot, choice, apart, rightWith(2.0, 0.0)));
  BOOST_TEST(options::sameFromOthers(snapshot, choice, rightWith(2.0, 0.0), apart));
  BOOST_TEST(!options::sameFromOthers(snapshot, choice, apart, rightWith(2.0, 0.1)));
}

BOOST_AUTO_TEST_CASE(aSingleByteIsNoticed) {
  const Snapshot snapshot = testing::smallHarbourShow();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  Choice choice = chosen(snapshot, all.hangs[0].options.front());
  choice.frozen[choice.frozen.size() / 2] = '#';
  BOOST_TEST((options::standingOf(snapshot, choice) == Standing::damaged));
  BOOST_CHECK_THROW(options::thaw("{}"), Error);
}

/// An option whose figures are not all known keeps its gaps: null, never 0.
BOOST_AUTO_TEST_CASE(whatIsNotKnownStaysSo) {
  Snapshot snapshot = testing::smallHarbourShow();
  snapshot.catalogue.hoists[0].bodyMass.reset();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    const QJsonObject object = options::toJson(option);
    const QJsonObject point = object.value(QLatin1String("points")).toArray().first().toObject();
    BOOST_TEST(point.value(QLatin1String("static_kn")).isNull());
    BOOST_TEST((options::toJson(options::optionFromJson(object)) == object));
  }
}

BOOST_AUTO_TEST_SUITE_END()
