// SPDX-License-Identifier: GPL-3.0-or-later
// What comes seldom by chance: lines that pull at the foot, chains that are exactly taut on shut joints, pans
// and tilts beyond 30°, a pick near the centre, parts that weigh nothing, bridles whose points stand in one
// line; against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/bridle.h"
#include "hang/solve.h"
#include "kept/hang_lines.h"
#include "kept/random_doubts.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using namespace hangbook::testing;

namespace {

std::string named(const char* what, int number) {
  return std::string(what) + ' ' + std::to_string(number);
}

void all(std::vector<Line>& lines, const std::string& name, const Hang& hang, const Doubts& doubts) {
  lines.push_back(lineOf(name, [&](Line& line) { add(line, solve(hang)); }));
  lines.push_back(lineOf(name + " settled", [&](Line& line) { add(line, settle(hang)); }));
  lines.push_back(lineOf(name + " told", [&](Line& line) {
    const Statics as = standing(hang);
    add(line, as);
    const std::vector<BuildStep> steps = buildSteps(hang, as);
    const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, as);
    for (const BuildStep& step : steps) {
      add(line, step);
    }
    add(line, worst);
    Doubting doubting(hang, doubts);
    const Unfavourable most = doubting.at(as, worst);
    add(line, most);
    line.number(most.centreOff);
    for (const BuildStep& step : doubting.steps(as, worst, steps)) {
      add(line, step);
    }
  }));
}

/// Weight shuts its joints, so that most of them stand with and without what pulls.
Hang shut(RandomHangs& by, int picks, Held held) {
  Hang hang = by.next(picks, held);
  for (Element& each : hang.stack) {
    each.cg.x = by.between(0.0, 0.25);
  }
  return hang;
}

void pulled(std::vector<Line>& lines, RandomHangs& by, int number) {
  const int picks = number % 3;
  Hang hang = shut(by, picks, Held::nothing);
  double tilt = 0.0;
  try {
    tilt = solve(hang).tiltDeg;
  } catch (const Error&) {
    tilt = -1.0;
  }
  PullBack pull;
  pull.element = 1 + by.oneOf(static_cast<int>(hang.stack.size()));
  pull.at = {by.between(-0.8, 0.1), by.between(-0.6, 0.0)};
  pull.lineDeg = number % 7 == 0 ? 90.0 : by.between(0.0, 180.0);
  if (picks == 1 || number % 2 == 0) {
    pull.force = by.between(0.0, number % 4 == 0 ? 300.0 : 2500.0);
  } else {
    pull.tiltDeg = tilt + by.between(-8.0, 8.0);
  }
  hang.pullBack = pull;
  lines.push_back(lineOf(named("pulled", number), [&](Line& line) { add(line, solve(hang)); }));
}

/// Its chain as long as the line from anchor to eye, to the last digits.
void taut(std::vector<Line>& lines, RandomHangs& by, int number) {
  Hang hang = number % 2 == 0 ? shut(by, number % 3, Held::seated) : by.next(number % 3, Held::seated);
  for (Element& each : hang.stack) {
    if (auto* seated = std::get_if<Seated>(&each.joint)) {
      seated->openToDeg = by.oneOf(3) == 0 ? by.between(0.1, 2.0) : 0.0;
    }
  }
  const PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, hang.chain->held);
  const Joint& joint = hang.stack[static_cast<std::size_t>(hang.chain->held) - 1].joint;
  hang.chain->mark = 1;
  hang.chain->pitch = 0.1;
  hang.chain->fixed = lengthAt(triangle, fixedAngleDeg(joint)) - 0.1 + (number % 5 == 0 ? 4e-10 : 0.0);
  all(lines, named("taut", number), hang, doubtsOf(hang, by, number % 4 == 0 ? 0.0 : 0.3));
}

/// Turned and tilted farther than anybody hangs anything.
void wide(std::vector<Line>& lines, RandomHangs& by, int number) {
  Hang hang = shut(by, 0, static_cast<Held>(number % 3));
  auto& pair = std::get<SidePair>(hang.bar.picks);
  pair.panTravelDeg = {-80.0, 80.0};
  pair.tiltTravelDeg = {-70.0, 70.0};
  hang.set = {};
  hang.set.panDeg = number % 4 == 0 ? by.between(-20.0, 20.0) : by.between(25.0, 75.0);
  hang.set.tiltDeg = number % 3 == 0 ? by.between(-12.0, 12.0) : by.between(-45.0, 45.0);
  all(lines, named("wide", number), hang, doubtsOf(hang, by, 0.5));
}

