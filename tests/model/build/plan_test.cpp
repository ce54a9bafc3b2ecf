// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <set>

#include "build/plan.h"
#include "model/build/random_job.h"
#include "model/build/simulator.h"

using namespace hangbook;
using namespace hangbook::build;
using namespace hangbook::testing;

namespace {

/// Two mirrored hangs of the usual size: bass of 0.6 m, carts of two, deck 0.18 m; an odd number of bass.
Job usualBuild() {
  const auto cabinet = [](double height, hang::Joint joint) {
    hang::Element made;
    made.mass = 90;
    made.cg = {-0.36, -height / 2};
    made.nextPin = hang::Vec2{0, -height};
    made.outline = {{0.03, 0}, {0.03, -height}, {-0.77, -height}, {-0.77, 0}};
    made.chainEye = hang::Vec2{-0.7, -0.4};
    made.joint = joint;
    return made;
  };
  const hang::Pinned level{0.0, {hang::Vec2{0, -0.03}, hang::Vec2{-0.4, -0.03}}};
  Job job;
  job.show = QStringLiteral("usual");
  job.cartClearance = 0.08;
  job.swingClearance = 0.5;
  job.carts = {{QStringLiteral("bass cart"), QStringLiteral("bass"), 2, 2, 0.18, 1.42},
               {QStringLiteral("upper cart"), QStringLiteral("upper"), 2, 2, 0.18, 1.42},
               {QStringLiteral("downfill cart"), QStringLiteral("downfill"), 2, 2, 0.18, notStated}};
  for (const char* name : {"left", "right"}) {
    Hanging made;
    made.hang = QString::fromUtf8(name);
    made.rig.bar.picks = hang::SidePair{1.0, 36, {0, -0.1}, {0, -0.3}, {-20, 20}, {-20, 20}};
    made.rig.bar.frameMass = 58;
    made.rig.bar.frameCg = {0.0, -0.12};
    made.rig.bar.stackPin = {0.36, -0.22};
    made.rig.bar.chainAnchor = hang::Vec2{-0.62, -0.1};
    made.barOutline = {{0.45, 0}, {0.45, -0.22}, {-0.45, -0.22}, {-0.45, 0}};
    for (const char* type : {"bass", "bass", "upper", "upper", "bass"}) {
      made.types << QString::fromUtf8(type);
      made.rig.stack.push_back(cabinet(0.6, level));
    }
    made.types << QStringLiteral("downfill");
    made.rig.stack.push_back(cabinet(0.5, hang::Pivot{{-25, 0}}));
    made.rig.chain = hang::Chain{0.0225, 0.08, 100, 6};
    for (const QString& type : made.types) {
      made.holes << QStringLiteral("of %1").arg(type);
      made.engagement.push_back(0.02);
    }
    made.hookMet = 0.5;
    made.hooksAtTrim = 12;
    made.lowestAtTrim = 8;
    made.highestHook = 14;
    made.ceiling = 14;
    made.hoistDifference = 0.25;
    made.points = QStringList{QStringLiteral("P1"), QStringLiteral("P2")};
    made.secondary = QStringList{QStringLiteral("steel")};
    job.hangs.push_back(made);
  }
  return job;
}

std::vector<Step> stepsOf(const Plan& plan, const char* hang) {
  std::vector<Step> steps;
  std::ranges::copy_if(plan.steps, std::back_inserter(steps),
                       [&](const Step& step) { return step.hang == QString::fromUtf8(hang); });
  return steps;
}

} // namespace

BOOST_AUTO_TEST_SUITE(build_plan)

BOOST_AUTO_TEST_CASE(random_builds_are_carried_out_without_a_fault) {
  RandomJobs jobs(20270402);
  int carried = 0;
  int shared = 0;
  for (int i = 0; i < 400; ++i) {
    const Job job = jobs.next();
    const Plan plan = planBuild(job);
    BOOST_TEST_CONTEXT("build " << i) {
      BOOST_TEST((plan.standing == Standing::planned));
      const auto wrongs = carryOut(job, plan);
      BOOST_TEST(wrongs.empty(), wrongs.size()
                                     << " faults, the first: " << (wrongs.empty() ? "" : wrongs.front()));
    }
    carried += static_cast<int>(plan.steps.size());
    shared += static_cast<int>(std::ranges::count(plan.steps, StepKind::cartAcross, &Step::kind));
  }
  BOOST_TEST(carried > 10000);
  BOOST_TEST(shared > 100, "carts shared between hangs must be among them");
}

