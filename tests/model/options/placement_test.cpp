// SPDX-License-Identifier: GPL-3.0-or-later
// The lowest edge of a hang, with places put in by hand.
#include <boost/test/unit_test.hpp>

#include "options/placement.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::at;

namespace {

const auto near = boost::test_tools::tolerance(1e-12);

/// Tilted down by 3-4-5 and rolled so that a metre to the side lies 0.6 m lower. A cabinet 1 m wide with its
/// lowest corner 1 m below the origin of the hang: 1.3 m with the roll.
struct Placed {
  catalogue::CabinetType cabinet;
  catalogue::BarType bar;
  Case option;
  Settled settled;

  Placed() {
    cabinet.width = metres(1.0);
    bar.width = metres(2.0);
    option.cabinets = {&cabinet};
    option.bar = &bar;
    hang::Layout& layout = settled.layout;
    layout.frameOrigin = {0.0, 0.0, -0.5};
    layout.forward = {0.8, 0.0, -0.6};
    layout.up = {0.6, 0.0, 0.8};
    layout.left = {0.0, 0.8, 0.6};
    layout.elements.resize(1);
    layout.elements[0].outline = {{0.0, 0.0, -0.2}, {0.5, 0.0, -1.0}, {1.0, 0.0, -0.4}};
    settled.statics.bottom = -1.1;
  }
  LowestEdge edge() const { return lowestEdge(option, settled); }
};

} // namespace

BOOST_AUTO_TEST_SUITE(lowest_edge)

/// A corner of the bar 1 m ahead and 1 m down lies 0.5 + 0.6 + 0.8 m below, its lower side 0.6 m more.
BOOST_AUTO_TEST_CASE(the_bar_may_be_lowest) {
  Placed placed;
  BOOST_TEST(placed.edge().z == -1.3, near);
  placed.bar.outline = {at(0.0, 0.0), at(1.0, -1.0), at(-1.0, -1.0)};
  BOOST_TEST(placed.edge().z == -2.5, near);
  placed.settled.layout.left.z = -0.6; // the other side
  BOOST_TEST(placed.edge().z == -2.5, near);
  placed.bar.outline = {at(0.0, 0.0), at(0.0, -0.1)}; // 0.58 m below, 1.18 m with the roll
  BOOST_TEST(placed.edge().z == -1.3, near);
  placed.option.bar = nullptr;
  BOOST_TEST(placed.edge().z == -1.3, near);
  BOOST_TEST(placed.edge().known());
}

BOOST_AUTO_TEST_CASE(without_any_outline_the_statics_tell_and_it_is_not_known) {
  Placed placed;
  placed.settled.layout.elements[0].outline.clear();
  BOOST_TEST(placed.edge().z == -1.1);
  BOOST_TEST(placed.edge().outlineMissing);
  BOOST_TEST(!placed.edge().known());
}

/// A width counts where something rolls: of the bar as of a cabinet.
BOOST_AUTO_TEST_CASE(a_width_is_missed_where_it_rolls) {
  Placed placed;
  placed.bar.outline = {at(0.0, 0.0), at(0.0, -0.1)};
  BOOST_TEST(placed.edge().known());
  placed.bar.width.reset();
  BOOST_TEST(placed.edge().widthMissing);
  placed.settled.layout.left.z = 0.0;
  BOOST_TEST(placed.edge().known());
  placed.cabinet.width.reset();
  BOOST_TEST(placed.edge().known());
  placed.settled.layout.left.z = -0.6;
  placed.bar.width = metres(1.0);
  BOOST_TEST(placed.edge().widthMissing);
}

BOOST_AUTO_TEST_SUITE_END()
