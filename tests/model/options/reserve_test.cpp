// SPDX-License-Identifier: GPL-3.0-or-later
// How far an option that stands is from its first limit, each way.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <utility>
#include <vector>

#include <QJsonArray>
#include <QJsonObject>

#include "few_settings.h"
#include "options/easing.h"
#include "options/easing_json.h"
#include "options/reserve.h"
#include "options/search.h"
#include "print.h"
#include "show_fixture.h"

using namespace hangbook;
using hangbook::testing::bestOf;
using hangbook::testing::fewSettings;
using hangbook::testing::houseSays;
using options::Option;
using options::Snapshot;
using options::Verdict;

BOOST_AUTO_TEST_SUITE(reserve)

BOOST_AUTO_TEST_CASE(what_breaks_first_can_be_called_off_and_tells_how_far_it_is) {
  const Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  std::vector<double> parts;
  options::reservesOf(snapshot, best, [&](double part) {
    parts.push_back(part);
    return true;
  });
  BOOST_REQUIRE(parts.size() > 1U);
  BOOST_TEST(std::ranges::is_sorted(parts));
  BOOST_TEST(parts.front() == 0.0);
  BOOST_TEST((parts.back() > 0.0 && parts.back() < 1.0));
  int asked = 0;
  BOOST_CHECK_THROW(options::reservesOf(snapshot, best, [&](double) { return ++asked < 3; }),
                    options::Cancelled);
  BOOST_TEST(asked == 3);
}

/// What never breaks within what was tried has no step at which it does, and no verdict there.
BOOST_AUTO_TEST_CASE(what_never_breaks_is_told_without_a_step) {
  const auto json = [](int steps) {
    options::Reserve reserve;
    reserve.steps = steps;
    reserve.most = 200;
    reserve.then = Verdict::fails;
    return options::toJson(std::vector{reserve}).first().toObject();
  };
  BOOST_TEST(json(0).value(QLatin1String("breaks_at_steps")).isNull());
  BOOST_TEST(json(0).value(QLatin1String("then")).isNull());
  BOOST_TEST(json(0).value(QLatin1String("tried_steps")).toInt() == 200);
  BOOST_TEST(json(1).value(QLatin1String("breaks_at_steps")).toInt() == 1);
  BOOST_TEST(json(1).value(QLatin1String("then")).toString().toStdString() == "fails");
}

BOOST_AUTO_TEST_CASE(what_breaks_first_stands_just_before) {
  const Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  const auto reserves = options::reservesOf(snapshot, best);
  const auto mass = std::ranges::find(reserves, QStringLiteral("mass"), &options::Reserve::kind);
  BOOST_REQUIRE(mass != reserves.end());
  BOOST_REQUIRE(mass->steps > 0);
  const auto withCable = [&](double kg) {
    Snapshot heavier = snapshot;
    for (calendar::Hang& hang : heavier.show.hangs) {
      hang.cableMass = kilograms(hang.name == QStringLiteral("left") ? kg : inKilograms(*hang.cableMass));
    }
    return options::judge(heavier, best.key, *best.setting);
  };
  BOOST_TEST(withCable(mass->last).verdict <= Verdict::tight);
  const Option broken = withCable(mass->last + 1.0);
  BOOST_TEST((broken.verdict == mass->then));
  BOOST_TEST(broken.verdict > Verdict::tight);
  const auto& finding = *std::ranges::find(broken.findings, mass->rule, &options::Finding::rule);
  BOOST_TEST((finding.text == mass->text));
  for (const options::Reserve& each : reserves) {
    if (each.kind.startsWith(QStringLiteral("trim")) && each.steps > 0) {
      options::Setting moved = *best.setting;
      moved.trimM = each.last;
      BOOST_TEST(options::judge(snapshot, best.key, moved).verdict <= Verdict::tight);
    }
  }
}

/// Two strips of seats, one of which must be covered: lowered a little the hang loses the far one and does
/// not yet reach the near one; lowered on it does. What breaks first is the nearest trim that does not stand.
BOOST_AUTO_TEST_CASE(what_stands_again_further_on_has_broken_before) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  houseSays(snapshot, "cover-share", 40.0);
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coverLowest = degrees(-2);
    each.coverHighest = degrees(0);
  }
  venue::Section strip = snapshot.venue.sections.front();
  const auto at = [&strip](double from) {
    strip.name = QString::number(from);
    strip.profile = {{metres(from), metres(0.0)}, {metres(from + 1.0), metres(0.0)}};
    return strip;
  };
  snapshot.venue.sections = {at(18.0), at(20.0)};
  options::Setting setting = *best.setting;
  setting.trimM -= 0.25;
  const auto standsAt = [&](int centimetres) {
    options::Setting lower = setting;
    lower.trimM = std::round((setting.trimM - 0.01 * centimetres) * 1e6) / 1e6;
    return options::judge(snapshot, best.key, lower).verdict <= Verdict::tight;
  };
  int first = 0;
  while (standsAt(first)) {
    ++first;
  }
  BOOST_TEST_REQUIRE(first > 0);
  int again = first;
  while (again < 500 && !standsAt(again)) {
    ++again;
  }
  BOOST_TEST_REQUIRE(again < 500);
  const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, setting));
  const auto lower = std::ranges::find(reserves, QStringLiteral("trim-down"), &options::Reserve::kind);
  BOOST_TEST_REQUIRE((lower != reserves.end()));
  BOOST_TEST(lower->steps == first);
  BOOST_TEST(lower->rule.toStdString() == "cover");
}

