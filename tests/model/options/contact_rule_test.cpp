// SPDX-License-Identifier: GPL-3.0-or-later
// Which seated joint the rule speaks of, by figures put in by hand.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "options/seated.h"
#include "options/weight_limits.h"
#include "print.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

/// Three seated joints, each pressed with 900 N.
struct Seats {
  Case option;
  Settled settled;
  catalogue::Join seated;
  catalogue::Join pinned;

  Seats() {
    seated.kind = catalogue::JointKind::seated;
    pinned.kind = catalogue::JointKind::pinned;
    option.joins = {&seated, &seated, &seated};
    auto limits = std::make_shared<WeightLimits>();
    limits->openMost.value = 0.5;
    option.weight = limits;
    settled.statics.joints.resize(3);
    for (hang::JointStatics& each : settled.statics.joints) {
      each.contact = 900.0;
    }
  }
  hang::JointStatics& joint(std::size_t number) { return settled.statics.joints[number]; }
  Use use() const { return contactRule.evaluate(option, &settled, 8.0); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(contact_rule)

BOOST_AUTO_TEST_CASE(the_least_pressed_joint_is_told) {
  BOOST_TEST(Seats().use().which == 0); // of like ones the uppermost
  for (const std::size_t least : {0U, 1U, 2U}) {
    Seats seats;
    seats.joint(least).contact = 300.0;
    BOOST_TEST(seats.use().which == static_cast<int>(least));
    BOOST_TEST(seats.use().value == 0.3);
    BOOST_TEST(seats.use().verdict == Verdict::holds);
    seats.joint(least).contact = -1.0;
    BOOST_TEST(seats.use().verdict == Verdict::fails);
    seats.joint(least).contact = std::nan("");
    BOOST_TEST(seats.use().verdict == Verdict::unproven);
  }
}

/// A joint on its stop is pressed by nothing: another is told where there is one.
BOOST_AUTO_TEST_CASE(a_joint_on_its_stop_counts_only_where_none_is_pressed) {
  for (const std::size_t pressed : {0U, 1U, 2U}) {
    Seats seats;
    for (std::size_t i = 0; i < 3; ++i) {
      if (i != pressed) {
        seats.joint(i).contact.reset();
        seats.joint(i).stop = 100.0;
      }
    }
    BOOST_TEST(seats.use().which == static_cast<int>(pressed));
    BOOST_TEST(seats.use().value == 0.9);
    seats.joint(pressed).contact.reset();
    BOOST_TEST(seats.use().which == 0);
    BOOST_TEST(std::isnan(seats.use().value));
    BOOST_TEST(seats.use().verdict == Verdict::holds);
  }
}

/// A taut chain may carry anything up to the other end: the lesser push counts. A slack one carries nothing.
BOOST_AUTO_TEST_CASE(a_taut_chain_counts_at_both_ends) {
  Seats seats;
  seats.settled.statics.chain = hang::ChainStatics{};
  seats.joint(1).end = hang::JointEnd{200.0, std::nullopt, {}, {}};
  BOOST_TEST(seats.use().which == 1);
  BOOST_TEST(seats.use().value == 0.2);
  seats.joint(1).end->contact = 950.0;
  BOOST_TEST(seats.use().value == 0.9);
  seats.joint(1).end->contact.reset();
  BOOST_TEST(seats.use().value == 0.9);
  seats.joint(1).end->contact = 200.0;
  seats.settled.statics.chain->slack = 0.001;
  BOOST_TEST(seats.use().value == 0.9);
}

BOOST_AUTO_TEST_CASE(the_joint_that_opens_farthest_is_told_before_all) {
  Seats uppermost;
  uppermost.joint(0).openDeg = 0.3;
  BOOST_TEST(uppermost.use().which == 0);
  BOOST_TEST(uppermost.use().value == 0.3);
  BOOST_TEST(uppermost.use().limit == 0.5);
  Seats seats;
  BOOST_TEST(seats.use().limit == 0.0);
  seats.joint(1).openDeg = 0.3;
  BOOST_TEST(seats.use().which == 1);
  BOOST_TEST(seats.use().value == 0.3);
  BOOST_TEST(seats.use().verdict == Verdict::holds);
  seats.joint(2).openDeg = 0.6;
  BOOST_TEST(seats.use().which == 2);
  BOOST_TEST(seats.use().verdict == Verdict::fails);
  seats.joint(0).openDeg = 0.2;
  BOOST_TEST(seats.use().which == 2);
}

/// The words name what stops it: its stop, else the taut chain, else nothing.
BOOST_AUTO_TEST_CASE(what_stops_an_open_joint_is_told) {
  Seats seats;
  catalogue::CabinetType cabinet;
  seats.option.cabinets = {&cabinet, &cabinet, &cabinet};
  seats.joint(1).openDeg = 0.3;
  const auto says = [&](const char* words) {
    return contactRule.explain(seats.option, &seats.settled, 8.0, seats.use())
        .text.contains(QLatin1String(words));
  };
  BOOST_TEST(!says("taut"));
  seats.settled.statics.chain = hang::ChainStatics{};
  seats.settled.statics.chain->tension = 1500.0;
  BOOST_TEST(says("until the chain is taut at 1.50 kN"));
  seats.settled.statics.chain->slack = 0.01;
  BOOST_TEST(!says("taut"));
  seats.joint(1).stop = 700.0;
  BOOST_TEST(says("to its stop, which carries 0.70 kN"));
}

/// A push is held against mechanics, an opening against the house, a stop against the maker's table.
BOOST_AUTO_TEST_CASE(each_sentence_has_its_own_source_and_unit) {
  Seats seats;
  catalogue::CabinetType cabinet;
  cabinet.name = QStringLiteral("Marram bass");
  catalogue::StackingTable table;
  table.name = QStringLiteral("Marram");
  table.source.text = QStringLiteral("leaflet 2");
  seats.option.cabinets = {&cabinet, &cabinet, &cabinet};
  seats.option.table = &table;
  auto limits = std::make_shared<WeightLimits>(*seats.option.weight);
  limits->openMost.source = QStringLiteral("the house");
  seats.option.weight = limits;
  const auto finding = [&seats] {
    return contactRule.explain(seats.option, &seats.settled, 8.0, seats.use());
  };
  BOOST_TEST(finding().unit.toStdString() == "kN");
  BOOST_TEST(finding().source.toStdString() == "mechanics: a seated joint can only push");
  BOOST_TEST(finding().text.toStdString() == "Of the seated joints that of element 1 (Marram bass) is "
                                             "pressed least: 0.90 kN; it must not come below "
                                             "0.");
  seats.joint(1).openDeg = 0.3;
  seats.joint(1).aimDeg = -4.0;
  BOOST_TEST(finding().unit.toStdString() == "°");
  BOOST_TEST(finding().source.toStdString() == "the house");
  BOOST_TEST(finding().text.toStdString() ==
             "The seated joint of element 2 (Marram bass) opens by 0.3°; that cabinet "
             "then aims at -4.0°. The house lets a joint open by 0.5°.");
  seats.joint(1).openDeg = 0.0;
  for (std::size_t i = 0; i < 3; ++i) {
    seats.joint(i).contact.reset();
    seats.joint(i).stop = 150.0;
  }
  BOOST_TEST(finding().unit.toStdString() == "kN");
  BOOST_TEST(finding().source.toStdString() == "stacking table Marram: leaflet 2");
  BOOST_TEST(finding().text.toStdString() ==
             "The seated joint of element 1 (Marram bass) cannot open: its rear stop holds it with 0.15 kN.");
}

BOOST_AUTO_TEST_CASE(a_nanometre_is_no_slack) {
  Settled settled;
  BOOST_TEST(!chainHasSlack(settled));
  settled.statics.chain = hang::ChainStatics{};
  settled.statics.chain->slack = 1e-9;
  BOOST_TEST(!chainHasSlack(settled));
  settled.statics.chain->slack = std::nextafter(1e-9, 1.0);
  BOOST_TEST(chainHasSlack(settled));
}

BOOST_AUTO_TEST_CASE(without_a_seated_joint_it_does_not_apply) {
  Seats seats;
  seats.option.joins = {&seats.pinned, &seats.pinned, &seats.pinned};
  BOOST_TEST(!seats.use().applies);
  seats.option.joins = {&seats.pinned, &seats.seated, &seats.pinned};
  BOOST_TEST(seats.use().applies);
  BOOST_TEST(seats.use().which == 1);
}

BOOST_AUTO_TEST_SUITE_END()
