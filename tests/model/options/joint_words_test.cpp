// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule says of a joint whose figure lies between two ends, by figures put in by hand.
#include <boost/test/unit_test.hpp>

#include <memory>
#include <string>

#include "options/weight_limits.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// One seated joint, pressed with 900 N, or 1200 N at the other end.
struct Seat {
  Case option;
  Settled settled;
  catalogue::Join seated;
  catalogue::CabinetType cabinet;
  catalogue::StackingTable table;
  Snapshot snapshot;

  Seat() {
    seated.kind = catalogue::JointKind::seated;
    seated.contactLimit = kilonewtons(20);
    seated.stopLimit = kilonewtons(20);
    seated.pinLimit = kilonewtons(20);
    seated.sideShare = 0.5;
    cabinet.width = metres(1.0);
    option.joins = {&seated};
    option.cabinets = {&cabinet};
    option.table = &table;
    option.snapshot = &snapshot;
    auto limits = std::make_shared<WeightLimits>();
    limits->dynamic.value = 1.0;
    limits->liftShare.value = 1.0;
    limits->accessory.value = 1.0;
    option.weight = limits;
    hang::JointStatics joint;
    joint.pinCount = 1;
    joint.contact = 900.0;
    joint.end = hang::JointEnd{1200.0, std::nullopt, {}, {}};
    settled.statics.joints = {joint};
  }
  hang::JointStatics& joint() { return settled.statics.joints.front(); }
  std::string words() const {
    return jointRule.explain(option, &settled, 8.0, jointRule.evaluate(option, &settled, 8.0))
        .text.toStdString();
  }
};

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

} // namespace

BOOST_AUTO_TEST_SUITE(joint_words)

/// No chain hangs there: none may be told of, nor a figure of it.
BOOST_AUTO_TEST_CASE(without_a_chain_what_is_in_doubt_leaves_the_two_ends) {
  const std::string text = Seat().words();
  BOOST_TEST(says(text, "pushes 1.20 kN (between 0.90 kN and that, by what is in doubt);"), text);
  BOOST_TEST(!says(text, "chain"), text);
}

BOOST_AUTO_TEST_CASE(a_joint_below_what_the_chain_holds_is_not_helped_by_it) {
  Seat seat;
  seat.settled.statics.chain = hang::ChainStatics{};
  seat.settled.statics.chain->most = 700.0;
  BOOST_TEST(!says(seat.words(), "chain"), seat.words());
  seat.option.held = 1;
  BOOST_TEST(says(seat.words(),
                  "pushes 1.20 kN (with the chain at the most that it may carry, 0.70 kN; else 0.90 kN);"),
             seat.words());
  seat.joint().contact = 1300.0;
  BOOST_TEST(
      says(seat.words(),
           "pushes 1.30 kN (with no more help from the chain than is sure; with 0.70 kN from it, 1.20 kN);"),
      seat.words());
}

BOOST_AUTO_TEST_CASE(ends_that_are_alike_are_not_told) {
  Seat seat;
  seat.joint().contact = 1200.0;
  BOOST_TEST(says(seat.words(), "pushes 1.20 kN;"), seat.words());
  seat.joint().stop = 1500.0;
  seat.joint().end->stop = 1500.0;
  BOOST_TEST(says(seat.words(), "carries 1.50 kN;"), seat.words());
  seat.joint().end->stop = 1600.0;
  BOOST_TEST(says(seat.words(), "carries 1.60 kN (between 1.50 kN and that, by what is in doubt);"),
             seat.words());
  seat.joint().end.reset();
  BOOST_TEST(says(seat.words(), "carries 1.50 kN;"), seat.words());
}

/// Where nothing presses at the other end that is as much as the nothing that presses here.
BOOST_AUTO_TEST_CASE(no_push_at_the_other_end_is_a_push_of_nothing) {
  Seat seat;
  seat.joint().contact = 0.0;
  seat.joint().pinCount = 0;
  seat.joint().end = hang::JointEnd{};
  BOOST_TEST(says(seat.words(), "pushes 0.00 kN;"), seat.words());
}

