// SPDX-License-Identifier: GPL-3.0-or-later
// Hangs of every kind at a hundredth, a ten-thousandth and less of their weight and size. Nobody builds one;
// but nothing in the statics is of a size of its own, so that where a bound of rounding or a comparison with
// nothing stands too high, it shows.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/bridle.h"
#include "hang/chain.h"
#include "hang/make_up.h"
#include "hang/uneven.h"
#include "kept/hang_lines.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using namespace hangbook::testing;

namespace {

struct Scale {
  double mass;
  double length;
};

Vec2 times(double factor, Vec2 place) {
  return {factor * place.x, factor * place.z};
}

/// The same hang in other units, as it were.
Hang scaled(Hang hang, Scale by) {
  if (auto* side = std::get_if<SidePair>(&hang.bar.picks)) {
    side->pickSpacing *= by.length;
    side->headMass *= by.mass;
    side->headCg = times(by.length, side->headCg);
    side->tiltAxis = times(by.length, side->tiltAxis);
  } else if (auto* two = std::get_if<ForeAftPair>(&hang.bar.picks)) {
    two->frontPick = times(by.length, two->frontPick);
    two->rearPick = times(by.length, two->rearPick);
  } else {
    auto& one = std::get<SinglePick>(hang.bar.picks);
    one.pick = times(by.length, one.pick);
  }
  hang.bar.frameMass *= by.mass;
  hang.bar.frameCg = times(by.length, hang.bar.frameCg);
  hang.bar.stackPin = times(by.length, hang.bar.stackPin);
  hang.bar.chainAnchor = times(by.length, *hang.bar.chainAnchor);
  for (Element& each : hang.stack) {
    each.mass *= by.mass;
    each.cg = times(by.length, each.cg);
    each.nextPin = times(by.length, *each.nextPin);
    each.chainEye = times(by.length, *each.chainEye);
    for (Vec2& corner : each.outline) {
      corner = times(by.length, corner);
    }
    if (auto* seated = std::get_if<Seated>(&each.joint)) {
      seated->contact = times(by.length, seated->contact);
    } else if (auto* pinned = std::get_if<Pinned>(&each.joint)) {
      pinned->pins = {times(by.length, pinned->pins[0]), times(by.length, pinned->pins[1])};
    }
  }
  if (hang.chain) {
    hang.chain->pitch *= by.length;
    hang.chain->fixed *= by.length;
  }
  return hang;
}

PieceDoubt some(RandomHangs& by, Scale scale) {
  return {scale.mass * by.between(0.0, 1.0), scale.mass * by.between(0.0, 2.0),
          scale.length * by.between(0.0, 0.01), scale.length * by.between(0.0, 0.002)};
}

Doubts doubtsOf(const Hang& hang, RandomHangs& by, Scale scale) {
  Doubts doubts{some(by, scale), some(by, scale), {}, 1e-4 * scale.length, 2e-4 * scale.length};
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    doubts.stack.push_back(some(by, scale));
  }
  return doubts;
}

void marks(Line& line, const Hang& hang) {
  const PivotTriangle triangle = pivotTriangle(hang.bar, hang.stack, hang.chain->held);
  for (const MarkAngle& each : usableMarks(triangle, hang.chain->pitch, hang.chain->fixed)) {
    line.number(each.mark);
    line.number(each.angleDeg);
  }
  for (const double angle : {-21.0, -7.5, 3.0}) {
    const double straight = lengthAt(triangle, angle);
    const PivotAngles angles = anglesAt(triangle, straight);
    line.number(angles.count);
    line.number(angles.deg[0]);
    const auto first = firstMarkThatReaches(straight, hang.chain->pitch, hang.chain->fixed);
    line.number(first ? std::optional<double>(*first) : std::nullopt);
  }
}

