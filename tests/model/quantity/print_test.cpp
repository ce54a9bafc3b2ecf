// SPDX-License-Identifier: GPL-3.0-or-later
// What is written, and that reading it gives the same figure to the bit.
#include <boost/mpl/list.hpp>
#include <boost/test/unit_test.hpp>

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <random>

#include "quantity/text.h"

using namespace hangbook;

namespace {

constexpr NumberForm comma{','};
using All = boost::mpl::list<Mass, Length, Force, Speed, Angle, LinearDensity>;

template <class Quantity>
void checkRoundTrip(double value) {
  for (const UnitSystem system : {UnitSystem::metric, UnitSystem::usCustomary}) {
    for (const NumberForm form : {NumberForm{}, comma}) {
      const std::string text = print(Quantity::from_value(value), system, form);
      const double back = parse<Quantity>(text, {}, form).value();
      if (std::bit_cast<std::uint64_t>(back) != std::bit_cast<std::uint64_t>(value)) {
        BOOST_ERROR(printNumber(value) << " was written as " << text << " and read as " << printNumber(back));
      }
    }
  }
}

/// Significant ones.
std::size_t digitCount(const std::string& text) {
  std::string digits;
  for (const char c : text) {
    if (c == 'e') {
      break;
    }
    if (c >= '0' && c <= '9' && (c != '0' || !digits.empty())) {
      digits += c;
    }
  }
  return digits.find_last_not_of('0') + 1;
}

} // namespace

BOOST_AUTO_TEST_SUITE(printing)

BOOST_AUTO_TEST_CASE_TEMPLATE(any_bit_pattern_reads_back_to_the_bit, Quantity, All) {
  std::mt19937_64 random(20270402);
  for (int count = 0; count < 3000; ++count) {
    const double value = std::bit_cast<double>(random());
    if (std::isfinite(value)) {
      checkRoundTrip<Quantity>(value);
    }
  }
}

BOOST_AUTO_TEST_CASE_TEMPLATE(figures_of_the_trade_read_back_to_the_bit, Quantity, All) {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> figure(-20000, 20000);
  for (int count = 0; count < 3000; ++count) {
    const double value = figure(random);
    checkRoundTrip<Quantity>(value);
    checkRoundTrip<Quantity>(std::round(value * 10) / 1000);
  }
}

BOOST_AUTO_TEST_CASE_TEMPLATE(the_ends_and_powers_of_two_read_back_to_the_bit, Quantity, All) {
  using Limits = std::numeric_limits<double>;
  for (const double value : {0.0, -0.0, Limits::min(), Limits::denorm_min(), Limits::max(), Limits::lowest(),
                             std::nextafter(Limits::min(), 0.0), 1.0, 1e21, 1e22, 9007199254740993.0}) {
    checkRoundTrip<Quantity>(value);
  }
  for (int power = -1074; power < 1024; power += 3) { // where the gap between doubles changes
    const double value = std::ldexp(1.0, power);
    checkRoundTrip<Quantity>(value);
    checkRoundTrip<Quantity>(-std::nextafter(value, 0.0));
  }
}

BOOST_AUTO_TEST_CASE(the_fewest_digits_are_written) {
  std::mt19937_64 random(11);
  std::uniform_int_distribution<int> thousandths(1, 99'999'999);
  for (int count = 0; count < 5000; ++count) {
    // Typed with up to eight digits in a unit: it comes back as it was typed, never as 8.1999999999999993.
    const double number = thousandths(random) / 1000.0;
    for (const char* unit : {" ft", " m"}) {
      const std::string typed = printNumber(number) + unit;
      const UnitSystem system = unit[1] == 'f' ? UnitSystem::usCustomary : UnitSystem::metric;
      BOOST_TEST_REQUIRE(print(parse<Length>(typed), system) == typed);
    }
    const std::string pounds = printNumber(number) + " lbf";
    BOOST_TEST_REQUIRE(print(parse<Force>(pounds), UnitSystem::usCustomary) == pounds);
    const std::string kilonewtons = printNumber(number) + " kN";
    BOOST_TEST_REQUIRE(print(parse<Force>(kilonewtons)) == kilonewtons);
  }
}

BOOST_AUTO_TEST_CASE(seventeen_digits_always_suffice) {
  std::mt19937_64 random(13);
  for (int count = 0; count < 3000; ++count) {
    const double value = std::bit_cast<double>(random());
    if (std::isfinite(value)) {
      BOOST_TEST(digitCount(print(Force::from_value(value), UnitSystem::usCustomary)) <= 17U);
      BOOST_TEST(digitCount(print(LinearDensity::from_value(value), UnitSystem::usCustomary)) <= 17U);
    }
  }
}