// What the simulator says of plans that are wrong: it would be no check if it let them pass.
BOOST_AUTO_TEST_CASE(the_simulator_finds_what_is_taken_out_of_a_plan) {
  const Job job = usualBuild();
  const Plan good = planBuild(job);
  BOOST_TEST(carryOut(job, good).empty());
  for (std::size_t i = 0; i < good.steps.size(); ++i) {
    const StepKind kind = good.steps[i].kind;
    if (kind == StepKind::plug || kind == StepKind::aim || kind == StepKind::clearBelow) {
      continue;
    }
    Plan less = good;
    less.steps.erase(less.steps.begin() + static_cast<std::ptrdiff_t>(i));
    BOOST_TEST(!carryOut(job, less).empty(),
               "without step " << i + 1 << ": " << good.steps[i].what.toStdString());
    if (good.steps[i].move && kind == StepKind::raise) {
      Plan lower = good;
      *lower.steps[i].move -= 0.02;
      *lower.steps[i].hooks -= 0.02;
      BOOST_TEST(!carryOut(job, lower).empty(), "2 cm lower at step " << i + 1);
    }
  }
  Plan onePin = good;
  for (Step& step : onePin.steps) {
    if (step.kind == StepKind::pin && step.element == 2) {
      step.pinsASide = 1;
    }
  }
  BOOST_TEST(!carryOut(job, onePin).empty());
}

// Order and size of the raises of a usual build: common practice, no source (design/the-job.md).
BOOST_AUTO_TEST_CASE(a_usual_build_has_the_raises_of_common_practice) {
  const Plan plan = planBuild(usualBuild());
  const auto steps = stepsOf(plan, "left");
  const auto raisesOf = [](const Plan& of) {
    std::vector<double> raises;
    for (const Step& step : stepsOf(of, "left")) {
      if (step.kind == StepKind::raise) {
        raises.push_back(*step.move);
      }
    }
    return raises;
  };
  const std::vector<double> raises = raisesOf(plan);
  BOOST_REQUIRE(raises.size() == 7U);
  const Step& barUp = *std::ranges::find(steps, StepKind::raise, &Step::kind);
  BOOST_TEST(std::abs(*barUp.lowest - 1.5) < 0.1, "bar to about 1.5 m: " << *barUp.lowest);
  BOOST_TEST((raises[1] > 1.15 && raises[1] < 1.55), "for the second cart: " << raises[1]);
  BOOST_TEST((raises[2] > 1.15 && raises[2] < 1.55), "for the third: " << raises[2]);
  BOOST_TEST((raises[3] > 0.0 && raises[3] < 0.3), "a little, to free the shared cart: " << raises[3]);
  // Without the odd bass the downfill comes after a whole cart.
  Job even = usualBuild();
  for (Hanging& each : even.hangs) {
    each.types.removeAt(4);
    each.holes.removeAt(4);
    each.rig.stack.erase(each.rig.stack.begin() + 4);
    each.engagement.erase(each.engagement.begin() + 4);
    each.rig.chain->held = 5;
  }
  const std::vector<double> whole = raisesOf(planBuild(even));
  BOOST_REQUIRE(whole.size() == 5U);
  BOOST_TEST(std::abs(whole[2] - 1.0) < 0.2, "for the downfill: " << whole[2]);
  BOOST_TEST(std::abs(raises[5] - 0.5) < 0.2, "to free the downfill's cart: " << raises[5]);
  BOOST_TEST(raises[6] > 1.0, "to trim");
}

BOOST_AUTO_TEST_CASE(an_odd_number_shares_one_cart_and_its_second_cabinet_crosses) {
  const Plan plan = planBuild(usualBuild());
  const auto shared =
      std::ranges::count_if(plan.carts, [](const CartRide& ride) { return ride.hangs.size() == 2; });
  BOOST_TEST(shared == 2, "a bass each and a downfill each");
  const auto across = std::ranges::find(plan.steps, StepKind::cartAcross, &Step::kind);
  BOOST_REQUIRE((across != plan.steps.end()));
  BOOST_TEST(across->hang.toStdString() == "left");
  BOOST_TEST(across->across.toStdString() == "right");
}

BOOST_AUTO_TEST_CASE(both_sides_are_built_alike) {
  const Plan plan = planBuild(usualBuild());
  const auto pinned = [&](const char* hang) {
    std::vector<int> order;
    for (const Step& step : stepsOf(plan, hang)) {
      if (step.kind == StepKind::pin) {
        order.push_back(step.element);
      }
    }
    return order;
  };
  BOOST_TEST(pinned("left") == pinned("right"));
  BOOST_TEST(pinned("left").size() == 6U);
}