/// The same where it is tilted, hung higher, or its downfill at another link. Looked along it stands at some,
/// does not at the next and does again further on, where a search by halves would look first.
BOOST_AUTO_TEST_CASE(what_stands_again_at_another_tilt_or_mark_has_broken_before) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  houseSays(snapshot, "cover-share", 40.0);
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coversAudience = each.downfill;
    each.coverLowest = degrees(-2);
    each.coverHighest = degrees(2);
  }
  venue::Section strip = snapshot.venue.sections.front();
  const auto stripAt = [&strip](double from) {
    strip.name = QString::number(from);
    strip.profile = {{metres(from), metres(0.0)}, {metres(from + 0.2), metres(0.0)}};
    return strip;
  };
  snapshot.venue.sections = {stripAt(20.0), stripAt(29.0)};
  using Moved = std::function<void(options::Setting&, double)>;
  const Moved tilt = [](options::Setting& setting, double to) { setting.tiltDeg = to; };
  const Moved mark = [](options::Setting& setting, double to) { setting.mark = static_cast<int>(to); };
  const Moved trim = [](options::Setting& setting, double to) { setting.trimM = to; };
  struct Start {
    const char* kind;
    Moved move;
    double from;
    double step;
    int first; ///< that does not stand
    int again; ///< one that does
  };
  BOOST_TEST_REQUIRE(*best.setting->mark == 81);
  for (const Start& start :
       {Start{"tilt-down", tilt, 4.5, -0.5, 2, 10}, Start{"tilt-up", tilt, -0.5, 0.5, 1, 10},
        Start{"mark-down", mark, 85, -1, 2, 5}, Start{"mark-up", mark, 79, 1, 2, 5},
        Start{"trim-up", trim, 10.95, 0.01, 6, 250}}) {
    BOOST_TEST_CONTEXT(start.kind) {
      const auto at = [&](int steps) {
        options::Setting setting = *best.setting;
        start.move(setting, start.from + steps * start.step);
        return options::judge(snapshot, best.key, setting);
      };
      BOOST_TEST(at(start.first - 1).verdict <= Verdict::tight);
      BOOST_TEST(at(start.first).verdict == Verdict::fails);
      BOOST_TEST(at(start.again).verdict <= Verdict::tight);
      const auto reserves = options::reservesOf(snapshot, at(0));
      const auto found =
          std::ranges::find(reserves, QString::fromLatin1(start.kind), &options::Reserve::kind);
      BOOST_TEST_REQUIRE((found != reserves.end()));
      BOOST_TEST(found->steps == start.first);
      BOOST_TEST(found->rule.toStdString() == "cover");
    }
  }
}

/// Nothing breaks where the figure may go as far as it is looked along.
BOOST_AUTO_TEST_CASE(what_never_breaks_is_told_as_such) {
  Snapshot snapshot = fewSettings();
  snapshot.venue.lowSteel = metres(40);
  const auto reserves = options::reservesOf(snapshot, bestOf(snapshot));
  const auto steel = std::ranges::find(reserves, QStringLiteral("low-steel"), &options::Reserve::kind);
  BOOST_TEST_REQUIRE((steel != reserves.end()));
  BOOST_TEST(steel->steps == 0);
  BOOST_TEST(steel->last == 30.0);
  BOOST_TEST((steel->then == Verdict::holds));
  BOOST_TEST(steel->rule.isEmpty());
  BOOST_TEST(steel->text.isEmpty());
  BOOST_TEST(steel->words.toStdString() == "10.00 m less under low steel");
  BOOST_TEST((reserves.back().kind == steel->kind)); // what breaks comes first
}

