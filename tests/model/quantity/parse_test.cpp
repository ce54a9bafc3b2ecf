// SPDX-License-Identifier: GPL-3.0-or-later
// What people type, and what is refused with which words.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <string>
#include <tuple>
#include <vector>

#include "quantity/text.h"

using namespace hangbook;
namespace data = boost::unit_test::data;
using Read = std::tuple<std::string, double>;
using Refused = std::tuple<std::string, std::string>;

namespace {

constexpr NumberForm comma{','};

/// The text of the refusal; empty where it was read after all.
template <class Quantity>
std::string refusal(std::string_view text, std::string_view defaultUnit = {}, NumberForm form = {}) {
  try {
    parse<Quantity>(text, defaultUnit, form);
  } catch (const QuantityError& error) {
    BOOST_TEST((error.trouble() == Trouble::badInput));
    return error.what();
  }
  return {};
}

bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

} // namespace

BOOST_AUTO_TEST_SUITE(parsing)

// Every expectation is the double nearest to the exact value, compared to the bit.
const std::vector<Read> lengths = {
    {"9.906 m", 9.906},
    {"32 ft 6 in", 9.906},
    {"32' 6\"", 9.906},
    {"32'6\"", 9.906},
    {"32ft6in", 9.906},
    {"32 feet 6 inches", 9.906},
    {"32\u2032\u00A06\u2033", 9.906},
    {"32\u2019 6\u201D", 9.906},
    {"32' 6''", 9.906},
    {"32.5 ft", 9.906},
    {"390 in", 9.906},
    {"-32 ft 6 in", -9.906},
    {"\u221232 ft 6 in", -9.906},
    {"6 1/2 in", 0.1651},
    {"6-1/2 in", 0.1651},
    {"6½ in", 0.1651},
    {"1/2 in", 0.0127},
    {"½\"", 0.0127},
    {"5/8 in", 0.015875},
    {"1/64 in", 0.000396875},
    {"3 ft 6 1/2 in", 1.0795},
    {"3 ft 0 in", 0.9144},
    {"850 mm", 0.85},
    {"85 cm", 0.85},
    {"0.1 mm", 0.0001},
    {"2.5m", 2.5},
    {"2.5\u202Fm", 2.5},
    {"  2.5   metres ", 2.5},
    {"\t2.5 meters", 2.5},
    {"+2.5 m", 2.5},
    {".5 m", 0.5},
    {"2.5e-3 km", 2.5},
    {"2.5E+0 m", 2.5},
    {"850 MM", 0.85},
    {"12 FT", 3.6576},
    {"2 yd", 1.8288},
    {"0 m", 0},
};
BOOST_DATA_TEST_CASE(lengths_are_read, data::make(lengths), text, expected) {
  BOOST_TEST(inMetres(parse<Length>(text)) == expected);
}

const std::vector<Read> masses = {
    {"250 kg", 250},
    {"250kg", 250},
    {"250 KG", 250},
    {"250 g", 0.25},
    {"1.2 t", 1200},
    {"1.2 tonnes", 1200},
    {"1 metric  ton", 1000},
    {"550 lb", 249.4758035},
    {"550 lbs", 249.4758035},
    {"3.25 short tons", 2948.350405},
    {"1 long ton", 1016.0469088},
    {"1/2 t", 500},
};
BOOST_DATA_TEST_CASE(masses_are_read, data::make(masses), text, expected) {
  BOOST_TEST(inKilograms(parse<Mass>(text)) == expected);
}

const std::vector<Read> forces = {
    {"12.5 kN", 12500},
    {"12.5 KN", 12500},
    {"1250 N", 1250},
    {"0.001 kN", 1},
    {"1.1 kN", 1100},
    {"8.2 kN", 8200},
    {"125 daN", 1250},
    {"1 lbf", 4.4482216152605},
    {"1 kip", 4448.2216152605},
    {"1 kgf", 9.80665},
    {"1 t", 9806.65},
    {"1000 kg", 9806.65},
    {"0.5 t", 4903.325},
    {"2200 lb", 9786.0875535731},
    {"1 short ton", 8896.443230521},
};
BOOST_DATA_TEST_CASE(forces_and_capacities_are_read, data::make(forces), text, expected) {
  BOOST_TEST(inNewtons(parse<Force>(text)) == expected);
}

