// SPDX-License-Identifier: GPL-3.0-or-later
// Interval arithmetic: of operands within their spans the result lies in the result's span, and the span is
// no wider than what such operands come to, found by trying many.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>

#include "hang/span.h"
#include "support/random_hang.h"

using namespace hangbook::hang;
using hangbook::testing::RandomHangs;

namespace {

constexpr int tried = 200;

Span someSpan(RandomHangs& by, double most) {
  const double one = by.between(-most, most);
  return {one, one + by.between(0.0, most)};
}

double within(Span span, int number) {
  return span.low + span.width() * number / tried;
}

/// `figure` over the span, its ends included, is `found`, up to how far apart the tried ones lie.
void compare(Span found, double low, double high, double near) {
  BOOST_TEST(found.low <= low + 1e-9);
  BOOST_TEST(found.high >= high - 1e-9);
  BOOST_TEST(found.low >= low - near);
  BOOST_TEST(found.high <= high + near);
}

void ofOne(Span span, Span found, double near, const std::function<double(double)>& figure) {
  Span seen{figure(span.low), figure(span.low)};
  for (int i = 1; i <= tried; ++i) {
    seen = {std::min(seen.low, figure(within(span, i))), std::max(seen.high, figure(within(span, i)))};
  }
  compare(found, seen.low, seen.high, near);
}

/// Of what is linear in each operand the ends are among the four corners.
void ofTwo(Span a, Span b, Span found, const std::function<double(double, double)>& figure) {
  Span seen{figure(a.low, b.low), figure(a.low, b.low)};
  for (const double one : {a.low, a.high}) {
    for (const double other : {b.low, b.high}) {
      seen = {std::min(seen.low, figure(one, other)), std::max(seen.high, figure(one, other))};
    }
  }
  compare(found, seen.low, seen.high, 1e-9);
}

} // namespace

BOOST_AUTO_TEST_SUITE(spans)

BOOST_AUTO_TEST_CASE(sums_products_and_quotients_have_their_ends_at_the_corners) {
  RandomHangs by(1);
  for (int round = 0; round < 200; ++round) {
    const Span a = someSpan(by, 3.0);
    const Span b = someSpan(by, 2.0);
    ofTwo(a, b, a + b, [](double x, double y) { return x + y; });
    ofTwo(a, b, a - b, [](double x, double y) { return x - y; });
    ofTwo(a, b, a * b, [](double x, double y) { return x * y; });
    BOOST_TEST(hull(a, b).low == std::min(a.low, b.low));
    BOOST_TEST(hull(a, b).high == std::max(a.high, b.high));
    Span sum = a;
    sum += b;
    BOOST_TEST(sum.low == (a + b).low);
    BOOST_TEST(sum.high == (a + b).high);
    if (b.holds(0.0)) {
      BOOST_TEST(std::isinf((a / b).width()));
    } else {
      ofTwo(a, b, a / b, [](double x, double y) { return x / y; });
    }
    const Span2 one{a, b};
    const Span2 other{someSpan(by, 1.0), someSpan(by, 1.0)};
    compare(moment(one, other), (one.x * other.z - one.z * other.x).low,
            (one.x * other.z - one.z * other.x).high, 1e-12);
    BOOST_TEST(longest(one) == std::hypot(a.magnitude(), b.magnitude()));
  }
  BOOST_TEST(std::isinf((Span(1.0) / Span(0.0, 2.0)).high));
  BOOST_TEST(std::isinf((Span(1.0) / Span(-2.0, 0.0)).low));
}

