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
#include "hang/layout.h"
#include "hang/settle.h"
#include "hang/sides.h"
#include "hang/solve.h"
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

/// How far beyond what any corner gave the bound was, over all hangs: [what] -> bound's and corners' excess.
struct Tightness {
  double bound = 0.0;
  double corners = 0.0;
};

std::map<std::string, double> boundOf;
struct Checked {
  std::map<std::string, double> values{};
  const Unfavourable& worst;
  const Statics& nominal;
  std::map<std::string, double> beyond; ///< the corners' worst, above nominal
  std::map<std::string, double> bounds;

  void notAbove(const std::string& what, double value, double bound, double stated) {
    const double slack = 1e-7 * std::max(1.0, std::abs(bound));
    BOOST_TEST(value <= bound + slack, what << ": " << value << " above " << bound << ", stated " << stated);
    values[what] = value;
    boundOf[what] = bound;
    beyond[what] = std::max(beyond[what], value - stated);
    bounds[what] = bound - stated;
  }
  void within(const std::string& what, double value, Span span, double slack) {
    BOOST_TEST((value >= span.low - slack && value <= span.high + slack),
               what << ": " << value << " not in " << span.low << " to " << span.high);
  }

  void take(const Statics& at, const BuildWorst& build) {
    notAbove("mass", at.mass, worst.statics.mass, nominal.mass);
    for (std::size_t pick = 0; pick < at.pickCount; ++pick) {
      notAbove("pick " + std::to_string(pick), at.pickLoads[pick].load, worst.statics.pickLoads[pick].load,
               nominal.pickLoads[pick].load);
      if (!worst.build.unknown && !build.unknown) {
        notAbove("build " + std::to_string(pick), build.most[pick], worst.build.most[pick],
                 nominal.pickLoads[pick].load);
      }
    }
    if (!worst.build.unknown && !build.unknown && at.pickCount == 2) {
      notAbove("least share", -build.leastShare, -worst.build.leastShare, -build.leastShare);
      notAbove("unlike", build.unlike, worst.build.unlike, build.unlike);
    }
    if (at.side) {
      within("actuator", at.side->actuatorDeg, worst.actuatorDeg, 1e-6);
      within("swing", at.side->headSwingDeg, worst.swingDeg, 1e-6);
    }
    within("tilt", at.tiltDeg, worst.tiltDeg, 1e-6);
    if (at.chain) {
      notAbove("chain", at.chain->most, worst.statics.chain->most, nominal.chain->most);
    }
    for (std::size_t i = 0; i < at.joints.size(); ++i) {
      joint(at.joints[i], worst.statics.joints[i], nominal.joints[i], "joint " + std::to_string(i));
      within("angle", at.joints[i].angleDeg, worst.jointDeg[i], 1e-6);
      within("aim", at.joints[i].aimDeg, worst.aimDeg[i], 1e-4);
    }
  }

