// SPDX-License-Identifier: GPL-3.0-or-later
// A venue as texts that people edit. The feet and pounds are from the definitions (1 ft = 0.3048 m).
#include <algorithm>

#include <boost/test/unit_test.hpp>

#include "exchange/venue_text.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

venue::Venue hall() {
  venue::Venue made;
  made.name = QStringLiteral("Gannet Hall");
  made.timeZone = QStringLiteral("Europe/London");
  made.lowSteel = metres(9.25);
  made.zones = {{QStringLiteral("front truss"), kilonewtons(12.0), catalogue::Basis::atRest, kilonewtons(1.1),
                 QStringLiteral("house rigger"), QDate(2026, 10, 20)}};
  venue::Point point;
  point.name = QStringLiteral("A1");
  point.x = metres(1.0);
  point.y = metres(2.0);
  point.z = metres(0.1 + 0.2);
  point.capacity = kilonewtons(5.0);
  point.zone = QStringLiteral("front truss");
  point.source = {QStringLiteral("plot, sheet 2"), QDate(2026, 10, 12)};
  made.points = {point, point};
  made.points[1].name = QStringLiteral("A2");
  made.points[1].capacity.reset();
  made.typed[QStringLiteral("point A2: x")] = QStringLiteral("3 ft 3.3700787 in");
  made.obstructions = {
      {QStringLiteral("duct"), metres(1.0), metres(2.0), metres(-1.0), metres(1.0), metres(6.0)}};
  return made;
}

/// With a bridle and two blocks of seats, one of them curved round the stage.
venue::Venue furnished() {
  venue::Venue made = hall();
  made.typed.clear();
  venue::Bridle bridle;
  bridle.name = QStringLiteral("B1");
  bridle.points = {QStringLiteral("A1"), QStringLiteral("A2")};
  bridle.z = metres(0.1);
  bridle.steels = {QStringLiteral("steel 1"), QStringLiteral("steel 2")};
  bridle.shackle = QStringLiteral("shackle 12");
  bridle.tolerance = metres(0.05);
  bridle.source = {QStringLiteral("plot, sheet 3"), QDate(2026, 10, 12)};
  made.bridles = {bridle};
  venue::Section floor;
  floor.name = QStringLiteral("floor");
  floor.profile = {{metres(5.0), metres(0.0)}, {metres(32.1), metres(1.5)}};
  floor.earHeight = metres(1.7);
  floor.yFrom = metres(-9.0);
  venue::Section circle;
  circle.name = QStringLiteral("circle");
  circle.profile = {{metres(0.0), metres(4.2)}, {metres(10.0), metres(7.0)}};
  circle.frontX = metres(14.0);
  circle.frontY = metres(0.0);
  circle.bearing = degrees(0.1 + 0.2);
  circle.width = metres(16.0);
  circle.radius = metres(24.0);
  made.sections = {floor, circle};
  return made;
}

const VenueFault& only(const VenueRead& read) {
  BOOST_TEST_REQUIRE(read.faults.size() == 1u);
  BOOST_TEST(!read.venue.has_value());
  return read.faults.front();
}

} // namespace

BOOST_AUTO_TEST_SUITE(venue_text)

BOOST_AUTO_TEST_CASE(read_again_it_is_the_same_to_the_bit_with_either_mark_and_units) {
  venue::Venue venue = hall();
  venue.typed.clear();
  for (const char mark : {'.', ','}) {
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::usCustomary}) {
      const VenueText text = textOf(venue, {mark});
      BOOST_TEST(text.venue[4].toStdString() == (mark == '.' ? "9.25 m" : "9,25 m"));
      const VenueRead read = readVenueText(venue, text, system, {mark});
      BOOST_TEST_REQUIRE(read.venue.has_value());
      BOOST_TEST((*read.venue == venue));
    }
  }
  BOOST_TEST(complaintsOf(venue).isEmpty());
}

