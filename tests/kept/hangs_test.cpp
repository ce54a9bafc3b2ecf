// SPDX-License-Identifier: GPL-3.0-or-later
// The physics of a few hundred hangs of every kind, no two parts of which are alike, against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/bridle.h"
#include "hang/chain.h"
#include "hang/make_up.h"
#include "hang/sides.h"
#include "hang/solve.h"
#include "hang/tilt.h"
#include "hang/uneven.h"
#include "kept/hang_lines.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using namespace hangbook::testing;

namespace {

constexpr int hangs = 220;
constexpr int bridles = 160;

std::string named(const char* what, int number) {
  return std::string(what) + ' ' + std::to_string(number);
}

/// Opens some of its seated joints to stops of their own, shuts others against opening, and adds a line that
/// pulls at the foot to some.
void vary(Hang& hang, RandomHangs& by, int number) {
  for (Element& each : hang.stack) {
    if (auto* seated = std::get_if<Seated>(&each.joint); seated != nullptr && number % 3 != 0) {
      seated->openToDeg = number % 41 == 1 ? 95.0 : by.between(0.2, 4.0);
    }
  }
  if (number % 5 == 1 && !std::holds_alternative<SidePair>(hang.bar.picks)) {
    hang.chain.reset();
    std::erase_if(hang.stack, [](const Element& each) { return std::holds_alternative<Pivot>(each.joint); });
  }
  if (number % 13 == 4 && !hang.stack.empty()) { // what weighs nothing loads nothing
    hang.stack.back().mass = 0.0;
  }
  if (number % 4 == 2) {
    PullBack pull;
    pull.element = std::max(1, static_cast<int>(hang.stack.size()) - by.oneOf(2));
    pull.at = {by.between(-0.8, -0.2), by.between(-0.6, 0.0)};
    pull.lineDeg = by.between(60.0, 150.0);
    if (by.oneOf(2) == 0 || std::holds_alternative<ForeAftPair>(hang.bar.picks)) {
      pull.force = by.between(50.0, 1500.0);
    } else {
      pull.tiltDeg = by.between(-14.0, 4.0);
    }
    hang.pullBack = pull;
  }
}

PieceDoubt doubtOf(RandomHangs& by, double scale) {
  return {scale * by.between(0.0, 1.0), scale * by.between(0.0, 2.0), 0.01 * scale * by.between(0.0, 1.0),
          0.002 * scale * by.between(0.0, 1.0)};
}

Doubts doubtsOf(const Hang& hang, RandomHangs& by, int number) {
  const double scale = number % 7 == 0 ? 0.0 : number % 7 == 1 ? 4.0 : 1.0;
  Doubts doubts{doubtOf(by, scale),
                doubtOf(by, scale),
                {},
                0.0001 * scale * by.between(0.0, 1.0),
                0.0002 * scale * by.between(0.0, 1.0)};
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    doubts.stack.push_back(doubtOf(by, scale));
  }
  return doubts;
}

void solved(std::vector<Line>& lines, const Hang& hang, const std::string& name, RandomHangs& by) {
  lines.push_back(lineOf(name + " solve", [&](Line& line) {
    const Statics statics = solve(hang);
    add(line, statics);
    for (const JointStatics& joint : statics.joints) {
      for (int pin = 0; pin < joint.pinCount; ++pin) {
        const SidePin side = onSide(joint, joint.pinLoads[static_cast<std::size_t>(pin)],
                                    by.between(0.5, 0.7), by.between(0.4, 1.2));
        line.number(side.force);
        line.number(static_cast<int>(side.side));
      }
    }
    if (!hang.pullBack) {
      add(line, layOut(hang, statics));
      line.number(standsAsAssembled(hang.stack, statics, hang.chain ? hang.chain->held : 0) ? 1 : 0);
      for (const double rise : {-0.31, -0.02, 0.013, 0.2}) {
        const auto uneven = unevenBy(hang.bar, statics, rise);
        line.number(uneven ? std::optional(uneven->turnDeg) : std::nullopt);
        line.number(uneven ? std::optional(uneven->loads[0]) : std::nullopt);
        line.number(uneven ? std::optional(uneven->loads[1]) : std::nullopt);
        line.number(riseForShare(hang.bar, statics, 0.5 + rise));
      }
    }
  }));
}