const std::vector<Read> speeds = {
    {"15 m/s", 15},     {"15 m / s", 15},        {"6 m/min", 0.1},      {"4 m/min", 4.0 / 60},
    {"36 km/h", 10},    {"100 km/h", 100 / 3.6}, {"20 ft/min", 0.1016}, {"16 fpm", 0.08128},
    {"10 mph", 4.4704}, {"36 knots", 18.52},     {"3 ft/s", 0.9144},
};
BOOST_DATA_TEST_CASE(speeds_are_read, data::make(speeds), text, expected) {
  BOOST_TEST(inMetresPerSecond(parse<Speed>(text)) == expected);
}

const std::vector<Read> angles = {
    {"-3.5°", -3.5}, {"-3.5 deg", -3.5}, {"\u22123.5 degrees", -3.5}, {"7.5º", 7.5}, {"0°", 0},
};
BOOST_DATA_TEST_CASE(angles_are_read, data::make(angles), text, expected) {
  BOOST_TEST(inDegrees(parse<Angle>(text)) == expected);
}

BOOST_AUTO_TEST_CASE(masses_per_length_are_read) {
  BOOST_TEST(inKilogramsPerMetre(parse<LinearDensity>("3.8 kg/m")) == 3.8);
  BOOST_TEST(inKilogramsPerMetre(parse<LinearDensity>("3800 g/m")) == 3.8);
  BOOST_TEST(inKilogramsPerMetre(parse<LinearDensity>("1 lb/ft")) == 0.45359237 / 0.3048,
             boost::test_tools::tolerance(1e-15));
}

BOOST_AUTO_TEST_CASE(a_decimal_comma_is_read_where_it_is_said_to_be_one) {
  BOOST_TEST(inMetres(parse<Length>("2,5 m", {}, comma)) == 2.5);
  BOOST_TEST(inMetres(parse<Length>("2 m", {}, comma)) == 2.0);
  BOOST_TEST(inMetres(parse<Length>("32 ft 6,5 in", {}, comma)) == 9.9187);
  BOOST_TEST(parseNumber("-1,25e2", comma) == -125.0);
}

BOOST_AUTO_TEST_CASE(a_bare_number_takes_the_unit_that_its_place_gives) {
  BOOST_TEST(inKilograms(parse<Mass>("92", "kg")) == 92.0);
  BOOST_TEST(inMetres(parse<Length>("32.5", "ft")) == 9.906);
  BOOST_TEST(inNewtons(parse<Force>("1.5", "t")) == 14709.975);
  // a unit of its own goes first
  BOOST_TEST(inMetres(parse<Length>("2 m", "ft")) == 2.0);
}

BOOST_AUTO_TEST_CASE(minus_zero_stays_what_it_is) {
  BOOST_TEST(std::signbit(inDegrees(parse<Angle>("-0°"))));
  BOOST_TEST(!std::signbit(inDegrees(parse<Angle>("0°"))));
}

BOOST_AUTO_TEST_CASE(the_ends_of_the_range_are_read) {
  BOOST_TEST(inKilograms(parse<Mass>("1.7976931348623157e308 kg")) == std::numeric_limits<double>::max());
  BOOST_TEST(inKilograms(parse<Mass>("5e-324 kg")) == std::numeric_limits<double>::denorm_min());
  BOOST_TEST(inKilograms(parse<Mass>("0e999999999999 kg")) == 0.0);
}

