// SPDX-License-Identifier: GPL-3.0-or-later
// The load path as data; working coefficients; what the secondary suspension catches.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <functional>
#include <map>
#include <set>

#include "options/catching.h"
#include "options/option_json.h"
#include "options/search.h"
#include "options/working_limit.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::PathLink;
using options::Snapshot;
using options::Verdict;

namespace {

struct Chosen {
  Snapshot snapshot = testing::smallHarbourShow();
  Option option = options::decide(snapshot, QStringLiteral("left")).hangs[0].options.front();

  Option with(const std::function<void(Snapshot&)>& change) const {
    Snapshot changed = snapshot;
    change(changed);
    return options::judge(changed, option.key, *option.setting);
  }
};

const Chosen& chosen() {
  static const Chosen one;
  return one;
}

const Finding& of(const Option& option, const char* rule) {
  for (const Finding& finding : option.findings) {
    if (finding.rule == QLatin1String(rule)) {
      return finding;
    }
  }
  BOOST_FAIL(std::string("no finding of ") + rule);
  return option.findings.front();
}

std::vector<PathLink> linksOf(const Option& option, const QString& kind) {
  std::vector<PathLink> found;
  for (const PathLink& link : option.loadPath) {
    if (link.kind == kind) {
      found.push_back(link);
    }
  }
  return found;
}

double mostUse(const std::vector<PathLink>& links) {
  double most = 0.0;
  for (const PathLink& link : links) {
    most = std::max(most, link.usePercent.value_or(0.0));
  }
  return most;
}

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

} // namespace

BOOST_AUTO_TEST_SUITE(load_path)

BOOST_AUTO_TEST_CASE(every_link_is_listed_from_the_point_down) {
  const Option& option = chosen().option;
  BOOST_TEST(linksOf(option, QStringLiteral("rigging")).size() == 6U); // shackle, sling, shackle at two picks
  BOOST_TEST(linksOf(option, QStringLiteral("hoist")).size() == 2U);
  BOOST_TEST(linksOf(option, QStringLiteral("secondary")).size() == 6U);
  BOOST_TEST(linksOf(option, QStringLiteral("bar")).size() == 1U);
  BOOST_TEST(linksOf(option, QStringLiteral("joint")).size() ==
             static_cast<std::size_t>(option.key.stack.size()));
  BOOST_TEST(linksOf(option, QStringLiteral("chain")).size() == 1U);
  for (const PathLink& link : option.loadPath) {
    BOOST_TEST(std::isfinite(link.loadKn));
    BOOST_TEST_REQUIRE(link.limitKn.has_value(), link.link.toStdString());
    BOOST_TEST(!link.source.isEmpty(), link.link.toStdString());
    BOOST_TEST((link.verdict <= Verdict::tight), link.link.toStdString());
  }
}

/// Hardware that the makers' data do not hold is listed, and unproven; nor is its mass known to what is
/// above.
BOOST_AUTO_TEST_CASE(hardware_that_nobody_describes_is_listed) {
  const Option option =
      chosen().with([](Snapshot& s) { s.show.hangs[0].rigging[1] = QStringLiteral("strop of the house"); });
  const PathLink strop = linksOf(option, QStringLiteral("rigging"))[1];
  BOOST_TEST(strop.link.contains(QStringLiteral("strop of the house")));
  BOOST_TEST(std::isnan(strop.loadKn));
  BOOST_TEST(!strop.limitKn.has_value());
  BOOST_TEST((strop.verdict == Verdict::unproven));
}

/// What a secondary steel would catch, as its rule says it.
BOOST_AUTO_TEST_CASE(a_secondary_steel_carries_what_it_would_catch) {
  const Option option = chosen().option;
  const Finding hardware = of(option, "hardware");
  double most = 0.0;
  for (const PathLink& link : linksOf(option, QStringLiteral("secondary"))) {
    BOOST_TEST(link.loadKn > 0.0);
    BOOST_TEST(*link.usePercent == 100.0 * link.loadKn / *link.limitKn, near(1e-9));
    const auto* type = catalogue::find(chosen().snapshot.catalogue.hardware, link.link);
    BOOST_TEST_REQUIRE(type != nullptr);
    BOOST_TEST(*link.limitKn == inKilonewtons(*type->limit),
               near(1e-12)); // all of it: this is no everyday load
    most = std::max(most, *link.usePercent);
  }
  BOOST_TEST(most <= *hardware.usePercent * (1.0 + 1e-9));
}

