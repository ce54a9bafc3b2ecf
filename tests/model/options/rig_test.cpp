// SPDX-License-Identifier: GPL-3.0-or-later
// What the makers' data become before anything is solved: the grid of tilts, and how far a fore-aft pair is
// tried.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include "options/house_figures.h"
#include "options/rig.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"
#include "support/example_hang.h"

using namespace hangbook;
using options::Rig;
using options::Snapshot;

namespace {

Rig rigOf(const Snapshot& show, std::size_t arrangement = 0) {
  const auto stacks = options::stacksOf(show.catalogue, show.catalogue.tables.front());
  const catalogue::BarType& bar = show.catalogue.bars.front();
  const options::House house(show.tour.house, show.venue.house, show.show.house);
  return options::rigFor(stacks.back(), bar, bar.arrangements.at(arrangement), &show.catalogue.chains.front(),
                         show.show.hangs.front(), show, house);
}

} // namespace

BOOST_AUTO_TEST_SUITE(rig)

BOOST_AUTO_TEST_CASE(the_bar_says_the_step_of_its_tilts) {
  const auto step = [](std::optional<Angle> stated) {
    Snapshot show = testing::smallHarbourShow();
    show.catalogue.bars.front().tiltStep = stated;
    return rigOf(show).tiltStepDeg;
  };
  BOOST_TEST(step(degrees(0.8)) == 0.8);
  BOOST_TEST(step(degrees(0.1)) == 0.1);
  BOOST_TEST(step(degrees(4)) == 4.0);
  BOOST_TEST(step(std::nullopt) == 0.5);
  BOOST_TEST(step(degrees(0)) == 0.5);
  BOOST_TEST(step(degrees(-1)) == 0.5);
}

/// Where there is more than one hole a setting names the angle; each that it names must be one of the
/// table's.
BOOST_AUTO_TEST_CASE(joints_with_more_than_one_hole_are_set) {
  Snapshot show = testing::smallHarbourShow();
  catalogue::StackingTable& table = show.catalogue.tables.front();
  for (catalogue::Join& join : table.joins) {
    if (join.kind != catalogue::JointKind::pivot) {
      join.angles = {degrees(0)};
    }
  }
  BOOST_TEST(rigOf(show).holes.empty());
  for (catalogue::Join& join : table.joins) {
    if (join.kind != catalogue::JointKind::pivot) {
      join.angles = {degrees(0), degrees(-2)};
    }
  }
  Rig rig = rigOf(show);
  BOOST_TEST_REQUIRE(rig.holes.size() >= 2U);
  BOOST_TEST(rig.holes[1].anglesDeg.size() == 2U);
  for (std::size_t wrong = 0; wrong < rig.holes.size(); ++wrong) {
    options::Setting setting;
    setting.holesDeg.assign(rig.holes.size(), -2.0);
    setting.holesDeg[wrong] = -1.0;
    QStringList missing;
    const std::string place = "holes[" + std::to_string(wrong) + "]";
    BOOST_CHECK_EXCEPTION(options::settle(rig, setting, missing), Error, [&place](const Error& error) {
      return std::string(error.what()).find(place) != std::string::npos;
    });
  }
}

BOOST_AUTO_TEST_CASE(a_fore_aft_pair_is_tried_as_far_as_its_hoists_may_differ) {
  const auto reach = [](double limitM, double frontX, double rearX, double rearZ) {
    Snapshot show = testing::smallHarbourShow();
    catalogue::BarType& bar = show.catalogue.bars.front();
    catalogue::PickArrangement two;
    two.picks = catalogue::Picks::foreAftPair;
    two.front = catalogue::Position{metres(frontX), metres(0)};
    two.rear = catalogue::Position{metres(rearX), metres(rearZ)};
    bar.arrangements = {two};
    bar.hoistOffsetLimit = metres(limitM);
    return rigOf(show).foreAftReachDeg;
  };
  const auto near = boost::test_tools::tolerance(1e-9);
  BOOST_TEST(reach(0.1, 0.4, -0.6, 0.0) == hang::toDegrees(std::asin(0.1)), near);
  BOOST_TEST(reach(0.1, 0.4, 0.0, 0.3) == hang::toDegrees(std::asin(0.2)), near); // 0.5 m apart, along both
  BOOST_TEST(reach(0.33, 0.4, -0.6, 0.0) == hang::toDegrees(std::asin(0.33)), near);
  BOOST_TEST(reach(0.35, 0.4, -0.6, 0.0) == 20.0); // beyond, nobody hangs anything
  BOOST_TEST(reach(5.0, 0.4, -0.6, 0.0) == 20.0);
  BOOST_TEST(reach(0.0, 0.4, -0.6, 0.0) == 0.0);
  BOOST_TEST(reach(0.1, 0.4, 0.4, 0.0) == 20.0); // two picks in one place set no angle
}

