// SPDX-License-Identifier: GPL-3.0-or-later
// Intervals in months clamp to the month's end. Marks as in check-values.md.
#include <boost/test/unit_test.hpp>

#include "fleet/due.h"

using hangbook::fleet::addMonthsClamped;

BOOST_AUTO_TEST_SUITE(due_dates)

BOOST_AUTO_TEST_CASE(months_clamp_as_others_say) {
  // python-dateutil (V)
  BOOST_TEST((addMonthsClamped(QDate(2005, 1, 31), 1) == QDate(2005, 2, 28)));
  // java.time (V)
  BOOST_TEST((addMonthsClamped(QDate(2007, 3, 31), 1) == QDate(2007, 4, 30)));
  // 31 Aug + 6 months = 28/29 Feb; SQLite rolls over to 2025-03-03 for the first (V, run)
  BOOST_TEST((addMonthsClamped(QDate(2024, 8, 31), 6) == QDate(2025, 2, 28)));
  BOOST_TEST((addMonthsClamped(QDate(2023, 8, 31), 6) == QDate(2024, 2, 29)));
  BOOST_TEST((addMonthsClamped(QDate(2024, 2, 29), 12) == QDate(2025, 2, 28)));
}

BOOST_AUTO_TEST_SUITE_END()
