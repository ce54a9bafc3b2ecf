// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <random>

#include <QJsonArray>

#include "options/level.h"
#include "options/level_json.h"
#include "options/placement.h"
#include "options/room_limits.h"
#include "options/search.h"
#include "print.h"
#include "room_fixture.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

BOOST_AUTO_TEST_SUITE(level)

BOOST_AUTO_TEST_CASE(first_and_last_row_of_each_section) {
  Room room;
  room.full().levelAtOneMetre = 139.0;
  room.refresh();
  const auto table = levelOf(room.option, room.settled, 8.0);
  BOOST_REQUIRE(table);
  BOOST_REQUIRE_EQUAL(table->rows.size(), 2U);
  const LevelRow& front = table->rows[0];
  const LevelRow& back = table->rows[1];
  BOOST_TEST(!front.last);
  BOOST_TEST(back.last);
  BOOST_TEST((front.section == QStringLiteral("floor")));
  BOOST_TEST(front.element == 2);
  BOOST_TEST(back.covered);
  BOOST_TEST(back.levelAtOneMetreDb.value() == 139.0);
  // The last row's ear is 40 m out and 4.2 m up; the source from its height, by hand.
  const hang::Vec3 source = sourceOf(room.settled.layout.elements[1]);
  const double height = originHeight(room.option, room.settled, 8.0) + source.z;
  const double way = std::hypot(40.0 - source.x, 4.2 - height);
  BOOST_TEST(back.distanceM == way, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(back.spreadingDb == 20.0 * std::log10(way), boost::test_tools::tolerance(1e-12));
  BOOST_REQUIRE(table->frontToBackDb);
  for (std::size_t i = 0; i < octaveBands.size(); ++i) {
    BOOST_TEST(front.lossDb(i) + (*table->frontToBackDb)[i] == back.lossDb(i),
               boost::test_tools::tolerance(1e-12));
    BOOST_TEST((i == 0 || (*back.airDb)[i] > (*back.airDb)[i - 1])); // the air takes more the higher the band
  }
}

BOOST_AUTO_TEST_CASE(every_section_has_its_two_rows) {
  Room room;
  venue::Section balcony = room.venue().sections.front();
  balcony.name = QStringLiteral("balcony");
  balcony.profile = {{metres(30), metres(4)}, {metres(38), metres(6)}};
  room.venue().sections.push_back(balcony);
  room.refresh();
  const auto table = levelOf(room.option, room.settled, 8.0);
  BOOST_REQUIRE(table);
  BOOST_REQUIRE_EQUAL(table->rows.size(), 4U);
  BOOST_TEST((table->rows[2].section == QStringLiteral("balcony")));
  BOOST_TEST(!table->rows[2].last);
  BOOST_TEST((table->rows[3].section == QStringLiteral("balcony")));
  BOOST_TEST(table->rows[3].last);
}

/// Of a row of seats the one that is nearest to the hang's line, wherever it stands in the row.
BOOST_AUTO_TEST_CASE(a_row_of_seats_is_told_by_the_seat_ahead) {
  Room room;
  const auto distance = [&room](const std::vector<double>& sides) {
    auto limits = std::make_shared<RoomLimits>(*room.option.room);
    limits->audience.blocks = {{0, sides.size(), sides.size(), true}};
    limits->audience.positions.clear();
    for (const double y : sides) {
      AudiencePosition seat;
      seat.x = 20.0;
      seat.yFrom = seat.yTo = y;
      seat.ear = 1.2;
      seat.weight = 1.0;
      limits->audience.positions.push_back(seat);
    }
    Case option = room.option;
    option.room = limits;
    return levelOf(option, room.settled, 8.0).value().rows.at(0).distanceM;
  };
  const double ahead = distance({0.0});
  BOOST_TEST(distance({9.0}) > ahead + 1.0);
  for (const auto& row :
       {std::vector{0.0, 5.0, 9.0}, std::vector{-9.0, 0.0, 5.0}, std::vector{-9.0, -5.0, 0.0}}) {
    BOOST_TEST(distance(row) == ahead);
  }
}

BOOST_AUTO_TEST_CASE(bands_are_the_exact_ones) {
  BOOST_TEST(exactMidBand(4) == 1000.0);
  BOOST_TEST(exactMidBand(7) == 7943.2823, boost::test_tools::tolerance(1e-7));
  BOOST_TEST(exactMidBand(0) == 63.0957, boost::test_tools::tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(without_the_days_air_only_spreading_is_told) {
  Room room;
  room.snapshot.show.humidity.reset();
  room.refresh();
  const auto table = levelOf(room.option, room.settled, 8.0);
  BOOST_REQUIRE(table);
  BOOST_TEST(!table->air);
  BOOST_TEST(!table->frontToBackDb);
  BOOST_TEST(!table->rows[0].airDb);
  BOOST_TEST(table->rows[0].lossDb(7) == table->rows[0].spreadingDb);
  BOOST_TEST(!levelOf(room.option, room.settled, notKnown));
  room.full().coversAudience = false;
  room.refresh();
  BOOST_TEST(!levelOf(room.option, room.settled, 8.0));
}

BOOST_AUTO_TEST_CASE(pressure_counts_and_is_said_to_be_standard_where_it_is_not_stated) {
  Room room;
  const auto standard = levelOf(room.option, room.settled, 8.0);
  BOOST_TEST(!standard->air->pressureStated);
  BOOST_TEST(standard->air->pressure == 101.325);
  room.snapshot.show.pressure = 80.0; // on a mountain
  room.refresh();
  const auto high = levelOf(room.option, room.settled, 8.0);
  BOOST_TEST(high->air->pressureStated);
  BOOST_TEST((*high->rows[1].airDb)[7] != (*standard->rows[1].airDb)[7]);
  const double drop = room.use(levelDropRule).value;
  room.snapshot.show.pressure.reset();
  room.refresh();
  BOOST_TEST(room.use(levelDropRule).value != drop);
}

BOOST_AUTO_TEST_CASE(json_there_and_back) {
  Room room;
  room.full().levelAtOneMetre = 133.5;
  room.refresh();
  const auto table = levelOf(room.option, room.settled, 8.0);
  const QJsonObject object = toJson(*table);
  const QJsonArray bands{63, 125, 250, 500, 1000, 2000, 4000, 8000}; // as IEC 61260-1 names octaves
  BOOST_TEST((object.value(QLatin1String("bands_hz")).toArray() == bands));
  BOOST_TEST((toJson(levelFromJson(object)) == object));
  room.snapshot.show.temperature.reset();
  room.refresh();
  const QJsonObject dry = toJson(*levelOf(room.option, room.settled, 8.0));
  BOOST_TEST(dry.value(QLatin1String("air")).isNull());
  BOOST_TEST((toJson(levelFromJson(dry)) == dry));
}

BOOST_AUTO_TEST_CASE(no_weather_changes_a_verdict) {
  std::mt19937 random(20270413);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  const auto verdictsOf = [](const Room& room) {
    std::vector<Verdict> verdicts;
    for (const auto rules : {roomRules(), gearRules()}) {
      for (const Rule& rule : rules) {
        verdicts.push_back(room.use(rule).verdict);
      }
    }
    return verdicts;
  };
  for (int round = 0; round < 50; ++round) {
    Room room;
    const auto before = verdictsOf(room);
    room.snapshot.show.temperature = between(-20, 45);
    room.snapshot.show.humidity = between(1, 100);
    room.snapshot.show.pressure = between(60, 105);
    room.full().levelAtOneMetre = between(0, 150);
    if (round % 5 == 0) {
      room.snapshot.show.temperature.reset();
    }
    room.refresh();
    BOOST_TEST(room.use(levelDropRule).verdict == Verdict::holds);
    BOOST_TEST((verdictsOf(room) == before));
  }
}

BOOST_AUTO_TEST_CASE(no_weather_changes_an_option) {
  Snapshot cold = hangbook::testing::smallHarbourShow();
  Snapshot hot = cold;
  cold.show.temperature = -5;
  cold.show.humidity = 15;
  hot.show.temperature = 35;
  hot.show.humidity = 90;
  hot.show.pressure = 98;
  const QString name = cold.show.hangs[0].name;
  const auto first = decide(cold, name).hangs[0].options;
  const auto second = decide(hot, name).hangs[0].options;
  BOOST_REQUIRE_EQUAL(first.size(), second.size());
  for (std::size_t i = 0; i < first.size(); ++i) {
    BOOST_TEST((first[i].id == second[i].id));
    BOOST_TEST(first[i].verdict == second[i].verdict);
    BOOST_TEST(first[i].setting->trimM == second[i].setting->trimM);
    BOOST_TEST(first[i].setting->tiltDeg == second[i].setting->tiltDeg);
    BOOST_TEST(first[i].level.has_value() == second[i].level.has_value());
  }
}

BOOST_AUTO_TEST_SUITE_END()
