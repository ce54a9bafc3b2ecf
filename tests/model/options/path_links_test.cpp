// SPDX-License-Identifier: GPL-3.0-or-later
// Each link of a load path by its own figures, put in by hand.
#include <boost/test/unit_test.hpp>

#include <vector>

#include "load_fixture.h"
#include "options/load_path.h"
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