/// The sheet and the rules must not disagree: of each kind the worst link is what its rule tells.
BOOST_AUTO_TEST_CASE(the_worst_link_of_a_kind_is_its_rules_finding) {
  const std::vector<std::function<void(Snapshot&)>> changes{
      [](Snapshot&) {},
      [](Snapshot& s) { s.show.hangs[0].pan = degrees(-6); },
      [](Snapshot& s) { s.show.peopleBeneath = false; },
      [](Snapshot& s) { s.show.hangs[0].secondarySlack = metres(0.0); },
      [](Snapshot& s) { s.catalogue.tables[0].joins[0].pinLimit = kilonewtons(9); },
      [](Snapshot& s) { s.catalogue.hardware[1].limit = kilonewtons(20); },
      [](Snapshot& s) { s.venue.points[0].y = metres(10.6); },
  };
  for (const auto& change : changes) {
    const Option option = chosen().with(change);
    for (const char* rule : {"hoist", "bar", "joint", "chain"}) {
      BOOST_TEST(mostUse(linksOf(option, QString::fromLatin1(rule))) == *of(option, rule).usePercent,
                 near(1e-9));
    }
    BOOST_TEST(std::max(mostUse(linksOf(option, QStringLiteral("rigging"))),
                        mostUse(linksOf(option, QStringLiteral("secondary")))) <=
               *of(option, "hardware").usePercent * (1.0 + 1e-9));
    BOOST_TEST(*of(option, "hardware").usePercent > 0.0);
  }
}

/// Loads and limits of the rigging in kN: what its point carries, times the factors of lifting, against the
/// whole working load limit where nobody is beneath.
BOOST_AUTO_TEST_CASE(rigging_carries_what_its_point_does) {
  const Option option = chosen().with([](Snapshot& s) {
    s.show.peopleBeneath = false;
    s.catalogue.hardware[1].limit = kilonewtons(20);
  });
  const auto links = linksOf(option, QStringLiteral("rigging"));
  BOOST_REQUIRE(links.size() == 6U);
  for (std::size_t i = 0; i < links.size();
       ++i) { // at the worst step and with the factors: more, but not twice
    BOOST_TEST(links[i].loadKn >= *option.points[i / 3].worstStaticKn);
    BOOST_TEST(links[i].loadKn < 2.0 * *option.points[i / 3].worstStaticKn);
  }
  BOOST_TEST(links[1].limitKn.value() == 20.0, near(1e-12));
  BOOST_TEST(links[4].limitKn.value() == 20.0, near(1e-12));
}

/// A joint carries all that hangs below it: each link of the path is of its own joint, and tells less than
/// the one above; a heavier hoist side tells more.
BOOST_AUTO_TEST_CASE(each_link_is_of_its_own_joint_or_hoist) {
  const Option option = chosen().with([](Snapshot& s) { s.venue.points[0].y = metres(10.6); });
  const auto joints = linksOf(option, QStringLiteral("joint"));
  BOOST_TEST_REQUIRE(joints.size() >= 3U);
  std::set<double> loads;
  for (const PathLink& link : joints) {
    loads.insert(link.loadKn);
  }
  BOOST_TEST(loads.size() == joints.size());
  // Panned to either side, either hoist carries more.
  for (const char* hang : {"left", "right"}) {
    const options::ShowOptions all = options::decide(chosen().snapshot, QString::fromUtf8(hang));
    const auto hoists = linksOf(all.hangs[0].options.front(), QStringLiteral("hoist"));
    BOOST_TEST_REQUIRE(hoists.size() == 2U);
    BOOST_TEST((hoists[0].loadKn < hoists[1].loadKn) == (hang == std::string("right")));
    BOOST_TEST(hoists[0].loadKn != hoists[1].loadKn);
  }
}

