// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>
#include <random>

#include <boost/test/unit_test.hpp>

#include "hang/layout.h"
#include "hang/settle.h"
#include "hang/solve.h"
#include "options/search.h"
#include "options/weight_limits.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::Snapshot;
using options::Verdict;

namespace {

using Change = std::function<void(Snapshot&)>;

/// The best option with a downfill of the small show, and its setting; all rules hold there.
struct Chosen {
  Snapshot snapshot = testing::smallHarbourShow();
  Option option;

  Chosen() {
    const auto all = options::decide(snapshot, QStringLiteral("left"));
    option = all.hangs[0].options.front();
    BOOST_REQUIRE(option.downfill);
    BOOST_REQUIRE(option.verdict == Verdict::holds);
  }
  Option with(const Change& change) const {
    Snapshot changed = snapshot;
    change(changed);
    return options::judge(changed, option.key, *option.setting);
  }
};

const Chosen& chosen() {
  static const Chosen one;
  return one;
}

Finding of(const Option& option, const char* rule) {
  for (const Finding& finding : option.findings) {
    if (finding.rule == QLatin1String(rule)) {
      return finding;
    }
  }
  BOOST_FAIL(std::string("no finding of ") + rule);
  return {};
}

Finding findingWith(const char* rule, const Change& change) {
  return of(chosen().with(change), rule);
}

void nothing(Snapshot&) {}

/// A force that is exactly that many kN when it is divided by 1000.
Force exactly(double kilonewtonsWanted) {
  double newtonsTried = kilonewtonsWanted * 1000.0;
  for (int i = 0; i < 8 && newtonsTried / 1000.0 != kilonewtonsWanted; ++i) {
    newtonsTried = std::nextafter(newtonsTried, newtonsTried / 1000.0 < kilonewtonsWanted ? 1e12 : 0.0);
  }
  BOOST_REQUIRE(newtonsTried / 1000.0 == kilonewtonsWanted);
  return newtons(newtonsTried);
}

Force below(Force force) {
  return newtons(std::nextafter(inNewtons(force), 0.0) - 1e-9);
}

/// A rule with an upper limit on a load. People are beneath: of an accessory's and a hoist's limit half
/// counts.
struct Limited {
  const char* rule;
  double part;
  std::function<void(Snapshot&, std::optional<Force>)> set;
};

const std::vector<Limited>& limitedRules() {
  using Limit = std::optional<Force>;
  static const std::vector<Limited> rules{
      {"point-load", 1.0,
       [](Snapshot& s, Limit limit) {
         for (venue::Point& point : s.venue.points) {
           point.capacity = limit;
         }
       }},
      {"zone-load", 1.0, [](Snapshot& s, Limit limit) { s.venue.zones[0].capacity = limit; }},
      {"hoist", 0.5, [](Snapshot& s, Limit limit) { s.catalogue.hoists[0].limit = limit; }},
      {"bar", 0.5, [](Snapshot& s, Limit limit) { s.catalogue.bars[0].arrangements[0].limit = limit; }},
      {"joint", 0.5,
       [](Snapshot& s, Limit limit) {
         for (catalogue::Join& join : s.catalogue.tables[0].joins) {
           join.pinLimit = limit;
         }
       }},
      {"chain", 0.5, [](Snapshot& s, Limit limit) { s.catalogue.chains[0].limit = limit; }},
      {"hardware", 0.5,
       [](Snapshot& s, Limit limit) {
         for (catalogue::HardwareType& type : s.catalogue.hardware) {
           type.limit = limit;
         }
       }},
  };
  return rules;
}

} // namespace

BOOST_AUTO_TEST_SUITE(weight_rules)

BOOST_AUTO_TEST_CASE(holdsTightFailsAndUnproven) {
  for (const Limited& each : limitedRules()) {
    BOOST_TEST_CONTEXT(each.rule) {
      const Finding plain = findingWith(each.rule, nothing);
      BOOST_TEST(plain.verdict == Verdict::holds);
      BOOST_REQUIRE(plain.value.has_value());
      BOOST_REQUIRE(plain.usePercent.has_value());
      const Force load = exactly(*plain.value);
      const auto limited = [&each](Force limit) {
        return findingWith(each.rule,
                           [&](Snapshot& s) { each.set(s, newtons(inNewtons(limit) / each.part)); });
      };
      const Finding equal = limited(load);
      BOOST_TEST(equal.verdict == Verdict::tight);
      BOOST_TEST(*equal.usePercent == 100.0, boost::test_tools::tolerance(1e-12));
      BOOST_TEST(limited(below(load)).verdict == Verdict::fails);
      BOOST_TEST(limited(newtons(inNewtons(load) / 0.9001)).verdict == Verdict::tight);
      BOOST_TEST(limited(newtons(inNewtons(load) / 0.8999)).verdict == Verdict::holds);
      const Finding open = findingWith(each.rule, [&each](Snapshot& s) { each.set(s, std::nullopt); });
      BOOST_TEST(open.verdict == Verdict::unproven);
      BOOST_TEST(!open.limit.has_value());
      BOOST_TEST(!open.text.contains(QStringLiteral("nan")));
    }
  }
}

