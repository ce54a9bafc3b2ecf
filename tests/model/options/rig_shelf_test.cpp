// SPDX-License-Identifier: GPL-3.0-or-later
// Settings are taken from another show only where nothing that they follow from differs: each figure of a rig
// is changed by itself, and must be seen.
#include <boost/test/unit_test.hpp>

#include <functional>

#include "options/rig_shelf.h"

using namespace hangbook;
using options::Rig;

namespace {

/// Every kind of joint and every part that may be absent, all figures unlike.
Rig whole() {
  Rig rig;
  hang::Hang& hang = rig.hang;
  hang.bar = {hang::SidePair{1.0, 36.0, {0.01, -0.1}, {0.02, -0.3}, {-20.0, 19.0}, {-18.0, 17.0}},
              58.0,
              {-0.08, -0.12},
              {0.32, -0.22},
              hang::Vec2{-0.62, -0.11}};
  hang::Element one;
  one.name = "bass";
  one.mass = 92.0;
  one.cg = {-0.35, -0.3};
  one.nextPin = hang::Vec2{0.03, -0.6};
  one.outline = {{0.04, 0.0}, {0.05, -0.5}, {-0.7, -0.4}};
  one.chainEye = hang::Vec2{-0.78, -0.38};
  one.joint = hang::Seated{-2.0, {-0.7, 0.06}, 1.5};
  hang::Element two = one;
  two.joint = hang::Pinned{-3.0, {hang::Vec2{0.07, -0.03}, hang::Vec2{-0.44, -0.04}}};
  hang::Element three = one;
  three.nextPin.reset();
  three.joint = hang::Pivot{{-25.0, -0.5}};
  hang.stack = {one, two, three};
  hang.chain = hang::Chain{0.0225, 0.08, 9, 3};
  hang.set = {-2.5, std::nullopt, 4.0};
  hang.pullBack = hang::PullBack{2, {-0.6, -0.2}, 85.0, 120.0, std::nullopt};
  rig.missing = {QStringLiteral("mass of upper")};
  rig.holes = {{1, {-3.0, 0.0}}};
  rig.openingUnknown = {{0, QStringLiteral("how far bass opens")}};
  rig.mostMark = 40;
  rig.tiltStepDeg = 0.5;
  rig.foreAftReachDeg = 20.0;
  const hang::PieceDoubt doubt{1.0, 2.0, 0.01, 0.001};
  rig.doubts.figures = {doubt, doubt, {doubt, doubt, doubt}, 0.0001, 0.0002};
  rig.doubts.gearHeavier = 1.02;
  rig.doubts.longer = 0.003;
  return rig;
}

hang::SidePair& sides(Rig& rig) {
  return std::get<hang::SidePair>(rig.hang.bar.picks);
}
hang::Seated& seated(Rig& rig) {
  return std::get<hang::Seated>(rig.hang.stack[0].joint);
}
hang::Pinned& pinned(Rig& rig) {
  return std::get<hang::Pinned>(rig.hang.stack[1].joint);
}
hang::Pivot& pivot(Rig& rig) {
  return std::get<hang::Pivot>(rig.hang.stack[2].joint);
}

/// Every figure of it. A change in the last place is a change.
using Figure = std::function<double&(Rig&)>;
const std::vector<Figure>& figures() {
  static const std::vector<Figure> all{
      [](Rig& r) -> double& { return sides(r).pickSpacing; },
      [](Rig& r) -> double& { return sides(r).headMass; },
      [](Rig& r) -> double& { return sides(r).headCg.x; },
      [](Rig& r) -> double& { return sides(r).headCg.z; },
      [](Rig& r) -> double& { return sides(r).tiltAxis.x; },
      [](Rig& r) -> double& { return sides(r).tiltAxis.z; },
      [](Rig& r) -> double& { return sides(r).tiltTravelDeg.low; },
      [](Rig& r) -> double& { return sides(r).tiltTravelDeg.high; },
      [](Rig& r) -> double& { return sides(r).panTravelDeg.low; },
      [](Rig& r) -> double& { return sides(r).panTravelDeg.high; },
      [](Rig& r) -> double& { return r.hang.bar.frameMass; },
      [](Rig& r) -> double& { return r.hang.bar.frameCg.x; },
      [](Rig& r) -> double& { return r.hang.bar.stackPin.z; },
      [](Rig& r) -> double& { return r.hang.bar.chainAnchor->x; },
      [](Rig& r) -> double& { return r.hang.stack[0].mass; },
      [](Rig& r) -> double& { return r.hang.stack[2].mass; },
      [](Rig& r) -> double& { return r.hang.stack[1].cg.x; },
      [](Rig& r) -> double& { return r.hang.stack[0].nextPin->z; },
      [](Rig& r) -> double& { return r.hang.stack[1].outline[2].x; },
      [](Rig& r) -> double& { return r.hang.stack[2].chainEye->z; },
      [](Rig& r) -> double& { return seated(r).angleDeg; },
      [](Rig& r) -> double& { return seated(r).contact.x; },
      [](Rig& r) -> double& { return seated(r).openToDeg; },
      [](Rig& r) -> double& { return pinned(r).angleDeg; },
      [](Rig& r) -> double& { return pinned(r).pins[0].x; },
      [](Rig& r) -> double& { return pinned(r).pins[1].z; },
      [](Rig& r) -> double& { return pivot(r).travelDeg.low; },
      [](Rig& r) -> double& { return pivot(r).travelDeg.high; },
      [](Rig& r) -> double& { return r.hang.chain->pitch; },
      [](Rig& r) -> double& { return r.hang.chain->fixed; },
      [](Rig& r) -> double& { return *r.hang.set.tiltDeg; },
      [](Rig& r) -> double& { return r.hang.set.panDeg; },
      [](Rig& r) -> double& { return r.hang.pullBack->at.x; },
      [](Rig& r) -> double& { return r.hang.pullBack->lineDeg; },
      [](Rig& r) -> double& { return *r.hang.pullBack->force; },
      [](Rig& r) -> double& { return r.holes[0].anglesDeg[1]; },
      [](Rig& r) -> double& { return r.tiltStepDeg; },
      [](Rig& r) -> double& { return r.foreAftReachDeg; },
      [](Rig& r) -> double& { return r.doubts.figures.head.lighter; },
      [](Rig& r) -> double& { return r.doubts.figures.frame.heavier; },
      [](Rig& r) -> double& { return r.doubts.figures.stack[1].centre; },
      [](Rig& r) -> double& { return r.doubts.figures.stack[2].place; },
      [](Rig& r) -> double& { return r.doubts.figures.linkShorter; },
      [](Rig& r) -> double& { return r.doubts.figures.linkLonger; },
      [](Rig& r) -> double& { return r.doubts.gearHeavier; },
      [](Rig& r) -> double& { return r.doubts.longer; },
  };
  return all;
}

/// What is no figure.
using Spoil = std::function<void(Rig&)>;
const std::vector<Spoil>& others() {
  static const std::vector<Spoil> all{
      [](Rig& r) { r.hang.stack[1].name = "basso"; },
      [](Rig& r) {
        r.hang.stack[2].nextPin = hang::Vec2{0.03, -0.6};
      },
      [](Rig& r) { r.hang.stack[1].nextPin.reset(); },
      [](Rig& r) { r.hang.stack[0].chainEye.reset(); },
      [](Rig& r) {
        r.hang.stack[0].outline.push_back({0.0, 0.0});
      },
      [](Rig& r) { r.hang.stack.pop_back(); },
      [](Rig& r) { r.hang.stack.push_back(r.hang.stack.back()); },
      [](Rig& r) { r.hang.stack[0].joint = r.hang.stack[1].joint; },
      [](Rig& r) { r.hang.bar.chainAnchor.reset(); },
      [](Rig& r) {
        r.hang.bar.picks = hang::SinglePick{{0.0, 0.0}};
      },
      [](Rig& r) { r.hang.chain.reset(); },
      [](Rig& r) { r.hang.chain->mark = 10; },
      [](Rig& r) { r.hang.chain->held = 2; },
      [](Rig& r) { r.hang.set.tiltDeg.reset(); },
      [](Rig& r) { r.hang.set.actuatorDeg = 1.0; },
      [](Rig& r) { r.hang.pullBack.reset(); },
      [](Rig& r) { r.hang.pullBack->element = 3; },
      [](Rig& r) { r.hang.pullBack->tiltDeg = -1.0; },
      [](Rig& r) { r.missing.clear(); },
      [](Rig& r) { r.holes[0].element = 2; },
      [](Rig& r) { r.holes.clear(); },
      [](Rig& r) { r.openingUnknown[0].element = 1; },
      [](Rig& r) { r.openingUnknown[0].what = QStringLiteral("another"); },
      [](Rig& r) { r.openingUnknown.clear(); },
      [](Rig& r) { r.mostMark = 41; },
      [](Rig& r) { r.doubts.figures.stack.pop_back(); },
  };
  return all;
}

} // namespace