  void joint(const JointStatics& at, const JointStatics& bound, const JointStatics& stated,
             const std::string& name) {
    for (std::size_t pin = 0; pin < static_cast<std::size_t>(at.pinCount); ++pin) {
      const auto force = [&](const JointStatics& of) {
        const double one = onSide(of, of.pinLoads[pin], 0.6, 0.8).force;
        return of.end ? std::max(one, onSide(of, of.end->pinLoads[pin], 0.6, 0.8).force) : one;
      };
      notAbove(name + " pin", force(at), force(bound), force(stated));
    }
    BOOST_TEST(at.openDeg <= bound.openDeg + 1e-6, name << " opens");
    if (at.contact) {
      BOOST_TEST_REQUIRE(bound.contact.has_value());
      const double most = at.end && at.end->contact ? std::max(*at.contact, *at.end->contact) : *at.contact;
      notAbove(name + " contact", most, bound.end->contact.value(), stated.contact.value_or(0.0));
      const bool both = at.end && at.end->contact;
      const double least = both ? std::min(*at.contact, *at.end->contact) : *at.contact;
      BOOST_TEST(least >= *bound.contact - 1e-7 * std::max(1.0, std::abs(*bound.contact)),
                 name << " pressed");
    }
    if (at.stop && *at.stop > 1e-6) {
      BOOST_TEST_REQUIRE(bound.end->stop.has_value());
      notAbove(name + " stop", *at.stop, *bound.end->stop, stated.stop.value_or(0.0));
    }
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

BuildWorst buildOf(const Hang& hang, const Statics& statics) {
  return BuildUp(hang.bar, hang.stack, hang.chain).worst(hang.set, statics);
}

/// A pair whose corner cannot have its tilt is refused at that corner: nothing of it to compare.
bool takeCorner(Checked& checked, const Hang& corner) {
  try {
    const Statics statics = standing(corner);
    checked.take(statics, buildOf(corner, statics));
    return true;
  } catch (const Error& error) {
    BOOST_TEST(static_cast<int>(error.trouble()) == static_cast<int>(Trouble::notPossible));
    return false;
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubt)

BOOST_AUTO_TEST_CASE(no_corner_is_worse_than_the_worst_and_the_worst_is_not_far_beyond) {
  constexpr int figuresAtOnce = 7; // of those in doubt, drawn anew for each hang: 128 corners
  RandomHangs random(20261125);
  int hangs = 0;
  int corners = 0;
  int unbounded = 0;
  std::map<std::string, Tightness> tightness;
  while (hangs < 160) {
    const std::optional<Hang> hang = nextHang(random);
    if (!hang) {
      continue;
    }
    const Doubts doubts = doubtsOf(random, *hang);
    const Statics nominal = standing(*hang);
    const BuildWorst build = buildOf(*hang, nominal);
    const Unfavourable worst = unfavourable(*hang, nominal, build, doubts);
    ++hangs;
    if (!worst.bounded) {
      ++unbounded;
      continue;
    }
    Checked checked{{}, worst, nominal, {}, {}};
    const std::vector<Figure> all = figuresOf(*hang, doubts);
    std::vector<int> signs(all.size());
    std::vector<std::size_t> turned;
    for (std::size_t k = 0; k < all.size(); ++k) {
      signs[k] = random.oneOf(2) * 2 - 1;
    }
    for (int n = 0; n < figuresAtOnce; ++n) {
      turned.push_back(static_cast<std::size_t>(random.oneOf(static_cast<int>(all.size()))));
    }
    for (unsigned bits = 0; bits < (1U << figuresAtOnce); ++bits) {
      for (std::size_t n = 0; n < turned.size(); ++n) {
        signs[turned[n]] = (bits >> n & 1U) != 0 ? 1 : -1;
      }
      Hang corner = *hang;
      for (std::size_t k = 0; k < all.size(); ++k) {
        all[k](corner, signs[k]);
      }
      corners += takeCorner(checked, corner) ? 1 : 0;
    }
    for (const auto& [what, most] : checked.beyond) {
      std::string kind = what;
      std::erase_if(kind, [](char each) { return each >= '0' && each <= '9'; });
      tightness[kind].corners += std::max(0.0, most);
      tightness[kind].bound += checked.bounds.at(what);
    }
  }
  for (const auto& [what, sums] : tightness) {
    BOOST_TEST_MESSAGE(what << ": bound " << sums.bound << ", corners " << sums.corners << ", "
                            << sums.bound / sums.corners);
  }
  BOOST_TEST_MESSAGE(hangs << " hangs, " << corners << " corners, " << unbounded << " not bounded");
  BOOST_TEST(corners > 8000);
  BOOST_TEST(unbounded * 4 < hangs);
}

BOOST_AUTO_TEST_CASE(the_worst_is_not_far_beyond_the_corner_that_each_figure_asks_for) {
  RandomHangs random(7);
  std::map<std::string, Tightness> sums;
  std::map<std::string, std::pair<double, std::string>> far;
  for (int hangs = 0; hangs < 150;) {
    const std::optional<Hang> hang = nextHang(random);
    if (!hang) {
      continue;
    }
    ++hangs;
    const Doubts doubts = doubtsOf(random, *hang);
    const Statics nominal = standing(*hang);
    const BuildWorst build = buildOf(*hang, nominal);
    const Unfavourable worst = unfavourable(*hang, nominal, build, doubts);
    const bool opens = std::any_of(worst.statics.joints.begin(), worst.statics.joints.end(),
                                   [](const JointStatics& joint) { return joint.openDeg > 0.0; });
    if (!worst.bounded || opens) {
      continue;
    }
    const std::vector<Figure> all = figuresOf(*hang, doubts);
    const auto at = [&](const Hang& corner) -> std::map<std::string, double> {
      try {
        const Statics statics = standing(corner);
        Checked checked{{}, worst, nominal, {}, {}};
        checked.take(statics, buildOf(corner, statics));
        return checked.values;
      } catch (const Error&) {
        return {};
      }
    };
    std::map<std::string, std::vector<int>> signs;
    std::map<std::string, double> stated = at(*hang);
    for (std::size_t k = 0; k < all.size(); ++k) {
      Hang up = *hang;
      all[k](up, 1);
      Hang down = *hang;
      all[k](down, -1);
      const auto high = at(up);
      const auto low = at(down);
      for (const auto& [what, value] : stated) {
        signs[what].push_back(high.contains(what) && low.contains(what) && high.at(what) < low.at(what) ? -1
                                                                                                        : 1);
      }
    }
    for (const auto& [what, value] : stated) {
      Hang corner = *hang;
      for (std::size_t k = 0; k < all.size(); ++k) {
        all[k](corner, signs[what][k]);
      }
      const auto there = at(corner);
      if (!there.contains(what)) {
        continue;
      }
      Checked checked{{}, worst, nominal, {}, {}};
      std::string kind = what;
      std::erase_if(kind, [](char each) { return each >= '0' && each <= '9'; });
      sums[kind].corners += there.at(what) - value;
      const double bound = boundOf.at(what) - value;
      sums[kind].bound += bound;
      const double ratio = bound / (there.at(what) - value);
      if (ratio > far[kind].first)
        far[kind] = {ratio,
                     what + " n" + std::to_string(hang->stack.size()) + " held " +
                         std::to_string(hang->chain ? hang->chain->held : 0) + " kind " +
                         std::to_string(hang->chain ? hang->stack[hang->chain->held - 1].joint.index() : 9) +
                         " most " + std::to_string(nominal.chain ? nominal.chain->most : -1) + ".." +
                         std::to_string(nominal.chain ? worst.statics.chain->most : -1) + " T" +
                         std::to_string(nominal.chain ? nominal.chain->tension : -1) + ".." +
                         std::to_string(nominal.chain ? worst.statics.chain->tension : -1) + " piv " +
                         std::to_string(hang->chain ? worst.jointDeg[hang->chain->held - 1].width() : 0) +
                         " pan " + std::to_string(hang->set.panDeg) + " act " +
                         std::to_string(worst.actuatorDeg.width()) + " b " + std::to_string(bound) +
                         " nominal " + std::to_string(value)};
    }
  }
  for (const auto& [what, each] : sums) {
    BOOST_TEST_MESSAGE(what << ": bound " << each.bound << ", corners " << each.corners << ", "
                            << each.bound / each.corners << " farthest " << far[what].first << " "
                            << far[what].second);
  }
}

BOOST_AUTO_TEST_SUITE_END()