/// Added up by hand from the fixture: 41 kg hoist and so on are in the sentence that a rigger checks.
BOOST_AUTO_TEST_CASE(pointLoadAddsUp) {
  const Option option = chosen().with(nothing);
  const Finding finding = of(option, "point-load");
  const double hoist = 58 * standardGravity / 1000.0;
  const double chain = (1.3 * 22 + 2.5) * standardGravity / 1000.0;
  const double rigging = (3 + 3) * 1.2 * standardGravity / 1000.0;
  BOOST_TEST(*finding.value == option.pickLoads[0].loadKn + hoist + chain + rigging,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(option.points[0].dynamicKn == option.points[0].staticKn * (1.10 + 0.34 * 0.0667),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(finding.text.contains(QStringLiteral("Point L1 carries")));
  BOOST_TEST(finding.text.contains(QStringLiteral("rigging 0.07")));
}

BOOST_AUTO_TEST_CASE(basisDecidesWhichLoadIsCompared) {
  const auto based = [](catalogue::Basis basis) {
    return findingWith("point-load", [basis](Snapshot& s) {
      for (venue::Point& point : s.venue.points) {
        point.basis = basis;
      }
    });
  };
  const Finding atRest = based(catalogue::Basis::atRest);
  const Finding dynamic = based(catalogue::Basis::dynamic);
  BOOST_TEST(*dynamic.value == *atRest.value * (1.10 + 0.34 * 0.0667), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(based(catalogue::Basis::unknown).verdict == Verdict::unproven);
  const Finding noFactor = findingWith("point-load", [](Snapshot& s) {
    s.venue.points[0].basis = catalogue::Basis::dynamic;
    s.catalogue.hoists[0].hoistingClass.reset();
  });
  BOOST_TEST(noFactor.verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(zoneSumsEverything) {
  const Option option = chosen().with(nothing);
  const double both = option.points[0].staticKn + option.points[1].staticKn;
  BOOST_TEST(*of(option, "zone-load").value == both + 4.0, boost::test_tools::tolerance(1e-9));

  // One truss for both hangs: the other hang counts as the same option mirrored, or by its choice.
  const Change oneTruss = [](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      point.zone = QStringLiteral("left truss");
    }
  };
  BOOST_TEST(*findingWith("zone-load", oneTruss).value == 2 * both + 4.0, boost::test_tools::tolerance(1e-9));
  const Finding byChoice = findingWith("zone-load", [&](Snapshot& s) {
    oneTruss(s);
    options::Choice choice;
    choice.hang = QStringLiteral("right");
    choice.points = {{QStringLiteral("R1"), 7.0, 8.0, {}, {}, 0.0, {}, {}}};
    s.choices.push_back(choice);
  });
  BOOST_TEST(*byChoice.value == both + 4.0 + 7.0, boost::test_tools::tolerance(1e-9));
  // Which of the two says it is all the same.
  const Finding saidHere = findingWith("zone-load", [&](Snapshot& s) {
    oneTruss(s);
    s.show.hangs[1].mirrors.clear();
    s.show.hangs[0].mirrors = QStringLiteral("right");
  });
  BOOST_TEST(*saidHere.value == 2 * both + 4.0, boost::test_tools::tolerance(1e-9));
  const Finding strangers = findingWith("zone-load", [&](Snapshot& s) {
    oneTruss(s);
    s.show.hangs[1].mirrors.clear();
  });
  BOOST_TEST(strangers.verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(zoneNeedsToKnowTheOthers) {
  const auto withOthers = [](std::optional<Force> others, const QString& by) {
    return findingWith("zone-load",
                       [&](Snapshot& s) {
                         s.venue.zones[0].othersLoad = others;
                         s.venue.zones[0].othersBy = by;
                       })
        .verdict;
  };
  BOOST_TEST(withOthers(std::nullopt, QStringLiteral("Runa Vell")) == Verdict::unproven);
  BOOST_TEST(withOthers(newtons(0), {}) == Verdict::unproven);
  BOOST_TEST(withOthers(newtons(0), QStringLiteral("Runa Vell")) == Verdict::holds);

  BOOST_TEST(findingWith("zone-load", [](Snapshot& s) { s.venue.points[0].zone.clear(); }).verdict ==
             Verdict::unproven);
  BOOST_TEST(findingWith("zone-load", [](Snapshot& s) { s.venue.zones.clear(); }).verdict ==
             Verdict::unproven);
  const Finding none = findingWith("zone-load", [](Snapshot& s) {
    s.venue.zones.clear();
    for (venue::Point& point : s.venue.points) {
      point.zone.clear();
    }
  });
  BOOST_TEST(!none.applies);
  BOOST_TEST(!none.text.isEmpty());
}

/// Two hangs on one point load it with their sum, also where the venue states no truss, beam or bay.
BOOST_AUTO_TEST_CASE(aPointThatTwoHangsUse) {
  const double own = chosen().option.points[0].staticKn;
  const Change noZones = [](Snapshot& s) {
    s.venue.zones.clear();
    for (venue::Point& point : s.venue.points) {
      point.zone.clear();
    }
    s.show.hangs[1].points = {QStringLiteral("L1"), QStringLiteral("R1"), QStringLiteral("R2")};
  };
  const auto withRightAt = [&](const char* point, double capacityKn, double dynamicKn = 8.0) {
    return chosen().with([&](Snapshot& s) {
      noZones(s);
      s.venue.points[0].capacity = kilonewtons(capacityKn);
      options::Choice choice;
      choice.hang = QStringLiteral("right");
      choice.points = {{QString::fromUtf8(point), 7.0, dynamicKn, {}, {}, 0.0, {}, {}}};
      s.choices.push_back(choice);
    });
  };
  const Option over = withRightAt("L1", own + 6.9);
  BOOST_TEST(of(over, "point-load").verdict < Verdict::unproven); // this hang alone
  BOOST_TEST(of(over, "zone-load").verdict == Verdict::fails);
  BOOST_TEST(*of(over, "zone-load").value == own + 7.0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(of(over, "zone-load").text.contains(QStringLiteral("Point L1 carries")));
  BOOST_TEST(of(withRightAt("L1", own + 7.1), "zone-load").verdict == Verdict::tight);
  BOOST_TEST(!of(withRightAt("R1", own + 6.9), "zone-load").applies);
  // Nothing chosen there: what the other hang puts on it is not known.
  BOOST_TEST(findingWith("zone-load", [&](Snapshot& s) {
               noZones(s);
               s.show.hangs[1].mirrors.clear();
             }).verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(aLoadBelowNothingIsNoFigure) {
  BOOST_TEST(findingWith("zone-load", [](Snapshot& s) {
               s.venue.zones[0].othersLoad = kilonewtons(-5);
             }).verdict == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(hoistOverPeople) {
  const Finding plain = findingWith("hoist", nothing);
  const Option option = chosen().with(nothing);
  // Its body, 22 m of chain and the bag hang with it: 58 + 22 · 1.3 + 2.5 kg.
  const double climbing = 89.1 * standardGravity / 1000.0;
  BOOST_TEST(*plain.value == (option.pickLoads[0].loadKn + climbing) * (1.10 + 0.34 * 0.0667),
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(*plain.limit == 0.5 * 2000 * standardGravity / 1000.0, boost::test_tools::tolerance(1e-12));
  const auto verdict = [](std::optional<bool> people, std::optional<bool> byClass, bool secondary) {
    return findingWith("hoist",
                       [=](Snapshot& s) {
                         s.show.peopleBeneath = people;
                         s.catalogue.hoists[0].holdsWithoutSecondary = byClass;
                         if (!secondary) {
                           s.show.hangs[0].secondary.clear();
                         }
                       })
        .verdict;
  };
  BOOST_TEST(verdict(true, false, true) == Verdict::holds);
  BOOST_TEST(verdict(true, false, false) == Verdict::fails);
  BOOST_TEST(verdict(true, std::nullopt, false) == Verdict::unproven);
  BOOST_TEST(verdict(true, true, false) == Verdict::holds);
  BOOST_TEST(verdict(false, false, false) == Verdict::holds);
  BOOST_TEST(verdict(std::nullopt, false, true) == Verdict::unproven);
  const Finding stays = findingWith("hoist", [](Snapshot& s) { s.catalogue.hoists[0].bodyClimbs = false; });
  BOOST_TEST(*stays.value == option.pickLoads[0].loadKn * (1.10 + 0.34 * 0.0667),
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(hoistOfAnotherClass) {
  BOOST_TEST(options::dynamicFactorOf(catalogue::HoistingClass::hc2, 4.0 / 60.0) == 1.123,
             boost::test_tools::tolerance(5e-4)); // EN 1991-3, C
  const Finding house = findingWith("hoist", [](Snapshot& s) {
    s.tour.house.push_back(
        {QStringLiteral("dynamic-factor"), 1.5, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  });
  const Option option = chosen().with(nothing);
  BOOST_TEST(*house.value == (option.pickLoads[0].loadKn + 89.1 * standardGravity / 1000.0) * 1.5,
             boost::test_tools::tolerance(1e-9));
  const auto stated = [](double factor) {
    return findingWith("hoist",
                       [factor](Snapshot& s) {
                         s.tour.house.push_back({QStringLiteral("dynamic-factor"),
                                                 factor,
                                                 {},
                                                 {},
                                                 QStringLiteral("Edda"),
                                                 QDate(2026, 1, 1)});
                       })
        .verdict;
  };
  BOOST_TEST(stated(0.9) == Verdict::unproven); // a dynamic factor below 1 is a slip
  const Finding lower = findingWith("hoist", [](Snapshot& s) {
    s.tour.house.push_back(
        {QStringLiteral("dynamic-factor"), 1.01, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  });
  BOOST_TEST(*lower.value == *findingWith("hoist", nothing).value); // the house only tightens
  BOOST_TEST(stated(std::nan("")) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(countOfCabinets) {
  const auto most = [](std::optional<int> number) {
    return findingWith("count",
                       [number](Snapshot& s) { s.catalogue.bars[0].arrangements[0].mostCabinets = number; })
        .verdict;
  };
  const int size = static_cast<int>(chosen().option.key.stack.size());
  BOOST_TEST(most(size + 1) == Verdict::holds);
  BOOST_TEST(most(size) == Verdict::tight);
  BOOST_TEST(most(size - 1) == Verdict::fails);
  BOOST_TEST(most(std::nullopt) == Verdict::unproven);
}

BOOST_AUTO_TEST_CASE(picksShareTheLoad) {
  const auto house = [](const char* figure, double value) {
    return findingWith("pick-share", [=](Snapshot& s) {
      s.show.house.push_back(
          {QString::fromLatin1(figure), value, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
    });
  };
  const double share = *findingWith("pick-share", nothing).value;
  BOOST_TEST(house("pick-share-least", share).verdict == Verdict::tight);
  BOOST_TEST(house("pick-share-least", share + 1e-6).verdict == Verdict::fails);
  BOOST_TEST(house("side-difference", 0.1).verdict == Verdict::fails);
}

BOOST_AUTO_TEST_CASE(hardwareThatNobodyNamed) {
  const auto verdict = [](const Change& change) { return findingWith("hardware", change).verdict; };
  BOOST_TEST(verdict([](Snapshot& s) { s.show.hangs[0].rigging.clear(); }) == Verdict::unproven);
  BOOST_TEST(verdict([](Snapshot& s) { s.show.hangs[0].rigging.append(QStringLiteral("odd clip")); }) ==
             Verdict::unproven);
  BOOST_TEST(verdict([](Snapshot& s) { s.show.hangs[0].secondary.clear(); }) == Verdict::unproven);
  BOOST_TEST(verdict([](Snapshot& s) {
               s.show.hangs[0].secondary.clear();
               s.catalogue.hoists[0].holdsWithoutSecondary = true;
             }) == Verdict::holds);
  // The catching steel alone is too small: twice the pick's load against its whole limit.
  const double pick = chosen().option.pickLoads[0].loadKn;
  const auto steel = [&](double kn) {
    return verdict([kn](Snapshot& s) { s.catalogue.hardware[2].limit = kilonewtons(kn); });
  };
  BOOST_TEST(steel(2.0 * pick * 1.2) != Verdict::fails);
  BOOST_TEST(steel(2.0 * pick * 0.99) == Verdict::fails);
  // With nobody beneath the dynamic factor alone (1.12) would let half as much do: here catching decides.
  const auto catching = [&](double kn) {
    return findingWith("hardware", [kn](Snapshot& s) {
      s.show.peopleBeneath = false;
      s.catalogue.hardware[2].limit = kilonewtons(kn);
    });
  };
  BOOST_TEST(catching(2.0 * pick * 1.01).verdict == Verdict::tight);
  BOOST_TEST(catching(2.0 * pick * 0.99).verdict == Verdict::fails);
  BOOST_TEST(catching(pick).text.contains(QStringLiteral("with factor 2 for catching it")));
}

BOOST_AUTO_TEST_CASE(pointsThatStandTooFarApart) {
  const auto apart = [](double metresApart) {
    return chosen().with([metresApart](Snapshot& s) { s.venue.points[1].y = metres(10.5 - metresApart); });
  };
  const Finding plumb = findingWith("lean", nothing);
  BOOST_TEST(*plumb.value == 0.0);
  const Option little = apart(1.2);
  const Finding lean = of(little, "lean");
  BOOST_TEST(lean.verdict == Verdict::holds);
  BOOST_TEST(*lean.value > 0.0);
  // 1/cos of the lean is what the point carries more.
  const double force = little.points[0].parts.front().kn;
  BOOST_TEST(force == little.pickLoads[0].loadKn / std::cos(*lean.value * M_PI / 180.0),
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(of(apart(3.0), "lean").verdict == Verdict::fails);
  // By geometry: half the difference over the height between point and pick.
  BOOST_TEST(std::tan(*lean.value * M_PI / 180.0) < 0.1 / 2.0);
}

/// At each end of a window every rule that does not fail inside it still does not; the lean ends one, and so
/// does a load that rises with it.
BOOST_AUTO_TEST_CASE(windowsEndWhereLeaningFails) {
  const auto endsWell = [](const Snapshot& snapshot, const Option& option) {
    BOOST_REQUIRE(option.trimWindow.has_value());
    for (const double end : {option.trimWindow->lowM, option.trimWindow->highM}) {
      options::Setting there = *option.setting;
      there.trimM = end;
      const Option judged = options::judge(snapshot, option.key, there);
      BOOST_TEST(judged.verdict == Verdict::tight);
    }
  };
  Snapshot snapshot = chosen().snapshot;
  // With points loaded to the last digit no pair may be out of level at all.
  snapshot.show.house.push_back(
      {QStringLiteral("hoist-difference"), 0.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  snapshot.venue.points[1].y = metres(8.9);
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  const auto found =
      std::find_if(all.hangs[0].options.begin(), all.hangs[0].options.end(), [](const Option& each) {
        return each.verdict < Verdict::unproven && each.trimWindow->highSetBy == QLatin1String("lean");
      });
  BOOST_REQUIRE((found != all.hangs[0].options.end()));
  const Option& leaning = *found;
  endsWell(snapshot, leaning);

  const double lightest = *of(leaning, "point-load").value; // at the worst step of the build
  for (venue::Point& point : snapshot.venue.points) {
    point.capacity = kilonewtons(lightest * 1.00001);
  }
  const Option loaded = options::judge(snapshot, leaning.key, *leaning.setting);
  BOOST_REQUIRE(loaded.trimWindow.has_value());
  BOOST_TEST((loaded.trimWindow->highSetBy == QStringLiteral("point-load")));
  BOOST_TEST(loaded.trimWindow->highM < leaning.trimWindow->highM);
  BOOST_TEST(loaded.trimWindow->highM > leaning.setting->trimM);
  endsWell(snapshot, loaded);
}

BOOST_AUTO_TEST_CASE(theChainWeighsToo) {
  // Fixture: 260 links × 22.5 mm × 1.4 kg/m; half as heavy a chain takes half of that off the hooks.
  const Option lighter =
      chosen().with([](Snapshot& s) { s.catalogue.chains[0].mass = kilogramsPerMetre(0.7); });
  const catalogue::ChainType& chain = chosen().snapshot.catalogue.chains[0];
  const double whole = 1.4 * inMetres(*chain.pitch) * *chain.links;
  BOOST_TEST(chosen().option.massKg - lighter.massKg == 0.5 * whole, boost::test_tools::tolerance(1e-9));
  const Option unknown = chosen().with([](Snapshot& s) { s.catalogue.chains[0].mass.reset(); });
  BOOST_TEST(of(unknown, "point-load").verdict == Verdict::unproven);
  BOOST_TEST(of(unknown, "bar").text.contains(QStringLiteral("mass per metre of chain")));
}

BOOST_AUTO_TEST_CASE(anUnknownBasisHidesNoSureOverload) {
  const auto capacity = [](double kn) {
    return findingWith("point-load", [kn](Snapshot& s) {
      for (venue::Point& point : s.venue.points) {
        point.basis = catalogue::Basis::unknown;
        point.capacity = kilonewtons(kn);
      }
    });
  };
  BOOST_TEST(capacity(100.0).verdict == Verdict::unproven);
  BOOST_TEST(capacity(0.5).verdict == Verdict::fails);
}

/// Force and moment at 1 N/m² of a wind along `d` on the chosen hang, face by face: area × coefficient × |n ·
/// d|.
std::pair<double, double> blown(const hang::Vec3& d, double barCoefficient) {
  const Option& calm = chosen().option;
  const hang::Layout layout = hang::layOut(*calm.hangInput, hang::solve(*calm.hangInput));
  const auto part = [&d](const hang::Vec3& n) { return std::abs(n.x * d.x + n.y * d.y + n.z * d.z); };
  const auto bar = barCoefficient * (0.22 * 1.2 * part(layout.forward) + 0.22 * 1.1 * part(layout.left) +
                                     1.1 * 1.2 * part(layout.up));
  double force = bar;
  double moment = bar * -layout.frameCg.z;
  for (int i = 0; i < calm.key.stack.size(); ++i) {
    const QString& type = calm.key.stack[i];
    const hang::PlacedElement& placed = layout.elements[static_cast<std::size_t>(i)];
    const double side = type == QLatin1String("bass")    ? 0.78 * 0.61
                        : type == QLatin1String("upper") ? 0.78 * 0.51
                                                         : 0.63 * (0.54 + 0.18) / 2;
    const double depth = type == QLatin1String("down") ? 0.63 : 0.78;
    const hang::Vec3& f = placed.forward;
    const hang::Vec3& l = layout.left;
    const hang::Vec3 up{f.y * l.z - f.z * l.y, f.z * l.x - f.x * l.z, f.x * l.y - f.y * l.x};
    double height = 0.0;
    for (const hang::Vec3& corner : placed.outline) {
      height += corner.z / static_cast<double>(placed.outline.size());
    }
    const double push = 1.3 * (0.6 * part(f) + side * part(l) + depth * 1.1 * part(up));
    force += push;
    moment += push * -height;
  }
  return {force, moment};
}

/// The worst of a sweep: force, and moment along the line of the picks (the hang's own y).
std::pair<double, double> worstBlown(double barCoefficient) {
  std::pair<double, double> worst{0.0, 0.0};
  for (int step = 0; step < 18000; ++step) {
    const double way = step * 0.01 * M_PI / 180.0;
    const auto [force, moment] = blown({std::cos(way), std::sin(way), 0.0}, barCoefficient);
    worst.first = std::max(worst.first, force);
    worst.second = std::max(worst.second, moment * std::abs(std::sin(way)));
  }
  return worst;
}

void outdoors(Snapshot& s, std::optional<double> gust) {
  s.venue.outdoors = true;
  s.show.wind.reset();
  if (gust) {
    s.show.wind = metresPerSecond(*gust);
  }
  s.show.windBasis = calendar::WindBasis::gust;
  s.show.windAveraging = 3.0;
  s.show.windHeight = metres(30);
  s.show.hangs[0].wetMass = kilograms(0);
}

BOOST_AUTO_TEST_CASE(windOutdoors) {
  BOOST_TEST(!findingWith("wind", nothing).applies);
  const Finding open = findingWith("wind", [](Snapshot& s) { s.venue.outdoors.reset(); });
  BOOST_TEST(open.applies);
  BOOST_TEST(open.verdict == Verdict::unproven);
  BOOST_TEST(!chosen().with([](Snapshot& s) { s.venue.outdoors.reset(); }).wind.has_value());
  const auto blowing = [](std::optional<double> gust, const Change& also = nothing) {
    return findingWith("wind", [&](Snapshot& s) {
      outdoors(s, gust);
      s.show.house.push_back(
          {QStringLiteral("wind-force-coefficient"), 2.2, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
      also(s);
    });
  };
  using calendar::WindBasis;
  const Finding light = blowing(4.0);
  BOOST_TEST(light.verdict == Verdict::holds);
  BOOST_TEST(*light.limit == 5.0);
  BOOST_TEST(blowing(40.0).verdict == Verdict::fails);
  const std::vector<Change> open4{
      [](Snapshot& s) { s.show.wind.reset(); },
      [](Snapshot& s) { s.show.windBasis = WindBasis::mean; },
      [](Snapshot& s) { s.show.windBasis = WindBasis::unknown; },
      [](Snapshot& s) { s.show.windAveraging.reset(); },
      [](Snapshot& s) { s.show.windAveraging = 600.0; },
      [](Snapshot& s) { s.show.windHeight.reset(); },
      [](Snapshot& s) { s.show.windHeight = metres(2); },
      [](Snapshot& s) { s.show.hangs[0].wetMass.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[0].faceArea.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[0].forceCoefficient.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].width.reset(); },
  };
  for (std::size_t i = 0; i < open4.size(); ++i) {
    BOOST_TEST_CONTEXT("without figure " << i) {
      BOOST_TEST(blowing(4.0, open4[i]).verdict == Verdict::unproven);
    }
  }
  // At 1.25 · 4² / 2 = 10 N/m².
  const double force = 10.0 * worstBlown(2.2).first;
  BOOST_TEST(*light.value == std::atan(force / (chosen().option.massKg * standardGravity)) * 180.0 / M_PI,
             boost::test_tools::tolerance(1e-6));
  BOOST_TEST(force > 10.0 * blown({1.0, 0.0, 0.0}, 2.2).first * 1.01); // aslant is worse than in front
}

/// The gust also turns the hang: moment of the forces along the line of the picks ÷ 1.0 m moves from one pick
/// to the other, and wet cloth adds to what the points carry.
BOOST_AUTO_TEST_CASE(gustFromTheSideLoadsOnePoint) {
  const Option& calm = chosen().option;
  const auto atPoint = [&](double wetKg) {
    return findingWith("wind", [&](Snapshot& s) {
      outdoors(s, 8.0); // 1.25 · 8² / 2 = 40 N/m²
      s.show.hangs[0].wetMass = kilograms(wetKg);
      for (venue::Point& point : s.venue.points) {
        point.capacity = kilonewtons(calm.points[0].staticKn); // nothing is left for the gust
      }
    });
  };
  const auto [force, moment] = worstBlown(2.1);
  const double cosine = std::cos(std::atan(40.0 * force / (calm.massKg * standardGravity)));
  const double heavier = std::max(calm.pickLoads[0].loadKn, calm.pickLoads[1].loadKn);
  const double rest = calm.points[0].staticKn - calm.pickLoads[0].loadKn;
  const double point = rest + (heavier + 40.0 * moment / 1000.0) / cosine;
  const Finding dry = atPoint(0.0);
  BOOST_TEST(dry.verdict == Verdict::fails);
  BOOST_TEST(dry.text.contains(QStringLiteral("point-load of")));
  BOOST_TEST(moment * 40.0 > 100.0);
  const Option blownOption = chosen().with([&](Snapshot& s) { outdoors(s, 8.0); });
  BOOST_REQUIRE(blownOption.wind.has_value());
  const double most = std::max(blownOption.wind->picks[0].pointKn, blownOption.wind->picks[1].pointKn);
  BOOST_TEST(most == point, boost::test_tools::tolerance(1e-6));
  const Option wet = chosen().with([&](Snapshot& s) {
    outdoors(s, 8.0);
    s.show.hangs[0].wetMass = kilograms(50);
  });
  const double added = 50.0 * standardGravity / 1000.0 / cosine;
  BOOST_TEST(wet.wind->picks[0].mostKn + wet.wind->picks[1].mostKn -
                     (blownOption.wind->picks[0].mostKn + blownOption.wind->picks[1].mostKn) ==
                 added,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(wet.wind->leanDeg == blownOption.wind->leanDeg); // leans as it does dry
  const Option unstated = chosen().with([&](Snapshot& s) {
    outdoors(s, 8.0);
    s.show.hangs[0].wetMass.reset(); // shown dry, and named as missing
  });
  BOOST_TEST(unstated.wind->picks[0].mostKn == blownOption.wind->picks[0].mostKn,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(!unstated.wind->missing.isEmpty());
}

/// What a joint and a chain carry more in a gust counts too: limits that just do without wind are passed, and
/// the rule says by what.
BOOST_AUTO_TEST_CASE(gustTurnsWhatHangsBelow) {
  const auto windy = [](double gust, const Change& also) {
    return of(chosen().with([&](Snapshot& s) {
      outdoors(s, gust);
      also(s);
    }),
              "wind");
  };
  const auto joints = [](double part) {
    const double most = *of(chosen().option, "joint").value; // of the worst pin, with factors
    return [part, most](Snapshot& s) {
      for (catalogue::Join& join : s.catalogue.tables[0].joins) {
        join.pinLimit = kilonewtons(most / part);
      }
    };
  };
  const double accessory = 0.5; // of a piece over people
  BOOST_TEST(windy(0.5, joints(0.98 * accessory)).verdict < Verdict::unproven);
  const Finding pin = windy(9.0, joints(0.98 * accessory));
  BOOST_TEST(pin.verdict == Verdict::fails);
  BOOST_TEST(pin.text.contains(QStringLiteral("pin of the joint of element")), pin.text.toStdString());
  BOOST_TEST(*pin.value > *pin.limit);
  const auto chain = [](Snapshot& s) {
    const double tension = *of(chosen().option, "chain").value;
    s.catalogue.chains[0].limit = kilonewtons(tension / 0.98 / 0.5);
  };
  BOOST_TEST(windy(0.5, chain).verdict < Verdict::unproven);
  const Finding pulled = windy(9.0, chain);
  BOOST_TEST(pulled.verdict == Verdict::fails);
  BOOST_TEST(pulled.text.contains(QStringLiteral("chain: ")), pulled.text.toStdString());
  // What a pin may take, and nobody stated, is not passed over.
  const Finding unstated = windy(4.0, [](Snapshot& s) {
    for (catalogue::Join& join : s.catalogue.tables[0].joins) {
      join.pinLimit.reset();
    }
  });
  BOOST_TEST(unstated.verdict == Verdict::unproven);
}

/// The wind at which the first limit is passed: at it nothing fails, just beyond it that very thing does, and
/// the crew's figures are 60 % and 80 % of it (a city's event guide, V).
BOOST_AUTO_TEST_CASE(theFirstLimitThatTheWindPasses) {
  const Option option = chosen().with([](Snapshot& s) { outdoors(s, std::nullopt); });
  BOOST_REQUIRE(option.wind.has_value());
  BOOST_TEST(of(option, "wind").verdict == Verdict::unproven); // no gust is stated
  const double limit = option.wind->failsAt;
  BOOST_TEST(limit > 4.0);
  BOOST_TEST(limit < 60.0);
  BOOST_TEST(option.wind->firstShare == 60.0);
  BOOST_TEST(option.wind->secondShare == 80.0);
  const auto verdictAt = [](double gust) {
    return of(chosen().with([gust](Snapshot& s) { outdoors(s, gust); }), "wind").verdict;
  };
  BOOST_TEST(verdictAt(limit * (1.0 - 1e-9)) < Verdict::unproven);
  BOOST_TEST(verdictAt(limit * (1.0 + 1e-9)) == Verdict::fails);
  const Option tighter = chosen().with([](Snapshot& s) {
    outdoors(s, std::nullopt);
    s.show.house.push_back(
        {QStringLiteral("lean-most"), 1.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
  });
  BOOST_TEST(tighter.wind->failsAt < limit);
  BOOST_TEST(tighter.wind->failsBy.toStdString() == "lean of the chains");
  BOOST_TEST(!chosen().with(nothing).wind.has_value());
}

/// In the hoist, too: the same lift with a weaker hoist fails in the wind by the hoist.
BOOST_AUTO_TEST_CASE(theWindLoadsHoistsBarAndHardware) {
  const auto failsBy = [](const Change& change) {
    const Option option = chosen().with([&](Snapshot& s) {
      outdoors(s, 8.0);
      change(s);
    });
    return option.wind->failsBy.toStdString();
  };
  const Option& calm = chosen().option;
  const double hoist = *of(calm, "hoist").value;
  BOOST_TEST(failsBy([&](Snapshot& s) {
               s.catalogue.hoists[0].limit = kilonewtons(hoist * 1.01 / 0.5);
             }).starts_with("hoist at"));
  const double bar = *of(calm, "bar").value;
  BOOST_TEST(failsBy([&](Snapshot& s) {
               s.catalogue.bars[0].arrangements[0].limit = kilonewtons(bar * 1.0000001 / 0.5);
             }) == "bar");
  const double piece = *of(calm, "hardware").value;
  BOOST_TEST(failsBy([&](Snapshot& s) {
               for (catalogue::HardwareType& type : s.catalogue.hardware) {
                 type.limit = kilonewtons(piece * 1.01 / 0.5);
               }
             }).starts_with("hardware: "));
  const double zone = *of(calm, "zone-load").value;
  BOOST_TEST(failsBy([&](Snapshot& s) { s.venue.zones[0].capacity = kilonewtons(zone * 1.0000001); }) ==
             "zone-load of left truss");
}

/// The stacks on feet, each at its best setting.
std::vector<Option> onFeet(const Snapshot& snapshot) {
  std::vector<Option> found;
  const options::ShowOptions all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    // The single pick takes no pan, and this show pans.
    if (option.key.table == QStringLiteral("on feet") && option.key.picks == catalogue::Picks::sidePair) {
      found.push_back(option);
    }
  }
  BOOST_REQUIRE(!found.empty());
  return found;
}

Snapshot showOpening(std::optional<Angle> opensTo, std::optional<double> houseLetsDeg = {}) {
  Snapshot snapshot = testing::harbourShow();
  for (catalogue::StackingTable& table : snapshot.catalogue.tables) {
    for (catalogue::Join& join : table.joins) {
      if (join.kind == catalogue::JointKind::seated) {
        join.opensTo = opensTo;
        join.stopLimit = kilonewtons(9);
      }
    }
  }
  if (houseLetsDeg) {
    venue::HouseFigure figure;
    figure.figure = QStringLiteral("joint-open-most");
    figure.value = *houseLetsDeg;
    figure.unit = QStringLiteral("°");
    figure.signedBy = QStringLiteral("Edda");
    figure.signedOn = QDate(2026, 1, 1);
    snapshot.tour.house.push_back(figure);
  }
  return snapshot;
}

/// Feet whose weight opens them: every rule speaks of the shape that the hang then takes, which `settle`
/// gives for the option's own input.
BOOST_AUTO_TEST_CASE(seatedJointsAreJudgedInTheShapeThatTheHangTakes) {
  int opened = 0;
  for (const Option& option : onFeet(showOpening(degrees(5)))) {
    if (!option.setting) {
      continue;
    }
    const hang::Settled real = hang::settle(*option.hangInput);
    double most = 0.0;
    for (std::size_t i = 0; i < real.joints.size(); ++i) {
      most = std::max(most, real.joints[i].openDeg);
      BOOST_TEST(std::abs(option.aims[i].aimDeg - real.joints[i].aimDeg) < 1e-6);
    }
    for (std::size_t pick = 0; pick < real.pickCount; ++pick) {
      BOOST_TEST(option.pickLoads[pick].loadKn == real.pickLoads[pick].load / 1000.0,
                 boost::test_tools::tolerance(1e-9));
    }
    const Finding contact = of(option, "contact");
    if (most > 0.0) {
      ++opened;
      BOOST_TEST(contact.verdict == Verdict::fails);
      BOOST_TEST(contact.unit.toStdString() == "°");
      BOOST_TEST(*contact.value == most, boost::test_tools::tolerance(1e-6));
      BOOST_TEST(*contact.limit == 0.0);
    }
    if (real.chain && real.chain->tension && of(option, "chain").value) {
      BOOST_TEST((*of(option, "chain").value > 0.0) == (*real.chain->tension > 0.0));
    }
  }
  BOOST_TEST(opened > 0);
}

BOOST_AUTO_TEST_CASE(theHouseMayLetAJointOpenALittle) {
  int let = 0;
  const auto strict = onFeet(showOpening(degrees(5)));
  const auto free = onFeet(showOpening(degrees(5), 6.0));
  for (std::size_t i = 0; i < free.size(); ++i) {
    let += free[i].setting && of(free[i], "contact").verdict == Verdict::holds &&
                   of(free[i], "contact").unit == QStringLiteral("°")
               ? 1
               : 0;
  }
  BOOST_TEST(let > 0);
  BOOST_TEST(strict.size() == free.size());
}

/// How far it can open is not known: nothing of that shape is.
BOOST_AUTO_TEST_CASE(anUnknownOpeningLeavesEveryRuleOfTheShapeUnproven) {
  int open = 0;
  for (const Option& option : onFeet(showOpening(std::nullopt))) {
    if (!option.setting) {
      ++open;
      BOOST_TEST(option.verdict >= Verdict::unproven);
      for (const char* rule : {"point-load", "joint", "contact", "chain", "travel"}) {
        const Finding finding = of(option, rule);
        BOOST_TEST(finding.verdict == Verdict::unproven, rule);
        BOOST_TEST(finding.text.contains(QStringLiteral("how far the rear of the joint")),
                   finding.text.toStdString());
      }
      continue;
    }
    BOOST_TEST(of(option, "contact").value.value_or(-1.0) >= 0.0); // it stands shut by its own weight
  }
  BOOST_TEST(open > 0);
}

/// A joint that cannot open hangs on its stop, and that has a limit of its own.
BOOST_AUTO_TEST_CASE(aJointThatCannotOpenIsHeldByItsStop) {
  int held = 0;
  for (const Option& option : onFeet(showOpening(degrees(0)))) {
    if (option.setting && of(option, "contact").text.contains(QStringLiteral("cannot open"))) {
      ++held;
      BOOST_TEST(of(option, "contact").verdict == Verdict::holds);
      const options::Setting setting = *option.setting;
      Snapshot weak = showOpening(degrees(0));
      for (catalogue::Join& join : weak.catalogue.tables[1].joins) {
        join.stopLimit = newtons(1);
      }
      const Finding joint = of(options::judge(weak, option.key, setting), "joint");
      BOOST_TEST(joint.verdict == Verdict::fails);
      BOOST_TEST(joint.text.contains(QStringLiteral("rear stop")), joint.text.toStdString());
      for (catalogue::Join& join : weak.catalogue.tables[1].joins) {
        join.stopLimit.reset();
      }
      BOOST_TEST(of(options::judge(weak, option.key, setting), "joint").verdict >= Verdict::unproven);
    }
  }
  BOOST_TEST(held > 0);
}

/// There may be none left.
void inEachZone(Snapshot& s, void (*change)(venue::Zone&)) {
  std::for_each(s.venue.zones.begin(), s.venue.zones.end(), change);
}

/// Over all rules and many states of the data: a figure taken away never makes a rule pass that did not.
BOOST_AUTO_TEST_CASE(droppingNeverPasses) {
  const std::vector<Change> drops{
      [](Snapshot& s) { s.catalogue.hoists[0].limit.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].bodyMass.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].bodyClimbs.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].chainMass.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].chainLength.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].chainBagMass.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].closedLength.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].speed.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].hoistingClass.reset(); },
      [](Snapshot& s) { s.catalogue.hoists[0].holdsWithoutSecondary.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[0].limit.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[0].mass.reset(); },
      [](Snapshot& s) { s.catalogue.hardware[0].length.reset(); },
      [](Snapshot& s) { s.catalogue.hardware.erase(s.catalogue.hardware.begin()); },
      [](Snapshot& s) { s.catalogue.chains[0].limit.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].arrangements[0].limit.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].arrangements[0].mostCabinets.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].swingLimit.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].outline.clear(); },
      [](Snapshot& s) { s.catalogue.bars[0].width.reset(); },
      [](Snapshot& s) { s.catalogue.bars[0].frameMass.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[0].mass.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[0].width.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[1].coverHighest.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[3].coverLowest.reset(); },
      [](Snapshot& s) { s.catalogue.cabinets[3].throwDistance.reset(); },
      [](Snapshot& s) { s.catalogue.tables[0].joins[0].pinLimit.reset(); },
      [](Snapshot& s) { s.catalogue.tables[0].joins[0].sideShare.reset(); },
      [](Snapshot& s) { s.venue.points[0].capacity.reset(); },
      [](Snapshot& s) { s.venue.points[0].basis = catalogue::Basis::unknown; },
      [](Snapshot& s) { s.venue.points[0].zone.clear(); },
      [](Snapshot& s) { inEachZone(s, [](venue::Zone& zone) { zone.capacity.reset(); }); },
      [](Snapshot& s) { inEachZone(s, [](venue::Zone& zone) { zone.othersLoad.reset(); }); },
      [](Snapshot& s) { inEachZone(s, [](venue::Zone& zone) { zone.basis = catalogue::Basis::unknown; }); },
      [](Snapshot& s) { s.venue.zones.clear(); },
      [](Snapshot& s) { s.venue.lowSteel.reset(); },
      [](Snapshot& s) { s.venue.sections[0].earHeight.reset(); },
      [](Snapshot& s) { s.show.peopleBeneath.reset(); },
      [](Snapshot& s) { s.show.hangs[0].cableMass.reset(); },
      [](Snapshot& s) { s.show.hangs[0].rigging.clear(); },
      [](Snapshot& s) { s.show.hangs[0].secondary.clear(); },
      [](Snapshot& s) { s.show.hangs[1].mirrors.clear(); },
      [](Snapshot& s) { s.units.clear(); },
      [](Snapshot& s) { s.examinations.clear(); },
      [](Snapshot& s) { s.show.awayTo = {}; },
      [](Snapshot& s) { s.show.wind.reset(); },
      [](Snapshot& s) { s.show.windBasis = calendar::WindBasis::unknown; },
      [](Snapshot& s) { s.show.windAveraging.reset(); },
      [](Snapshot& s) { s.show.windHeight.reset(); },
      [](Snapshot& s) { s.show.hangs[0].wetMass.reset(); },
  };
  std::mt19937 random(11);
  const auto factor = [&random] { return 0.2 + 1.3 * std::uniform_real_distribution<>()(random); };
  for (int round = 0; round < 60; ++round) {
    Snapshot state = chosen().snapshot;
    for (const Limited& each : limitedRules()) {
      const double load = *of(chosen().option, each.rule).value;
      each.set(state, kilonewtons(load * factor() / each.part));
    }
    state.venue.outdoors = round % 2 == 0;
    state.show.wind = metresPerSecond(20 * factor());
    state.show.windBasis = calendar::WindBasis::gust;
    state.show.windAveraging = 3.0;
    state.show.windHeight = metres(40);
    state.show.hangs[0].wetMass = kilograms(20);
    if (random() % 3 == 0) {
      drops[random() % drops.size()](state);
    }
    const Option before = options::judge(state, chosen().option.key, *chosen().option.setting);
    for (std::size_t i = 0; i < drops.size(); ++i) {
      Snapshot dropped = state;
      drops[i](dropped);
      const Option after = options::judge(dropped, chosen().option.key, *chosen().option.setting);
      for (std::size_t k = 0; k < before.findings.size(); ++k) {
        if (before.findings[k].verdict >= Verdict::unproven &&
            after.findings[k].verdict < Verdict::unproven) {
          BOOST_ERROR("dropping input " + std::to_string(i) + " turned " +
                      before.findings[k].rule.toStdString() + " to a pass");
        }
      }
    }
  }
}

/// The more loaded side carries at least half and at most all.
BOOST_AUTO_TEST_CASE(a_side_share_that_cannot_be_is_unproven) {
  const auto shared = [](double share) {
    return findingWith("joint",
                       [share](Snapshot& s) {
                         for (catalogue::Join& join : s.catalogue.tables[0].joins) {
                           join.sideShare = share;
                         }
                       })
        .verdict;
  };
  BOOST_TEST(shared(0.5) < Verdict::unproven);
  BOOST_TEST(shared(1.0) != Verdict::unproven);
  BOOST_TEST(shared(std::nextafter(0.5, 0.0)) == Verdict::unproven);
  BOOST_TEST(shared(std::nextafter(1.0, 2.0)) == Verdict::unproven);
}

/// A figure made worse never improves a verdict.
BOOST_AUTO_TEST_CASE(worseNeverImproves) {
  std::vector<Change> worse{
      [](Snapshot& s) {
        s.catalogue.hoists[0].bodyMass = kilograms(inKilograms(*s.catalogue.hoists[0].bodyMass) * 2);
      },
      [](Snapshot& s) { s.catalogue.hoists[0].chainBagMass = kilograms(60); },
      [](Snapshot& s) { s.catalogue.hoists[0].speed = metresPerSecond(1.0); },
      [](Snapshot& s) { s.catalogue.hoists[0].hoistingClass = catalogue::HoistingClass::hc4; },
      [](Snapshot& s) { s.catalogue.hardware[1].mass = kilograms(40); },
      [](Snapshot& s) { s.show.peopleBeneath = true; },
      [](Snapshot& s) { s.venue.zones[0].othersLoad = kilonewtons(30); },
      [](Snapshot& s) { s.catalogue.tables[0].joins[0].sideShare = 0.9; },
      [](Snapshot& s) {
        s.show.house.push_back(
            {QStringLiteral("lift-share"), 1.4, {}, {}, QStringLiteral("Edda"), QDate(2026, 1, 1)});
      },
      [](Snapshot& s) {
        s.show.house.push_back({QStringLiteral("people-beneath-accessory"),
                                0.3,
                                {},
                                {},
                                QStringLiteral("Edda"),
                                QDate(2026, 1, 1)});
      },
      [](Snapshot& s) { s.show.wind = metresPerSecond(45); },
      [](Snapshot& s) { s.venue.outdoors = true; },
      [](Snapshot& s) { s.show.hangs[0].wetMass = kilograms(300); },
      [](Snapshot& s) { s.venue.lowSteel = metres(12); },
      [](Snapshot& s) { s.venue.leastTrim = metres(9); },
      [](Snapshot& s) { s.units.resize(s.units.size() / 2); },
  };
  std::mt19937 random(5);
  const auto factor = [&random] { return 0.4 + 1.6 * std::uniform_real_distribution<>()(random); };
  for (int round = 0; round < 60; ++round) {
    Snapshot state = chosen().snapshot;
    state.show.peopleBeneath = round % 2 == 0;
    state.show.wind = metresPerSecond(15 * factor());
    state.show.windBasis = calendar::WindBasis::gust;
    state.show.windAveraging = 3.0;
    state.show.windHeight = metres(40);
    state.show.hangs[0].wetMass = kilograms(20);
    for (const Limited& each : limitedRules()) {
      const double load = *of(chosen().option, each.rule).value;
      each.set(state, kilonewtons(load * factor() / each.part));
    }
    const Option before = options::judge(state, chosen().option.key, *chosen().option.setting);
    const auto check = [&](const Change& change, const std::string& what) {
      Snapshot changed = state;
      change(changed);
      const Option after = options::judge(changed, chosen().option.key, *chosen().option.setting);
      for (std::size_t k = 0; k < before.findings.size(); ++k) {
        if (after.findings[k].verdict < before.findings[k].verdict) {
          BOOST_ERROR(what + " improved " + before.findings[k].rule.toStdString() + ": " +
                      after.findings[k].text.toStdString());
        }
      }
    };
    for (std::size_t i = 0; i < worse.size(); ++i) {
      check(worse[i], "change " + std::to_string(i));
    }
    for (const Limited& each : limitedRules()) {
      const double load = *of(chosen().option, each.rule).value;
      check([&](Snapshot& s) { each.set(s, kilonewtons(0.3 * load / each.part)); }, "a lower limit");
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