BOOST_AUTO_TEST_CASE(what_was_typed_stays_and_goes_with_its_point) {
  venue::Venue venue = hall();
  VenueText text = textOf(venue);
  BOOST_TEST(text.points[1][1].toStdString() == "3 ft 3.3700787 in");
  text.points[0][3] = QStringLiteral("32 ft 6 in");
  VenueRead read = readVenueText(venue, text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(read.venue.has_value());
  BOOST_TEST((read.venue->points[0].z == metres(9.906)));
  BOOST_TEST(read.venue->typed.at(QStringLiteral("point A1: z")).toStdString() == "32 ft 6 in");
  BOOST_TEST(textOf(*read.venue).points[0][3].toStdString() == "32 ft 6 in");
  text.points.erase(text.points.begin() + 1);
  read = readVenueText(venue, text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(read.venue.has_value());
  BOOST_TEST(read.venue->points.size() == 1u);
  BOOST_TEST(!read.venue->typed.contains(QStringLiteral("point A2: x")));
  BOOST_TEST((read.venue->obstructions == venue.obstructions));
}

BOOST_AUTO_TEST_CASE(a_bare_number_is_in_the_unit_of_the_window) {
  VenueText text = textOf(hall());
  text.points[0][3] = QStringLiteral("30");
  text.points[0][4] = QStringLiteral("1 t");
  const VenueRead read = readVenueText(hall(), text, UnitSystem::usCustomary);
  BOOST_TEST_REQUIRE(read.venue.has_value());
  BOOST_TEST((read.venue->points[0].z == metres(9.144)));
  BOOST_TEST(inKilonewtons(*read.venue->points[0].capacity) == 9.80665, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(an_emptied_capacity_is_not_known_and_no_zero) {
  VenueText text = textOf(hall());
  text.points[0][4].clear();
  const VenueRead read = readVenueText(hall(), text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(read.venue.has_value());
  BOOST_TEST(!read.venue->points[0].capacity.has_value());
}

BOOST_AUTO_TEST_CASE(a_fault_names_its_row_its_field_and_what_is_expected) {
  VenueText text = textOf(hall());
  text.points[1][4] = QStringLiteral("1 ton");
  VenueFault fault = only(readVenueText(hall(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::point));
  BOOST_TEST(fault.row == 1);
  BOOST_TEST(fault.field.toStdString() == "capacity");
  BOOST_TEST(fault.expected.contains(QStringLiteral("ton")));

  text = textOf(hall());
  text.points[1][0] = QStringLiteral("A1");
  fault = only(readVenueText(hall(), text, UnitSystem::metric));
  BOOST_TEST(fault.row == 1);
  BOOST_TEST(fault.field.toStdString() == "name");
  BOOST_TEST(fault.read.toStdString() == "A1");

  text = textOf(hall());
  text.points[0][6] = QStringLiteral("back truss");
  fault = only(readVenueText(hall(), text, UnitSystem::metric));
  BOOST_TEST(fault.field.toStdString() == "zone");

  text = textOf(hall());
  text.zones[0][1] = QStringLiteral("much"); // the points of that bay are not blamed for it
  fault = only(readVenueText(hall(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::zone));
  BOOST_TEST(fault.field.toStdString() == "capacity");

  text = textOf(hall());
  text.venue[1] = QStringLiteral("Middle\nof\tnowhere");
  fault = only(readVenueText(hall(), text, UnitSystem::usCustomary));
  BOOST_TEST((fault.part == VenuePart::venue));
  BOOST_TEST(fault.field.toStdString() == "time zone");

  text = textOf(hall());
  text.points.emplace_back();
  const VenueRead read = readVenueText(hall(), text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(!read.faults.empty());
  BOOST_TEST(read.faults[0].row == 2);
  BOOST_TEST(read.faults[0].field.toStdString() == "name");
}

BOOST_AUTO_TEST_CASE(a_removed_bay_that_a_point_names_is_a_fault_of_the_point) {
  VenueText text = textOf(hall());
  text.zones.clear();
  const VenueRead read = readVenueText(hall(), text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(read.faults.size() == 2u);
  BOOST_TEST(std::ranges::all_of(read.faults, [](const VenueFault& each) {
    return each.part == VenuePart::point && each.field == QStringLiteral("zone");
  }));
}

BOOST_AUTO_TEST_CASE(a_bridle_without_its_point_is_a_complaint) {
  venue::Venue venue = hall();
  venue.typed.clear();
  venue::Bridle bridle;
  bridle.name = QStringLiteral("B");
  bridle.points = {QStringLiteral("A1"), QStringLiteral("A2")};
  bridle.z = metres(7.0);
  venue.bridles = {bridle};
  BOOST_TEST(complaintsOf(venue).isEmpty(), complaintsOf(venue).join(QLatin1Char(' ')).toStdString());
  venue.points.pop_back();
  BOOST_TEST(complaintsOf(venue).join(QLatin1Char(' ')).contains(QStringLiteral("two or three points")));
}

BOOST_AUTO_TEST_CASE(seats_bridles_and_obstructions_read_back_to_the_bit_too) {
  const venue::Venue venue = furnished();
  for (const char mark : {'.', ','}) {
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::usCustomary}) {
      const VenueText text = textOf(venue, {mark}, system);
      const VenueRead read = readVenueText(venue, text, system, {mark});
      BOOST_TEST_REQUIRE(read.venue.has_value(),
                         (read.faults.empty() ? QString() : read.faults.front().expected).toStdString());
      BOOST_TEST((*read.venue == venue));
    }
  }
  BOOST_TEST(textOf(venue).sections[0][1].toStdString() == "5 0; 32.1 1.5");
  BOOST_TEST(textOf(venue, {}, UnitSystem::usCustomary).sections[0][1].toStdString() == "5m 0m; 32.1m 1.5m");
}

BOOST_AUTO_TEST_CASE(a_row_that_is_gone_is_gone_from_the_venue_with_what_was_typed_of_it) {
  venue::Venue venue = furnished();
  venue.typed[QStringLiteral("section floor: ear height")] = QStringLiteral("5 ft 7 in");
  VenueText text = textOf(venue);
  text.sections.erase(text.sections.begin());
  text.obstructions.clear();
  text.bridles.clear();
  const VenueRead read = readVenueText(venue, text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(read.venue.has_value());
  BOOST_TEST(read.venue->sections.size() == 1u);
  BOOST_TEST(read.venue->bridles.empty());
  BOOST_TEST(read.venue->obstructions.empty());
  BOOST_TEST(!read.venue->typed.contains(QStringLiteral("section floor: ear height")));
}

BOOST_AUTO_TEST_CASE(faults_of_seats_bridles_and_obstructions_name_row_and_field) {
  VenueText text = textOf(furnished());
  text.sections[1][1] = QStringLiteral("6 0; 3 1"); // back to front
  VenueFault fault = only(readVenueText(furnished(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::section));
  BOOST_TEST(fault.row == 1);
  BOOST_TEST(fault.field.toStdString() == "profile");

  text = textOf(furnished());
  text.obstructions[0][2] = QStringLiteral("0.5"); // ends before it begins
  fault = only(readVenueText(furnished(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::obstruction));
  BOOST_TEST(fault.field.toStdString() == "x to");

  text = textOf(furnished());
  text.bridles[0][1] = QStringLiteral("A1; A9");
  fault = only(readVenueText(furnished(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::bridle));
  BOOST_TEST(fault.field.toStdString() == "points");
  BOOST_TEST(fault.read.toStdString() == "A9");

  text = textOf(furnished());
  text.points[1][1] = QStringLiteral("far"); // the bridle between A1 and A2 is not blamed for it
  fault = only(readVenueText(furnished(), text, UnitSystem::metric));
  BOOST_TEST((fault.part == VenuePart::point));
}

BOOST_AUTO_TEST_CASE(what_can_be_read_is_there_for_a_picture) {
  VenueText text = textOf(furnished());
  text.venue[1] = QStringLiteral("Nowhere");
  text.points[0][4] = QStringLiteral("much");
  text.points[1][1] = QStringLiteral("far");
  text.sections[0][2] = QStringLiteral("tall");
  text.sections[1][1] = QStringLiteral("6 0; 3");
  text.zones[0][1] = QStringLiteral("a lot");
  const venue::Venue drawn = readableOf(furnished(), text, UnitSystem::metric);
  BOOST_TEST_REQUIRE(drawn.points.size() == 1u); // A2's place cannot be read
  BOOST_TEST(!drawn.points[0].capacity.has_value());
  BOOST_TEST(drawn.points[0].zone.toStdString() == "front truss");
  BOOST_TEST_REQUIRE(drawn.sections.size() == 1u);
  BOOST_TEST(!drawn.sections[0].earHeight.has_value());
  BOOST_TEST(drawn.sections[0].profile.size() == 2u);
  BOOST_TEST((drawn.obstructions == furnished().obstructions));
}

BOOST_AUTO_TEST_SUITE_END()
