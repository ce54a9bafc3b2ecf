// SPDX-License-Identifier: GPL-3.0-or-later
// Of random hangs, every corner of their doubts: what was found beforehand as the worst is never below any of
// them, and not far beyond the worst of them.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <vector>

#include "hang/build_loads.h"
#include "hang/doubt.h"
#include "hang/doubt_uneven.h"
#include "hang/layout.h"
#include "hang/settle.h"
#include "hang/sides.h"
#include "hang/solve.h"
#include "hang/uneven.h"
#include "quantity/quantity.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::hang;
using hangbook::testing::RandomHangs;

namespace {

/// One figure in doubt: moved to its lower end (−1) or its upper one (1).
using Figure = std::function<void(Hang&, int)>;

double endOf(double lower, double upper, int sign) {
  return sign < 0 ? -lower : upper;
}

/// Both coordinates of one place.
void addPlace(std::vector<Figure>& figures, std::function<Vec2&(Hang&)> place, double eachWay) {
  figures.push_back([=](Hang& hang, int sign) { place(hang).x += sign * eachWay; });
  figures.push_back([=](Hang& hang, int sign) { place(hang).z += sign * eachWay; });
}

void addElement(std::vector<Figure>& figures, const Hang& hang, const Doubts& doubts, std::size_t i) {
  const PieceDoubt doubt = doubts.stack[i];
  figures.push_back(
      [=](Hang& at, int sign) { at.stack[i].mass += endOf(doubt.lighter, doubt.heavier, sign); });
  addPlace(
      figures, [=](Hang& at) -> Vec2& { return at.stack[i].cg; }, doubt.centre);
  if (hang.stack[i].nextPin) {
    addPlace(
        figures, [=](Hang& at) -> Vec2& { return *at.stack[i].nextPin; }, doubt.place);
  }
  if (hang.chain && static_cast<std::size_t>(hang.chain->held) == i + 1) {
    addPlace(
        figures, [=](Hang& at) -> Vec2& { return *at.stack[i].chainEye; }, doubt.place);
  }
  if (std::holds_alternative<Seated>(hang.stack[i].joint)) {
    figures.push_back(
        [=](Hang& at, int sign) { std::get<Seated>(at.stack[i].joint).contact.x += sign * doubt.place; });
  }
  if (std::holds_alternative<Pinned>(hang.stack[i].joint)) {
    for (const std::size_t pin : {0U, 1U}) {
      addPlace(
          figures, [=](Hang& at) -> Vec2& { return std::get<Pinned>(at.stack[i].joint).pins[pin]; },
          doubt.place);
    }
  }
}

std::vector<Figure> figuresOf(const Hang& hang, const Doubts& doubts) {
  std::vector<Figure> figures;
  const PieceDoubt frame = doubts.frame;
  figures.push_back(
      [=](Hang& at, int sign) { at.bar.frameMass += endOf(frame.lighter, frame.heavier, sign); });
  addPlace(
      figures, [](Hang& at) -> Vec2& { return at.bar.frameCg; }, frame.centre);
  addPlace(
      figures, [](Hang& at) -> Vec2& { return at.bar.stackPin; }, frame.place);
  if (hang.chain) {
    addPlace(
        figures, [](Hang& at) -> Vec2& { return *at.bar.chainAnchor; }, frame.place);
    figures.push_back(
        [=](Hang& at, int sign) { at.chain->pitch += endOf(doubts.linkShorter, doubts.linkLonger, sign); });
  }
  const PieceDoubt head = doubts.head;
  if (std::holds_alternative<SidePair>(hang.bar.picks)) {
    const auto pair = [](Hang& at) -> SidePair& { return std::get<SidePair>(at.bar.picks); };
    figures.push_back(
        [=](Hang& at, int sign) { pair(at).headMass += endOf(head.lighter, head.heavier, sign); });
    figures.push_back([=](Hang& at, int sign) { pair(at).pickSpacing += sign * frame.place; });
    addPlace(
        figures, [=](Hang& at) -> Vec2& { return pair(at).headCg; }, head.centre);
    addPlace(
        figures, [=](Hang& at) -> Vec2& { return pair(at).tiltAxis; }, head.place);
  } else if (std::holds_alternative<ForeAftPair>(hang.bar.picks)) {
    addPlace(
        figures, [](Hang& at) -> Vec2& { return std::get<ForeAftPair>(at.bar.picks).frontPick; },
        frame.place);
    addPlace(
        figures, [](Hang& at) -> Vec2& { return std::get<ForeAftPair>(at.bar.picks).rearPick; }, frame.place);
  } else {
    addPlace(
        figures, [](Hang& at) -> Vec2& { return std::get<SinglePick>(at.bar.picks).pick; }, frame.place);
  }
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    addElement(figures, hang, doubts, i);
  }
  return figures;
}

