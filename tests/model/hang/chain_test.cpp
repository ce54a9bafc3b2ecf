// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/chain.h"
#include "support/example_hang.h"
#include "support/random_hang.h"

using namespace hangbook;
using hangbook::testing::exampleHang;

namespace {

hang::PivotTriangle exampleTriangle() {
  const hang::Hang hang = exampleHang();
  return hang::pivotTriangle(hang.bar, hang.stack, 2);
}

/// Anchor 3 above the pin, eye 4 behind it: at angle 0 the chain is the long side of a 3-4-5 triangle.
hang::PivotTriangle threeFourFive() {
  return {{0.0, 3.0}, {-4.0, 0.0}, 0.0, {-60.0, 60.0}};
}

} // namespace

BOOST_AUTO_TEST_SUITE(chain)

BOOST_AUTO_TEST_CASE(length_is_fixed_parts_and_links) {
  BOOST_TEST(hang::chainLength({0.0225, 0.08, 37, 2}) == 0.9125, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_right_angled_triangle_gives_angle_0) {
  const hang::PivotAngles angles = hang::anglesAt(threeFourFive(), 5.0);
  BOOST_REQUIRE(angles.count == 1);
  BOOST_TEST(std::abs(angles.deg[0]) < 1e-9);
}

BOOST_AUTO_TEST_CASE(a_shorter_chain_turns_the_nose_down) {
  const hang::PivotAngles angles = hang::anglesAt(threeFourFive(), 4.5);
  BOOST_REQUIRE(angles.count == 1);
  BOOST_TEST(angles.deg[0] < 0.0);
}

BOOST_AUTO_TEST_CASE(a_chain_that_spans_no_triangle_gives_no_angle) {
  BOOST_TEST(hang::anglesAt(threeFourFive(), 0.99).count == 0);
  BOOST_TEST(hang::anglesAt(threeFourFive(), 7.01).count == 0);
}

BOOST_AUTO_TEST_CASE(both_sides_of_the_straight_line_within_a_wide_travel_are_two_angles) {
  hang::PivotTriangle wide = threeFourFive();
  wide.travelDeg = {-180.0, 180.0};
  const hang::PivotAngles angles = hang::anglesAt(wide, 5.0);
  BOOST_REQUIRE(angles.count == 2);
  for (const double deg : angles.deg) {
    BOOST_TEST(hang::lengthAt(wide, deg) == 5.0, boost::test_tools::tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(an_angle_at_the_very_end_of_the_travel_counts) {
  hang::PivotTriangle ended = threeFourFive();
  ended.travelDeg = {-60.0, -7.25};
  BOOST_TEST(hang::anglesAt(ended, hang::lengthAt(ended, -7.25)).count == 1);
  BOOST_TEST(hang::anglesAt(ended, hang::lengthAt(ended, -7.249)).count == 0);
}

BOOST_AUTO_TEST_CASE(an_anchor_at_the_pin_sets_no_angle) {
  hang::PivotTriangle none = threeFourFive();
  none.anchor = {};
  BOOST_TEST(hang::anglesAt(none, 4.0).count == 0);
}

BOOST_AUTO_TEST_CASE(every_usable_mark_gives_its_length_within_the_travel) {
  const hang::PivotTriangle triangle = exampleTriangle();
  const auto marks = hang::usableMarks(triangle, 0.0225, 0.08);
  BOOST_TEST(marks.size() > 5);
  bool has37 = false;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    BOOST_TEST(hang::lengthAt(triangle, marks[i].angleDeg) == 0.08 + marks[i].mark * 0.0225,
               boost::test_tools::tolerance(1e-12));
    BOOST_TEST(triangle.travelDeg.holds(marks[i].angleDeg));
    BOOST_TEST((i == 0 || marks[i].mark == marks[i - 1].mark + 1));
    has37 = has37 || marks[i].mark == 37;
  }
  BOOST_TEST(has37);
  BOOST_TEST(hang::anglesAt(triangle, marks.front().length - 0.0225).count != 1);
  BOOST_TEST(hang::anglesAt(triangle, marks.back().length + 0.0225).count != 1);
}

BOOST_AUTO_TEST_CASE(neighbouring_marks_stand_on_either_side_of_the_wanted_angle) {
  const hang::PivotTriangle triangle = exampleTriangle();
  const hang::NeighbouringMarks marks = hang::neighbouringMarks(triangle, 0.0225, 0.08, -8.0);
  BOOST_REQUIRE(marks.shorter.has_value());
  BOOST_REQUIRE(marks.longer.has_value());
  BOOST_TEST(marks.longer->mark == marks.shorter->mark + 1);
  BOOST_TEST(marks.shorter->angleDeg < -8.0);
  BOOST_TEST(marks.longer->angleDeg > -8.0);
}

BOOST_AUTO_TEST_CASE(an_angle_that_falls_on_a_mark_has_that_mark_twice) {
  const hang::PivotTriangle triangle = exampleTriangle();
  const double onMark = hang::anglesAt(triangle, 0.9125).deg[0];
  const hang::NeighbouringMarks marks = hang::neighbouringMarks(triangle, 0.0225, 0.08, onMark);
  BOOST_REQUIRE(marks.shorter.has_value());
  BOOST_TEST(marks.shorter->mark == 37);
  BOOST_TEST(marks.longer->mark == 37);
}

BOOST_AUTO_TEST_CASE(beside_an_angle_beyond_the_chain_stands_no_mark) {
  const hang::PivotTriangle triangle = exampleTriangle();
  const double wanted = hang::lengthAt(triangle, -8.0);
  // Less than one link is left beyond the fixed part: no mark is shorter, the first link may be longer.
  const auto shortest = hang::neighbouringMarks(triangle, 0.0225, wanted - 0.5 * 0.0225, -8.0);
  BOOST_TEST(!shortest.shorter.has_value());
  BOOST_REQUIRE(shortest.longer.has_value());
  BOOST_TEST(shortest.longer->mark == 1);
  // The fixed part alone is longer.
  const auto none = hang::neighbouringMarks(triangle, 0.0225, wanted + 2.5 * 0.0225, -8.0);
  BOOST_TEST(!none.shorter.has_value());
  BOOST_TEST(!none.longer.has_value());
  // Links so small that more would be needed than any chain is counted to.
  const auto tooMany = hang::neighbouringMarks(triangle, wanted / 1e6, 0.0, -8.0);
  BOOST_TEST(!tooMany.shorter.has_value());
  BOOST_TEST(!tooMany.longer.has_value());
}

BOOST_AUTO_TEST_CASE(the_first_mark_that_reaches_leaves_less_than_a_link) {
  BOOST_TEST(hang::firstMarkThatReaches(0.9125, 0.0225, 0.08).value() == 37);
  BOOST_TEST(hang::firstMarkThatReaches(0.9126, 0.0225, 0.08).value() == 38);
  BOOST_TEST(hang::firstMarkThatReaches(0.05, 0.0225, 0.08).value() == 1);
  BOOST_TEST(!hang::firstMarkThatReaches(50.0, 1e-6, 0.0).has_value());
}

BOOST_AUTO_TEST_CASE(random_triangles_length_to_angle_and_back) {
  hangbook::testing::RandomHangs random(11);
  for (int i = 0; i < 2000; ++i) {
    const hang::PivotTriangle triangle{{random.between(-1.0, 1.0), random.between(0.2, 3.0)},
                                       {random.between(-1.0, -0.3), random.between(-0.5, 0.0)},
                                       random.between(-60.0, 5.0),
                                       {-30.0, 10.0}};
    const double wanted = random.between(-30.0, 10.0);
    const hang::PivotAngles angles = hang::anglesAt(triangle, hang::lengthAt(triangle, wanted));
    BOOST_REQUIRE(angles.count >= 1);
    const double miss = std::min(std::abs(angles.deg[0] - wanted),
                                 angles.count == 2 ? std::abs(angles.deg[1] - wanted) : 1e9);
    BOOST_TEST(miss < 1e-5);
  }
}

BOOST_AUTO_TEST_SUITE_END()
