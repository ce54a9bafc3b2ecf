// SPDX-License-Identifier: GPL-3.0-or-later
// What the bounds of a hang are made of, part by part: shapes within doubts, moments, ways up, picks, joints,
// one pick raised, pushes from the side; against what was kept. A part shows what the whole may hide, since
// of all steps and poses it tells the worst alone.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "hang/doubt_joints.h"
#include "hang/doubt_uneven.h"
#include "hang/gust.h"
#include "hang/solve.h"
#include "kept/hang_lines.h"
#include "kept/random_doubts.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using namespace hangbook::testing;

namespace {

/// Of every fourth weight shuts most joints; some joints open, some hangs are not panned or are level.
void vary(Hang& hang, RandomHangs& by, int number) {
  for (Element& each : hang.stack) {
    if (number % 4 == 1) {
      each.cg.x = by.between(-0.05, 0.3);
    }
    if (auto* seated = std::get_if<Seated>(&each.joint)) {
      seated->openToDeg = by.oneOf(3) == 0 ? 0.0 : number % 17 == 3 ? 95.0 : by.between(0.2, 4.0);
    }
  }
  if (number % 8 == 0) {
    hang.set.panDeg = 0.0;
  }
  if (number % 10 == 3 && hang.set.tiltDeg) {
    hang.set.tiltDeg = 0.0;
  }
}

void add(Line& line, const Span2& place) {
  testing::add(line, place.x);
  testing::add(line, place.z);
}

void add(Line& line, const HangingSpan& hanging) {
  testing::add(line, hanging.mass);
  add(line, hanging.centre);
}

void add(Line& line, const PickSpans& picks) {
  for (std::size_t pick = 0; pick < 2; ++pick) {
    testing::add(line, picks.load[pick]);
    testing::add(line, picks.share[pick]);
  }
}

void add(Line& line, const UpSpan& up) {
  add(line, up.up);
  for (const Span each : {up.left, up.swingDeg, up.tiltDeg}) {
    testing::add(line, each);
  }
}

void add(Line& line, const Shape& shape) {
  testing::add(line, shape.pivot);
  for (const PlacedSpan& piece : shape.placed) {
    for (const Span each : {piece.mass, piece.jointDeg, piece.turnRad, piece.turn.cosine, piece.turn.sine}) {
      testing::add(line, each);
    }
    for (const Span2& each : {piece.pin, piece.centre, piece.next}) {
      add(line, each);
    }
  }
  add(line, shape.hanging);
  if (shape.line) {
    add(line, shape.line->eye);
    add(line, shape.line->towardsAnchor);
  }
  for (const Span each : shape.closing) {
    testing::add(line, each);
  }
}

void moments(Line& line, const Hang& hang, const Doubts& doubts, const Shape& shape, RandomHangs& by) {
  const Span2 up{Span::around(by.between(-0.2, 0.2), 0.01), Span::around(by.between(0.9, 1.0), 0.01)};
  const std::size_t count = hang.stack.size();
  for (std::size_t i = 0; i < count; ++i) {
    testing::add(line, momentSpan(shape.placed, i, count, up));
    testing::add(line, momentSpan(shape.placed, i, count, up, {Span{-0.1, 0.05}, Span{-0.3, 0.1}},
                                  {count - 1, Span{-0.4, 0.3}}));
    add(line, forceSpan(shape.placed, i, up, count - 1, {Span{-0.2, 0.1}, Span{0.3, 0.5}}));
    testing::add(line, weightSpan(shape.placed, i));
    add(line, hangingSpan(hang, doubts, shape.placed, i));
  }
}

/// One shape in one way up.
void within(Line& line, const Hang& hang, const Doubts& doubts, HangShapes& shapes, const Shape& shape,
            const Statics& nominal, bool closed) {
  Within within{hang, doubts, nominal, shapes.held(), shapes.pivotHeld(), &shape, {}, {}};
  Span actuator;
  if (nominal.side) {
    actuator = actuatorWithin(hang, doubts, shape.hanging, nominal.tiltDeg, hang.set.panDeg,
                              nominal.side->actuatorDeg);
    testing::add(line, actuator);
    testing::add(line, actuatorWithin(hang, doubts, shape.hanging, 0.0, hang.set.panDeg, 0.0));
  }
  within.up = upWithin(hang, doubts, shape.hanging, nominal, actuator, closed);
  within.tension = within.findTension();
  add(line, within.up);
  testing::add(line, within.tension);
  add(line, picksWithin(hang, doubts, shape.hanging, hang.set.panDeg, actuator, nominal.tiltDeg));
  line.word(hang.chain && within.mayBeTaut() ? "may be taut" : "slack");
  Statics worst;
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    testing::add(line, within.gravity(i));
    if (std::holds_alternative<Seated>(hang.stack[i].joint)) {
      testing::add(line, within.push(i));
      line.word(within.surelyShut(i) ? "shut" : "may open");
    }
    worst.joints.push_back(worstJoint(within, i, nominal.joints[i]));
  }
  testing::add(line, worst);
}

