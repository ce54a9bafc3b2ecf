// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/angle/degrees.hpp>
#include <boost/units/systems/si.hpp>
#include <boost/units/systems/si/prefixes.hpp>

/// Strong types for what a load sheet is made of. They are Boost.Units quantities, so there is no implicit
/// conversion from or to a bare number, or between kinds. Inside: kg, N, m, m/s, s. Angles are kept in
/// degrees, because that is what people type and read: what was typed then reads back to the bit. Physics
/// turns them into radians where it computes.
namespace hangbook {

using Mass = boost::units::quantity<boost::units::si::mass>;
using Length = boost::units::quantity<boost::units::si::length>;
using Force = boost::units::quantity<boost::units::si::force>;
using Speed = boost::units::quantity<boost::units::si::velocity>;
using Angle = boost::units::quantity<boost::units::degree::plane_angle>;
/// kg/m, as of chain.
using LinearDensity = boost::units::quantity<
    boost::units::divide_typeof_helper<boost::units::si::mass, boost::units::si::length>::type>;

/// Standard gravity in m/s², 3rd CGPM 1901.
inline constexpr double standardGravity = 9.80665;

constexpr Mass kilograms(double value) {
  return Mass::from_value(value);
}
constexpr Length metres(double value) {
  return Length::from_value(value);
}
constexpr Force newtons(double value) {
  return Force::from_value(value);
}
/// From kN. Not exact to the bit for every value: text goes through `parse` instead.
constexpr Force kilonewtons(double value) {
  return Force::from_value(value * 1000.0);
}
constexpr Speed metresPerSecond(double value) {
  return Speed::from_value(value);
}
constexpr Angle degrees(double value) {
  return Angle::from_value(value);
}
constexpr LinearDensity kilogramsPerMetre(double value) {
  return LinearDensity::from_value(value);
}

constexpr double inKilograms(Mass mass) {
  return mass.value();
}
constexpr double inMetres(Length length) {
  return length.value();
}
constexpr double inNewtons(Force force) {
  return force.value();
}
constexpr double inKilonewtons(Force force) {
  return force.value() / 1000.0;
}
constexpr double inMetresPerSecond(Speed speed) {
  return speed.value();
}
constexpr double inDegrees(Angle angle) {
  return angle.value();
}
constexpr double inKilogramsPerMetre(LinearDensity density) {
  return density.value();
}

/// The weight of a mass under standard gravity.
constexpr Force weightOf(Mass mass) {
  return newtons(mass.value() * standardGravity);
}

} // namespace hangbook
