// SPDX-License-Identifier: GPL-3.0-or-later
// What a section without a front line weighs against the others, by hand.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <numeric>
#include <optional>
#include <string>

#include "options/cover.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// 3 m level, then 4 m along and 3 m up: 8 m of floor.
venue::Section section(std::optional<double> yFrom, std::optional<double> yTo) {
  venue::Section made;
  made.name = QStringLiteral("floor");
  made.profile = {{metres(1), metres(0)}, {metres(4), metres(0)}, {metres(8), metres(3)}};
  made.earHeight = metres(1.2);
  made.yFrom = yFrom ? std::optional(metres(*yFrom)) : std::nullopt;
  made.yTo = yTo ? std::optional(metres(*yTo)) : std::nullopt;
  return made;
}

Audience with(std::optional<double> yFrom, std::optional<double> yTo, bool weighed = true) {
  Audience audience;
  addSection(audience, section(yFrom, yTo), weighed);
  return audience;
}

double weightOf(const Audience& audience) {
  return std::accumulate(audience.positions.begin(), audience.positions.end(), 0.0,
                         [](double sum, const AudiencePosition& each) { return sum + each.weight; });
}

} // namespace

BOOST_AUTO_TEST_SUITE(audience)

BOOST_AUTO_TEST_CASE(rows_share_the_sloping_floor_out) {
  const Audience wide = with(-2.0, 3.0);
  BOOST_REQUIRE(wide.positions.size() == 17U);   // each half metre from 0 to 8
  BOOST_TEST(weightOf(wide) == 8.0 * 5.0 * 1e4); // cm²
  BOOST_TEST(wide.positions.front().weight == 0.25 * 5.0 * 1e4);
  BOOST_TEST(wide.positions.back().weight == 0.25 * 5.0 * 1e4);
  for (std::size_t i = 1; i + 1 < wide.positions.size(); ++i) {
    BOOST_TEST(wide.positions[i].weight == 0.5 * 5.0 * 1e4, i);
  }
}

/// As narrow as nothing, each row still counts as one.
BOOST_AUTO_TEST_CASE(no_row_weighs_nothing) {
  for (const double to : {2.0, 2.0 + 1e-9, 1.0}) {
    for (const AudiencePosition& each : with(2.0, to).positions) {
      BOOST_TEST(each.weight == 1.0, to);
    }
  }
  for (const AudiencePosition& each : with(-2.0, 3.0, false).positions) {
    BOOST_TEST(each.weight == 1.0);
  }
}

/// One corner is no profile, two are.
BOOST_AUTO_TEST_CASE(a_profile_has_two_corners_at_least) {
  venue::Section made = section(-1.0, 1.0);
  for (const std::size_t corners : {0U, 1U, 2U}) {
    made.profile.resize(corners, {metres(1), metres(0)});
    if (corners == 2U) {
      made.profile.back().x = metres(2);
    }
    Audience audience;
    addSection(audience, made, false);
    const std::string missing = audience.missing.join(QStringLiteral("; ")).toStdString();
    BOOST_TEST(missing == (corners == 2U ? "" : "the profile of section floor"));
    BOOST_TEST(audience.positions.size() == (corners == 2U ? 3U : 0U));
  }
}

BOOST_AUTO_TEST_CASE(a_section_of_which_one_end_is_not_stated_cannot_be_weighed) {
  for (const auto& [from, to] : {std::pair(std::optional(1.0), std::optional<double>()),
                                 std::pair(std::optional<double>(), std::optional(1.0)),
                                 std::pair(std::optional<double>(), std::optional<double>())}) {
    BOOST_TEST(with(from, to).missing.size() == 1);
    BOOST_TEST(with(from, to).positions.empty());
    BOOST_TEST(with(from, to, false).missing.isEmpty());
    BOOST_TEST(with(from, to, false).positions.size() == 17U);
  }
  BOOST_TEST(with(-1.0, 1.0).missing.isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
