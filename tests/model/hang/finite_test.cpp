// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <limits>

#include "hang/finite.h"

using hangbook::hang::AllFinite;

BOOST_AUTO_TEST_SUITE(all_finite)

BOOST_AUTO_TEST_CASE(one_figure_that_is_none_is_remembered) {
  AllFinite all;
  BOOST_TEST(all.yes());
  all.see(1.0, -2.0, std::numeric_limits<double>::max());
  BOOST_TEST(all.yes());
  for (const double none : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                            -std::numeric_limits<double>::infinity()}) {
    AllFinite first = all;
    first.see(none, 1.0);
    BOOST_TEST(!first.yes());
    first.see(2.0);
    BOOST_TEST(!first.yes());
    AllFinite last = all;
    last.see(1.0, none);
    BOOST_TEST(!last.yes());
  }
}

BOOST_AUTO_TEST_SUITE_END()
