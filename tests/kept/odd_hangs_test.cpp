// SPDX-License-Identifier: GPL-3.0-or-later
// Hangs that are seldom built and all the same possible: bars that cannot be turned straight ahead, joints
// that open by what nobody stated, eyes before their pin, doubts of one kind alone; against what was kept.
#include <boost/test/unit_test.hpp>

#include "hang/carried.h"
#include "hang/solve.h"
#include "kept/hang_lines.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using namespace hangbook::testing;

namespace {

/// Where its chain holds a pivot; 0 where it cannot.
double solved(const Hang& hang, std::size_t pivot) {
  try {
    return solve(hang).joints[pivot].angleDeg;
  } catch (const Error&) {
    return 0.0;
  }
}

/// One thing about it that is odd, by its number.
void makeOdd(Hang& hang, RandomHangs& by, int number) {
  if (auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    if (number % 4 == 0) { // never straight ahead
      pair->panTravelDeg = number % 8 == 0 ? Range{by.between(2, 8), 30.0} : Range{-30.0, -by.between(2, 8)};
      hang.set.panDeg = number % 8 == 0 ? by.between(9, 30) : -by.between(9, 30);
    } else if (number % 4 == 1) { // at an end of its travel
      hang.set.panDeg = number % 8 == 1 ? 30.0 : -30.0;
    } else if (number % 4 == 2) {
      hang.set.panDeg = 0.0;
    }
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    Element& each = hang.stack[i];
    if (auto* seated = std::get_if<Seated>(&each.joint)) {
      const int way = number / 9 % 3 == 0 ? (number + static_cast<int>(i)) % 4 : 3 + number / 9 % 3;
      seated->openToDeg = way == 0               ? 90.0
                          : way == 2             ? 89.9
                          : way == 1 || way == 4 ? 0.0
                                                 : by.between(0.2, 3.0);
      seated->contact.x *= number % 3 == 0 ? 1.0 : by.between(0.3, 0.9);
    }
    if (auto* pivot = std::get_if<Pivot>(&each.joint); pivot != nullptr && number % 5 == 2) {
      const double narrow = by.between(0.2, 6.0); // about where its chain holds it
      const double chained = solved(hang, i);
      pivot->travelDeg = {chained - narrow * by.between(0.1, 0.9), chained + narrow * by.between(0.1, 0.9)};
    }
    if (number % 7 == 3 && each.chainEye) { // what pulls there opens the joints above
      each.chainEye->x = by.between(0.02, 0.3);
    }
  }
  if (number % 9 == 5) {
    hang.bar.frameMass = 0.0;
  }
}

PieceDoubt doubtOf(RandomHangs& by, double scale) {
  return {scale * by.between(0.0, 1.0), scale * by.between(0.0, 2.0), 0.01 * scale * by.between(0.0, 1.0),
          0.002 * scale * by.between(0.0, 1.0)};
}

PieceDoubt only(int kind, double scale) {
  PieceDoubt doubt;
  (kind == 0   ? doubt.lighter
   : kind == 1 ? doubt.heavier
   : kind == 2 ? doubt.centre
               : doubt.place) = kind < 2 ? scale : 0.005 * scale;
  return doubt;
}

/// Of one kind, or of one part, alone.
Doubts doubtsOf(const Hang& hang, RandomHangs& by, int number) {
  Doubts doubts;
  doubts.stack.resize(hang.stack.size());
  const double scale = by.between(0.2, 2.0);
  switch (number % 7) {
  case 0:
    doubts.head = only(number / 7 % 4, scale);
    break;
  case 1:
    doubts.frame = only(number / 7 % 4, scale);
    break;
  case 2:
    doubts.stack.front() = only(number / 7 % 4, scale);
    break;
  case 3:
    doubts.stack.back() = only(number / 7 % 4, scale);
    break;
  case 4:
    doubts.linkShorter = 0.0001 * scale;
    break;
  case 5:
    doubts.linkLonger = 0.0001 * scale;
    break;
  default:
    break;
  }
  return doubts;
}

void told(Line& line, const Hang& hang, const Doubts& doubts) {
  const Statics as = standing(hang);
  const std::vector<BuildStep> steps = buildSteps(hang, as);
  const BuildWorst worst = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, as);
  for (const BuildStep& step : steps) {
    add(line, step);
  }
  add(line, worst);
  line.plain(doubts.none() ? "sure" : "");
  Doubting doubting(hang, doubts);
  add(line, doubting.at(as, worst));
  for (const BuildStep& step : doubting.steps(as, worst, steps)) {
    add(line, step);
  }
  add(line, doubting.at(as, worst)); // asked again it says the same
}

