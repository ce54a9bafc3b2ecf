// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>
#include <vector>

#include "hang/make_up.h"
#include "quantity/error.h"
#include "support/random_hang.h"

using namespace hangbook;
using hang::MakeUp;
using hang::MakeUpWish;
using hang::SteelLength;
using hangbook::testing::RandomHangs;

namespace {

/// By counting through every combination like a clock, without any of the search's short cuts.
std::optional<MakeUp> byBruteForce(const std::vector<SteelLength>& steels, const MakeUpWish& wish) {
  std::optional<MakeUp> best;
  std::vector<int> counts(steels.size(), 0);
  const auto number = [&counts] {
    int sum = 0;
    for (const int count : counts) {
      sum += count;
    }
    return sum;
  };
  for (;;) {
    std::size_t place = 0;
    while (place < counts.size() && counts[place] == steels[place].available) {
      counts[place++] = 0;
    }
    if (place == counts.size()) {
      return best;
    }
    ++counts[place];
    if (number() > wish.mostSteels) {
      continue;
    }
    for (int more = 0; more <= wish.moreShackles; ++more) {
      MakeUp made{counts, number() + 1 + more, 0.0};
      made.length = made.shackles * wish.shackle;
      for (std::size_t i = 0; i < counts.size(); ++i) {
        made.length += counts[i] * steels[i].length;
      }
      const double off = std::abs(made.length - wish.length);
      if (off > wish.tolerance + 1e-9) {
        continue;
      }
      const auto steelsOf = [&](const MakeUp& each) { return each.pieces() - each.shackles; };
      const bool better =
          !best || steelsOf(made) < steelsOf(*best) ||
          (steelsOf(made) == steelsOf(*best) &&
           (made.shackles < best->shackles ||
            (made.shackles == best->shackles && off < std::abs(best->length - wish.length) - 1e-9)));
      if (better) {
        best = made;
      }
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(make_up)

BOOST_AUTO_TEST_CASE(by_hand) {
  // 3.2 m within 5 cm from 0.5, 1, 2 and 3 m and shackles of 0.06 m: 3 m + 2 shackles is 3.12, with one more
  // 3.18.
  const std::vector<SteelLength> steels{{0.5, 4}, {1.0, 4}, {2.0, 4}, {3.0, 4}};
  const auto made = hang::shortestMakeUp(steels, {3.2, 0.05, 0.06});
  BOOST_REQUIRE(made);
  BOOST_TEST(made->steels == (std::vector<int>{0, 0, 0, 1}), boost::test_tools::per_element());
  BOOST_TEST(made->shackles == 3);
  BOOST_TEST(made->length == 3.18, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(what_is_not_there_is_not_used) {
  const std::vector<SteelLength> steels{{1.0, 3}, {3.0, 0}};
  const auto made = hang::shortestMakeUp(steels, {3.2, 0.05, 0.05});
  BOOST_REQUIRE(made);
  BOOST_TEST(made->steels == (std::vector<int>{3, 0}), boost::test_tools::per_element());
  BOOST_TEST(made->shackles == 4);
  BOOST_TEST(!hang::shortestMakeUp(std::vector<SteelLength>{{1.0, 2}}, {3.2, 0.05, 0.05}));
}

BOOST_AUTO_TEST_CASE(none_comes_near_enough) {
  BOOST_TEST(!hang::shortestMakeUp(std::vector<SteelLength>{{1.0, 9}}, {1.6, 0.01, 0.05}));
  BOOST_TEST(!hang::shortestMakeUp(std::vector<SteelLength>{}, {1.6, 0.01, 0.05}));
}

BOOST_AUTO_TEST_CASE(agrees_with_counting_through_all) {
  RandomHangs random(11);
  int found = 0;
  for (int i = 0; i < 400; ++i) {
    std::vector<SteelLength> steels;
    const int kinds = 1 + random.oneOf(4);
    for (int kind = 0; kind < kinds; ++kind) {
      steels.push_back({std::round(random.between(0.3, 4.0) * 20.0) / 20.0, random.oneOf(4)});
    }
    const MakeUpWish wish{random.between(0.5, 9.0), random.between(0.0, 0.1), random.oneOf(2) * 0.055, 5, 3};
    const auto made = hang::shortestMakeUp(steels, wish);
    const auto other = byBruteForce(steels, wish);
    BOOST_REQUIRE_EQUAL(made.has_value(), other.has_value());
    if (made) {
      ++found;
      BOOST_TEST(made->pieces() == other->pieces());
      BOOST_TEST(made->shackles == other->shackles);
      BOOST_TEST(std::abs(made->length - wish.length) == std::abs(other->length - wish.length),
                 boost::test_tools::tolerance(1e-6));
    }
  }
  BOOST_TEST(found > 50);
}

BOOST_AUTO_TEST_CASE(bad_figures_are_refused) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const std::vector<SteelLength> steels{{1.0, 3}};
  for (const MakeUpWish& wish :
       {MakeUpWish{nan, 0.1, 0.05}, MakeUpWish{0.0, 0.1, 0.05}, MakeUpWish{2.0, -0.1, 0.05},
        MakeUpWish{2.0, 0.1, nan}, MakeUpWish{2.0, 0.1, 0.05, 0}}) {
    BOOST_CHECK_THROW(hang::shortestMakeUp(steels, wish), Error);
  }
  BOOST_CHECK_THROW(hang::shortestMakeUp(std::vector<SteelLength>{{nan, 1}}, {2.0, 0.1, 0.05}), Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(std::vector<SteelLength>{{1.0, 1}, {nan, 1}}, {2.0, 0.1, 0.05}),
                    Error);
}

BOOST_AUTO_TEST_CASE(figures_at_their_bounds_are_taken_and_beyond_refused) {
  const auto beyond = [](double bound) { return std::nextafter(bound, 1e9); };
  const std::vector<SteelLength> longest{{1000.0, 1}};
  BOOST_CHECK_NO_THROW(hang::shortestMakeUp(longest, {1000.0, 1000.0, 10.0, 12}));
  BOOST_CHECK_THROW(hang::shortestMakeUp(std::vector<SteelLength>{{beyond(1000.0), 1}}, {2.0, 0.1, 0.05}),
                    Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {beyond(1000.0), 0.1, 0.05}), Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {2.0, beyond(1000.0), 0.05}), Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, beyond(10.0)}), Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, 0.05, 13}), Error);
  BOOST_CHECK_NO_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, 0.05, 1, 0}));
  BOOST_CHECK_NO_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, 0.05, 1, 20}));
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, 0.05, 1, -1}), Error);
  BOOST_CHECK_THROW(hang::shortestMakeUp(longest, {2.0, 0.1, 0.05, 1, 21}), Error);
  BOOST_CHECK_NO_THROW(hang::shortestMakeUp(std::vector<SteelLength>(40, {1.0, 1}), {2.0, 0.1, 0.05, 2}));
  BOOST_CHECK_THROW(hang::shortestMakeUp(std::vector<SteelLength>(41, {1.0, 1}), {2.0, 0.1, 0.05, 2}), Error);
}