void hangLines(std::vector<Line>& lines, const Hang& hang, RandomHangs& by, Scale scale, int number) {
  const std::string name = "dwarf " + std::to_string(number);
  const double big = 1.0 / std::min(scale.mass, scale.length);
  const auto lineFor = [&](const char* what, auto figures) {
    lines.push_back(lineOf(name + what, [&](Line& line) {
      line.magnify(big);
      figures(line);
    }));
  };
  lineFor("", [&](Line& line) {
    const Statics statics = solve(hang);
    add(line, statics);
    for (const double rise : {-0.3, -0.02, 0.2}) {
      const auto uneven = unevenBy(hang.bar, statics, rise * scale.length);
      line.number(uneven ? std::optional(uneven->loads[0]) : std::nullopt);
      line.number(riseForShare(hang.bar, statics, 0.5 + rise));
    }
  });
  lineFor(" settled", [&](Line& line) { add(line, settle(hang)); });
  lineFor(" told", [&](Line& line) {
    const Statics as = standing(hang);
    const std::vector<BuildStep> steps = buildSteps(hang, as);
    const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, as);
    add(line, worst);
    const Doubts doubts = doubtsOf(hang, by, scale);
    Doubting doubting(hang, doubts);
    add(line, doubting.at(as, worst));
    for (const BuildStep& step : doubting.steps(as, worst, steps)) {
      add(line, step);
    }
  });
  if (hang.chain) {
    lineFor(" marks", [&](Line& line) { marks(line, hang); });
  }
  if (number % 3 == 0) {
    lineFor(" changes", [&](Line& line) {
      const Statics as = carried(hang);
      for (const Change& change :
           singleChanges(hang, {0.9 * as.pickLoads[0].load, 1.2 * as.pickLoads[1].load})) {
        add(line, change);
      }
    });
  }
}

void bridleLines(std::vector<Line>& lines, RandomHangs& by, Scale scale, int number) {
  const auto at = [&](double x, double y, double z) {
    return Vec3{scale.length * x, scale.length * y, scale.length * z};
  };
  std::vector<Vec3> points{at(-2.0, by.between(-1, 1), 0.0), at(by.between(1, 2), -1.0, 0.1)};
  if (number % 2 == 0) {
    points.push_back(at(by.between(-1, 1), 2.0, -0.1));
  }
  Vec3 apex = at(0.0, 0.0, by.between(-3, -1));
  if (number % 2 != 0) {
    apex = 0.5 * (points[0] + points[1]) + apex;
  }
  const Vec3 load{0.0, 0.0, -scale.mass * by.between(500, 9000)};
  Line line("dwarf bridle " + std::to_string(number));
  line.magnify(1.0 / std::min(scale.mass, scale.length));
  try {
    std::vector<BridleLeg> legs;
    const std::vector<double> lengths = legLengths(points, apex);
    for (std::size_t i = 0; i < points.size(); ++i) {
      legs.push_back(
          {points[i], lengths[i] * by.between(0.999, 1.01),
           number % 3 == 0 ? scale.mass * by.between(2e5, 3e6) : std::numeric_limits<double>::infinity()});
    }
    for (const Bridle& bridle : {bridleAt(points, apex, load), settleBridle(legs, load)}) {
      add(line, bridle.apex);
      for (const LegForce& leg : bridle.legs) {
        line.number(leg.tension);
        line.word(leg.slack ? "slack" : "taut");
        add(line, leg.onPoint);
      }
    }
  } catch (const Error& error) {
    line.word(error.what());
  }
  lines.push_back(line);
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(dwarf_hangs_come_out_as_kept) {
  const std::array<Scale, 6> scales{
      {{1e-2, 0.1}, {1e-4, 1.0}, {1.0, 1e-3}, {1e-5, 1e-2}, {1e-3, 1e-4}, {1e-5, 1e-3}}};
  std::vector<Line> lines;
  RandomHangs by(777);
  for (int number = 0; number < 216; ++number) {
    const Scale scale = scales.at(static_cast<std::size_t>(number) % scales.size());
    Hang hang = by.next(number / 6 % 3, static_cast<Held>(number / 18 % 3));
    for (Element& each : hang.stack) {
      if (auto* seated = std::get_if<Seated>(&each.joint); seated != nullptr && number % 5 < 3) {
        seated->openToDeg = by.between(0.1, 4.0);
      }
    }
    hangLines(lines, scaled(hang, scale), by, scale, number);
    bridleLines(lines, by, scale, number);
  }
  compareWithKept(lines, "dwarf_hangs.txt");
}

BOOST_AUTO_TEST_SUITE_END()