BOOST_AUTO_TEST_SUITE(rig_shelf)

BOOST_AUTO_TEST_CASE(alike_is_alike) {
  BOOST_TEST(sameSettings(whole(), whole()));
  Rig rig = whole();
  rig.doubts.weighed = {QStringLiteral("words")}; // of no figure
  rig.doubts.sources.push_back({QStringLiteral("masses"), QStringLiteral("± 2 %"), QStringLiteral("house")});
  BOOST_TEST(sameSettings(whole(), rig));
}

BOOST_AUTO_TEST_CASE(every_figure_counts_to_its_last_place) {
  for (std::size_t i = 0; i < figures().size(); ++i) {
    Rig rig = whole();
    double& figure = figures()[i](rig);
    figure = std::nextafter(figure, 1e9);
    BOOST_TEST(!sameSettings(whole(), rig), "figure " << i);
    BOOST_TEST(!sameSettings(rig, whole()), "figure " << i);
    BOOST_TEST(sameSettings(rig, rig), "figure " << i);
  }
}

BOOST_AUTO_TEST_CASE(every_part_counts) {
  for (std::size_t i = 0; i < others().size(); ++i) {
    Rig rig = whole();
    others()[i](rig);
    BOOST_TEST(!sameSettings(whole(), rig), "part " << i);
    BOOST_TEST(!sameSettings(rig, whole()), "part " << i);
    BOOST_TEST(sameSettings(rig, rig), "part " << i);
  }
}

BOOST_AUTO_TEST_CASE(each_kind_of_pick_has_its_own_places) {
  const auto with = [](const std::variant<hang::SidePair, hang::ForeAftPair, hang::SinglePick>& picks) {
    Rig rig = whole();
    rig.hang.bar.picks = picks;
    return rig;
  };
  const Rig pair = with(hang::ForeAftPair{{0.4, 0.0}, {-0.6, 0.1}});
  BOOST_TEST(sameSettings(pair, pair));
  BOOST_TEST(!sameSettings(pair, with(hang::ForeAftPair{{0.41, 0.0}, {-0.6, 0.1}})));
  BOOST_TEST(!sameSettings(pair, with(hang::ForeAftPair{{0.4, 0.0}, {-0.6, 0.11}})));
  const Rig single = with(hang::SinglePick{{0.1, 0.2}});
  BOOST_TEST(sameSettings(single, single));
  BOOST_TEST(!sameSettings(single, with(hang::SinglePick{{0.1, 0.21}})));
  BOOST_TEST(!sameSettings(single, pair));
}

BOOST_AUTO_TEST_SUITE_END()
