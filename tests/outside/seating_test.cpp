// SPDX-License-Identifier: GPL-3.0-or-later
// Audience sections and cover in space against a brute force that shares no code with the program: seats are
// found by turning a straight block about its arc's centre, rays are turned into the cabinet's own frame by
// elementary turns and judged by their two angles. Source of the geometry: plane and solid trigonometry (C);
// that a cabinet's edges of cover are four planes through its source: common practice, no source.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <numbers>
#include <random>

#include "options/cover.h"
#include "options/seating.h"
#include "support/sanitized.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

struct Point {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;
};

Point turnAboutZ(Point p, double angle) {
  return {p.x * std::cos(angle) - p.y * std::sin(angle), p.x * std::sin(angle) + p.y * std::cos(angle), p.z};
}
/// Lifts x towards z.
Point noseUp(Point p, double angle) {
  return {p.x * std::cos(angle) - p.z * std::sin(angle), p.y, p.x * std::sin(angle) + p.z * std::cos(angle)};
}
/// Lifts y towards z.
Point leftUp(Point p, double angle) {
  return {p.x, p.y * std::cos(angle) - p.z * std::sin(angle), p.y * std::sin(angle) + p.z * std::cos(angle)};
}

struct Cabinet {
  Point at;
  double bearing = 0.0; // radians
  double aim = 0.0;
  double roll = 0.0;
  double low = 0.0;
  double high = 0.0;
  double across = 0.0;
  double throwM = 0.0;

  Point inVenue(Point own) const { return turnAboutZ(noseUp(leftUp(own, roll), aim), bearing); }
  Point own(Point venue) const { return leftUp(noseUp(turnAboutZ(venue, -bearing), -aim), -roll); }

  bool covers(Point ear, double trim) const {
    const Point ray = own({ear.x - at.x, ear.y - at.y, ear.z - at.z - trim});
    if (ray.x <= 0.0 || std::sqrt(ray.x * ray.x + ray.y * ray.y + ray.z * ray.z) > throwM) {
      return false;
    }
    const double up = std::atan2(ray.z, ray.x);
    return up >= low && up <= high && std::abs(std::atan2(ray.y, ray.x)) <= across / 2.0;
  }
};

/// The seat `behind` the front line and `side` of the arc's length to the left, by walking: first along a
/// straight block, then round the arc's centre.
Point seatBy(const venue::Section& section, double behind, double part) {
  const double radius = inMetres(*section.radius);
  const double width = inMetres(*section.width);
  Point own{behind, part * width, 0.0};
  if (radius != 0.0) {
    const Point fromCentre = turnAboutZ({radius + behind, 0.0, 0.0}, part * width / radius);
    own = {fromCentre.x - radius, fromCentre.y, 0.0};
  }
  const Point turned = turnAboutZ(own, inDegrees(*section.bearing) * degree);
  return {turned.x + inMetres(*section.frontX), turned.y + inMetres(*section.frontY), 0.0};
}

class Draw {
public:
  explicit Draw(unsigned seed) : random_(seed) {}
  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }

  venue::Section section() {
    venue::Section made;
    made.name = QStringLiteral("block");
    const double depth = between(2, 14);
    made.profile = {{metres(0), metres(between(0, 3))},
                    {metres(depth / 2), metres(between(0, 5))},
                    {metres(depth), metres(between(2, 9))}};
    made.earHeight = metres(1.2);
    made.frontX = metres(between(8, 30));
    made.frontY = metres(between(-20, 20));
    made.bearing = degrees(between(-100, 100));
    made.width = metres(between(3, 25));
    made.radius = metres(0);
    const double kind = between(0, 3);
    if (kind > 2) {
      made.radius = metres(between(8, 40));
    } else if (kind > 1) {
      made.radius = metres(-depth - between(8, 40));
    }
    return made;
  }

  Cabinet cabinet() {
    Cabinet made;
    made.at = {between(-1, 1), between(-8, 8), between(0, 3)};
    made.bearing = between(-15, 15) * degree;
    made.aim = between(-25, 8) * degree;
    made.roll = between(-3, 3) * degree;
    made.low = between(-40, -2) * degree;
    made.high = between(-1, 20) * degree;
    made.across = between(30, 120) * degree;
    made.throwM = between(25, 80);
    return made;
  }

private:
  std::mt19937 random_;
};