/// Half degrees within ±10°: 10° itself is one of them, though it comes out of a sine. Where only level lies
/// on the grid, nothing is said against it; where not even that does, it is said.
BOOST_AUTO_TEST_CASE(the_ends_of_the_tilts_are_on_the_grid) {
  Snapshot show = testing::smallHarbourShow();
  catalogue::BarType& bar = show.catalogue.bars.front();
  catalogue::PickArrangement& two = bar.arrangements.front();
  two.picks = catalogue::Picks::foreAftPair;
  two.front = catalogue::Position{metres(0.5), metres(0)};
  two.rear = catalogue::Position{metres(-0.5), metres(0)};
  bar.hoistOffsetLimit = metres(std::sin(hang::toRadians(10.0)));
  Rig rig = rigOf(show);
  const auto tilts = [&](double stepDeg) {
    rig.tiltStepDeg = stepDeg;
    const options::Settings all = options::settingsOf(rig, 0.0);
    std::vector<double> found;
    for (const options::Settled& each : all.settled) {
      found.push_back(each.setting.tiltDeg);
    }
    BOOST_TEST(!all.impossible.contains(QStringLiteral("no tilt on the grid")));
    return found;
  };
  const std::vector<double> half = tilts(0.5);
  BOOST_REQUIRE(!half.empty());
  BOOST_TEST(std::ranges::max(half) == 10.0);
  BOOST_TEST(std::ranges::min(half) == -10.0);
  BOOST_TEST(std::ranges::max(tilts(50.0)) == 0.0);
}

BOOST_AUTO_TEST_CASE(a_place_that_nobody_stated_is_no_place) {
  Snapshot show = testing::smallHarbourShow();
  show.catalogue.bars.front().frameCentreOfGravity.reset();
  for (catalogue::CabinetType& each : show.catalogue.cabinets) {
    each.centreOfGravity.reset();
  }
  const Rig rig = rigOf(show);
  BOOST_TEST(rig.missing.contains(QStringLiteral("centre of gravity of ") +
                                  QString::fromStdString(rig.hang.stack.front().name)));
}