/// A tolerance is met at its figure, whatever adding up has rounded, and not beyond it.
BOOST_AUTO_TEST_CASE(a_tolerance_ends_at_its_figure) {
  const auto made = [](double length) {
    const std::vector<SteelLength> steels{{length, 1}};
    return hang::shortestMakeUp(steels, {1.0, 0.1, 0.0, 1, 0}).has_value();
  };
  BOOST_TEST(made(1.1));
  BOOST_TEST(made(0.9));
  BOOST_TEST(made(1.1 + 5e-10));
  BOOST_TEST(!made(1.1 + 1e-8));
  BOOST_TEST(!made(0.9 - 1e-8));
}

BOOST_AUTO_TEST_CASE(of_two_steels_the_nearer_one_is_taken_by_whatever_is_no_rounding) {
  const auto taken = [](double first, double second) {
    const std::vector<SteelLength> steels{{first, 1}, {second, 1}};
    return hang::shortestMakeUp(steels, {1.0, 0.1, 0.0, 1, 0})->steels.front() == 1;
  };
  BOOST_TEST(!taken(1.0 + 1e-7, 1.0));
  BOOST_TEST(!taken(1.0 - 1e-7, 1.0));
  BOOST_TEST(taken(1.0, 1.0 + 1e-7));
  BOOST_TEST(taken(1.0 + 1e-10, 1.0)); // that is rounding: the first one named is taken
}

BOOST_AUTO_TEST_SUITE_END()
