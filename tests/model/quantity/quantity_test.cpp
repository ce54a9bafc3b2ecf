// SPDX-License-Identifier: GPL-3.0-or-later
// What must not compile, and what the plain helpers give.
#include <boost/test/unit_test.hpp>

#include <type_traits>

#include "quantity/quantity.h"

using namespace hangbook;

namespace {

template <class Left, class Right>
concept Adds = requires(Left left, Right right) {
  left + right;
};
template <class Left, class Right>
concept Compares = requires(Left left, Right right) {
  left < right;
};

// No bare number becomes a quantity, and no quantity a bare number.
static_assert(!std::is_convertible_v<double, Mass>);
static_assert(!std::is_convertible_v<double, Force>);
static_assert(!std::is_convertible_v<double, Length>);
static_assert(!std::is_convertible_v<double, Angle>);
static_assert(!std::is_convertible_v<Mass, double>);
static_assert(!std::is_convertible_v<Force, double>);
static_assert(!std::is_convertible_v<Angle, double>);
// No kind becomes another, and a mass turns into a force only through weightOf.
static_assert(!std::is_convertible_v<Force, Mass>);
static_assert(!std::is_convertible_v<Mass, Force>);
static_assert(!std::is_convertible_v<Length, Mass>);
static_assert(!std::is_convertible_v<Length, Speed>);
static_assert(!std::is_convertible_v<Mass, LinearDensity>);
// Radians do not pass for degrees unseen.
static_assert(!std::is_convertible_v<boost::units::quantity<boost::units::si::plane_angle>, Angle>);
static_assert(!std::is_convertible_v<double, LinearDensity>);
static_assert(!Adds<Mass, Force>);
static_assert(!Adds<Length, double>);
static_assert(!Compares<Mass, Force>);
static_assert(!Compares<Force, double>);
// Like goes with like, so that the refusals above are not true of everything.
static_assert(Adds<Mass, Mass> && Adds<Force, Force> && Compares<Force, Force>);
// Length of chain times its mass per length is a mass, and the type knows it.
static_assert(std::is_same_v<decltype(metres(1) * kilogramsPerMetre(1)), Mass>);

} // namespace

BOOST_AUTO_TEST_SUITE(quantity)

BOOST_AUTO_TEST_CASE(helpers_give_back_what_they_were_given) {
  BOOST_TEST(inKilograms(kilograms(92.5)) == 92.5);
  BOOST_TEST(inMetres(metres(-0.36)) == -0.36);
  BOOST_TEST(inNewtons(newtons(1185.2)) == 1185.2);
  BOOST_TEST(inKilonewtons(kilonewtons(12.5)) == 12.5);
  BOOST_TEST(inNewtons(kilonewtons(12.5)) == 12500.0);
  BOOST_TEST(inMetresPerSecond(metresPerSecond(15)) == 15.0);
  BOOST_TEST(inDegrees(degrees(-17.5)) == -17.5);
  BOOST_TEST(inKilogramsPerMetre(kilogramsPerMetre(3.8)) == 3.8);
}

BOOST_AUTO_TEST_CASE(a_chain_weighs_its_length_times_its_density) {
  BOOST_TEST(inKilograms(metres(20) * kilogramsPerMetre(1.5)) == 30.0);
}

BOOST_AUTO_TEST_CASE(weight_is_mass_times_standard_gravity) {
  BOOST_TEST(inNewtons(weightOf(kilograms(1000))) == 9806.65, boost::test_tools::tolerance(1e-15));
}

BOOST_AUTO_TEST_SUITE_END()