/// A frame and a chain without mass leave its centre where the maker has it; each that has some draws it.
BOOST_AUTO_TEST_CASE(the_chain_in_its_bag_draws_the_frames_centre) {
  Snapshot show = testing::smallHarbourShow();
  catalogue::BarType& bar = show.catalogue.bars.front();
  catalogue::ChainType& chain = show.catalogue.chains.front();
  bar.frameMass = kilograms(0);
  bar.frameCentreOfGravity = catalogue::Position{metres(0.25), metres(-0.5)};
  bar.chainAnchor = catalogue::Position{metres(-0.75), metres(0.5)};
  show.show.hangs.front().cableMass = kilograms(0);
  chain.mass = kilogramsPerMetre(0);
  chain.pitch = metres(0.02);
  chain.links = 50;
  const hang::Bar none = rigOf(show).hang.bar;
  BOOST_TEST(none.frameMass == 0.0);
  BOOST_TEST((none.frameCg == hang::Vec2{0.25, -0.5}));
  for (const double kg : {1.0, 0.1}) { // light or not
    bar.frameMass = kilograms(3.0 * kg);
    chain.mass = kilogramsPerMetre(kg); // one metre of it
    const hang::Bar drawn = rigOf(show).hang.bar;
    BOOST_TEST(drawn.frameMass == 4.0 * kg, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(std::abs(drawn.frameCg.x) < 1e-12);
    BOOST_TEST(drawn.frameCg.z == -0.25, boost::test_tools::tolerance(1e-12));
  }
}

/// Of two cabinets the upper one needs its lower pin; the last one needs none.
BOOST_AUTO_TEST_CASE(all_but_the_last_need_their_lower_pin) {
  const Snapshot show = testing::smallHarbourShow();
  const catalogue::BarType& bar = show.catalogue.bars.front();
  const options::House house(show.tour.house, show.venue.house, show.show.house);
  catalogue::CabinetType upper = show.catalogue.cabinets.front();
  catalogue::CabinetType last = upper;
  last.name = QStringLiteral("last");
  for (catalogue::CabinetType* each : {&upper, &last}) {
    each->nextPin.reset();
    each->outline.resize(3);
  }
  catalogue::Join join;
  join.kind = catalogue::JointKind::pinned;
  options::Stack stack = options::stacksOf(show.catalogue, show.catalogue.tables.front()).back();
  stack.cabinets = {&upper, &last};
  stack.joins = {&join, &join};
  stack.held = 0;
  const Rig rig =
      options::rigFor(stack, bar, bar.arrangements.front(), nullptr, show.show.hangs.front(), show, house);
  BOOST_TEST(rig.missing.contains(QStringLiteral("lower pin of ") + upper.name));
  BOOST_TEST(!rig.missing.contains(QStringLiteral("lower pin of last")));
  BOOST_TEST(!rig.missing.contains(QStringLiteral("outline of last"))); // three corners are one
}

/// A chain on a joint that has no travel is tried at the one mark that reaches; in doubt, at the one that
/// reaches with every link at its shortest. A doubt that nobody can tell leaves the mark as the figures say.
BOOST_AUTO_TEST_CASE(a_chain_beside_a_fixed_joint_has_the_first_mark_that_surely_reaches) {
  Rig rig = rigOf(testing::smallHarbourShow());
  BOOST_REQUIRE(rig.hang.chain.has_value());
  hang::Element& held = rig.hang.stack[static_cast<std::size_t>(rig.hang.chain->held) - 1];
  held.joint = hang::Pinned{-3.0, {hang::Vec2{0.0, -0.03}, hang::Vec2{-0.08, -0.03}}};
  rig.holes.clear(); // each joint at its first hole
  rig.doubts = {};
  rig.doubts.figures.stack.resize(rig.hang.stack.size());
  const auto mark = [&] {
    const options::Settings all = options::settingsOf(rig, 0.0);
    BOOST_REQUIRE(!all.settled.empty());
    for (const options::Settled& each : all.settled) {
      BOOST_TEST((each.setting.mark == all.settled.front().setting.mark));
    }
    return all.settled.front().setting.mark.value();
  };
  const int stated = mark();
  const double straight = options::settingsOf(rig, 0.0).settled.front().statics.chain->straight;
  const double pitch = rig.hang.chain->pitch;
  const double fixed = rig.hang.chain->fixed;
  BOOST_TEST(stated == std::ceil((straight - fixed) / pitch));
  rig.doubts.figures.linkShorter = 0.25 * pitch;
  BOOST_TEST(mark() == std::ceil((straight - fixed) / (0.75 * pitch)));
  rig.doubts.figures.frame.place = std::nan("");
  BOOST_TEST(mark() == stated);
}

/// A joint that gravity opens and whose chain runs through its own pin: as assembled it has no shape, and
/// it stands on its stop all the same. Alone or among all settings it stands in that one.
BOOST_AUTO_TEST_CASE(what_no_chain_closes_stands_on_its_stop) {
  Rig rig;
  rig.hang = testing::oneCabinet({-0.4, -0.25}, hang::Seated{0.0, {-0.8, 0.0}, 5.0});
  rig.hang.bar.chainAnchor = hang::Vec2{0.8, 0.0};
  rig.hang.stack[0].chainEye = hang::Vec2{-0.2, 0.0};
  rig.hang.chain = hang::Chain{0.02, 0.0, 1, 1};
  rig.mostMark = 100;
  rig.foreAftReachDeg = 0.0;
  rig.doubts.figures.stack.resize(1);
  const options::Settings all = options::settingsOf(rig, 0.0);
  BOOST_TEST_REQUIRE(all.settled.size() == 1U, all.impossible.toStdString());
  BOOST_TEST(all.settled[0].setting.mark.value() == 50); // 1 m from anchor to eye
  BOOST_TEST(all.settled[0].statics.joints[0].openDeg == 5.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(all.settled[0].statics.joints[0].stop.has_value());
  QStringList missing;
  const auto alone = options::settle(rig, all.settled[0].setting, missing);
  BOOST_REQUIRE(alone.has_value());
  BOOST_TEST(alone->statics.joints[0].openDeg == 5.0, boost::test_tools::tolerance(1e-12));
}

/// What is drawn and asked about again of a joint whose stop nobody stated is that joint shut.
BOOST_AUTO_TEST_CASE(a_joint_of_no_known_stop_stays_shut_as_input) {
  Rig rig;
  rig.hang = testing::oneCabinet({0.4, -0.3}, hang::Seated{-2.0, {-0.8, 0.0}, 90.0});
  BOOST_TEST(std::get<hang::Seated>(options::asInput(rig).stack[0].joint).openToDeg == 90.0);
  rig.openingUnknown = {{0, QStringLiteral("how far it opens")}};
  const auto joint = std::get<hang::Seated>(options::asInput(rig).stack[0].joint);
  BOOST_TEST(joint.openToDeg == 0.0);
  BOOST_TEST(joint.angleDeg == -2.0);
}

BOOST_AUTO_TEST_SUITE_END()
