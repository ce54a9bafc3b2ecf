// SPDX-License-Identifier: GPL-3.0-or-later
// Rules are judged at the unfavourable end of what figures may be off by; a cabinet that the crew weighed
// stands in for the maker's figure.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

#include <QJsonArray>

#include "options/doubts.h"
#include "options/freeze.h"
#include "options/option_json.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::smallHarbourShow;

namespace {

void houseSays(Snapshot& snapshot, const char* figure, double value) {
  for (venue::HouseFigure& each : snapshot.tour.house) {
    if (each.figure == QLatin1String(figure)) {
      each.value = value;
    }
  }
}

/// In doubt by what the usual house would say, but for what is passed.
Snapshot inDoubt() {
  Snapshot snapshot = smallHarbourShow();
  houseSays(snapshot, "mass-doubt", 2.0);
  houseSays(snapshot, "centre-doubt", 0.01);
  houseSays(snapshot, "length-doubt", 0.001);
  houseSays(snapshot, "pitch-doubt", 0.2);
  houseSays(snapshot, "chain-wear", 0.3);
  houseSays(snapshot, "scale-doubt", 0.5);
  return snapshot;
}

/// One with a downfill on its chain, at its best setting.
const Option& withDownfill() {
  static const Option found = [] {
    const ShowOptions all = decide(inDoubt(), QStringLiteral("left"));
    const auto option =
        std::find_if(all.hangs[0].options.begin(), all.hangs[0].options.end(), [](const Option& each) {
          return each.setting && each.setting->mark && each.verdict <= Verdict::tight;
        });
    BOOST_TEST_REQUIRE((option != all.hangs[0].options.end()));
    return *option;
  }();
  return found;
}

Option judged(const Snapshot& snapshot) {
  return judge(snapshot, withDownfill().key, *withDownfill().setting);
}

const Finding& findingOf(const Option& option, const char* rule) {
  const auto found = std::find_if(option.findings.begin(), option.findings.end(),
                                  [rule](const Finding& each) { return each.rule == QLatin1String(rule); });
  BOOST_TEST_REQUIRE((found != option.findings.end()));
  return *found;
}

catalogue::CabinetType& cabinet(Snapshot& snapshot, const char* name) {
  const auto found =
      std::find_if(snapshot.catalogue.cabinets.begin(), snapshot.catalogue.cabinets.end(),
                   [name](const catalogue::CabinetType& each) { return each.name == QLatin1String(name); });
  BOOST_TEST_REQUIRE((found != snapshot.catalogue.cabinets.end()));
  return *found;
}

std::vector<fleet::Unit*> unitsOf(Snapshot& snapshot, const char* type) {
  std::vector<fleet::Unit*> units;
  for (fleet::Unit& unit : snapshot.units) {
    if (unit.kind == fleet::UnitKind::cabinet && unit.type == QLatin1String(type)) {
      units.push_back(&unit);
    }
  }
  BOOST_TEST_REQUIRE(units.size() > 1U);
  return units;
}

void weigh(fleet::Unit& unit, double mass) {
  unit.weighed = kilograms(mass);
  unit.weighedOn = QDate(2027, 3, 2);
  unit.weighedBy = QStringLiteral("Edda Quill");
}

double massOn(const Option& option) {
  return findingOf(option, "bar").nominal.value();
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubts)

BOOST_AUTO_TEST_CASE(without_doubt_the_worst_is_the_figure_itself) {
  const Option option = judged(smallHarbourShow());
  for (const Finding& finding : option.findings) {
    BOOST_TEST((finding.nominal == finding.value), finding.rule.toStdString());
  }
}

BOOST_AUTO_TEST_CASE(loads_are_judged_at_their_worst_and_told_as_stated_too) {
  const Option plain = judged(smallHarbourShow());
  const Option option = judged(inDoubt());
  for (const char* rule : {"point-load", "zone-load", "hoist", "bar", "joint", "chain", "hardware"}) {
    const Finding& finding = findingOf(option, rule);
    if (!finding.value) {
      continue;
    }
    BOOST_TEST_CONTEXT(rule) {
      BOOST_TEST(finding.nominal.value() == findingOf(plain, rule).value.value(),
                 boost::test_tools::tolerance(1e-9));
      BOOST_TEST(*finding.value > *finding.nominal);
      BOOST_TEST(*finding.value < 1.35 * *finding.nominal);
      BOOST_TEST(finding.text.contains(QStringLiteral("unfavourable")));
    }
  }
  // 2 % more of all that hangs.
  const Finding& bar = findingOf(option, "bar");
  BOOST_TEST(*bar.value == 1.02 * *bar.nominal, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(option.pickLoads[0].loadKn == plain.pickLoads[0].loadKn, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(option.points[0].worstStaticKn.value() > option.points[0].staticKn);
  BOOST_TEST(!option.doubts.empty());
}

BOOST_AUTO_TEST_CASE(what_the_worst_comes_to_and_does_not_follow_is_said_by_a_flag) {
  for (const Finding& finding : judged(inDoubt()).findings) {
    BOOST_TEST(finding.worstFollows, finding.rule.toStdString());
  }
  Snapshot wild = inDoubt(); // lengths so doubtful that the hang may leave a joint's travel
  houseSays(wild, "length-doubt", 0.3);
  const Option option = judged(wild);
  const Option again = optionFromJson(toJson(option));
  int flagged = 0;
  for (std::size_t i = 0; i < option.findings.size(); ++i) {
    const Finding& finding = option.findings[i];
    flagged += finding.worstFollows ? 0 : 1;
    BOOST_TEST((!finding.worstFollows || !finding.text.contains(QStringLiteral("does not follow"))));
    BOOST_TEST(again.findings[i].worstFollows == finding.worstFollows);
  }
  BOOST_TEST(flagged > 0);
  BOOST_TEST(!findingOf(option, "point-load").worstFollows);
}

BOOST_AUTO_TEST_CASE(the_verdict_follows_the_worst) {
  Snapshot snapshot = smallHarbourShow();
  const double nominal = findingOf(judged(snapshot), "bar").value.value();
  const auto limitAt = [nominal](Snapshot& of, double times) {
    for (catalogue::BarType& bar : of.catalogue.bars) {
      for (catalogue::PickArrangement& picks : bar.arrangements) {
        picks.limit = newtons(1000.0 * nominal * times / (*of.show.peopleBeneath ? 0.5 : 1.0));
      }
    }
  };
  limitAt(snapshot, 1.01);
  BOOST_TEST(findingOf(judged(snapshot), "bar").verdict == Verdict::tight);
  Snapshot doubtful = inDoubt();
  limitAt(doubtful, 1.01);
  BOOST_TEST(findingOf(judged(doubtful), "bar").verdict == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(a_makers_tolerance_stands_before_the_houses_figure) {
  Snapshot snapshot = inDoubt();
  for (catalogue::CabinetType& type : snapshot.catalogue.cabinets) {
    type.tolerances.mass = kilograms(0.0);
  }
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    bar.tolerances.mass = kilograms(0.0);
  }
  const Finding bar = findingOf(judged(snapshot), "bar");
  const Finding before = findingOf(judged(inDoubt()), "bar");
  BOOST_TEST((bar.value < before.value));
}

BOOST_AUTO_TEST_CASE(a_houses_figure_that_cannot_be_read_leaves_all_unproven) {
  Snapshot snapshot = inDoubt();
  houseSays(snapshot, "centre-doubt", -1.0);
  const Option option = judged(snapshot);
  for (const char* rule : {"point-load", "hoist", "bar", "joint", "chain", "hardware", "travel"}) {
    BOOST_TEST(findingOf(option, rule).verdict >= Verdict::unproven, rule);
  }
}

BOOST_AUTO_TEST_CASE(no_corner_of_the_figures_is_judged_worse) {
  const Option worst = judged(inDoubt());
  using Figure = std::function<void(Snapshot&, int)>;
  std::vector<Figure> figures;
  for (const char* name : {"bass", "upper", "down"}) {
    figures.push_back([=](Snapshot& at, int sign) {
      catalogue::CabinetType& type = cabinet(at, name);
      type.mass = kilograms(inKilograms(*type.mass) * (1.0 + 0.02 * sign));
    });
    figures.push_back(
        [=](Snapshot& at, int sign) { cabinet(at, name).centreOfGravity->x += metres(0.01 * sign); });
  }
  figures.push_back([](Snapshot& at, int sign) {
    for (catalogue::ChainType& chain : at.catalogue.chains) {
      chain.pitch = metres(inMetres(*chain.pitch) * (sign < 0 ? 0.998 : 1.002 * 1.003));
    }
  });
  figures.push_back([](Snapshot& at, int sign) {
    for (catalogue::BarType& bar : at.catalogue.bars) {
      bar.frameMass = kilograms(inKilograms(*bar.frameMass) * (1.0 + 0.02 * sign));
      bar.frameCentreOfGravity->x += metres(0.01 * sign);
    }
  });
  for (unsigned bits = 0; bits < (1U << figures.size()); ++bits) {
    Snapshot corner = smallHarbourShow();
    for (std::size_t k = 0; k < figures.size(); ++k) {
      figures[k](corner, (bits >> k & 1U) != 0 ? 1 : -1);
    }
    const Option at = judged(corner);
    for (const Finding& finding : at.findings) {
      const Finding& bound = findingOf(worst, finding.rule.toLatin1().constData());
      BOOST_TEST(finding.verdict <= bound.verdict, finding.rule.toStdString() << " at corner " << bits);
      if (finding.usePercent && bound.usePercent) {
        BOOST_TEST(*finding.usePercent <= *bound.usePercent + 1e-6, finding.rule.toStdString()
                                                                        << " at corner " << bits);
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_heavier_unit_that_was_weighed_takes_the_makers_place) {
  Snapshot snapshot = inDoubt();
  const double before = massOn(judged(snapshot));
  const double maker = inKilograms(*cabinet(snapshot, "bass").mass);
  weigh(*unitsOf(snapshot, "bass")[0], maker + 3.0);
  const Option option = judged(snapshot);
  BOOST_TEST(massOn(option) > before);
  for (const Finding& each : option.findings) { // where a cabinet's mass goes in most plainly
    const bool plain =
        QStringList{QStringLiteral("bar"), QStringLiteral("point-load"), QStringLiteral("hoist")}.contains(
            each.rule);
    BOOST_TEST(each.text.contains(QStringLiteral("weighed 2027-03-02 by Edda Quill")) == plain,
               each.rule.toStdString());
  }
  BOOST_TEST(option.weighed.size() == 1);
  const House house(snapshot.tour.house, {}, {});
  const KnownMass known = massOfType(snapshot, house, cabinet(snapshot, "bass"));
  BOOST_TEST(known.stated == maker + 3.0);
  BOOST_TEST(known.stated + known.heavier == (maker + 3.0) * 1.005, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(known.stated - known.lighter == maker * 0.98, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_lighter_one_only_once_all_that_may_hang_are_weighed) {
  Snapshot snapshot = inDoubt();
  const House house(snapshot.tour.house, {}, {});
  const double maker = inKilograms(*cabinet(snapshot, "bass").mass);
  const std::vector<fleet::Unit*> units = unitsOf(snapshot, "bass");
  for (std::size_t i = 0; i + 1 < units.size(); ++i) {
    weigh(*units[i], maker - 4.0);
  }
  KnownMass known = massOfType(snapshot, house, cabinet(snapshot, "bass"));
  BOOST_TEST(known.stated == maker);
  BOOST_TEST(known.stated + known.heavier == maker * 1.02, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(known.stated - known.lighter == (maker - 4.0) * 0.995, boost::test_tools::tolerance(1e-12));
  weigh(*units.back(), maker - 3.0);
  known = massOfType(snapshot, house, cabinet(snapshot, "bass"));
  BOOST_TEST(known.stated == maker - 3.0);
  BOOST_TEST(known.stated + known.heavier == (maker - 3.0) * 1.005, boost::test_tools::tolerance(1e-12));
  // One that is written off hangs no more; one of a batch says nothing of the others.
  units.back()->weighed.reset();
  units.back()->state = fleet::UnitState::writtenOff;
  BOOST_TEST(massOfType(snapshot, house, cabinet(snapshot, "bass")).stated == maker - 4.0);
  units.front()->pieces = 2;
  BOOST_TEST(massOfType(snapshot, house, cabinet(snapshot, "bass")).stated == maker);
}

BOOST_AUTO_TEST_CASE(weighing_all_stands_in_for_a_figure_that_no_maker_states) {
  Snapshot snapshot = inDoubt();
  cabinet(snapshot, "bass").mass.reset();
  const House house(snapshot.tour.house, {}, {});
  const std::vector<fleet::Unit*> units = unitsOf(snapshot, "bass");
  for (std::size_t i = 0; i + 1 < units.size(); ++i) {
    weigh(*units[i], 90.0);
  }
  BOOST_TEST(std::isnan(massOfType(snapshot, house, cabinet(snapshot, "bass")).stated));
  weigh(*units.back(), 91.0);
  BOOST_TEST(massOfType(snapshot, house, cabinet(snapshot, "bass")).stated == 91.0);
}

std::vector<fleet::Unit*> barsOf(Snapshot& snapshot) {
  std::vector<fleet::Unit*> bars;
  for (fleet::Unit& unit : snapshot.units) {
    if (unit.kind == fleet::UnitKind::bar && unit.type == withDownfill().key.bar) {
      bars.push_back(&unit);
    }
  }
  BOOST_TEST_REQUIRE(bars.size() > 1U);
  return bars;
}

/// Of the pick loads at rest, as stated.
double sumOfPicks(const Option& option) {
  double sum = 0.0;
  for (const PickLoad& each : option.pickLoads) {
    sum += each.loadKn;
  }
  return sum;
}

BOOST_AUTO_TEST_CASE(a_bar_that_was_weighed_heavier_counts_as_a_weighed_cabinet_does) {
  Snapshot snapshot = inDoubt();
  const House house(snapshot.tour.house, {}, {});
  const catalogue::BarType& type = *catalogue::find(snapshot.catalogue.bars, withDownfill().key.bar);
  const KnownBar maker = massesOfBar(snapshot, house, type);
  BOOST_TEST(maker.whole.weighed.isEmpty());
  const Option before = judged(snapshot);
  weigh(*barsOf(snapshot)[0], maker.whole.stated + 4.0);
  const Option after = judged(snapshot);
  BOOST_TEST(after.massKg - before.massKg == 4.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(sumOfPicks(after) - sumOfPicks(before) == 4.0 * standardGravity / 1000.0,
             boost::test_tools::tolerance(1e-6));
  BOOST_TEST(after.weighed.size() == 1);
  BOOST_TEST(
      findingOf(after, "point-load").text.contains(QStringLiteral("weighed 2027-03-02 by Edda Quill")));
  for (const char* rule : {"point-load", "hoist"}) {
    BOOST_TEST(*findingOf(after, rule).value > *findingOf(before, rule).value, rule);
  }
  // What was frozen before the scale spoke is outdated then.
  const auto weighed = inputsOf(snapshot, after.key).value(QLatin1String("weighed")).toArray();
  BOOST_TEST(weighed.size() == 1);
  BOOST_TEST(!inputsOf(inDoubt(), after.key).contains(QLatin1String("weighed")));
}

BOOST_AUTO_TEST_CASE(what_a_bar_weighs_more_is_spread_over_its_parts_and_a_lighter_one_waits_for_all) {
  Snapshot snapshot = inDoubt();
  const House house(snapshot.tour.house, {}, {});
  const catalogue::BarType& type = *catalogue::find(snapshot.catalogue.bars, withDownfill().key.bar);
  const KnownBar maker = massesOfBar(snapshot, house, type);
  const double whole = maker.whole.stated;
  const std::vector<fleet::Unit*> bars = barsOf(snapshot);
  weigh(*bars[0], whole * 1.1);
  KnownBar known = massesOfBar(snapshot, house, type);
  BOOST_TEST(known.frame.stated == maker.frame.stated * 1.1, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(known.whole.stated + known.whole.heavier == whole * 1.1 * 1.005,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(known.frame.stated - known.frame.lighter == maker.frame.stated - maker.frame.lighter,
             boost::test_tools::tolerance(1e-12));
  for (fleet::Unit* each : bars) {
    BOOST_TEST(massesOfBar(snapshot, house, type).frame.stated >= maker.frame.stated);
    weigh(*each, whole * 0.9);
  }
  known = massesOfBar(snapshot, house, type);
  BOOST_TEST(known.whole.stated == whole * 0.9, boost::test_tools::tolerance(1e-12));
  catalogue::BarType unknown = type;
  unknown.frameMass.reset();
  BOOST_TEST(massesOfBar(snapshot, house, unknown).whole.weighed.isEmpty()); // its parts are missing
}

BOOST_AUTO_TEST_SUITE_END()
