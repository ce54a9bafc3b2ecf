// SPDX-License-Identifier: GPL-3.0-or-later
// Distances over the ground against published worked examples.
#include <boost/test/unit_test.hpp>

#include "venue/travel.h"

using hangbook::venue::shortestWay;
using hangbook::venue::Venue;

namespace {

double degrees(int whole, int minutes, double seconds) {
  const double size = std::abs(whole) + minutes / 60.0 + seconds / 3600.0;
  return whole < 0 ? -size : size;
}

Venue at(double latitude, double longitude) {
  Venue venue;
  venue.latitude = latitude;
  venue.longitude = longitude;
  return venue;
}

} // namespace

BOOST_AUTO_TEST_SUITE(travel)

/// The example of the technical manual of the Geocentric Datum of Australia (chapter on Vincenty's formulae):
/// Flinders Peak to Buninyong, 54 972.271 m. M (from memory). Its ellipsoid, GRS 80, differs from WGS 84 by a
/// tenth of a millimetre in the polar radius.
BOOST_AUTO_TEST_CASE(flinders_peak_to_buninyong) {
  const Venue peak = at(degrees(-37, 57, 3.72030), degrees(144, 25, 29.52440));
  const Venue buninyong = at(degrees(-37, 39, 10.15610), degrees(143, 55, 35.38390));
  BOOST_TEST(shortestWay(peak, buninyong).value() == 54972.271, boost::test_tools::tolerance(1e-7));
  BOOST_TEST(shortestWay(buninyong, peak).value() == shortestWay(peak, buninyong).value(),
             boost::test_tools::tolerance(1e-12));
}

/// Closed forms on the ellipsoid: along the equator its radius × the angle; pole to pole twice the quadrant
/// of the meridian, 10 001 965.729 m (WGS 84; NIMA TR8350.2 gives the axes). C (recomputed by the series for
/// the quadrant).
BOOST_AUTO_TEST_CASE(the_equator_and_a_meridian) {
  const double radius = 6378137.0;
  BOOST_TEST(shortestWay(at(0, 10), at(0, 40)).value() == radius * 30.0 * 3.14159265358979324 / 180.0,
             boost::test_tools::tolerance(1e-12));
  const double flattening = 1.0 / 298.257223563;
  const double n = flattening / (2.0 - flattening);
  const double quadrant =
      0.5 * 3.14159265358979324 * radius / (1.0 + n) * (1.0 + n * n / 4.0 + n * n * n * n / 64.0);
  BOOST_TEST(quadrant == 10001965.729, boost::test_tools::tolerance(1e-10));
  BOOST_TEST(shortestWay(at(-90, 0), at(90, 0)).value() == 2.0 * quadrant,
             boost::test_tools::tolerance(1e-11));
}

BOOST_AUTO_TEST_CASE(a_place_that_nobody_stated_has_no_distance) {
  Venue unplaced = at(50, 4);
  unplaced.longitude.reset();
  BOOST_TEST(!shortestWay(unplaced, at(50, 5)));
  BOOST_TEST(!shortestWay(at(50, 5), unplaced));
  BOOST_TEST(shortestWay(at(50, 5), at(50, 5)).value() == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