/// What breaks exactly at the end of the way is told; a centimetre further on it is out of sight.
BOOST_AUTO_TEST_CASE(what_breaks_at_the_very_end_is_told) {
  Snapshot snapshot = fewSettings();
  for (catalogue::CabinetType& each : snapshot.catalogue.cabinets) {
    each.coverLowest = degrees(-89); // wherever it hangs
    each.coverHighest = degrees(89);
    each.throwDistance = metres(500);
  }
  const Option best = bestOf(snapshot);
  const auto lowerFrom = [&](double trimM) {
    options::Setting setting = *best.setting;
    setting.trimM = trimM;
    const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, setting));
    BOOST_TEST_REQUIRE(!reserves.empty());
    return *std::ranges::find(reserves, QStringLiteral("trim-down"), &options::Reserve::kind);
  };
  const int first = lowerFrom(6.0).steps;
  BOOST_TEST_REQUIRE(first > 0);
  const options::Reserve end = lowerFrom(6.0 + 0.01 * (500 - first));
  BOOST_TEST(end.steps == 500);
  BOOST_TEST((end.then == Verdict::fails));
  BOOST_TEST(lowerFrom(6.0 + 0.01 * (501 - first)).steps == 0);
}

/// Up to 5 t of cable, 10 m of steel, 5 m of trim, 20° of tilt, 20 links and 100 m/s of wind; a chain is
/// never shorter than one link. Each way ends at the last that stands, or says that nothing broke.
BOOST_AUTO_TEST_CASE(each_way_is_looked_along_so_far) {
  Snapshot snapshot = fewSettings();
  snapshot.venue.outdoors = true;
  snapshot.show.wind = metresPerSecond(0.5);
  snapshot.show.windBasis = calendar::WindBasis::gust;
  snapshot.show.windAveraging = 3;
  snapshot.show.windHeight = metres(20);
  for (calendar::Hang& hang : snapshot.show.hangs) {
    hang.wetMass = kilograms(0);
  }
  const Option best = bestOf(snapshot);
  Snapshot unsaid = snapshot;
  unsaid.venue.outdoors.reset();
  BOOST_TEST(std::ranges::count(options::reservesOf(unsaid, best), QStringLiteral("wind"),
                                &options::Reserve::kind) == 0);
  BOOST_REQUIRE(best.verdict <= Verdict::tight);
  BOOST_REQUIRE(best.setting->mark.has_value());
  const std::map<QString, std::pair<int, double>> ways{
      {QStringLiteral("mass"), {5000, 1.0}},
      {QStringLiteral("low-steel"), {1000, -0.01}},
      {QStringLiteral("trim-down"), {500, -0.01}},
      {QStringLiteral("trim-up"), {500, 0.01}},
      {QStringLiteral("tilt-down"), {40, -0.5}},
      {QStringLiteral("tilt-up"), {40, 0.5}},
      {QStringLiteral("mark-down"), {std::min(20, *best.setting->mark - 1), -1.0}},
      {QStringLiteral("mark-up"), {20, 1.0}},
      {QStringLiteral("wind"), {200, 0.5}}};
  const auto reserves = options::reservesOf(snapshot, best);
  BOOST_TEST(reserves.size() == ways.size());
  for (const options::Reserve& each : reserves) {
    const auto& [most, step] = ways.at(each.kind);
    BOOST_TEST(each.most == most, each.kind.toStdString());
    const int within = each.steps == 0 ? most : each.steps - 1;
    BOOST_TEST(std::abs(each.last - each.from - within * step) < 1e-9, each.kind.toStdString());
  }
}

/// What breaks at the very first step of a way that is searched by halves, and at the second.
BOOST_AUTO_TEST_CASE(what_breaks_at_once_is_told) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  const auto steel = [&] {
    const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, *best.setting));
    return std::ranges::find(reserves, QStringLiteral("low-steel"), &options::Reserve::kind)->steps;
  };
  const int steps = steel();
  BOOST_TEST_REQUIRE(steps > 2);
  const double stated = inMetres(*snapshot.venue.lowSteel);
  for (const int left : {2, 1}) {
    snapshot.venue.lowSteel = metres(stated - 0.01 * (steps - left));
    BOOST_TEST(steel() == left);
  }
}

/// What is no setting at all ends a way, too, and is told in its own words.
BOOST_AUTO_TEST_CASE(a_link_that_the_chain_does_not_have_ends_it) {
  Snapshot snapshot = fewSettings();
  const Option best = bestOf(snapshot);
  snapshot.catalogue.chains.front().links = *best.setting->mark;
  const auto reserves = options::reservesOf(snapshot, options::judge(snapshot, best.key, *best.setting));
  const auto longer = std::ranges::find(reserves, QStringLiteral("mark-up"), &options::Reserve::kind);
  BOOST_TEST_REQUIRE((longer != reserves.end()));
  BOOST_TEST(longer->steps == 1);
  BOOST_TEST(longer->then == Verdict::fails);
  BOOST_TEST(longer->text.contains(QStringLiteral("the chain has %1 links").arg(*best.setting->mark)),
             longer->text.toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