void settledShape(std::vector<Line>& lines, const Hang& hang, const std::string& name, RandomHangs& by,
                  int number) {
  lines.push_back(lineOf(name + " settle", [&](Line& line) {
    add(line, settle(hang));
    add(line, layOut(hang, standing(hang)));
  }));
  const Doubts doubts = doubtsOf(hang, by, number);
  lines.push_back(lineOf(name + " build", [&](Line& line) {
    const Statics as = standing(hang);
    for (const BuildStep& step : buildSteps(hang, as)) {
      add(line, step);
    }
    const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, as);
    add(line, worst);
    if (doubts.none()) {
      line.plain("sure");
    }
    add(line, unfavourable(hang, as, worst, doubts));
  }));
  if (number % 3 == 0) {
    lines.push_back(lineOf(name + " changes", [&](Line& line) {
      const Statics as = carried(hang);
      const std::array<double, 2> readings{as.pickLoads[0].load * by.between(0.7, 1.3),
                                           as.pickLoads[1].load * by.between(0.8, 1.2)};
      for (const Change& change : singleChanges(hang, readings)) {
        add(line, change);
        line.number(missOf(change, readings, as.pickCount));
      }
    }));
  }
}

void marks(std::vector<Line>& lines, const Hang& hang, const std::string& name) {
  if (!hang.chain) {
    return;
  }
  lines.push_back(lineOf(name + " marks", [&](Line& line) {
    const PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, hang.chain->held);
    for (const MarkAngle& each : usableMarks(triangle, hang.chain->pitch, hang.chain->fixed)) {
      line.number(each.mark);
      line.number(each.angleDeg);
      line.number(each.length);
    }
    for (const double angle : {-21.0, -7.5, 3.0}) {
      line.number(lengthAt(triangle, angle));
      const auto first =
          firstMarkThatReaches(lengthAt(triangle, angle), hang.chain->pitch, hang.chain->fixed);
      line.number(first ? std::optional<double>(*first) : std::nullopt);
      const PivotAngles angles = anglesAt(triangle, lengthAt(triangle, angle));
      line.number(angles.count);
      line.number(angles.deg[0]);
      line.number(angles.deg[1]);
      const NeighbouringMarks beside =
          neighbouringMarks(triangle, hang.chain->pitch, hang.chain->fixed, angle + 0.3);
      for (const auto& each : {beside.shorter, beside.longer}) {
        line.number(each ? std::optional<double>(each->mark) : std::nullopt);
        line.number(each ? std::optional(each->angleDeg) : std::nullopt);
      }
    }
    const auto usable = usableMarks(triangle, hang.chain->pitch, hang.chain->fixed);
    if (!usable.empty()) { // an angle that falls on a mark
      const NeighbouringMarks on = neighbouringMarks(triangle, hang.chain->pitch, hang.chain->fixed,
                                                     usable[usable.size() / 2].angleDeg);
      line.number(on.shorter ? std::optional<double>(on.shorter->mark) : std::nullopt);
      line.number(on.longer ? std::optional<double>(on.longer->mark) : std::nullopt);
    }
  }));
}

/// Many more shapes that settle, a hundred to a line: what happens seldom on the way down is among them.
void manySettled(std::vector<Line>& lines, RandomHangs& by) {
  for (int group = 0; group < 25; ++group) {
    lines.push_back(lineOf(named("settled group", group), [&](Line& line) {
      for (int number = 0; number < 100; ++number) {
        Hang hang = by.next(number % 3, static_cast<Held>(number / 3 % 3));
        for (Element& each : hang.stack) {
          if (auto* seated = std::get_if<Seated>(&each.joint)) {
            seated->openToDeg = by.between(0.0, 25.0);
            seated->contact.x *= by.between(0.05, 1.0);
          }
        }
        if (hang.chain && number % 4 == 0) {
          hang.chain->mark += by.oneOf(3);
        }
        try {
          add(line, settle(hang));
        } catch (const Error& error) {
          line.word(error.what());
        }
      }
    }));
  }
}