/// Word by word, with factors of 3: what pushes, what holds at a stop, what a pin takes; as set, at the other
/// end of what is in doubt, and on the way where that is more.
BOOST_AUTO_TEST_CASE(whole_sentences_of_a_joint) {
  Seat seat;
  seat.snapshot.show.peopleBeneath = false;
  seat.cabinet.name = QStringLiteral("Marram bass");
  seat.seated.contactLimit = kilonewtons(30);
  seat.seated.stopLimit = kilonewtons(40);
  auto limits = std::make_shared<WeightLimits>(*seat.option.weight);
  limits->dynamic.value = 1.5;
  limits->liftShare.value = 2.0;
  seat.option.weight = limits;
  seat.settled.build.carried = hang::CarriedWorst::begun(1);
  seat.settled.build.carried.unknown.reset();
  const std::string with = "; with dynamic factor 1.5, lift-group share 2: ";
  BOOST_TEST(seat.words() ==
             "The rear contact of element 1 (Marram bass) pushes 1.20 kN (between 0.90 kN and that, by "
             "what is in doubt)" +
                 with + "3.60 kN; it may take 30.00 kN.");
  hang::JointWorst& built = seat.settled.build.carried.joints[0];
  built.most.contact = 1200.0; // no more than that
  built.contactAt = {hang::BuildStage::stacked, 2};
  BOOST_TEST(seat.words().find("under the bar") == std::string::npos, seat.words());
  built.most.contact = 1200.001; // more than by rounding
  BOOST_TEST(seat.words().find("pushes 1.20 kN, with 2 cabinets under the bar") != std::string::npos,
             seat.words());
  built.most.contact = 2000.0;
  BOOST_TEST(seat.words() ==
             "The rear contact of element 1 (Marram bass) pushes 2.00 kN, with 2 cabinets under the bar" +
                 with + "6.00 kN; it may take 30.00 kN.");
  seat.joint().stop = 4000.0; // 12 of 40 kN beside 6 of 30
  BOOST_TEST(seat.words() ==
             "The rear stop of element 1 (Marram bass) carries 4.00 kN (between 0.00 kN and that, by what "
             "is in doubt)" +
                 with + "12.00 kN; it may take 40.00 kN.");
  built.most.stop = 4000.0;
  built.stopAt = {hang::BuildStage::aiming, 1};
  BOOST_TEST(seat.words().find("aimed") == std::string::npos, seat.words());
  built.most.stop = 5000.0;
  BOOST_TEST(seat.words() == "The rear stop of element 1 (Marram bass) carries 5.00 kN, while it is aimed" +
                                 with + "15.00 kN; it may take 40.00 kN.");
  seat.seated.sideShare = 0.6;
  seat.joint().pinLoads.at(0) = {0.0, 16000.0}; // 0.6 of it times 3 of 20 kN
  BOOST_TEST(seat.words().starts_with(
                 "On either side of element 1 (Marram bass) the front pin takes 9.60 kN: 0.6 of the "
                 "16.00 kN on both sides"),
             seat.words());
  BOOST_TEST(seat.words().ends_with(with + "28.80 kN; it may take 20.00 kN."), seat.words());
  built.most.pins.at(0) = 18000.0;
  built.pinAt.at(0) = {hang::BuildStage::chained, 1};
  BOOST_TEST(seat.words() ==
             "On either side of element 1 (Marram bass) the front pin takes 10.80 kN: 0.6 of the 18.00 kN "
             "on both sides, with 1 cabinet under the bar and the chain on" +
                 with + "32.40 kN; it may take 20.00 kN.");
  seat.seated.pinLimit.reset();
  BOOST_TEST(seat.words().ends_with("; the maker states no limit for it."), seat.words());
}

/// A pin that takes 10 kN as set and 16 kN at the other end takes no more than that on the way, but for
/// rounding.
BOOST_AUTO_TEST_CASE(as_much_on_the_way_as_at_the_other_end_is_told_of_that_end) {
  Seat seat;
  seat.joint().contact.reset();
  seat.joint().pinLoads.at(0) = {0.0, 10000.0};
  seat.joint().end = hang::JointEnd{{}, {}, {hang::Vec2{0.0, 16000.0}}, {}};
  seat.settled.build.carried = hang::CarriedWorst::begun(1);
  seat.settled.build.carried.unknown.reset();
  seat.settled.build.carried.joints[0].most.pins.at(0) = 16000.0 * (1.0 + 1e-12);
  BOOST_TEST(
      says(seat.words(), "the front pin takes 8.00 kN: 0.5 of the 16.00 kN on both sides (between 5.00 kN"),
      seat.words());
  seat.settled.build.carried.joints[0].most.pins.at(0) = 17000.0;
  seat.settled.build.carried.joints[0].pinAt.at(0) = {hang::BuildStage::stacked, 0};
  BOOST_TEST(says(seat.words(), "of the 17.00 kN on both sides, with the bar alone"), seat.words());
}

