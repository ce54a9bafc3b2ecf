// SPDX-License-Identifier: GPL-3.0-or-later
// Published definitions of units. Marks as in check-values.md: V read in the source, I read in another text
// that quotes it, M from memory, C recomputed.
#include <boost/test/unit_test.hpp>

#include "quantity/text.h"

using namespace hangbook;

BOOST_AUTO_TEST_SUITE(published_units)

// 3rd CGPM, 1901: g = 9.80665 m/s² (V)
BOOST_AUTO_TEST_CASE(standard_gravity) {
  BOOST_TEST(standardGravity == 9.80665);
  BOOST_TEST(inNewtons(parse<Force>("1 kg")) == 9.80665);
}

// International yard and pound, 1959: 1 lb = 0.45359237 kg, 1 in = 25.4 mm, 1 ft = 304.8 mm exactly (V)
BOOST_AUTO_TEST_CASE(pound_inch_and_foot) {
  BOOST_TEST(inKilograms(parse<Mass>("1 lb")) == 0.45359237);
  BOOST_TEST(inMetres(parse<Length>("1 in")) == 0.0254);
  BOOST_TEST(inMetres(parse<Length>("1 ft")) == 0.3048);
}

// Published tables of conversion: 1 lbf = 4.44822 N, 1 short ton = 907.185 kg (V), to the places printed
BOOST_AUTO_TEST_CASE(pound_force_and_short_ton) {
  BOOST_TEST(show(parse<Force>("1000000 lbf"), 2) == "4448.22 kN");
  BOOST_TEST(show(parse<Mass>("1 short ton"), 3) == "907.185 kg");
}

// 1 kN = 101.9716 kgf (C): so much mass weighs just that
BOOST_AUTO_TEST_CASE(kilonewton_in_kilograms) {
  BOOST_TEST(show(parse<Force>("101.9716 kg"), 5) == "1.00000 kN");
  BOOST_TEST(inKilonewtons(weightOf(kilograms(101.9716))) == 1.0, boost::test_tools::tolerance(1e-6));
}

// Federal Specification RR-C-271D as quoted in a utility's standard: WLL of 2, 3.25 and 4.75 short tons goes
// with a least ultimate of 20 000, 32 500 and 47 500 lb, five times as much (V, C)
BOOST_AUTO_TEST_CASE(shackles_in_short_tons_and_pounds) {
  BOOST_TEST(inNewtons(5.0 * parse<Force>("2 short tons")) == inNewtons(parse<Force>("20000 lb")),
             boost::test_tools::tolerance(1e-15));
  BOOST_TEST(inNewtons(5.0 * parse<Force>("3.25 short tons")) == inNewtons(parse<Force>("32500 lb")),
             boost::test_tools::tolerance(1e-15));
  BOOST_TEST(inNewtons(5.0 * parse<Force>("4.75 short tons")) == inNewtons(parse<Force>("47500 lb")),
             boost::test_tools::tolerance(1e-15));
}

// OpenStax University Physics vol. 1, ch. 5: a walker of 70 kg weighs 686 N with g = 9.80 (V); standard
// gravity is 0.07 % more
BOOST_AUTO_TEST_CASE(weight_of_a_person) {
  BOOST_TEST(inNewtons(weightOf(kilograms(70))) == 686.0, boost::test_tools::tolerance(0.0007));
}

BOOST_AUTO_TEST_SUITE_END()