/// Every actuator that gives a tilt, also where two of them lie close together near the highest and lowest
/// tilt.
void actuators(std::vector<Line>& lines, RandomHangs& by) {
  for (int group = 0; group < 20; ++group) {
    lines.push_back(lineOf(named("actuators", group), [&](Line& line) {
      for (int number = 0; number < 20; ++number) {
        Hang hang = by.next(0, Held::nothing);
        auto& pair = std::get<SidePair>(hang.bar.picks);
        pair.tiltTravelDeg = {-by.between(20.0, 90.0), by.between(20.0, 90.0)};
        pair.headMass *= by.between(1.0, 12.0);
        const Solver solver(hang.bar, hang.stack, hang.chain);
        const double pan = by.between(-25.0, 25.0);
        const Range reach = tiltReach(pair, solver.assembly(), pan);
        line.number(reach.low);
        line.number(reach.high);
        const TiltCurve curve(pair, solver.assembly(), pan);
        for (const double below : {1e-13, 1e-9, 1e-6, 1e-3, 0.1, 3.0}) {
          for (const double tilt : {reach.high - below, reach.low + below}) {
            for (const double found : actuatorsAt(curve, pair.tiltTravelDeg, std::sin(toRadians(tilt)))) {
              line.number(below > 1e-8 ? found : std::round(found)); // a flat top has no last digits
            }
          }
        }
      }
    }));
  }
}

void add(Line& line, const Bridle& bridle) {
  testing::add(line, bridle.apex);
  for (const LegForce& leg : bridle.legs) {
    line.number(leg.tension);
    line.word(leg.slack ? "slack" : "taut");
    line.number(leg.length);
    line.number(leg.fromHorizontalDeg);
    testing::add(line, leg.onPoint);
    line.number(leg.vertical());
    line.number(leg.horizontal());
  }
}

void bridled(std::vector<Line>& lines, RandomHangs& by, int number) {
  std::vector<Vec3> points;
  const int count = 2 + by.oneOf(2);
  for (int i = 0; i < count; ++i) {
    points.push_back({by.between(-2, 2), by.between(-3, 3), by.between(-0.5, 0.5)});
  }
  Vec3 load{0.0, 0.0, -by.between(500, 9000)};
  if (number % 3 == 0 && count == 3) {
    load.x = by.between(-300, 300);
    load.y = by.between(-300, 300);
  }
  const double part = by.between(0.1, 0.9);
  Vec3 apex = part * points[0] + (1.0 - part) * points[1];
  if (count == 3) {
    const double third = by.between(number % 7 == 0 ? -0.4 : 0.05, 0.6);
    apex = (1.0 - third) * apex + third * points[2];
  }
  apex.z = by.between(number % 11 == 0 ? 0.6 : -4.0, -0.7);
  const std::vector<double> lengths = legLengths(points, apex);
  lines.push_back(lineOf(named("bridle", number) + " at", [&](Line& line) {
    for (const double length : lengths) {
      line.number(length);
    }
    add(line, bridleAt(points, apex, load));
  }));
  std::vector<BridleLeg> legs;
  for (std::size_t i = 0; i < points.size(); ++i) {
    legs.push_back({points[i], lengths[i] + by.between(-0.05, 0.1),
                    number % 2 == 0 ? std::numeric_limits<double>::infinity() : by.between(2e5, 3e6)});
  }
  lines.push_back(lineOf(named("bridle", number) + " settled", [&](Line& line) {
    const Bridle settled = settleBridle(legs, load);
    add(line, settled);
    testing::add(line, apexShift(settled, apex));
    for (BridleLeg& leg : legs) {
      leg.stiffness = std::numeric_limits<double>::infinity();
    }
    for (const double tension : worstOfTwo(legs, load)) {
      line.number(tension);
    }
  }));
}