/// Figures by name, each the worse the greater it is; some corners have no such figure.
using Figures = std::map<std::string, double>;

double forceOn(const JointStatics& joint, std::size_t pin) {
  const double one = onSide(joint, joint.pinLoads[pin], 0.6, 0.8).force;
  return joint.end ? std::max(one, onSide(joint, joint.end->pinLoads[pin], 0.6, 0.8).force) : one;
}

void addJoint(const JointStatics& joint, const std::string& name, Figures& into) {
  for (std::size_t pin = 0; pin < static_cast<std::size_t>(joint.pinCount); ++pin) {
    into["pin " + std::to_string(pin) + name] = forceOn(joint, pin);
  }
  into["opens" + name] = joint.openDeg;
  const auto greatest = [](const std::optional<double>& one, const std::optional<double>& other) {
    return std::max(one.value_or(0.0), other.value_or(0.0));
  };
  const auto& end = joint.end;
  into["stop" + name] = greatest(joint.stop, end ? end->stop : std::nullopt);
  if (joint.contact) {
    into["contact" + name] = greatest(joint.contact, end ? end->contact : std::nullopt);
    into["not pressed" + name] =
        -(end && end->contact ? std::min(*joint.contact, *end->contact) : *joint.contact);
  }
}

/// On the way to the hang as set.
void addCarried(const CarriedWorst& carried, Figures& into) {
  if (carried.unknown) {
    return;
  }
  into["carried by the chain"] = carried.chain;
  for (std::size_t i = 0; i < carried.joints.size(); ++i) {
    const JointMost& most = carried.joints[i].most;
    const std::string name = " of joint " + std::to_string(i);
    into["carried by pin 0" + name] = most.pins[0];
    into["carried by pin 1" + name] = most.pins[1];
    into["carried by the contact" + name] = most.contact;
    into["carried by the stop" + name] = most.stop;
    into["rolled on the way" + name] = most.roll;
    into["across on the way" + name] = most.sideways;
  }
}

Figures figuresIn(const Statics& statics, const BuildWorst& build) {
  Figures all{{"mass", statics.mass}};
  for (std::size_t pick = 0; pick < statics.pickCount; ++pick) {
    all["pick " + std::to_string(pick)] = statics.pickLoads[pick].load;
    if (!build.unknown) {
      all["build " + std::to_string(pick)] = build.most[pick];
    }
  }
  if (!build.unknown && statics.pickCount == 2) {
    all["least share"] = -build.leastShare;
    all["unlike"] = build.unlike;
  }
  if (statics.chain) {
    all["chain"] = statics.chain->most;
  }
  for (std::size_t i = 0; i < statics.joints.size(); ++i) {
    addJoint(statics.joints[i], " of joint " + std::to_string(i), all);
  }
  addCarried(build.carried, all);
  return all;
}

struct Solved {
  Hang hang;
  Statics statics;
  BuildWorst build;
  Figures figures;
};

/// A corner at which the tilt is out of reach, or the chain too short, is refused: nothing hangs so.
std::optional<Solved> solved(const Hang& hang) {
  try {
    const Statics statics = standing(hang);
    const BuildWorst build = BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
    return Solved{hang, statics, build, figuresIn(statics, build)};
  } catch (const Error& error) {
    BOOST_TEST(static_cast<int>(error.trouble()) == static_cast<int>(Trouble::notPossible));
    return std::nullopt;
  }
}

/// Height of every outline corner above the lowest pick.
std::vector<double> heights(const Solved& at) {
  const Layout layout = layOut(at.hang, at.statics);
  double pick = layout.picks.front().z;
  for (const Vec3& each : layout.picks) {
    pick = std::min(pick, each.z);
  }
  std::vector<double> all;
  for (const PlacedElement& element : layout.elements) {
    for (const Vec3& corner : element.outline) {
      all.push_back(corner.z - pick);
    }
  }
  return all;
}

struct Bound {
  Unfavourable worst;
  Figures figures;
  std::vector<double> heights; ///< as stated
  Solved stated;
  Doubts doubts;
  std::vector<BuildStep> steps;

  Bound(const Solved& of, const Doubts& within)
      : worst(unfavourable(of.hang, of.statics, of.build, within)),
        figures(figuresIn(worst.statics, worst.build)), heights(::heights(of)), stated(of), doubts(within),
        steps(Doubting(of.hang, within).steps(of.statics, of.build, buildSteps(of.hang, of.statics))) {}

