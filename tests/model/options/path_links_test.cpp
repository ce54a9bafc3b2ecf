// SPDX-License-Identifier: GPL-3.0-or-later
// Each link of a load path by its own figures, put in by hand.
#include <boost/test/unit_test.hpp>

#include <vector>

#include "load_fixture.h"
#include "options/load_path.h"
#include "options/weight_limits.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::LoadCase;
using hangbook::testing::settledWith;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

std::vector<PathLink> ofKind(const std::vector<PathLink>& path, const char* kind) {
  std::vector<PathLink> found;
  for (const PathLink& link : path) {
    if (link.kind == QLatin1String(kind)) {
      found.push_back(link);
    }
  }
  return found;
}

/// Three seated joints that press with 100, 200 and 300 N, stop with 10, 20 and 30 N and hold 1, 2 and 3 N in
/// a pin of no moment; what each may take is set by a test.
struct Joints : LoadCase {
  catalogue::StackingTable table;
  std::vector<catalogue::CabinetType> cabinets = std::vector<catalogue::CabinetType>(3);
  std::vector<catalogue::Join> joins = std::vector<catalogue::Join>(3);
  Settled settled = settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true);

  Joints() {
    limits.dynamic.value = limits.liftShare.value = 1.0;
    for (std::size_t i = 0; i < 3; ++i) {
      cabinets[i].name = QStringLiteral("cabinet %1").arg(i);
      cabinets[i].width = metres(1.0);
      joins[i].kind = catalogue::JointKind::seated;
      joins[i].contactLimit = joins[i].stopLimit = joins[i].pinLimit = kilonewtons(1.0);
      joins[i].sideShare = 0.5;
      const double times = static_cast<double>(i) + 1.0;
      hang::JointStatics joint;
      joint.pinCount = 1;
      joint.pinLoads.at(0) = {0.0, 2.0 * times};
      joint.contact = 100.0 * times;
      joint.stop = 10.0 * times;
      settled.statics.joints.push_back(joint);
    }
  }
  Case option() const {
    Case made = LoadCase::option();
    made.table = &table;
    for (std::size_t i = 0; i < 3; ++i) {
      made.cabinets.push_back(&cabinets[i]);
      made.joins.push_back(&joins[i]);
    }
    return made;
  }
  std::vector<PathLink> links() const { return ofKind(loadPath(option(), settled, 8.0), "joint"); }
  /// Load and limit of each joint, N.
  void check(const std::vector<double>& loads, double limit) const {
    const std::vector<PathLink> told = links();
    BOOST_REQUIRE(told.size() == 3U);
    for (std::size_t i = 0; i < 3; ++i) {
      BOOST_TEST(1000.0 * told[i].loadKn == loads[i], near(1e-9));
      BOOST_TEST(1000.0 * told[i].limitKn.value() == limit, near(1e-9));
    }
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(path_links)

/// 4 kN and 3 kN at the picks, 1 kN of hoist and chain at each, factors of 3, whichever carries more.
BOOST_AUTO_TEST_CASE(a_hoist_is_told_by_its_own_pick) {
  const LoadCase of;
  for (const bool heavierLeft : {true, false}) {
    const double left = heavierLeft ? 4000.0 : 3000.0;
    const double right = 7000.0 - left;
    const auto hoists =
        ofKind(loadPath(of.option(), settledWith({left, right, left, right}, true), 8.0), "hoist");
    BOOST_REQUIRE(hoists.size() == 2U);
    BOOST_TEST(hoists[0].loadKn == (heavierLeft ? 15.0 : 12.0), near(1e-12));
    BOOST_TEST(hoists[1].loadKn == (heavierLeft ? 12.0 : 15.0), near(1e-12));
    BOOST_TEST(hoists[0].at.toStdString() == "left pick");
    BOOST_TEST(hoists[1].at.toStdString() == "right pick");
  }
}

/// Nothing may hang from what may carry nothing: that fails, and is no part of a limit.
BOOST_AUTO_TEST_CASE(of_a_limit_of_nothing_no_part_is_told) {
  LoadCase of;
  of.hoist.limit = kilonewtons(0.0);
  const auto hoists =
      ofKind(loadPath(of.option(), settledWith({4000.0, 3000.0, 4000.0, 3000.0}, true), 8.0), "hoist");
  BOOST_REQUIRE(hoists.size() == 2U);
  BOOST_TEST(hoists[0].limitKn.value() == 0.0);
  BOOST_TEST(!hoists[0].usePercent.has_value());
  BOOST_TEST(hoists[0].verdict == Verdict::fails);
}

/// Whatever part of a joint is its worst, as set, at the other end of what is in doubt or on the way: its
/// link tells its own, not that of a joint that carries more.
BOOST_AUTO_TEST_CASE(a_joint_is_told_by_its_own_parts) {
  Joints of;
  of.check({100.0, 200.0, 300.0}, 1000.0);
  for (catalogue::Join& join : of.joins) {
    join.stopLimit = newtons(50.0);
  }
  of.check({10.0, 20.0, 30.0}, 50.0);
  for (catalogue::Join& join : of.joins) {
    join.pinLimit = newtons(4.0);
  }
  of.check({1.0, 2.0, 3.0}, 4.0);
  for (catalogue::Join& join : of.joins) {
    join.contactLimit = newtons(500.0);
  }
  for (std::size_t i = 0; i < 3; ++i) {
    of.settled.statics.joints[i].end = hang::JointEnd{490.0 - 10.0 * static_cast<double>(i), {}, {}, {}};
  }
  of.check({490.0, 480.0, 470.0}, 500.0);
  of.settled.build.carried = hang::CarriedWorst::begun(3);
  of.settled.build.carried.unknown.reset();
  for (std::size_t i = 0; i < 3; ++i) {
    of.settled.build.carried.joints[i].most.contact = 600.0 - 20.0 * static_cast<double>(i);
  }
  of.check({600.0, 580.0, 560.0}, 500.0);
}

/// The worst of several joints is told by its own number, part and figures: as set, at the other end of what
/// is in doubt, on the way.
BOOST_AUTO_TEST_CASE(the_worst_of_several_joints_in_words) {
  Joints of;
  const auto words = [&of] {
    const Case option = of.option();
    return jointRule.explain(option, &of.settled, 8.0, jointRule.evaluate(option, &of.settled, 8.0))
        .text.toStdString();
  };
  BOOST_TEST(words().starts_with("The rear contact of element 3 (cabinet 2) pushes 0.30 kN; "), words());
  of.joins[1].stopLimit = newtons(25.0); // 20 of 25 N
  BOOST_TEST(words().starts_with("The rear stop of element 2 (cabinet 1) carries 0.02 kN; "), words());
  of.settled.statics.joints[2].end = hang::JointEnd{900.0, {}, {}, {}};
  BOOST_TEST(words().starts_with("The rear contact of element 3 (cabinet 2) pushes 0.90 kN (between 0.30 kN"),
             words());
  of.settled.build.carried = hang::CarriedWorst::begun(3);
  of.settled.build.carried.unknown.reset();
  of.settled.build.carried.joints[1].most.contact = 950.0;
  of.settled.build.carried.joints[1].contactAt = {hang::BuildStage::stacked, 1};
  BOOST_TEST(words().starts_with(
                 "The rear contact of element 2 (cabinet 1) pushes 0.95 kN, with 1 cabinet under the bar; "),
             words());
  of.joins[1].pinLimit = newtons(1.01); // 1 N of it
  BOOST_TEST(
      words().starts_with("On either side of element 2 (cabinet 1) the front pin takes 0.00 kN: 0.5 of the "),
      words());
}

/// Elements are counted from 1, below the bar.
BOOST_AUTO_TEST_CASE(a_joint_is_told_by_its_cabinet) {
  const auto links = Joints().links();
  BOOST_REQUIRE(links.size() == 3U);
  BOOST_TEST(links[0].at.toStdString() == "element 1, worst pin or contact");
  BOOST_TEST(links[2].at.toStdString() == "element 3, worst pin or contact");
  BOOST_TEST(links[0].link.toStdString() == "joint of cabinet 0");
  BOOST_TEST(links[2].link.toStdString() == "joint of cabinet 2");
}

BOOST_AUTO_TEST_SUITE_END()