void addShapes(std::vector<Line>& lines, const std::string& name, const Hang& hang, const Doubts& doubts,
               RandomHangs& by) {
  lines.push_back(lineOf(name + " shapes", [&](Line& line) {
    HangShapes shapes(hang, doubts, {-20.0, -4.0});
    if (shapes.pivotHeld()) {
      testing::add(line, shapes.shutPivot());
      testing::add(line, shapes.openPivot());
    }
    add(line, shapes.shut());
    add(line, shapes.open());
    if (hang.chain) {
      testing::add(line, chainSpan(hang, doubts));
      line.number(anchorToEyeDoubt(hang, doubts));
    }
    moments(line, hang, doubts, shapes.shut(), by);
    moments(line, hang, doubts, shapes.open(), by);
  }));
  lines.push_back(lineOf(name + " within", [&](Line& line) {
    const Statics nominal = standing(hang);
    HangShapes shapes(hang, doubts, {-20.0, -4.0});
    within(line, hang, doubts, shapes, shapes.shut(), nominal, true);
    within(line, hang, doubts, shapes, shapes.open(), nominal, false);
    const Span pivot = shapes.pivotHeld() ? shapes.shutPivot() : Span{};
    BuildWorst stated = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, nominal);
    for (const double pan : {stated.restPanDeg, 3.0}) {
      stated.restPanDeg = std::holds_alternative<SidePair>(hang.bar.picks) ? pan : 0.0;
      for (const StepWithin& step : stepsWithin(hang, doubts, stated, pivot)) {
        line.number(step.moment.cabinets);
        line.number(step.freely ? 1 : 0);
        line.number(step.weight);
        add(line, step.picks);
      }
    }
  }));
}

void raised(std::vector<Line>& lines, const std::string& name, const Hang& hang, const Doubts& doubts) {
  lines.push_back(lineOf(name + " raised", [&](Line& line) {
    const Statics nominal = standing(hang);
    const BuildWorst build = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, nominal);
    const Unfavourable worst = unfavourable(hang, nominal, build, doubts);
    line.number(worst.centreOff);
    for (const std::size_t pick : {std::size_t{0}, std::size_t{1}}) {
      for (const double rise : {0.0, 0.01, 0.2, 0.6}) {
        const auto uneven = unevenWithin(hang.bar, doubts, nominal, worst, pick, rise);
        line.plain(uneven ? "" : "-");
        if (uneven) {
          line.number(uneven->raised);
          line.number(uneven->other);
          line.number(uneven->part);
        }
      }
    }
  }));
}

void pushed(std::vector<Line>& lines, const std::string& name, const Hang& hang, const Doubts& doubts,
            RandomHangs& by, int number) {
  Places places{doubts.frame.place, {}};
  std::vector<SidePush> pushes;
  for (const PieceDoubt& each : doubts.stack) {
    places.elements.push_back(each.place);
    const SidePush one = bySwing(by.between(50, 4000), by.between(0.1, 1.5), by.between(0.0, 0.4),
                                 by.between(0.0, 1.0), by.between(0.0, 1.0));
    const SidePush two{by.between(0, 300), by.between(0, 200), by.between(0, 300), by.between(0, 200)};
    pushes.push_back(by.oneOf(7) == 0 ? SidePush{} : worseOf(one, two));
  }
  const double heavier = number % 3 == 0 ? 1.0 : by.between(1.0, 1.3);
  lines.push_back(lineOf(name + " pushed", [&](Line& line) {
    const Statics nominal = standing(hang);
    const std::vector<JointArms> arms = armsOf(hang.stack, heldBy(hang.chain), layOut(hang, nominal), places);
    for (const JointArms& each : arms) {
      for (const double figure : {each.contact, each.pinsApart, each.closing, each.lever}) {
        line.number(figure);
      }
    }
    for (const SidePush& each : pushes) {
      for (const double figure : {each.inPlane, each.turning, each.across, each.acrossTurning}) {
        line.number(figure);
      }
    }
    const Pushed found = inGust(hang.stack, heldBy(hang.chain), nominal, arms, pushes, heavier);
    line.number(found.tensionMost);
    line.number(found.tensionLeast);
    Statics most;
    for (const PushedJoint& joint : found.joints) {
      line.number(joint.contactLeast);
      most.joints.push_back(joint.most);
    }
    testing::add(line, most);
  }));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(parts_of_hangs_come_out_as_kept) {
  std::vector<Line> lines;
  RandomHangs by(20261128);
  for (int number = 0; number < 270; ++number) {
    Hang hang = by.next(number % 3, static_cast<Held>(number / 3 % 3));
    vary(hang, by, number);
    const Doubts doubts = doubtsOf(hang, by, number % 5 == 0 ? 0.2 : number % 5 == 1 ? 4.0 : 1.0);
    const std::string name = "part " + std::to_string(number);
    addShapes(lines, name, hang, doubts, by);
    raised(lines, name, hang, doubts);
    pushed(lines, name, hang, doubts, by, number);
  }
  compareWithKept(lines, "hang_parts.txt");
}

BOOST_AUTO_TEST_SUITE_END()