  void holds(const Solved& corner) const {
    for (const auto& [what, value] : corner.figures) {
      const auto bound = figures.find(what);
      if (bound == figures.end()) {
        BOOST_TEST((worst.build.unknown || worst.build.carried.unknown || value <= 0.0),
                   what << " has no bound");
        continue;
      }
      BOOST_TEST(value <= bound->second + 1e-7 * std::max(1.0, std::abs(bound->second)),
                 what << ": " << value << " above " << bound->second);
    }
    BOOST_TEST(worst.leastMass <= corner.statics.mass * (1.0 + 1e-12));
    for (std::size_t pick = 0; pick < corner.statics.pickCount; ++pick) {
      BOOST_TEST(worst.leastPick[pick] <= corner.statics.pickLoads[pick].load + 1e-6);
    }
    if (corner.statics.side) {
      within("actuator", corner.statics.side->actuatorDeg, worst.actuatorDeg, 1e-6);
      within("swing", corner.statics.side->headSwingDeg, worst.swingDeg, 1e-6);
    }
    within("tilt", corner.statics.tiltDeg, worst.tiltDeg, 1e-6);
    for (std::size_t i = 0; i < corner.statics.joints.size(); ++i) {
      within("angle", corner.statics.joints[i].angleDeg, worst.jointDeg[i], 1e-6);
      within("aim", corner.statics.joints[i].aimDeg, worst.aimDeg[i], 1e-4);
    }
    const std::vector<double> there = ::heights(corner);
    for (std::size_t i = 0; i < there.size(); ++i) {
      BOOST_TEST(std::abs(there[i] - heights[i]) <= worst.height + 1e-9, "height " << there[i] - heights[i]);
    }
    holdsApart(corner);
    holdsBuilt(corner);
  }

  /// One pick higher than it was set.
  void holdsApart(const Solved& corner) const {
    for (const double rise : {0.0, 0.05, 0.3}) {
      for (const std::size_t raised : {std::size_t{0}, std::size_t{1}}) {
        const auto at = unevenBy(corner.hang.bar, corner.statics, raised == 0 ? rise : -rise);
        const auto bound = unevenWithin(stated.hang.bar, doubts, stated.statics, worst, raised, rise);
        if (at && bound) {
          BOOST_TEST(at->loads[raised] <= bound->raised * (1.0 + 1e-9) + 1e-6);
          BOOST_TEST(at->loads[1 - raised] >= bound->other - 1e-6 - 1e-9 * std::abs(bound->other));
        }
        BOOST_TEST((at || !bound || corner.statics.pickCount < 2));
      }
    }
  }

  /// Each step of the build, where it is known at all.
  void holdsBuilt(const Solved& corner) const {
    const std::vector<BuildStep> there = buildSteps(corner.hang, corner.statics);
    BOOST_TEST_REQUIRE(there.size() == steps.size());
    for (std::size_t i = 0; i < there.size(); ++i) {
      for (std::size_t pick = 0; pick < corner.statics.pickCount; ++pick) {
        const double off = 1e-6 + 1e-9 * std::abs(steps[i].most[pick]);
        BOOST_TEST((std::isnan(steps[i].most[pick]) || there[i].most[pick] <= steps[i].most[pick] + off),
                   "step " << i << ": " << there[i].most[pick] << " above " << steps[i].most[pick]);
        BOOST_TEST((std::isnan(steps[i].least[pick]) || there[i].least[pick] >= steps[i].least[pick] - off),
                   "step " << i << ": " << there[i].least[pick] << " below " << steps[i].least[pick]);
      }
    }
  }

private:
  static void within(const char* what, double value, Span span, double slack) {
    BOOST_TEST((value >= span.low - slack && value <= span.high + slack),
               what << ": " << value << " not in " << span.low << " to " << span.high);
  }
};

/// A random hang, as a crew sets it: by tilt. Its seated joints cannot open, or a little.
std::optional<Hang> nextHang(RandomHangs& random) {
  Hang hang = random.next();
  for (Element& element : hang.stack) {
    if (auto* seated = std::get_if<Seated>(&element.joint)) {
      seated->openToDeg = random.oneOf(3) == 0 ? 2.0 : 0.0;
    }
  }
  hang.set.panDeg *= random.oneOf(2);
  try {
    if (hang.set.actuatorDeg) {
      hang.set.tiltDeg = solve(hang).tiltDeg;
      hang.set.actuatorDeg.reset();
    }
    standing(hang);
  } catch (const Error&) {
    return std::nullopt;
  }
  return hang;
}