void all(std::vector<Line>& lines, const std::string& name, const Hang& hang, const Doubts& doubts) {
  lines.push_back(lineOf(name, [&](Line& line) { add(line, solve(hang)); }));
  lines.push_back(lineOf(name + " settled", [&](Line& line) { add(line, settle(hang)); }));
  lines.push_back(lineOf(name + " told", [&](Line& line) { told(line, hang, doubts); }));
}

/// Centres about under or ahead of their pins, so that weight shuts most joints, some by little.
void shutByWeight(Hang& hang, RandomHangs& by, int number) {
  for (Element& each : hang.stack) {
    each.cg.x = by.between(number % 2 == 0 ? -0.05 : 0.0, 0.3);
    if (auto* seated = std::get_if<Seated>(&each.joint)) {
      seated->openToDeg = number % 7 == 3 ? 90.0 : by.between(0.2, 3.0);
    }
  }
  if (auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    pair->tiltTravelDeg = {-60.0, 60.0};
    if (number % 4 == 2) {
      hang.set.panDeg = 0.0;
    }
    if (number % 5 == 0) {
      pair->panTravelDeg = {by.between(1.0, 4.0), 30.0};
      hang.set.panDeg = by.between(5.0, 30.0);
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(odd_hangs_come_out_as_kept) {
  std::vector<Line> lines;
  RandomHangs by(20261126);
  for (int number = 0; number < 252; ++number) {
    Hang hang = by.next(number % 3, static_cast<Held>(number / 3 % 3));
    makeOdd(hang, by, number);
    const Doubts doubts = doubtsOf(hang, by, number);
    const std::string name = "odd hang " + std::to_string(number);
    all(lines, name, hang, doubts);
    if (number % 4 == 0) {
      lines.push_back(lineOf(name + " changes", [&](Line& line) {
        const Statics as = carried(hang);
        const std::array<double, 2> readings{0.9 * as.pickLoads[0].load, 1.2 * as.pickLoads[1].load};
        for (const Change& change : singleChanges(hang, readings)) {
          add(line, change);
        }
      }));
    }
  }
  compareWithKept(lines, "odd_hangs.txt");
}

BOOST_AUTO_TEST_CASE(hangs_that_weight_shuts_come_out_as_kept) {
  std::vector<Line> lines;
  RandomHangs by(20261127);
  for (int number = 0; number < 360; ++number) {
    Hang hang = by.next(number % 3, static_cast<Held>(number / 3 % 3));
    shutByWeight(hang, by, number);
    Doubts doubts;
    const double scale = number % 4 == 0 ? 4.0 : number % 4 == 1 ? 0.2 : 1.0;
    doubts.head = doubtOf(by, scale);
    doubts.frame = doubtOf(by, scale);
    for (std::size_t i = 0; i < hang.stack.size(); ++i) {
      doubts.stack.push_back(doubtOf(by, scale));
    }
    doubts.linkShorter = 0.0001 * by.between(0.0, scale);
    doubts.linkLonger = 0.0001 * by.between(0.0, scale);
    all(lines, "shut hang " + std::to_string(number), hang, doubts);
  }
  compareWithKept(lines, "shut_hangs.txt");
}

BOOST_AUTO_TEST_SUITE_END()