void madeUp(std::vector<Line>& lines, RandomHangs& by, int number) {
  std::vector<SteelLength> steels;
  for (int i = 0; i < 1 + by.oneOf(4); ++i) {
    steels.push_back({0.01 * (15 + by.oneOf(300)), by.oneOf(4)});
  }
  const MakeUpWish wish{by.between(0.4, 6.0), by.between(0.0, 0.2),
                        by.oneOf(4) == 0 ? 0.0 : by.between(0.04, 0.12), 1 + by.oneOf(6), by.oneOf(5)};
  lines.push_back(lineOf(named("make-up", number), [&](Line& line) {
    const auto made = shortestMakeUp(steels, wish);
    line.plain(made ? std::to_string(made->pieces()) : "none");
    if (made) {
      for (const int each : made->steels) {
        line.number(each);
      }
      line.number(made->shackles);
      line.number(made->length);
    }
  }));
}

/// What is no hang: the same hang with one figure that cannot be, each named by its place.
void refused(std::vector<Line>& lines, RandomHangs& by, int number) {
  Hang hang = by.next(number % 3, static_cast<Held>(number / 3 % 3));
  const std::array<double, 8> odd{std::nan(""), 0.0, -1.0, 100.0, 100.001, 180.5, -30.0, 1e300};
  const double figure = odd[static_cast<std::size_t>(number) % odd.size()];
  Element& some = hang.stack[static_cast<std::size_t>(by.oneOf(static_cast<int>(hang.stack.size())))];
  switch (number % 19) {
  case 0:
    hang.bar.frameMass = figure * 1000;
    break;
  case 1:
    hang.bar.frameCg.x = figure;
    break;
  case 2:
    hang.bar.stackPin.z = figure;
    break;
  case 3:
    some.mass = figure * 1000;
    break;
  case 4:
    some.cg.z = figure;
    break;
  case 5:
    some.nextPin = Vec2{figure, 0.1};
    break;
  case 6:
    some.outline[1].x = figure;
    break;
  case 7:
    hang.set.panDeg = figure;
    break;
  case 8:
    hang.set.tiltDeg = figure;
    break;
  case 9:
    hang.set.actuatorDeg = figure;
    break;
  case 10:
    some.joint = Seated{figure, {-0.5, 0.0}, 0.0};
    break;
  case 11:
    some.joint = Seated{0.0, {figure, 0.0}, 0.0};
    break;
  case 12:
    some.joint = Pinned{0.0, {Vec2{figure, 0.0}, Vec2{-0.1, 0.0}}};
    break;
  case 13:
    some.joint = Pivot{{figure, 0.0}};
    break;
  case 14:
    hang.chain = Chain{figure, 0.08, 4, 1};
    break;
  case 15:
    hang.chain = Chain{0.0225, figure, 4, 1};
    break;
  case 16:
    hang.chain = Chain{0.0225, 0.08, number % 2 == 0 ? 0 : 100001, 1};
    break;
  case 17:
    hang.chain = Chain{0.0225, 0.08, 4, number % 2 == 0 ? 0 : 40};
    break;
  default:
    some.joint = Seated{0.0, {-0.5, 0.0}, figure};
    break;
  }
  lines.push_back(lineOf(named("refused", number), [&](Line& line) { add(line, solve(hang)); }));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(hangs_come_out_as_kept) {
  std::vector<Line> lines;
  RandomHangs by(20261125);
  for (int number = 0; number < hangs; ++number) {
    Hang hang = by.next();
    vary(hang, by, number);
    const std::string name = named("hang", number);
    if (hang.stack.empty()) {
      continue;
    }
    marks(lines, hang, name);
    solved(lines, hang, name, by);
    hang.pullBack.reset();
    settledShape(lines, hang, name, by, number);
  }
  for (int number = 0; number < bridles; ++number) {
    bridled(lines, by, number);
    madeUp(lines, by, number);
  }
  for (int number = 0; number < 19 * 8; ++number) {
    refused(lines, by, number);
  }
  manySettled(lines, by);
  actuators(lines, by);
  compareWithKept(lines, "hangs.txt");
}

BOOST_AUTO_TEST_SUITE_END()
