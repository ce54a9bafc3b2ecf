// SPDX-License-Identifier: GPL-3.0-or-later
// What a gust does to chain, pins and contacts, against every body's force and moment equations with the
// pushes in them, solved by Eigen: no direction and no strength up to the stated one is worse than what is
// told, and where nothing but one joint's own forces can hold a push, it is met. Certainty: C.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

#include "hang/gust.h"
#include "hang/layout.h"
#include "hang/solve.h"
#include "outside/pushed_balance.h"
#include "support/random_hang.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

/// A push on each body at its centre, N, towards the hang's forward, level.
struct Gust {
  std::vector<double> pushes;
  std::vector<hang::SidePush> atJoints;
};

double pinHeight(const hang::Hang& hang, const hang::Layout& layout, std::size_t i) {
  const hang::PlacedElement& placed = layout.elements[i];
  const auto* pinned = std::get_if<hang::Pinned>(&hang.stack[i].joint);
  if (pinned == nullptr) {
    return placed.pin.z;
  }
  const hang::Vec2 middle = 0.5 * (pinned->pins[0] + pinned->pins[1]);
  const double upward = std::sqrt(1.0 - placed.forward.z * placed.forward.z);
  return placed.pin.z + middle.x * placed.forward.z + middle.z * upward;
}

Gust gustOn(const hang::Hang& hang, const hang::Layout& layout, RandomHangs& random) {
  Gust gust;
  for (std::size_t i = 0; i < hang.stack.size(); ++i) {
    gust.pushes.push_back(random.between(0.0, 200.0));
  }
  for (std::size_t joint = 0; joint < hang.stack.size(); ++joint) {
    hang::SidePush push;
    double turning = 0.0;
    for (std::size_t i = joint; i < hang.stack.size(); ++i) {
      push.inPlane += gust.pushes[i];
      turning += gust.pushes[i] * (pinHeight(hang, layout, joint) - layout.elements[i].cg.z);
    }
    push.turning = std::abs(turning);
    gust.atJoints.push_back(push);
  }
  return gust;
}

std::vector<Extra> extrasOf(const RigidHang& shape, const Gust& gust, double part) {
  std::vector<Extra> extras;
  const Eigen::Vector3d level = shape.frame().linear().transpose() * Eigen::Vector3d::UnitX();
  for (std::size_t i = 0; i < gust.pushes.size(); ++i) {
    extras.push_back(
        {i, shape.element(i) * RigidHang::in3d(shape.hang.stack[i].cg), part * gust.pushes[i] * level});
  }
  return extras;
}

} // namespace

BOOST_AUTO_TEST_SUITE(gust)

BOOST_AUTO_TEST_CASE(no_direction_is_worse_and_one_is_as_bad) {
  RandomHangs hangs(91);
  RandomHangs random(92);
  int looked = 0;
  int pivots = 0;
  int contacts = 0;
  for (int i = 0; i < 6000; ++i) {
    hang::Hang hang = hangs.next();
    readyToBePushed(hang, i, random);
    const std::optional<hang::Statics> stands = asPutTogether(hang);
    if (!stands) {
      continue;
    }
    const hang::Statics& statics = *stands;
    BOOST_TEST_CONTEXT("hang " << i) {
      const hang::Layout layout = hang::layOut(hang, statics);
      const Gust gust = gustOn(hang, layout, random);
      const int held = hang.chain ? hang.chain->held : 0;
      const hang::Places exact{0.0, std::vector<double>(hang.stack.size())};
      const hang::Pushed told = hang::inGust(
          hang.stack, held, statics, hang::armsOf(hang.stack, held, layout, exact), gust.atJoints, 1.0);
      const RigidHang shape = rigidHang(hang, statics);
      Nearest nearest;
      for (const double part : {1.0, -1.0, 0.6, -0.3, 0.0}) {
        const Nearest here = within(hang, told, shape, extrasOf(shape, gust, part));
        nearest.contact = std::min(nearest.contact, here.contact);
        nearest.tension = std::min(nearest.tension, here.tension);
      }
      ++looked;
      if (told.tensionLeast) {
        BOOST_TEST(nearest.tension < 1e-5); // one joint, one chain: exact
        ++pivots;
      }
      if (!hang.chain && nearest.contact < 1e200) {
        BOOST_TEST(nearest.contact < 1e-5);
        ++contacts;
      }
    }
  }
  BOOST_TEST_MESSAGE(looked << " hangs, " << pivots << " with a pivot, " << contacts << " with a contact");
  BOOST_TEST(looked > 1000);
  BOOST_TEST(pivots > 100);
  BOOST_TEST(contacts > 100);
}

BOOST_AUTO_TEST_SUITE_END()
