// SPDX-License-Identifier: GPL-3.0-or-later
// Where a cabinet stands in the chain's straight line, by figures put in by hand.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>

#include "options/weight_limits.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// A chain straight down from (0, 0) to (0, −1) at the second cabinet; the first one has the outline given.
struct Line {
  Case option;
  Settled settled;
  catalogue::CabinetType cabinet;
  catalogue::ChainType chain;
  catalogue::Join join;

  explicit Line(const std::vector<hang::Vec2>& outline) {
    chain.limit = kilonewtons(10);
    join.kind = catalogue::JointKind::pinned;
    option.cabinets = {&cabinet, &cabinet};
    option.joins = {&join, &join};
    option.chain = &chain;
    option.held = 2;
    auto limits = std::make_shared<WeightLimits>();
    limits->dynamic.value = limits->liftShare.value = limits->accessory.value = 1.0;
    option.weight = limits;
    settled.statics.chain = hang::ChainStatics{1.0, 1.0, 0.0, 100.0, false, 100.0};
    settled.build.carried = hang::CarriedWorst::begun(2);
    settled.layout.forward = {1.0, 0.0, 0.0};
    settled.layout.left = {0.0, 1.0, 0.0};
    settled.layout.up = {0.0, 0.0, 1.0};
    settled.layout.chainAnchor = hang::Vec3{0.0, 0.0, 0.0};
    settled.layout.elements.resize(2);
    for (const hang::Vec2 corner : outline) {
      settled.layout.elements[0].outline.push_back({corner.x, 0.0, corner.z});
    }
    settled.layout.elements[1].chainEye = hang::Vec3{0.0, 0.0, -1.0};
  }