Doubts doubtsOf(RandomHangs& random, const Hang& hang) {
  const auto piece = [&](double mass) {
    return PieceDoubt{0.02 * mass * random.oneOf(2), random.between(0.0, 0.03) * mass,
                      random.between(0.0, 0.01), random.between(0.0, 0.0015)};
  };
  Doubts doubts;
  if (const auto* pair = std::get_if<SidePair>(&hang.bar.picks)) {
    doubts.head = piece(pair->headMass);
  }
  doubts.frame = piece(hang.bar.frameMass);
  for (const Element& each : hang.stack) {
    doubts.stack.push_back(piece(each.mass));
  }
  if (hang.chain) {
    doubts.linkShorter = random.between(0.0, 0.002) * hang.chain->pitch;
    doubts.linkLonger = random.between(0.002, 0.006) * hang.chain->pitch;
  }
  return doubts;
}

Hang cornerOf(const Hang& hang, const std::vector<Figure>& figures, const std::vector<int>& signs) {
  Hang corner = hang;
  for (std::size_t k = 0; k < figures.size(); ++k) {
    figures[k](corner, signs[k]);
  }
  return corner;
}

/// All outline corners go with their places' doubt, each as the signs of its element say.
void addOutlines(std::vector<Figure>& figures, const Hang& hang, const Doubts& doubts) {
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    figures.push_back([=](Hang& at, int sign) {
      for (Vec2& corner : at.stack[i].outline) {
        corner.z += sign * doubts.stack[i].place;
      }
    });
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubt)

BOOST_AUTO_TEST_CASE(no_corner_is_worse_than_the_worst) {
  constexpr int turnedAtOnce =
      7; // all 128 corners of so many figures, the others at an end drawn for the hang
  RandomHangs random(20261125);
  int hangs = 0;
  int corners = 0;
  int unbounded = 0;
  while (hangs < 160) {
    const std::optional<Hang> hang = nextHang(random);
    if (!hang) {
      continue;
    }
    ++hangs;
    const Doubts doubts = doubtsOf(random, *hang);
    const Bound bound(*solved(*hang), doubts);
    if (!bound.worst.bounded) {
      ++unbounded;
      continue;
    }
    std::vector<Figure> figures = figuresOf(*hang, doubts);
    addOutlines(figures, *hang, doubts);
    std::vector<int> signs(figures.size());
    std::generate(signs.begin(), signs.end(), [&] { return random.oneOf(2) * 2 - 1; });
    std::vector<std::size_t> turned(turnedAtOnce);
    std::generate(turned.begin(), turned.end(),
                  [&] { return static_cast<std::size_t>(random.oneOf(static_cast<int>(figures.size()))); });
    for (unsigned bits = 0; bits < (1U << turned.size()); ++bits) {
      for (std::size_t n = 0; n < turned.size(); ++n) {
        signs[turned[n]] = (bits >> n & 1U) != 0 ? 1 : -1;
      }
      if (const auto corner = solved(cornerOf(*hang, figures, signs))) {
        bound.holds(*corner);
        ++corners;
      }
    }
  }
  BOOST_TEST_MESSAGE(hangs << " hangs, " << corners << " corners, " << unbounded << " not bounded");
  BOOST_TEST(corners > 8000);
  BOOST_TEST(unbounded * 4 < hangs);
}

BOOST_AUTO_TEST_CASE(the_worst_is_not_far_beyond_the_corner_that_a_figure_asks_for) {
  // Each figure's own worst corner, by the sign of what each input does to it; summed over hangs.
  struct Sums {
    double bound = 0.0;
    double corner = 0.0;
  };
  RandomHangs random(7);
  std::map<std::string, Sums> sums;
  for (int hangs = 0; hangs < 120;) {
    const std::optional<Hang> hang = nextHang(random);
    if (!hang) {
      continue;
    }
    ++hangs;
    const Doubts doubts = doubtsOf(random, *hang);
    const Solved stated = *solved(*hang);
    const Bound bound(stated, doubts);
    const bool opens = std::any_of(bound.worst.statics.joints.begin(), bound.worst.statics.joints.end(),
                                   [](const JointStatics& joint) { return joint.openDeg > 0.0; });
    if (!bound.worst.bounded || opens) {
      continue; // a joint anywhere up to its stop is far from any one shape
    }
    const std::vector<Figure> figures = figuresOf(*hang, doubts);
    std::map<std::string, std::vector<int>> signs;
    for (const Figure& figure : figures) {
      Hang moved = *hang;
      figure(moved, 1);
      const auto up = solved(moved);
      moved = *hang;
      figure(moved, -1);
      const auto down = solved(moved);
      for (const auto& [what, value] : stated.figures) {
        const bool falls = up && down && up->figures.contains(what) && down->figures.contains(what) &&
                           up->figures.at(what) < down->figures.at(what);
        signs[what].push_back(falls ? -1 : 1);
      }
    }
    for (const auto& [what, value] : stated.figures) {
      const auto corner = solved(cornerOf(*hang, figures, signs[what]));
      if (corner && corner->figures.contains(what) && bound.figures.contains(what)) {
        const bool built = what.starts_with("carried");
        Sums& sum = sums[what.substr(0, what.find(built ? " of joint" : " "))];
        sum.corner += corner->figures.at(what) - value;
        sum.bound += bound.figures.at(what) - value;
        bound.holds(*corner);
      }
    }
  }
  // How many times what the worst corner adds the bound may add, over all random hangs.
  const std::map<std::string, double> most{{"mass", 1.0 + 1e-9}, {"pick", 1.3}, {"build", 1.6},
                                           {"least", 2.5},       {"pin", 4.0},  {"chain", 5.0}};
  for (const auto& [what, sum] : sums) {
    BOOST_TEST_MESSAGE(what << ": bound adds " << sum.bound << ", corners " << sum.corner << ", ratio "
                            << sum.bound / sum.corner);
    if (most.contains(what)) {
      BOOST_TEST(sum.bound <= most.at(what) * sum.corner, what);
    }
  }
}

