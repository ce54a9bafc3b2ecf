// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <map>
#include <random>
#include <set>

#include <boost/test/unit_test.hpp>

#include "hang/settle.h"
#include "options/search.h"
#include "print.h"
#include "quantity/error.h"
#include "show_fixture.h"

using namespace hangbook;
using options::Finding;
using options::Option;
using options::Verdict;

namespace {

void checkLoads(const Option& option) {
  BOOST_REQUIRE(option.hangInput.has_value());
  const hang::Statics statics = hang::standing(*option.hangInput);
  BOOST_REQUIRE(option.pickLoads.size() == statics.pickCount);
  for (std::size_t pick = 0; pick < statics.pickCount; ++pick) {
    BOOST_TEST(option.pickLoads[pick].loadKn == statics.pickLoads[pick].load / 1000.0,
               boost::test_tools::tolerance(1e-9));
    double sum = 0.0;
    for (const options::LoadPart& part : option.points[pick].parts) {
      sum += part.kn;
    }
    BOOST_TEST(option.points[pick].staticKn == sum, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(option.points[pick].parts.front().kn == option.pickLoads[pick].loadKn,
               boost::test_tools::tolerance(1e-9));
  }
  for (std::size_t i = 0; i < option.aims.size(); ++i) {
    BOOST_TEST(std::abs(option.aims[i].aimDeg - statics.joints[i].aimDeg) < 1e-9);
  }
}

void checkWhole(const Option& option) {
  Verdict worst = Verdict::holds;
  std::set<QString> rules;
  for (const Finding& finding : option.findings) {
    worst = std::max(worst, finding.verdict);
    rules.insert(finding.rule);
    BOOST_TEST(finding.text.endsWith(QLatin1Char('.')), finding.text.toStdString());
    BOOST_TEST(!finding.text.contains(QStringLiteral(" .")), finding.text.toStdString());
    BOOST_TEST(!finding.text.contains(QStringLiteral("..")), finding.text.toStdString());
  }
  BOOST_TEST(worst == option.verdict);
  BOOST_TEST(rules.size() == option.findings.size());
  for (const char* rule :
       {"point-load", "zone-load",  "bridle",      "uneven",   "hoist",       "bar",
        "count",      "joint",      "contact",     "chain",    "pick-share",  "hardware",
        "wind",       "lean",       "lowest-edge", "headroom", "lift-height", "travel",
        "cover",      "level-drop", "stock",       "examined", "carts",       "same-chain"}) {
    BOOST_TEST(rules.contains(QString::fromLatin1(rule)), rule);
  }
}

void printAll(const options::HangOptions& hang, bool words) {
  std::map<Verdict, int> numbers;
  for (const Option& option : hang.options) {
    ++numbers[option.verdict];
  }
  std::string line = "hang " + hang.hang.toStdString() + ":";
  for (const auto& [verdict, number] : numbers) {
    line += " " + options::wordFor(verdict).toStdString() + " " + std::to_string(number);
  }
  line += ", settings " + std::to_string(hang.decided.settings) + ", by bound " +
          std::to_string(hang.decided.byBound);
  BOOST_TEST_MESSAGE(line);
  if (words) {
    const Option& first = hang.options.front();
    BOOST_TEST_MESSAGE(first.key.stack.join(' ').toStdString());
    for (const Finding& finding : first.findings) {
      BOOST_TEST_MESSAGE(finding.rule.toStdString() + " [" + options::wordFor(finding.verdict).toStdString() +
                         "] " + finding.text.toStdString());
    }
  }
}

} // namespace

BOOST_AUTO_TEST_SUITE(decide)

BOOST_AUTO_TEST_CASE(listsEveryStackOnce) {
  const auto all = options::decide(testing::smallHarbourShow());
  BOOST_REQUIRE(all.hangs.size() == 2);
  for (const options::HangOptions& hang : all.hangs) {
    printAll(hang, true);
    BOOST_TEST(hang.options.size() == 10); // 2 + 3 orders, each with and without the downfill
    BOOST_TEST(hang.decided.options == 10);
    BOOST_TEST(!hang.decided.steps.isEmpty());
    std::set<QString> ids;
    for (const Option& option : hang.options) {
      ids.insert(option.id);
      checkWhole(option);
      checkLoads(option);
    }
    BOOST_TEST(ids.size() == 10);
  }
  BOOST_TEST(all.hangs[0].options.front().verdict == Verdict::holds);
}

BOOST_AUTO_TEST_CASE(rankedByVerdictThenCover) {
  const auto all = options::decide(testing::harbourShow(), QStringLiteral("left"));
  BOOST_REQUIRE(all.hangs.size() == 1);
  const auto& list = all.hangs.front().options;
  printAll(all.hangs.front(), false);
  for (std::size_t i = 1; i < list.size(); ++i) {
    BOOST_TEST(list[i - 1].verdict <= list[i].verdict);
    if (list[i - 1].verdict == list[i].verdict) {
      BOOST_TEST(list[i - 1].coveredPercent >= list[i].coveredPercent);
    }
  }
}

BOOST_AUTO_TEST_CASE(sameInSameOut) {
  const options::Snapshot snapshot = testing::smallHarbourShow();
  const auto first = options::decide(snapshot, QStringLiteral("left"));
  const auto second = options::decide(snapshot, QStringLiteral("left"));
  for (std::size_t i = 0; i < first.hangs[0].options.size(); ++i) {
    const Option& one = first.hangs[0].options[i];
    const Option& other = second.hangs[0].options[i];
    BOOST_TEST((one.id == other.id));
    BOOST_TEST(one.verdict == other.verdict);
    BOOST_TEST(one.setting->tiltDeg == other.setting->tiltDeg);
    BOOST_TEST(one.setting->trimM == other.setting->trimM);
    BOOST_TEST((one.setting->mark == other.setting->mark));
  }
}

/// Deciding one option alone gives what the whole list says of it.
BOOST_AUTO_TEST_CASE(decidedAloneAsInTheList) {
  const options::Snapshot snapshot = testing::smallHarbourShow();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    const auto alone = options::decideOnly(snapshot, option.id, QStringLiteral("left"));
    BOOST_REQUIRE(alone.hangs[0].options.size() == 1);
    BOOST_TEST(alone.hangs[0].decided.options == 1);
    BOOST_TEST(alone.hangs[0].decided.settings < all.hangs[0].decided.settings);
    const Option& one = alone.hangs[0].options.front();
    BOOST_TEST(
        (one.setting->tiltDeg == option.setting->tiltDeg && one.setting->mark == option.setting->mark));
    BOOST_TEST(one.setting->trimM == option.setting->trimM);
    for (std::size_t i = 0; i < option.findings.size(); ++i) {
      BOOST_TEST((one.findings[i].text == option.findings[i].text));
    }
  }
  BOOST_TEST(options::decideOnly(snapshot, QStringLiteral("zz")).hangs[0].options.empty());
}