BOOST_AUTO_TEST_CASE(rigging_and_hoists_carry_the_dynamic_factor) {
  const auto with = [](double factor) {
    return chosen().with([factor](Snapshot& s) {
      s.tour.house.push_back(
          {QStringLiteral("dynamic-factor"), factor, {}, {}, QStringLiteral("Edda"), QDate(2026, 11, 1)});
    });
  };
  const Option plain = with(2.0);
  const Option more = with(3.0);
  for (const char* kind : {"rigging", "hoist"}) {
    const auto before = linksOf(plain, QString::fromUtf8(kind));
    const auto after = linksOf(more, QString::fromUtf8(kind));
    BOOST_TEST_REQUIRE(before.size() >= 2U);
    for (std::size_t i = 0; i < before.size(); ++i) {
      BOOST_TEST(after[i].loadKn == 1.5 * before[i].loadKn, near(1e-12));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_link_without_a_limit_is_unproven) {
  const Option option = chosen().with([](Snapshot& s) { s.catalogue.hardware[1].limit.reset(); });
  for (const PathLink& link : linksOf(option, QStringLiteral("rigging"))) {
    BOOST_TEST((link.link == QStringLiteral("sling")) == !link.limitKn.has_value());
    BOOST_TEST((link.link == QStringLiteral("sling")) == (link.verdict == Verdict::unproven));
  }
}

/// A part of a limit is told where load and limit are figures alone.
BOOST_AUTO_TEST_CASE(a_load_that_is_not_known_has_no_part_of_its_limit) {
  const Option option = chosen().with([](Snapshot& s) { s.catalogue.hardware[1].mass.reset(); });
  int unknown = 0;
  for (const PathLink& link : option.loadPath) {
    const bool figures = std::isfinite(link.loadKn) && link.limitKn.value_or(0.0) > 0.0;
    BOOST_TEST(link.usePercent.has_value() == figures, link.kind.toStdString());
    unknown += link.limitKn && !std::isfinite(link.loadKn) ? 1 : 0;
  }
  BOOST_TEST(unknown > 0);
  const Option weak = chosen().with([](Snapshot& s) { s.catalogue.hardware[1].limit = kilonewtons(0.5); });
  int small = 0;
  for (const PathLink& link : weak.loadPath) {
    small += link.limitKn.value_or(9.0) < 1.0 && link.usePercent ? 1 : 0;
  }
  BOOST_TEST(small > 0);
}

BOOST_AUTO_TEST_CASE(answers_go_through_json_and_back) {
  const QJsonObject json = options::toJson(chosen().option);
  BOOST_TEST((options::toJson(options::optionFromJson(json)) == json));
}

BOOST_AUTO_TEST_CASE(working_coefficients_are_the_tables) {
  // DGUV Information 215-313, table 1 (V): wire rope 5 / 10, fibre sling 7 / 14, chain and other metal 4 / 8,
  // shackle 5 / 10. Machinery Directive 2006/42/EC, Annex I 4.1.2.5 (V): chain 4, rope 5, fibre 7.
  const options::CoefficientTable& dguv = *options::coefficientTable(1.0);
  BOOST_TEST(dguv.wireRope.without == 5.0);
  BOOST_TEST(dguv.wireRope.withPeople == 10.0);
  BOOST_TEST(dguv.fibre.without == 7.0);
  BOOST_TEST(dguv.fibre.withPeople == 14.0);
  BOOST_TEST(dguv.chain.without == 4.0);
  BOOST_TEST(dguv.chain.withPeople == 8.0);
  BOOST_TEST(dguv.shackle.without == 5.0);
  BOOST_TEST(dguv.shackle.withPeople == 10.0);
  const options::CoefficientTable& directive = *options::coefficientTable(2.0);
  BOOST_TEST(directive.chain.without == 4.0);
  BOOST_TEST(directive.wireRope.without == 5.0);
  BOOST_TEST(directive.fibre.without == 7.0);
  BOOST_TEST(std::isnan(directive.chain.withPeople));
  BOOST_TEST(options::coefficientTable(3.0) == nullptr);
  BOOST_TEST(options::coefficientTable(options::notKnown) == nullptr);
}

BOOST_AUTO_TEST_CASE(the_part_that_may_be_used) {
  catalogue::HardwareType shackle;
  shackle.kind = catalogue::HardwareKind::shackle;
  shackle.limit = kilonewtons(40);
  options::WeightLimits limits;
  limits.coefficients = options::coefficientTable(1.0);
  limits.accessory.value = 0.5;
  BOOST_TEST(options::usableLimit(limits, shackle) == 20000.0, near(1e-12)); // 5 of 10
  // No load at all is a limit, below that is a slip.
  BOOST_TEST(options::limitIn(newtons(0.0)) == 0.0);
  BOOST_TEST(options::limitIn(newtons(0.25)) == 0.25);
  BOOST_TEST(std::isnan(options::limitIn(newtons(-0.25))));
  BOOST_TEST(std::isnan(options::limitIn(std::nullopt)));
  shackle.designFactor = 6.0;
  BOOST_TEST(options::usableLimit(limits, shackle) == 20000.0, near(1e-12)); // the house's half stands
  shackle.designFactor = 4.0;
  BOOST_TEST(options::usableLimit(limits, shackle) == 16000.0, near(1e-12)); // 4 of 10
  limits.nobodyBeneath = true;
  limits.accessory.value = 1.0;
  BOOST_TEST(options::usableLimit(limits, shackle) == 32000.0, near(1e-12)); // 4 of 5
  shackle.designFactor = 6.0;
  BOOST_TEST(options::usableLimit(limits, shackle) == 40000.0, near(1e-12)); // never more than the limit
  limits.nobodyBeneath = false;
  limits.coefficients = options::coefficientTable(2.0);
  BOOST_TEST(std::isnan(options::usableLimit(limits, shackle))); // says nothing of people
  limits.coefficients = nullptr;
  BOOST_TEST(std::isnan(options::usableLimit(limits, shackle)));
}

/// Over people a fibre sling whose own coefficient nobody states uses twice what is usual for it, where the
/// table doubles it at all; everything else, and nobody beneath, the table's own figure.
BOOST_AUTO_TEST_CASE(where_the_usable_part_comes_from) {
  catalogue::HardwareType piece;
  piece.kind = catalogue::HardwareKind::sling;
  options::WeightLimits limits;
  const auto source = [&] { return options::usableSource(limits, piece).toStdString(); };
  BOOST_TEST(source() == "the house names no table of working coefficients");
  limits.coefficients = options::coefficientTable(1.0);
  const std::string twice = ": twice the sling's own coefficient (wire rope 5 / 10, fibre 7 / 14)";
  BOOST_TEST(source().ends_with(twice), source());
  limits.nobodyBeneath = true;
  BOOST_TEST(!source().ends_with(twice), source());
  limits.nobodyBeneath = false;
  piece.designFactor = 7.0;
  BOOST_TEST(!source().ends_with(twice), source());
  piece.designFactor.reset();
  piece.kind = catalogue::HardwareKind::shackle;
  BOOST_TEST(source().ends_with("coefficient 10"), source());
  limits.nobodyBeneath = true;
  BOOST_TEST(source().ends_with("coefficient 5"), source());
  limits.nobodyBeneath = false;
  piece.kind = catalogue::HardwareKind::sling;
  limits.coefficients = options::coefficientTable(2.0);
  BOOST_TEST(source().ends_with("nothing stated over people"), source());
}

BOOST_AUTO_TEST_CASE(a_tour_may_choose_another_table) {
  const auto by = [](double number, bool people) {
    return chosen().with([=](Snapshot& s) {
      s.show.peopleBeneath = people;
      s.tour.house.push_back({QStringLiteral("working-coefficients"),
                              number,
                              {},
                              QStringLiteral("tour's choice"),
                              QStringLiteral("Edda"),
                              QDate(2026, 11, 1)});
    });
  };
  BOOST_TEST((of(by(1, true), "hardware").verdict <= Verdict::tight));
  BOOST_TEST((of(by(2, true), "hardware").verdict == Verdict::unproven));
  BOOST_TEST((of(by(2, false), "hardware").verdict <= Verdict::tight));
  BOOST_TEST((of(by(7, false), "hardware").verdict == Verdict::unproven));
}

BOOST_AUTO_TEST_CASE(catching_is_the_work_of_the_fall) {
  // Textbook impact factor (strain energy): 1 + √(1 + 2h/δ). Suddenly laid on: 2. h = 4 δ: 1 + √9 = 4; h = 12
  // δ: 6.
  BOOST_TEST(options::catchFactor(0.0, options::notKnown) == 2.0);
  BOOST_TEST(options::catchFactor(0.04, 0.01) == 4.0, near(1e-12));
  BOOST_TEST(options::catchFactor(0.12, 0.01) == 6.0, near(1e-12));
  BOOST_TEST(std::isnan(options::catchFactor(0.01, options::notKnown)));
  BOOST_TEST(std::isnan(options::catchFactor(0.01, 0.0)));
  BOOST_TEST(std::isnan(options::catchFactor(options::notKnown, 0.01)));
  // By integrating the fall: m x'' = m g − k x from v = √(2 g h); the spring's greatest pull over m g.
  const double g = 9.80665;
  const double stretch = 0.002;
  const double k = g / stretch; // for 1 kg
  const double drop = 0.013;
  double x = 0.0;
  double v = std::sqrt(2.0 * g * drop);
  double most = 0.0;
  const double step = 1e-7;
  while (v > 0.0) {
    v += step * (g - k * (x + 0.5 * step * v));
    x += step * v;
    most = std::max(most, k * x / g);
  }
  BOOST_TEST(options::catchFactor(drop, stretch) == most, near(1e-4));
}

BOOST_AUTO_TEST_CASE(a_drop_is_judged) {
  const auto dropping = [](double metresOfDrop, std::optional<double> stiffnessKn) {
    return chosen().with([=](Snapshot& s) {
      s.show.hangs[0].secondarySlack = metres(metresOfDrop);
      if (stiffnessKn) {
        s.catalogue.hardware[2].stiffness = kilonewtons(*stiffnessKn);
      }
      for (catalogue::HardwareType& type : s.catalogue.hardware) {
        type.limit = kilonewtons(120);
      }
    });
  };
  const Finding none = of(dropping(0.0, {}), "hardware");
  BOOST_TEST((none.verdict <= Verdict::tight));
  BOOST_TEST((of(dropping(0.05, {}), "hardware").verdict == Verdict::unproven)); // its stretch is not stated
  BOOST_TEST((of(dropping(0.001, 500.0), "hardware").verdict <= Verdict::tight));
  const Finding hard = of(dropping(0.15, 7000.0), "hardware");
  BOOST_TEST((hard.verdict == Verdict::fails), hard.text.toStdString());
  BOOST_TEST(hard.text.contains(QStringLiteral("for catching it")), hard.text.toStdString());
  const Finding far = of(dropping(0.25, 1.0), "hardware");
  BOOST_TEST((far.verdict == Verdict::fails), far.text.toStdString());
  // Dropping farther never improves it.
  Verdict before = Verdict::holds;
  for (double drop = 0.0; drop < 0.3; drop += 0.004) {
    const Verdict now = of(dropping(drop, 800.0), "hardware").verdict;
    BOOST_TEST((now >= before), drop);
    before = now;
  }
}

BOOST_AUTO_TEST_CASE(the_secondary_steel_weighs_on_its_point) {
  const Option heavier = chosen().with([](Snapshot& s) { s.catalogue.hardware[2].mass = kilograms(11.2); });
  BOOST_TEST(heavier.points[0].staticKn - chosen().option.points[0].staticKn == 10.0 * 9.80665e-3,
             near(1e-9));
  const Option open = chosen().with([](Snapshot& s) { s.catalogue.hardware[2].mass.reset(); });
  BOOST_TEST((of(open, "point-load").verdict == Verdict::unproven));
}

/// Nothing is in doubt here and no chain leans: at every step both picks carry the mass, a point what gear
/// hangs above its pick besides, and every unfavourable end is the figure itself.
BOOST_AUTO_TEST_CASE(each_step_of_the_build_tells_what_picks_hoists_and_points_carry) {
  const Option& option = chosen().option;
  BOOST_REQUIRE(option.build.size() > 2U);
  BOOST_REQUIRE(option.points.size() == 2U);
  const options::StepLoads& set = option.build.back();
  for (const options::StepLoads& step : option.build) {
    BOOST_REQUIRE(step.picks.size() == 2U);
    double most = 0.0;
    for (std::size_t pick = 0; pick < 2; ++pick) {
      const options::StepPick& here = step.picks[pick];
      most += here.mostKn;
      BOOST_TEST(here.worstLeastKn == here.leastKn, near(1e-9));
      BOOST_TEST(here.worstMostKn == here.mostKn, near(1e-9));
      BOOST_TEST(here.worstHoistKn == here.hoistKn, near(1e-9));
      BOOST_TEST(here.worstPointKn == here.pointKn, near(1e-9));
      BOOST_TEST(here.leastKn == here.mostKn, near(0.2)); // they share it evenly, but for pan
      BOOST_TEST(here.pointKn - here.mostKn == set.picks[pick].pointKn - set.picks[pick].mostKn, near(1e-6));
      BOOST_TEST(here.hoistKn - here.mostKn == set.picks[pick].hoistKn - set.picks[pick].mostKn, near(1e-6));
      BOOST_TEST(here.hoistKn >= here.mostKn);
      BOOST_TEST(here.pointKn > here.hoistKn);
    }
    if (step.stage != QStringLiteral("aiming")) { // on the way each has its most at a moment of its own
      BOOST_TEST(most == step.massKg * 9.80665e-3, near(1e-3));
    }
  }
  BOOST_TEST(set.picks[0].pointKn == option.points[0].staticKn, near(1e-6));
  BOOST_TEST(set.picks[1].pointKn == option.points[1].staticKn, near(1e-6));
}

BOOST_AUTO_TEST_SUITE_END()