BOOST_AUTO_TEST_CASE(without_doubt_nothing_moves) {
  RandomHangs random(3);
  for (int hangs = 0; hangs < 60;) {
    const std::optional<Hang> hang = nextHang(random);
    if (!hang) {
      continue;
    }
    ++hangs;
    Doubts none;
    none.stack.resize(hang->stack.size());
    const Solved stated = *solved(*hang);
    const Bound bound(stated, none);
    if (!bound.worst.bounded) {
      continue;
    }
    const bool opens = std::any_of(bound.worst.statics.joints.begin(), bound.worst.statics.joints.end(),
                                   [](const JointStatics& joint) { return joint.openDeg > 0.0; });
    for (const auto& [what, value] : stated.figures) {
      if (!opens && what.starts_with("pick")) {
        BOOST_TEST(bound.figures.at(what) - value <= 1e-6 * std::max(1.0, std::abs(value)), what);
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_figure_that_is_not_known_leaves_nothing_bounded) {
  RandomHangs random(5);
  std::optional<Hang> hang;
  while (!hang) {
    hang = nextHang(random);
  }
  const Solved stated = *solved(*hang);
  Doubts doubts;
  doubts.stack.resize(hang->stack.size());
  doubts.stack[0].centre = std::nan("");
  BOOST_TEST(!unfavourable(stated.hang, stated.statics, stated.build, doubts).bounded);
}

BOOST_AUTO_TEST_CASE(a_pin_that_carries_nothing_as_stated_carries_what_the_centre_may_turn_over) {
  // By hand, level: 100 kg straight below the rear one of two pins 0.25 m apart, so that the front one
  // carries nothing. A centre 1 cm off turns over 100 · 0.01/0.25 = 4 kg: front 4 kg either way, rear 104 kg.
  Hang hang;
  hang.bar.frameMass = 40.0;
  hang.bar.picks = ForeAftPair{{0.5, 0.5}, {-0.5, 0.5}};
  Element element;
  element.mass = 100.0;
  element.cg = {-0.125, -0.3};
  element.outline = {{0.2, 0.0}, {0.2, -0.5}, {-0.2, -0.5}, {-0.2, 0.0}};
  element.joint = Pinned{0.0, {Vec2{0.125, 0.0}, Vec2{-0.125, 0.0}}};
  hang.stack = {element};
  hang.set.tiltDeg = 0.0;
  const std::optional<Solved> stated = solved(hang);
  BOOST_TEST_REQUIRE(stated.has_value());
  BOOST_TEST_REQUIRE(stated->statics.joints[0].pinForces[0] == 0.0);
  Doubts doubts;
  doubts.stack.resize(1);
  doubts.stack[0].centre = 0.01;
  const JointStatics worst = unfavourable(hang, stated->statics, stated->build, doubts).statics.joints[0];
  constexpr auto near = [] { return boost::test_tools::tolerance(1e-9); };
  BOOST_TEST(worst.pinForces[0] == 2.0 * standardGravity, near());
  BOOST_TEST(worst.pinLoads[0].x == 0.0);
  BOOST_TEST(worst.pinLoads[0].z == -4.0 * standardGravity, near());
  BOOST_TEST(worst.pinForces[1] == 52.0 * standardGravity, near());
}

BOOST_AUTO_TEST_SUITE_END()
