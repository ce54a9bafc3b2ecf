// SPDX-License-Identifier: GPL-3.0-or-later
// Ten seeds of twenty thousand hangs each; minutes, so not part of the usual run.
#include <boost/test/data/test_case.hpp>

#include "outside/settled_shape.h"

BOOST_AUTO_TEST_SUITE(settled_shape_at_length)

BOOST_DATA_TEST_CASE(every_hang_comes_to_rest_where_its_energy_is_least,
                     boost::unit_test::data::xrange(1, 11), seed) {
  const hangbook::testing::Tally tally =
      hangbook::testing::compareWithLeastEnergy(static_cast<std::uint64_t>(1000 + seed), 20000);
  BOOST_TEST_MESSAGE("seed " << seed << ": " << tally.compared << " hangs compared, " << tally.taut
                             << " taut, " << tally.searchStuck << " where the search stuck");
  BOOST_TEST(tally.compared > 10000);
  BOOST_TEST(tally.searchStuck < tally.compared / 50);
}

BOOST_AUTO_TEST_SUITE_END()