// text -> a part of the refusal
const std::vector<Refused> refusedLengths = {
    {"", "is empty"},
    {"  ", "is empty"},
    {"2.5", "has no unit"},
    {"0", "has no unit"},
    {"m", "does not begin with a number"},
    {"nan", "does not begin with a number"},
    {"NaN m", "does not begin with a number"},
    {"inf m", "does not begin with a number"},
    {"-inf m", "does not begin with a number"},
    {"0x10 m", "“x” is not a unit"},
    {"1e400 m", "too large or too small"},
    {"1e-400 m", "too large or too small"},
    {"1e99999999999999999999 m", "too large or too small"},
    {"1,234 m", "digits are not grouped"},
    {"1,234.5 m", "digits are not grouped"},
    {"1.234.5 m", "digits are not grouped"},
    {"1 234 m", "not grouped by spaces"},
    {"2. m", "does not belong here"},
    {"2,5 m", "the decimal mark is \".\""},
    {"2.5 m x", "“m x” is not a unit"},
    {"2.5 m 3", "nothing may follow the unit"},
    {"2.5 kg", "“kg” is not a unit for a length"},
    {"2.5 M", "“M” is not a unit"},
    {"32 ft 6", "the second figure has no unit"},
    {"32 ft 6 m", "only inches may follow feet"},
    {"32 ft -6 in", "nothing may follow the unit"},
    {"32 ft 12 in", "fewer than 12 inches"},
    {"32 ft 6 in 2", "only inches may follow feet"},
    {"32.5 ft 6 in", "whole feet"},
    {"6 in 2 ft", "nothing may follow the unit"},
    {"2 m 30 cm", "nothing may follow the unit"},
    {"1/3 in", "only fractions such as"},
    {"4/4 in", "only fractions such as"},
    {"1/0 in", "only fractions such as"},
    {"1/2000 in", "only fractions such as"},
    {"1.5 1/2 in", "not grouped by spaces"},
    {"--2 m", "does not begin with a number"},
    {"2 m\xFF", "is not a unit"},
};
BOOST_DATA_TEST_CASE(what_is_no_length_is_refused, data::make(refusedLengths), text, part) {
  const std::string why = refusal<Length>(text);
  BOOST_TEST(contains(why, part), "refused with: " << why);
}

BOOST_AUTO_TEST_CASE(a_bare_ton_is_refused_and_the_sentence_says_what_to_write) {
  for (const char* text : {"1 ton", "2 tons", "1.5 Ton", "1T", "1 TONS"}) {
    for (const std::string& why : {refusal<Mass>(text), refusal<Force>(text)}) {
      BOOST_TEST(contains(why, text), why);
      BOOST_TEST(contains(why, "tonne (1000 kg), short ton (2000 lb) or long ton (2240 lb)"), why);
    }
  }
  BOOST_TEST(contains(refusal<Mass>("1", "ton"), "which ton"));
}

BOOST_AUTO_TEST_CASE(a_refusal_says_what_was_read_and_what_is_expected) {
  BOOST_TEST(
      refusal<Length>("five metres") ==
      "“five metres” does not begin with a number; expected a length such as 9.9 m, 850 mm or 32 ft 6 in");
  BOOST_TEST(contains(refusal<Force>("12 bananas"), "12.5 kN"));
  BOOST_TEST(contains(refusal<Length>("2.5 m", {}, comma), "the decimal mark is \",\""));
}

BOOST_AUTO_TEST_CASE(a_mass_is_not_read_as_a_force_is) {
  BOOST_TEST(contains(refusal<Mass>("12.5 kN"), "“kN” is not a unit for a mass"));
}

BOOST_AUTO_TEST_CASE(a_unit_that_does_not_exist_is_refused_as_a_default_too) {
  BOOST_TEST(contains(refusal<Mass>("12", "stone"), "“stone” is not a unit"));
}

BOOST_AUTO_TEST_CASE(hostile_text_is_refused_and_shortened) {
  const std::string long_(5000, '9');
  const std::string why = refusal<Mass>(long_ + " kg");
  BOOST_TEST(contains(why, "is too long"));
  BOOST_TEST(why.size() < 250U);
  const std::string inside = refusal<Mass>(std::string("1 \0\x01kg", 6));
  BOOST_TEST(contains(inside, "“1 ??kg”"), inside);
  // the cut never falls into the middle of a character: 59 + 3 bytes
  BOOST_TEST(contains(refusal<Mass>(std::string(59, 'x') + "€€"), std::string(59, 'x') + "…”"));
}

BOOST_AUTO_TEST_CASE(plain_numbers) {
  BOOST_TEST(parseNumber(" 1.5 ") == 1.5);
  BOOST_TEST(parseNumber("-2") == -2.0);
  for (const char* text : {"", "x", "1 kg", "1,5", "0x1", "nan", "1e400", "1 2", "- "}) {
    BOOST_CHECK_THROW(parseNumber(text), QuantityError);
  }
}

BOOST_AUTO_TEST_SUITE_END()