BOOST_AUTO_TEST_CASE(squares_roots_and_angles) {
  RandomHangs by(2);
  for (int round = 0; round < 200; ++round) {
    const Span a = someSpan(by, 3.0);
    ofOne(a, square(a), 0.01, [](double x) { return x * x; });
    ofOne(a, -a, 1e-12, [](double x) { return -x; });
    ofOne(a, root(a), 0.03, [](double x) { return std::sqrt(std::max(0.0, x)); });
    const Span angle = round % 3 == 0 ? someSpan(by, 40.0) : someSpan(by, 4.0);
    const double near = round % 3 == 0 ? 0.03 : 1e-3;
    ofOne(angle, cosine(angle), near, [](double x) { return std::cos(x); });
    ofOne(angle, sine(angle), near, [](double x) { return std::sin(x); });
    ofOne(a, inRadians(a), 1e-12, [](double x) { return toRadians(x); });
    ofOne(a, inDegrees(a), 1e-12, [](double x) { return toDegrees(x); });
    BOOST_TEST(a.magnitude() == std::max(std::abs(a.low), std::abs(a.high)));
    BOOST_TEST(Span::around(1.5, 0.25).low == 1.25);
    BOOST_TEST(Span::around(1.5, 0.25).high == 1.75);
  }
  BOOST_TEST(square(Span(-1.0, 2.0)).low == 0.0);
  BOOST_TEST(square(Span(0.0, 2.0)).low == 0.0);
  BOOST_TEST(square(Span(-2.0, 0.0)).low == 0.0);
  BOOST_TEST(cosine(Span(-0.1, 0.1)).high == 1.0);
  BOOST_TEST(cosine(Span(3.0, 3.3)).low == -1.0);
  BOOST_TEST(cosine(Span(6.0, 6.5)).high == 1.0);
  BOOST_TEST(cosine(Span(6.0, 10.0)).low == -1.0);
}

/// Of an exact place to the very ends; of one in doubt no less than any of its corners.
BOOST_AUTO_TEST_CASE(a_turn_holds_every_place_that_it_brings_about) {
  RandomHangs by(3);
  for (int round = 0; round < 300; ++round) {
    const double from = by.between(-7.0, 7.0);
    const Span angle{from, from + (round % 5 == 0 ? by.between(3.0, 5.0) : by.between(0.0, 3.1))};
    const SpanTurn turn = turnBy(angle);
    BOOST_TEST(turn.half == (angle.width() >= std::numbers::pi));
    BOOST_TEST(!turn.exact());
    const Vec2 place{by.between(-2.0, 2.0), by.between(-2.0, 2.0)};
    const Span2 found = turn(place);
    const double near = turn.half ? 2.0 * length(place) : 1e-3;
    ofOne(angle, found.x, near, [&](double x) { return turnBy(x)(place).x; });
    ofOne(angle, found.z, near, [&](double x) { return turnBy(x)(place).z; });
    if (!turn.half) {
      ofOne(angle, turn.cosine, 1e-3, [](double x) { return std::cos(x); });
      ofOne(angle, turn.sine, 1e-3, [](double x) { return std::sin(x); });
    }
    const Span2 doubtful = turn(Span2::around(place, 0.1));
    BOOST_TEST(doubtful.x.low <= found.x.low + 1e-9);
    BOOST_TEST(doubtful.z.high >= found.z.high - 1e-9);
    const SpanTurn exact = turnBy(Span(from));
    BOOST_TEST(exact.exact());
    BOOST_TEST(!exact.half);
    BOOST_TEST(exact(place).x.low == turnBy(from)(place).x);
    BOOST_TEST(exact(place).x.high == exact(place).x.low);
    BOOST_TEST(exact(place).z.low == turnBy(from)(place).z);
    BOOST_TEST(exact.cosine.low == std::cos(from));
    BOOST_TEST(exact.sine.high == std::sin(from));
  }
}

/// 2·5 + 3·7 and, a metre more of each, 3·6 + 4·8.
BOOST_AUTO_TEST_CASE(a_product_of_places_by_hand) {
  const Span both = dot(Span2{Span(2.0, 3.0), Span(3.0, 4.0)}, Span2{Span(5.0, 6.0), Span(7.0, 8.0)});
  BOOST_TEST(both.low == 31.0);
  BOOST_TEST(both.high == 50.0);
}

BOOST_AUTO_TEST_CASE(a_span_holds_its_ends) {
  const Span span{1.0, 2.0};
  BOOST_TEST(span.holds(1.0));
  BOOST_TEST(span.holds(2.0));
  BOOST_TEST(!span.holds(std::nextafter(1.0, 0.0)));
  BOOST_TEST(!span.holds(std::nextafter(2.0, 3.0)));
  BOOST_TEST(Span(3.0).width() == 0.0);
  BOOST_TEST(std::isinf(Span::unbounded().low));
  BOOST_TEST(Span::unbounded().low < 0.0);
  BOOST_TEST(Span::unbounded().high > 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