CoverView viewOf(const std::vector<Cabinet>& cabinets) {
  CoverView view;
  for (const Cabinet& each : cabinets) {
    const Point forward = each.inVenue({1, 0, 0});
    const Point left = each.inVenue({0, 1, 0});
    CoverEdges edges;
    edges.lowestDeg = each.low / degree;
    edges.highestDeg = each.high / degree;
    edges.acrossDeg = each.across / degree;
    CoverView::Source source;
    source.height = each.at.z;
    source.place = {each.at.x, each.at.y};
    source.throwM = each.throwM;
    source.inside = insideEdges({{forward.x, forward.y, forward.z}, {left.x, left.y, left.z}}, edges, 0.0);
    view.sources.push_back(source);
  }
  return view;
}

} // namespace

BOOST_AUTO_TEST_SUITE(seating_in_space)

BOOST_AUTO_TEST_CASE(seats_stand_where_walking_round_the_arc_leads) {
  Draw draw(20270407);
  for (int round = 0; round < 300; ++round) {
    const venue::Section section = draw.section();
    const auto swept = sweptSection(section);
    BOOST_REQUIRE(swept);
    const double behind = draw.between(0.0, inMetres(section.profile.back().x));
    const double part = draw.between(-0.5, 0.5);
    const Point expected = seatBy(section, behind, part);
    const Plan found = swept->placeOf(behind, part);
    BOOST_REQUIRE_SMALL(std::hypot(found.x - expected.x, found.y - expected.y), 1e-9);
    // Rows are as long as the sum of many small steps along them.
    double length = 0.0;
    constexpr int steps = 2000;
    for (int i = 0; i < steps; ++i) {
      const Point a = seatBy(section, behind, static_cast<double>(i) / steps - 0.5);
      const Point b = seatBy(section, behind, static_cast<double>(i + 1) / steps - 0.5);
      length += std::hypot(b.x - a.x, b.y - a.y);
    }
    BOOST_REQUIRE_CLOSE(swept->rowLength(behind), length, 1e-3);
  }
}