/// The pick close to the centre, within the doubts or just beyond.
void close(std::vector<Line>& lines, RandomHangs& by, int number) {
  Hang hang = shut(by, 2, Held::nothing);
  const Statics before = solve(hang);
  const Turn back = turnBy(-toRadians(before.tiltDeg));
  auto& single = std::get<SinglePick>(hang.bar.picks);
  single.pick = single.pick + back({before.cg.x, before.cg.z}) +
                Vec2{0.0, by.between(0.0005, number % 2 == 0 ? 0.01 : 0.08)};
  all(lines, named("close", number), hang, doubtsOf(hang, by, 1.0));
}

/// Parts of no weight at all.
void weightless(std::vector<Line>& lines, RandomHangs& by, int number) {
  Hang hang = shut(by, number % 3, static_cast<Held>(number / 3 % 2));
  hang.bar.frameMass = number % 4 == 0 ? 1.0 : 0.0;
  if (auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    pair->headMass = number % 2 == 0 ? 0.0 : 1.0;
  }
  for (std::size_t i = 0; i + 1 < hang.stack.size(); ++i) {
    hang.stack[i].mass = i == 0 || by.oneOf(2) == 0 ? 0.0 : hang.stack[i].mass;
  }
  Doubts none;
  none.stack.resize(hang.stack.size());
  all(lines, named("weightless", number), hang, number % 5 == 0 ? none : doubtsOf(hang, by, 0.1));
}

/// Points in one line, or an apex in the plane of all three, or legs that do not meet.
void flatBridle(std::vector<Line>& lines, RandomHangs& by, int number) {
  const Vec3 way{by.between(-1, 1), by.between(1, 2), number % 2 == 0 ? 0.0 : by.between(-0.2, 0.2)};
  const double third = number % 3 == 0 ? 0.5 : by.between(-1.0, 2.0);
  std::vector<Vec3> points{{0.0, 0.0, 0.0}, 2.0 * way, 2.0 * third * way};
  if (number % 4 == 3) {
    points[2].x += by.between(0.5, 1.5);
  }
  const Vec3 apex = by.between(0.1, 0.9) * points[1] + Vec3{0.0, 0.0, -by.between(0.3, 3.0)};
  const Vec3 load{0.0, 0.0, -by.between(500, 9000)};
  std::vector<double> lengths = legLengths(points, apex);
  lines.push_back(lineOf(named("flat bridle", number), [&](Line& line) {
    std::vector<BridleLeg> legs;
    for (std::size_t i = 0; i < points.size(); ++i) {
      legs.push_back({points[i], lengths[i] * (number % 5 == 0 ? 1.0 : by.between(0.7, 1.2)),
                      number % 7 == 0 ? by.between(2e5, 3e6) : std::numeric_limits<double>::infinity()});
    }
    const Bridle bridle = settleBridle(legs, load);
    add(line, bridle.apex);
    for (const LegForce& leg : bridle.legs) {
      line.number(leg.tension);
      line.number(leg.fromHorizontalDeg);
      line.word(leg.slack ? "slack" : "taut");
    }
  }));
  lines.push_back(lineOf(named("flat bridle at", number), [&](Line& line) {
    for (const LegForce& leg : bridleAt(points, apex, load).legs) {
      line.number(leg.tension);
    }
  }));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(what_comes_seldom_comes_out_as_kept) {
  std::vector<Line> lines;
  RandomHangs by(20261129);
  for (int number = 0; number < 120; ++number) {
    pulled(lines, by, number);
    taut(lines, by, number);
    flatBridle(lines, by, number);
    if (number % 2 == 0) {
      wide(lines, by, number / 2);
      weightless(lines, by, number / 2);
      close(lines, by, number / 2);
    }
  }
  compareWithKept(lines, "seldom_hangs.txt");
}

BOOST_AUTO_TEST_SUITE_END()
