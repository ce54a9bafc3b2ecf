// SPDX-License-Identifier: GPL-3.0-or-later
// Absorption by the air and spreading, against published figures. Marks as in check-values.md: V read in the
// named source, I read in another text that quotes it, M from memory, C recomputed.
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <ostream>

#include "options/air.h"

using namespace hangbook::options;

namespace {

struct Row {
  double temperature; // °C
  double humidity;    // %
  int band;           // exact mid-band 1000 · 10^(band/10) Hz, as the tables use
  double published;   // dB/km
  double rounding;    // half of its last digit
};

std::ostream& operator<<(std::ostream& out, const Row& row) {
  return out << row.temperature << " °C, " << row.humidity << " %, band " << row.band;
}

// ISO 9613-1:1993, table 1 (I, C).
const Row table[] = {
    {20, 70, -9, 0.339, 0.0005},
    {20, 70, 0, 4.98, 0.005},
    {20, 80, 0, 5.15, 0.005},
    {20, 80, 10, 105, 0.5},
    {20, 15, 8, 175, 0.5},
    {25, 80, 0, 6.35, 0.005},
    {25, 80, 3, 10.7, 0.05},
    {25, 80, 6, 21.1, 0.05},
    {25, 80, 9, 59.8, 0.05},
    {25, 80, 10, 89.6, 0.05},
    {10, 70, 0, 3.66, 0.005},
    {10, 70, 6, 32.8, 0.05},
    {30, 70, 0, 7.41, 0.005},
    {30, 70, 6, 23.1, 0.05},
    // ISO 9613-2 table 2, octaves from 63 Hz to 8 kHz (I, C).
    {20, 70, -12, 0.1, 0.05},
    {20, 70, -9, 0.3, 0.05},
    {20, 70, -6, 1.1, 0.05},
    {20, 70, -3, 2.8, 0.05},
    {20, 70, 0, 5.0, 0.05},
    {20, 70, 3, 9.0, 0.05},
    {20, 70, 6, 22.9, 0.05},
    {20, 70, 9, 76.6, 0.05},
    {15, 50, -12, 0.1, 0.05},
    {15, 50, -9, 0.5, 0.05},
    {15, 50, -6, 1.2, 0.05},
    {15, 50, -3, 2.2, 0.05},
    {15, 50, 0, 4.2, 0.05},
    {15, 50, 3, 10.8, 0.05},
    {15, 50, 6, 36.2, 0.05},
    {15, 50, 9, 129, 0.5},
};

} // namespace

BOOST_AUTO_TEST_SUITE(air)

BOOST_DATA_TEST_CASE(absorption, boost::unit_test::data::make(table), row) {
  const double perKilometre =
      1000.0 * airAbsorption(1000.0 * std::pow(10.0, row.band / 10.0), row.temperature, row.humidity);
  BOOST_TEST(std::abs(perKilometre - row.published) <= row.rounding * 1.1, perKilometre);
}

BOOST_AUTO_TEST_CASE(spreading) { // point source: 6.02 dB a doubling (V, C)
  BOOST_TEST(spreadingLoss(10.0, 20.0) == 6.02, boost::test_tools::tolerance(1e-3));
  BOOST_TEST(spreadingLoss(10.0, 100.0) == 20.0, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()