BOOST_AUTO_TEST_CASE(each_seat_stands_for_its_floor) {
  // A ring sector's area: angle/2 · (outer² − inner²) (C). Level floor, so the slope adds nothing.
  venue::Section ring;
  ring.name = QStringLiteral("ring");
  ring.profile = {{metres(0), metres(3)}, {metres(12), metres(3)}};
  ring.earHeight = metres(1.2);
  ring.frontX = metres(10);
  ring.frontY = metres(0);
  ring.bearing = degrees(0);
  ring.width = metres(30);
  ring.radius = metres(20);
  Audience audience;
  addSection(audience, ring, true);
  const double expected = 30.0 / 20.0 / 2.0 * (32.0 * 32.0 - 20.0 * 20.0);
  BOOST_TEST(audience.weight / 1e4 == expected, boost::test_tools::tolerance(1e-4)); // whole cm²
  // A straight block on a slope of 3 in 4 (5 m of floor for 4 m of plan): width × floor.
  ring.profile = {{metres(0), metres(0)}, {metres(8), metres(6)}};
  ring.radius = metres(0);
  Audience raked;
  addSection(raked, ring, true);
  BOOST_TEST(raked.weight / 1e4 == 300.0, boost::test_tools::tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(cover_agrees_with_rays) {
  Draw draw(20270408);
  int covered = 0;
  int missed = 0;
  for (int round = 0; round < 60; ++round) {
    Audience audience;
    const venue::Section section = draw.section();
    addSection(audience, section, true);
    BOOST_REQUIRE(audience.missing.isEmpty());
    const std::vector<Cabinet> cabinets{draw.cabinet(), draw.cabinet()};
    const CoverView view = viewOf(cabinets);
    const double trim = draw.between(2, 12);
    for (std::size_t i = 0; i < audience.positions.size(); ++i) {
      const AudiencePosition& at = audience.positions[i];
      const Point ear{at.x, at.yFrom, at.ear};
      const bool expected = cabinets[0].covers(ear, trim) || cabinets[1].covers(ear, trim);
      BOOST_REQUIRE_EQUAL(isCovered(audience, view, i, trim), expected);
      ++(expected ? covered : missed);
    }
  }
  BOOST_TEST(covered > 2000);
  BOOST_TEST(missed > 2000);
}

BOOST_AUTO_TEST_CASE(stretches_of_trim_agree_with_trying_them) {
  Draw draw(20270409);
  int found = 0;
  for (int round = 0; round < (testing::underSanitizer ? 8 : 24); ++round) {
    Audience audience;
    for (int i = 0; i < 2; ++i) {
      venue::Section section = draw.section();
      section.name = QString::number(i);
      section.frontX = metres(draw.between(8, 25));
      section.frontY = metres(draw.between(-5, 5));
      section.bearing = degrees(draw.between(-20, 20));
      section.width = metres(draw.between(3, 12));
      addSection(audience, section, true);
    }
    std::vector<Cabinet> cabinets{draw.cabinet(), draw.cabinet(), draw.cabinet()};
    const CoverView view = viewOf(cabinets);
    const double percent = round % 3 == 0 ? 100.0 : draw.between(20, 95);
    const std::vector<TrimRange> stretches = stretchesThatCoverShare(audience, view, percent);
    for (double trim = -12.0; trim <= 30.0; trim += 0.1) {
      double weight = 0.0;
      for (const AudiencePosition& at : audience.positions) {
        const Point ear{at.x, at.yFrom, at.ear};
        const bool in =
            cabinets[0].covers(ear, trim) || cabinets[1].covers(ear, trim) || cabinets[2].covers(ear, trim);
        weight += in ? at.weight : 0.0;
      }
      bool inside = false;
      bool atAnEnd = false;
      for (const TrimRange& each : stretches) {
        inside = inside || (trim >= each.low && trim <= each.high);
        atAnEnd = atAnEnd || std::abs(trim - each.low) < 1e-9 || std::abs(trim - each.high) < 1e-9;
      }
      const bool reaches = weight / audience.weight * 100.0 >= percent - 1e-9;
      found += reaches ? 1 : 0;
      BOOST_REQUIRE((inside == reaches || atAnEnd));
    }
  }
  BOOST_TEST(found > (testing::underSanitizer ? 20 : 200));
}

BOOST_AUTO_TEST_CASE(the_seat_nearest_to_a_line_is_the_one_that_trying_them_all_finds) {
  Draw draw(20270410);
  int compared = 0;
  for (int round = 0; round < 300; ++round) {
    const venue::Section section = draw.section();
    const auto swept = sweptSection(section);
    const double behind = draw.between(0.0, inMetres(section.profile.back().x));
    const double bearing = draw.between(-30, 30) * degree;
    const Plan origin{draw.between(-2, 2), draw.between(-9, 9)};
    const Plan along{std::cos(bearing), std::sin(bearing)};
    const auto seen = [&](double part) {
      const Point at = seatBy(section, behind, part);
      return turnAboutZ({at.x - origin.x, at.y - origin.y, 0.0}, -bearing);
    };
    const auto offOf = [&](double part) { return std::abs(seen(part).y); };
    double least = std::numeric_limits<double>::infinity();
    bool allBefore = true;
    for (int i = 0; i <= 2000; ++i) {
      allBefore = allBefore && seen(i / 2000.0 - 0.5).x > 0.0;
      least = std::min(least, offOf(i / 2000.0 - 0.5));
    }
    if (!allBefore) {
      continue;
    }
    ++compared;
    BOOST_REQUIRE_SMALL(std::max(0.0, offOf(swept->partNearest(behind, origin, along)) - least), 1e-6);
  }
  BOOST_TEST(compared > 200);
}

BOOST_AUTO_TEST_CASE(a_place_in_plan_finds_its_seat_again) {
  Draw draw(20270411);
  for (int round = 0; round < 300; ++round) {
    const venue::Section section = draw.section();
    const auto swept = sweptSection(section);
    const double behind = draw.between(0.0, inMetres(section.profile.back().x));
    const double part = draw.between(-0.49, 0.49);
    const Point at = seatBy(section, behind, part);
    const auto seat = swept->seatAt({at.x, at.y});
    BOOST_REQUIRE(seat);
    BOOST_REQUIRE_SMALL(seat->behind - behind, 1e-9);
    BOOST_REQUIRE_SMALL(seat->part - part, 1e-9);
    const Point beside = seatBy(section, behind, 0.52);
    BOOST_REQUIRE(!swept->seatAt({beside.x, beside.y}));
  }
}

BOOST_AUTO_TEST_SUITE_END()