/// What is shown at a setting is what the rules say of that very setting.
BOOST_AUTO_TEST_CASE(judgingTheChosenSettingSaysTheSame) {
  const options::Snapshot snapshot = testing::smallHarbourShow();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    const Option again = options::judge(snapshot, option.key, *option.setting);
    BOOST_TEST((again.id == option.id));
    BOOST_TEST(again.verdict == option.verdict);
    for (std::size_t i = 0; i < option.findings.size(); ++i) {
      BOOST_TEST((again.findings[i].text == option.findings[i].text));
    }
  }
}

/// The bound is right: settings taken at random, whether decided by it or not, never do better.
BOOST_AUTO_TEST_CASE(noOtherSettingDoesBetter) {
  options::Snapshot snapshot = testing::smallHarbourShow();
  snapshot.venue.lowSteel = metres(14);
  std::mt19937 random(3);
  for (const double capacity : {11.8, 3.1, 2.5}) {
    for (venue::Point& point : snapshot.venue.points) {
      point.capacity = kilonewtons(capacity);
    }
    const auto all = options::decide(snapshot, QStringLiteral("left"));
    for (const Option& option : all.hangs[0].options) {
      BOOST_REQUIRE(option.setting.has_value());
      for (int i = 0; i < 40; ++i) {
        options::Setting other = *option.setting;
        other.tiltDeg = 0.5 * static_cast<int>(random() % 41) - 10.0;
        other.trimM = 5.0 + 0.25 * static_cast<int>(random() % 40);
        if (other.mark) {
          other.mark = *other.mark + static_cast<int>(random() % 21) - 10;
        }
        for (double& hole : other.holesDeg) {
          hole = random() % 2 == 0 ? 0.0 : -3.0;
        }
        const Option judged = options::judge(snapshot, option.key, other);
        BOOST_TEST(judged.verdict >= option.verdict);
        if (judged.verdict == option.verdict && option.verdict < Verdict::unproven) {
          BOOST_TEST(judged.coveredPercent <= option.coveredPercent + 1e-9);
        }
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(missingFiguresLeaveNoSettingAndNoPass) {
  options::Snapshot snapshot = testing::smallHarbourShow();
  snapshot.catalogue.cabinets[0].mass.reset();
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    BOOST_TEST(option.verdict == Verdict::unproven);
    BOOST_TEST(!option.setting.has_value());
    BOOST_TEST(!option.hangInput.has_value());
    checkWhole(option);
    BOOST_TEST(option.findings.front().text.contains(QStringLiteral("mass of bass")));
  }
}

BOOST_AUTO_TEST_CASE(noPossibleSettingFailsAndSaysWhy) {
  options::Snapshot snapshot = testing::smallHarbourShow();
  snapshot.show.hangs[0].pan = degrees(35); // the bar pans 20° at most
  const auto all = options::decide(snapshot, QStringLiteral("left"));
  for (const Option& option : all.hangs[0].options) {
    BOOST_TEST(option.verdict == Verdict::fails);
    BOOST_TEST(!option.setting.has_value());
    checkWhole(option);
  }
}

BOOST_AUTO_TEST_CASE(cancelAndProgress) {
  const options::Snapshot snapshot = testing::smallHarbourShow();
  double last = -1.0;
  options::decide(snapshot, {}, [&last](double part) {
    BOOST_TEST(part >= last);
    last = part;
    return true;
  });
  BOOST_TEST(last == 1.0);
  int told = 0;
  BOOST_CHECK_THROW(options::decide(snapshot, {}, [&told](double) { return ++told < 3; }),
                    options::Cancelled);
  BOOST_CHECK_THROW(options::decide(snapshot, QStringLiteral("middle")), Error);
}

/// How far feet can open is not stated, and some settings of a stack open them, others do not. Where one of
/// the others holds it is told; where all of those fail, one that opens may yet hold: that is unproven, not
/// failing.
BOOST_AUTO_TEST_CASE(where_some_settings_are_not_known_the_others_failing_proves_nothing) {
  const auto onFeet = [](double capacityKn, std::optional<Angle> opensTo) {
    options::Snapshot snapshot = testing::harbourShow();
    for (catalogue::StackingTable& table : snapshot.catalogue.tables) {
      for (catalogue::Join& join : table.joins) {
        if (join.kind == catalogue::JointKind::seated) {
          join.opensTo = opensTo;
        }
      }
    }
    for (venue::Point& point : snapshot.venue.points) {
      point.capacity = kilonewtons(capacityKn);
    }
    for (calendar::Hang& hang : snapshot.show.hangs) {
      hang.tables = {QStringLiteral("on feet")};
    }
    for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
      if (each.name == QStringLiteral("small")) { // before its feet: only some tilts open them
        each.centreOfGravity->x = metres(0.15);
      }
    }
    snapshot.tour.house.push_back(
        {QStringLiteral("cover-share"), 0.0, {}, {}, QStringLiteral("Edda"), snapshot.today});
    std::map<QString, Option> found;
    const options::ShowOptions all = options::decide(snapshot, QStringLiteral("left"));
    for (const Option& option : all.hangs[0].options) {
      found.emplace(option.id, option);
    }
    return found;
  };
  const auto strong = onFeet(50.0, std::nullopt);
  int partly = 0;
  int whole = 0;
  for (const auto& [id, weak] : onFeet(0.1, std::nullopt)) {
    if (strong.at(id).setting) {
      BOOST_TEST((weak.verdict == (weak.setting ? Verdict::fails : Verdict::unproven)));
      ++(weak.setting ? whole : partly);
    }
  }
  BOOST_TEST(partly > 0);
  BOOST_TEST(whole > 0);                                   // no setting of these opens anything
  for (const auto& [id, weak] : onFeet(0.1, degrees(0))) { // stated: each is known to fail
    BOOST_TEST((weak.verdict == Verdict::fails));
  }
}

BOOST_AUTO_TEST_SUITE_END()