  Verdict verdict() const { return chainRule.evaluate(option, &settled, 8.0).verdict; }
  /// The same hang turned by a pan of 45° and leaning forward by 23°.
  Line turned() const {
    Line other = *this;
    hang::Layout& layout = other.settled.layout;
    const auto turn = [](hang::Vec3& at) {
      const double tipped = std::cos(0.4) * at.x - std::sin(0.4) * at.z;
      at.z = std::sin(0.4) * at.x + std::cos(0.4) * at.z;
      const double across = at.y;
      at.x = std::sqrt(0.5) * tipped - std::sqrt(0.5) * across;
      at.y = std::sqrt(0.5) * tipped + std::sqrt(0.5) * across;
    };
    for (hang::Vec3* each :
         {&layout.forward, &layout.left, &layout.up, &*layout.chainAnchor, &*layout.elements[1].chainEye}) {
      turn(*each);
    }
    std::ranges::for_each(layout.elements[0].outline, turn);
    return other;
  }
  /// The same behind the bar as before it, and the corners taken the other way round.
  Verdict mirrored() const {
    Line other = *this;
    for (hang::Vec3& corner : other.settled.layout.elements[0].outline) {
      corner.x = -corner.x;
    }
    BOOST_TEST(other.verdict() == verdict());
    auto& outline = other.settled.layout.elements[0].outline;
    std::reverse(outline.begin(), outline.end());
    BOOST_TEST(other.verdict() == verdict());
    return verdict();
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(chain_line)

BOOST_AUTO_TEST_CASE(a_cabinet_across_the_line_leaves_its_pull_not_known) {
  BOOST_TEST(Line({{-0.5, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {-0.5, -0.6}}).mirrored() == Verdict::unproven);
  BOOST_TEST(Line({{-0.5, -0.3}, {0.001, -0.4}, {-0.5, -0.6}}).mirrored() == Verdict::unproven);
}

/// However the hang is panned and tilted.
BOOST_AUTO_TEST_CASE(in_its_way_is_counted_in_the_hangs_own_plane) {
  const auto turned = [](const std::vector<hang::Vec2>& outline) { return Line(outline).turned().verdict(); };
  BOOST_TEST(turned({{-0.5, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {-0.5, -0.6}}) == Verdict::unproven);
  BOOST_TEST(turned({{-0.5, -0.3}, {0.05, -0.4}, {-0.5, -0.6}}) == Verdict::unproven);
  BOOST_TEST(turned({{0.05, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {0.05, -0.6}}) == Verdict::holds);
  BOOST_TEST(turned({{-0.5, -0.3}, {-0.05, -0.3}, {-0.05, -0.6}, {-0.5, -0.6}}) == Verdict::holds);
  BOOST_TEST(turned({{-0.5, 0.6}, {0.5, 0.6}, {0.5, 0.1}, {-0.5, 0.1}}) == Verdict::holds);
  BOOST_TEST(turned({{-0.5, -1.1}, {0.5, -1.1}, {0.5, -1.6}, {-0.5, -1.6}}) == Verdict::holds);
}

BOOST_AUTO_TEST_CASE(a_cabinet_beside_above_or_below_it_does_not) {
  BOOST_TEST(Line({{0.1, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {0.1, -0.6}}).mirrored() == Verdict::holds);
  BOOST_TEST(Line({{-0.5, 0.6}, {0.5, 0.6}, {0.5, 0.1}, {-0.5, 0.1}}).mirrored() == Verdict::holds);
  BOOST_TEST(Line({{-0.5, -1.1}, {0.5, -1.1}, {0.5, -1.6}, {-0.5, -1.6}}).mirrored() == Verdict::holds);
}

/// Of a chain without a limit that is told, not what lies across it.
BOOST_AUTO_TEST_CASE(what_is_not_known_of_the_chain_is_told_first) {
  Line line({{-0.2, -0.4}, {0.2, -0.4}, {0.2, -0.6}, {-0.2, -0.6}});
  const Use across = chainRule.evaluate(line.option, &line.settled, 8.0);
  BOOST_TEST(across.verdict == Verdict::unproven);
  BOOST_TEST(across.which == 0);
  line.chain.limit.reset();
  const Use unknown = chainRule.evaluate(line.option, &line.settled, 8.0);
  BOOST_TEST(unknown.verdict == Verdict::unproven);
  BOOST_TEST(unknown.which == -1);
  BOOST_TEST(unknown.why != across.why);
}

/// A corner, an edge or an end that just touches is not in the way.
BOOST_AUTO_TEST_CASE(what_only_touches_it_does_not) {
  BOOST_TEST(Line({{0.0, -0.4}, {0.5, -0.3}, {0.5, -0.6}}).mirrored() == Verdict::holds);
  BOOST_TEST(Line({{0.0, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {0.0, -0.6}}).mirrored() == Verdict::holds);
  BOOST_TEST(Line({{-0.5, 0.0}, {0.5, 0.0}, {0.5, 0.4}, {-0.5, 0.4}}).mirrored() == Verdict::holds);
  BOOST_TEST(Line({{-0.5, -1.0}, {0.5, -1.0}, {0.5, -1.4}, {-0.5, -1.4}}).mirrored() == Verdict::holds);
}

/// The chain's eye lies within the cabinet that it holds: that one is not in its way.
BOOST_AUTO_TEST_CASE(what_the_chain_holds_is_not_in_its_way) {
  Line line({{0.1, -0.3}, {0.5, -0.3}, {0.5, -0.6}, {0.1, -0.6}});
  for (const auto& [x, z] :
       {std::pair(-0.5, -0.8), std::pair(0.5, -0.8), std::pair(0.5, -1.4), std::pair(-0.5, -1.4)}) {
    line.settled.layout.elements[1].outline.push_back({x, 0.0, z});
  }
  BOOST_TEST(line.verdict() == Verdict::holds);
}

/// Where the line ends inside of the outline it crosses one edge alone, whichever corner is told first.
BOOST_AUTO_TEST_CASE(a_line_that_ends_in_a_cabinet_crosses_it) {
  std::vector<hang::Vec2> around{{-0.5, -0.6}, {0.5, -0.6}, {0.5, -1.6}, {-0.5, -1.6}};
  for (std::size_t first = 0; first < around.size(); ++first) {
    BOOST_TEST(Line(around).mirrored() == Verdict::unproven);
    std::rotate(around.begin(), around.begin() + 1, around.end());
  }
  std::vector<hang::Vec2> three{{-0.5, -0.6}, {0.5, -0.6}, {0.0, -1.9}};
  for (std::size_t first = 0; first < three.size(); ++first) {
    BOOST_TEST(Line(three).mirrored() == Verdict::unproven);
    std::rotate(three.begin(), three.begin() + 1, three.end());
  }
}

/// Whatever it pulls on the way beyond the hang as set is told, and nothing where it is no more.
BOOST_AUTO_TEST_CASE(what_it_pulls_on_the_way_is_told) {
  Line line({{0.1, -0.3}, {0.5, -0.3}, {0.5, -0.6}});
  Snapshot snapshot;
  line.option.snapshot = &snapshot;
  const auto told = [&](double built) {
    line.settled.build.carried.chain = built;
    const Use use = chainRule.evaluate(line.option, &line.settled, 8.0);
    return chainRule.explain(line.option, &line.settled, 8.0, use).text;
  };
  line.settled.statics.chain->tension = line.settled.statics.chain->most = 0.1;
  BOOST_TEST(told(0.9).contains(QStringLiteral(", and 0.00 kN")), told(0.9).toStdString());
  BOOST_TEST(told(0.1 * (1.0 + 1e-8)).contains(QStringLiteral(", and 0.00 kN")));
  BOOST_TEST(!told(0.1).contains(QStringLiteral(", and")), told(0.1).toStdString());
  line.settled.statics.chain->slack = 0.01234;
  line.settled.statics.chain->tension = line.settled.statics.chain->most = 0.0;
  BOOST_TEST(told(0.0).contains(QStringLiteral("(it has 12.3 mm of slack)")), told(0.0).toStdString());
  line.settled.statics.chain->most = 100.0;
  BOOST_TEST(told(0.0).contains(QStringLiteral("its slack of 12.3 mm lasts")), told(0.0).toStdString());
}

BOOST_AUTO_TEST_CASE(slack_on_a_pivot_fails_and_beside_pinned_joints_does_not) {
  Line line({{0.1, -0.3}, {0.5, -0.3}, {0.5, -0.6}});
  line.settled.statics.chain->tension = 0.0;
  BOOST_TEST(line.verdict() == Verdict::holds);
  line.join.kind = catalogue::JointKind::pivot;
  BOOST_TEST(line.verdict() == Verdict::fails);
  line.settled.statics.chain->tension = 0.001;
  BOOST_TEST(line.verdict() == Verdict::holds);
}

/// More on the way to the hang than as set counts; less does not.
BOOST_AUTO_TEST_CASE(the_worst_step_of_the_build_counts) {
  Line line({{0.1, -0.3}, {0.5, -0.3}, {0.5, -0.6}});
  line.settled.build.carried.chain = 99.0;
  BOOST_TEST(chainRule.evaluate(line.option, &line.settled, 8.0).value == 0.1);
  line.settled.build.carried.chain = 10000.0;
  BOOST_TEST(chainRule.evaluate(line.option, &line.settled, 8.0).value == 10.0);
  BOOST_TEST(line.verdict() == Verdict::tight);
  line.settled.build.carried.chain = 10001.0;
  BOOST_TEST(line.verdict() == Verdict::fails);
  line.settled.statics.chain->most = 10000.0; // and however little more it is
  line.settled.build.carried.chain = 10000.0;
  BOOST_TEST(line.verdict() == Verdict::tight);
  line.settled.build.carried.chain = 10000.05;
  BOOST_TEST(line.verdict() == Verdict::fails);
  line.settled.build.carried = {}; // nobody has worked it out
  BOOST_TEST(line.verdict() == Verdict::unproven);
}

BOOST_AUTO_TEST_SUITE_END()