BOOST_AUTO_TEST_CASE(a_figure_that_nobody_stated_leaves_the_plan_unproven_and_is_named) {
  const std::vector<std::pair<std::function<void(Job&)>, const char*>> drops{
      {[](Job& job) { job.carts[0].deck = notStated; }, "deck"},
      {[](Job& job) { job.carts[1].high = 0; }, "stand on"},
      {[](Job& job) { job.carts.pop_back(); }, "a type of cart for downfill"},
      {[](Job& job) { job.hangs[0].engagement[2] = notStated; }, "engagement"},
      {[](Job& job) { job.hangs[0].rig.stack[3].outline.clear(); }, "outlines"},
      {[](Job& job) { job.hangs[1].barOutline.clear(); }, "outlines"},
      {[](Job& job) { job.hangs[0].ceiling = notStated; }, "low steel"},
      {[](Job& job) { job.hangs[0].highestHook = notStated; }, "hooks"},
      {[](Job& job) { job.hangs[0].hooksAtTrim = notStated; }, "at trim"},
      {[](Job& job) { job.hangs[1].hookMet = notStated; }, "bar-met-height"},
      {[](Job& job) { job.hangs[1].secondary.clear(); }, "secured"},
      {[](Job& job) { job.cartClearance = notStated; }, "cart-clearance"},
      {[](Job& job) { job.swingClearance = notStated; }, "swing-clearance"},
      {[](Job& job) { job.hangs[0].missing << QStringLiteral("mass of bass"); }, "mass of bass"}};
  for (const auto& [drop, word] : drops) {
    Job job = usualBuild();
    drop(job);
    const Plan plan = planBuild(job);
    BOOST_TEST((plan.standing == Standing::unproven), "without " << word);
    BOOST_TEST(plan.missing.join(QLatin1Char('\n')).contains(QString::fromUtf8(word)),
               word << " is not in: " << plan.missing.join(QLatin1Char('\n')).toStdString());
    for (const Step& step : plan.steps) {
      for (const auto& height : {step.move, step.hooks, step.lowest, step.clears}) {
        BOOST_TEST((!height || std::isfinite(*height)));
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_room_that_is_too_low_makes_it_not_possible) {
  for (const double steel : {3.0, 4.0}) {
    Job job = usualBuild();
    job.hangs[0].ceiling = steel;
    const Plan plan = planBuild(job);
    BOOST_TEST((plan.standing == Standing::notPossible));
    BOOST_TEST(plan.impossible.join(QLatin1Char('\n')).contains(QStringLiteral("what is above it")));
  }
  Job job = usualBuild();
  job.hangs[1].highestHook = 4.5;
  BOOST_TEST((planBuild(job).standing == Standing::notPossible));
}

BOOST_AUTO_TEST_CASE(the_load_out_undoes_the_build) {
  RandomJobs jobs(7);
  for (int i = 0; i < 50; ++i) {
    const Job job = jobs.next();
    const Plan plan = planBuild(job);
    const auto count = [](const std::vector<Step>& steps, StepKind kind) {
      return std::ranges::count(steps, kind, &Step::kind);
    };
    BOOST_TEST(count(plan.steps, StepKind::pin) == count(plan.loadOut, StepKind::unpin));
    BOOST_TEST(count(plan.steps, StepKind::chainOn) == count(plan.loadOut, StepKind::chainOff));
    BOOST_TEST(count(plan.steps, StepKind::cartAcross) == count(plan.loadOut, StepKind::cartAcross));
    BOOST_TEST(count(plan.steps, StepKind::secondarySteel) == count(plan.loadOut, StepKind::secondaryOff));
    std::map<QString, double> sum;
    for (const std::vector<Step>* steps : {&plan.steps, &plan.loadOut}) {
      for (const Step& step : *steps) {
        sum[step.hang] += step.move.value_or(0.0);
      }
    }
    for (const auto& [hang, metres] : sum) {
      BOOST_TEST(std::abs(metres) < 1e-9, "down by as much as up");
    }
    // The last cart that comes in is the first that goes out: what the truck wants last goes in first.
    const auto firstIn = std::ranges::find(plan.steps, StepKind::cartIn, &Step::kind);
    const auto lastOut = std::find_if(plan.loadOut.rbegin(), plan.loadOut.rend(), [](const Step& step) {
      return step.kind == StepKind::cartAway || step.kind == StepKind::cartAcross;
    });
    BOOST_TEST(firstIn->cart.toStdString() == lastOut->cart.toStdString());
  }
}

BOOST_AUTO_TEST_SUITE_END()