/// The same of what pushes and what holds at the rear, whichever end has more of it; where nothing does at
/// either, any push on the way is more.
BOOST_AUTO_TEST_CASE(as_much_at_the_rear_on_the_way_as_at_either_end_is_told_of_that_end) {
  for (const bool asSet : {true, false}) {
    for (const bool stop : {true, false}) {
      Seat seat;
      seat.joint().pinCount = 0;
      const double here = asSet ? 1600.0 : 900.0;
      const double other = asSet ? 900.0 : 1600.0;
      seat.joint().contact = stop ? std::nullopt : std::optional(here);
      seat.joint().stop = stop ? std::optional(here) : std::nullopt;
      seat.joint().end = stop ? hang::JointEnd{{}, other, {}, {}} : hang::JointEnd{other, {}, {}, {}};
      seat.settled.build.carried = hang::CarriedWorst::begun(1);
      seat.settled.build.carried.unknown.reset();
      hang::JointWorst& built = seat.settled.build.carried.joints[0];
      built.contactAt = built.stopAt = {hang::BuildStage::stacked, 1};
      (stop ? built.most.stop : built.most.contact) = 1600.0 * (1.0 + 1e-12);
      BOOST_TEST(says(seat.words(), "1.60 kN (between 0.90 kN"), seat.words());
    }
  }
  Seat none;
  none.joint().pinCount = 0;
  none.joint().contact.reset();
  none.joint().end = hang::JointEnd{};
  none.settled.build.carried = hang::CarriedWorst::begun(1);
  none.settled.build.carried.unknown.reset();
  none.settled.build.carried.joints[0].contactAt = {hang::BuildStage::stacked, 1};
  none.settled.build.carried.joints[0].most.contact = 0.5;
  BOOST_TEST(says(none.words(), "pushes 0.00 kN, with 1 cabinet under the bar;"), none.words());
}

/// The hole is told where there are several, at its own angle, not by how far a joint stands open; a pivot
/// has none.
BOOST_AUTO_TEST_CASE(the_hole_of_a_pin_is_told_where_there_is_a_choice) {
  Seat seat;
  seat.joint().end.reset();
  seat.joint().contact.reset();
  seat.joint().pinLoads.at(0) = {0.0, 9000.0};
  seat.joint().angleDeg = -3.0;
  const auto words = [&seat](std::size_t holes, catalogue::JointKind kind) {
    seat.seated.kind = kind;
    seat.seated.angles.assign(holes, degrees(-3.0));
    return seat.words();
  };
  const std::string told = "front pin (hole at -3.0°)";
  BOOST_TEST(says(words(2, catalogue::JointKind::pinned), told));
  BOOST_TEST(!says(words(1, catalogue::JointKind::pinned), "(hole"));
  BOOST_TEST(!says(words(2, catalogue::JointKind::pivot), "(hole"));
  seat.joint().openDeg = 0.5;
  seat.joint().angleDeg = -2.5;
  BOOST_TEST(says(words(2, catalogue::JointKind::seated), told));
}

/// Two pins are told apart by where they stand: ahead or behind, else above or below.
BOOST_AUTO_TEST_CASE(a_pin_is_named_by_where_it_stands) {
  const auto named = [](std::size_t loaded, double x, double z) {
    Seat seat;
    seat.cabinet.pins =
        std::array{catalogue::Position{metres(0.0), metres(0.0)}, catalogue::Position{metres(x), metres(z)}};
    seat.joint().pinCount = 2;
    seat.joint().end.reset();
    seat.joint().pinLoads.at(loaded) = {0.0, 9000.0};
    return seat.words();
  };
  BOOST_TEST(says(named(0, -0.4, 0.0), "the front pin takes 4.50 kN"), named(0, -0.4, 0.0));
  BOOST_TEST(says(named(1, -0.4, 0.0), "the rear pin takes 4.50 kN"), named(1, -0.4, 0.0));
  BOOST_TEST(says(named(0, 0.4, -0.3), "the rear pin takes 4.50 kN"), named(0, 0.4, -0.3));
  BOOST_TEST(says(named(0, 0.0, -0.3), "the upper pin takes 4.50 kN"), named(0, 0.0, -0.3));
  BOOST_TEST(says(named(1, 0.0, -0.3), "the lower pin takes 4.50 kN"), named(1, 0.0, -0.3));
}

BOOST_AUTO_TEST_SUITE_END()