BOOST_AUTO_TEST_CASE(units_and_forms) {
  BOOST_TEST(print(kilograms(92.5)) == "92.5 kg");
  BOOST_TEST(print(metres(-0.36)) == "-0.36 m");
  BOOST_TEST(print(newtons(1185.2)) == "1.1852 kN");
  BOOST_TEST(print(newtons(0.5)) == "0.0005 kN");
  BOOST_TEST(print(newtons(12000)) == "12 kN");
  BOOST_TEST(print(degrees(-3.5)) == "-3.5°");
  BOOST_TEST(print(metresPerSecond(0.1)) == "0.1 m/s");
  BOOST_TEST(print(kilogramsPerMetre(3.8)) == "3.8 kg/m");
  BOOST_TEST(print(kilograms(1200), UnitSystem::metric) == "1200 kg");
  BOOST_TEST(print(metres(0.3048), UnitSystem::usCustomary) == "1 ft");
  BOOST_TEST(print(kilograms(45.359237), UnitSystem::usCustomary) == "100 lb");
  BOOST_TEST(print(newtons(4.4482216152605), UnitSystem::usCustomary) == "1 lbf");
  BOOST_TEST(print(metresPerSecond(0.3048), UnitSystem::usCustomary) == "1 ft/s");
  BOOST_TEST(print(kilograms(0.1), UnitSystem::metric, comma) == "0,1 kg");
  BOOST_TEST(print(kilograms(1e300)) == "1e300 kg");
  BOOST_TEST(print(kilograms(1.5e-9), UnitSystem::metric, comma) == "1,5e-9 kg");
  BOOST_TEST(unitOf<Force>(UnitSystem::metric) == "kN");
  BOOST_TEST(unitOf<LinearDensity>(UnitSystem::usCustomary) == "lb/ft");
}

BOOST_AUTO_TEST_CASE(shown_figures_are_rounded_half_away_from_zero) {
  BOOST_TEST(show(metres(0.125), 2) == "0.13 m");
  BOOST_TEST(show(metres(-0.125), 2) == "-0.13 m");
  BOOST_TEST(show(metres(2.675), 2) == "2.68 m"); // the double lies below 2.675
  BOOST_TEST(show(metres(2.5), 0) == "3 m");
  BOOST_TEST(show(metres(9.996), 2) == "10.00 m");
  BOOST_TEST(show(metres(0.4), 0) == "0 m");
  BOOST_TEST(show(metres(0.5), 0) == "1 m");
  BOOST_TEST(show(metres(0.05), 0) == "0 m");
  BOOST_TEST(show(newtons(12345), 2) == "12.35 kN");
  BOOST_TEST(show(newtons(12000), 2) == "12.00 kN");
  BOOST_TEST(show(newtons(12000), 1, UnitSystem::metric, comma) == "12,0 kN");
  BOOST_TEST(show(kilograms(1e22), 1) == "10000000000000000000000.0 kg");
  BOOST_TEST(show(parse<Length>("9.875 ft"), 2, UnitSystem::usCustomary) == "9.88 ft");
  BOOST_TEST(show(degrees(5), 1) == "5.0°");
}

BOOST_AUTO_TEST_CASE(nothing_is_shown_as_minus_zero) {
  BOOST_TEST(show(degrees(-0.0), 1) == "0.0°");
  BOOST_TEST(show(degrees(-0.04), 1) == "0.0°");
  BOOST_TEST(show(degrees(-0.05), 1) == "-0.1°");
  BOOST_TEST(show(metres(-1e-9), 3, UnitSystem::usCustomary) == "0.000 ft");
}

BOOST_AUTO_TEST_CASE(what_is_not_finite_is_never_written) {
  const double notKnown = std::numeric_limits<double>::quiet_NaN();
  const double endless = std::numeric_limits<double>::infinity();
  BOOST_CHECK_THROW(print(metres(notKnown)), QuantityError);
  BOOST_CHECK_THROW(print(newtons(endless), UnitSystem::usCustomary), QuantityError);
  BOOST_CHECK_THROW(show(metres(-endless), 2), QuantityError);
  BOOST_CHECK_THROW(printNumber(notKnown), QuantityError);
  BOOST_CHECK_THROW(show(metres(1), -1), QuantityError);
  BOOST_CHECK_THROW(show(metres(1), mostShownDigits + 1), QuantityError);
}

BOOST_AUTO_TEST_CASE(scales_take_the_number_that_is_written) {
  BOOST_TEST(valueIn(newtons(12500), UnitSystem::metric) == 12.5);
  BOOST_TEST(valueIn(metres(9.906), UnitSystem::usCustomary) == 32.5);
  BOOST_TEST(std::isnan(valueIn(metres(std::numeric_limits<double>::quiet_NaN()), UnitSystem::metric)));
}

BOOST_AUTO_TEST_CASE(numbers_are_written_plainly) {
  BOOST_TEST(printNumber(0.1) == "0.1");
  BOOST_TEST(printNumber(-1234.5, comma) == "-1234,5");
  BOOST_TEST(printNumber(100) == "100");
  BOOST_TEST(printNumber(1e-300) == "1e-300");
}

BOOST_AUTO_TEST_SUITE_END()
