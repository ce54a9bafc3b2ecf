// SPDX-License-Identifier: GPL-3.0-or-later
// Doubts of which only one is there, and bars of which a part is not.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>

#include "hang/solve.h"
#include "options/doubts.h"
#include "print.h"
#include "room_fixture.h"

using namespace hangbook;
using namespace hangbook::options;
using hangbook::testing::Room;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };

/// One bar of the type, weighed.
Snapshot weighed(const catalogue::BarType& type, double kg) {
  Snapshot snapshot;
  fleet::Unit unit = hangbook::testing::unitOf(QStringLiteral("bar-1"), fleet::UnitKind::bar, type.name);
  unit.weighed = kilograms(kg);
  snapshot.units = {unit};
  return snapshot;
}

House house(double massPercent, double scalePercent) {
  const auto says = [](const char* figure, double value) {
    return venue::HouseFigure{
        QString::fromUtf8(figure), value, {}, QStringLiteral("test"), QStringLiteral("Edda"),
        QDate(2027, 3, 1)};
  };
  return {{says("mass-doubt", massPercent), says("scale-doubt", scalePercent)}, {}, {}};
}

catalogue::BarType bar(double frameKg, std::optional<double> headKg) {
  catalogue::BarType type;
  type.name = QStringLiteral("Marram bar");
  type.frameMass = kilograms(frameKg);
  type.headMass = headKg ? std::optional(kilograms(*headKg)) : std::nullopt;
  return type;
}

} // namespace

BOOST_AUTO_TEST_SUITE(doubts_alone)

/// 2 % of 50 kg and of 30 kg; without a head nothing is in doubt of it.
BOOST_AUTO_TEST_CASE(a_bar_without_a_head_is_in_doubt_by_its_frame_alone) {
  const KnownBar whole = massesOfBar({}, house(2.0, 0.5), bar(50.0, 30.0));
  BOOST_TEST(whole.whole.stated == 80.0);
  BOOST_TEST(whole.whole.heavier == 1.6, near(1e-12));
  BOOST_TEST(whole.whole.lighter == 1.6, near(1e-12));
  const KnownBar headless = massesOfBar({}, house(2.0, 0.5), bar(50.0, std::nullopt));
  BOOST_TEST(headless.whole.stated == 50.0);
  BOOST_TEST(headless.whole.heavier == 1.0, near(1e-12));
  BOOST_TEST(headless.whole.lighter == 1.0, near(1e-12));
}

/// A bar of no mass by its maker cannot be spread over its parts: what it weighs is not counted, and nothing
/// becomes unknown by it.
BOOST_AUTO_TEST_CASE(what_has_no_mass_by_its_maker_is_not_spread) {
  const catalogue::BarType none = bar(0.0, 0.0);
  const KnownBar known = massesOfBar(weighed(none, 60.0), house(2.0, 0.5), none);
  BOOST_TEST(known.whole.weighed.isEmpty());
  BOOST_TEST(known.frame.stated == 0.0);
  const catalogue::BarType little = bar(0.001, 0.0);
  BOOST_TEST(!massesOfBar(weighed(little, 60.0), house(2.0, 0.5), little).whole.weighed.isEmpty());
}

/// Weighed at 60 kg within 1 %, of 50 kg within 2 % by the maker; the doubt that reaches farther counts, and
/// one that nobody can read leaves that end open.
BOOST_AUTO_TEST_CASE(the_farther_of_two_ends_counts_and_an_unknown_one_stays) {
  const catalogue::BarType type = bar(50.0, std::nullopt);
  Snapshot snapshot = weighed(type, 60.0);
  snapshot.units.push_back(
      hangbook::testing::unitOf(QStringLiteral("bar-2"), fleet::UnitKind::bar, type.name)); // not weighed
  const auto ends = [&](double massPercent, double scalePercent) {
    const KnownMass known = massesOfBar(snapshot, house(massPercent, scalePercent), type).whole;
    return std::pair(known.stated - known.lighter, known.stated + known.heavier);
  };
  BOOST_TEST(ends(2.0, 1.0).first == 49.0, near(1e-12));
  BOOST_TEST(ends(2.0, 1.0).second == 60.6, near(1e-12));
  BOOST_TEST(ends(30.0, 1.0).second == 65.0, near(1e-12)); // the maker's reaches farther
  BOOST_TEST(ends(2.0, 30.0).first == 42.0, near(1e-12));  // the scale's does
  const double none = std::nan("");
  BOOST_TEST(std::isnan(ends(none, 1.0).first));
  BOOST_TEST(std::isnan(ends(none, 1.0).second));
  BOOST_TEST(std::isnan(ends(2.0, none).first));
  BOOST_TEST(std::isnan(ends(2.0, none).second));
}

/// Weighed at 60 and 64 kg within 1 %, of 62 kg within 2 % by the maker: as heavy as the heavier, and as
/// light as the lighter may be, whichever was weighed first.
BOOST_AUTO_TEST_CASE(the_heaviest_and_the_lightest_that_was_weighed_are_the_two_ends) {
  const catalogue::BarType type = bar(62.0, std::nullopt);
  for (const auto& [first, second] : {std::pair(60.0, 64.0), std::pair(64.0, 60.0)}) {
    Snapshot snapshot = weighed(type, first);
    snapshot.units.push_back(weighed(type, second).units.front());
    const KnownMass all = massesOfBar(snapshot, house(2.0, 1.0), type).whole;
    BOOST_TEST(all.stated == 64.0);
    BOOST_TEST(all.heavier == 0.64, near(1e-9));
    BOOST_TEST(all.lighter == 64.0 - 59.4, near(1e-9));
    snapshot.units.push_back(
        hangbook::testing::unitOf(QStringLiteral("bar-3"), fleet::UnitKind::bar, type.name)); // not weighed
    const KnownMass some = massesOfBar(snapshot, house(2.0, 1.0), type).whole;
    BOOST_TEST(some.stated == 64.0);
    BOOST_TEST(some.heavier == 0.64, near(1e-9));
    BOOST_TEST(some.lighter == 64.0 - 59.4, near(1e-9));
  }
}

/// A hired unit that is back with its owner before the show does not hang there; our own does, whatever is
/// written beside it, and so does one of which a day is missing.
BOOST_AUTO_TEST_CASE(a_unit_that_is_back_by_then_does_not_count) {
  const catalogue::BarType type = bar(50.0, std::nullopt);
  const auto counts = [&type](const char* owner, QDate until, QDate from) {
    Snapshot snapshot = weighed(type, 60.0);
    snapshot.show.from = from;
    snapshot.units[0].owner = QString::fromLatin1(owner);
    snapshot.units[0].hiredUntil = until;
    return massesOfBar(snapshot, house(2.0, 1.0), type).whole.stated == 60.0;
  };
  const QDate show(2027, 4, 2);
  BOOST_TEST(!counts("Quay hire", show.addDays(-1), show));
  BOOST_TEST(counts("Quay hire", show, show));
  BOOST_TEST(counts("Quay hire", QDate(), show));
  BOOST_TEST(counts("Quay hire", show.addDays(-1), QDate()));
  BOOST_TEST(counts("", show.addDays(-1), show));
}

/// 2 % of what is there: of a bar without a head nothing is in doubt of one.
BOOST_AUTO_TEST_CASE(what_is_not_there_is_not_in_doubt) {
  const House says = house(2.0, 0.5);
  const auto of = [&says](const catalogue::BarType& type) {
    return doubtsOf(says, Stack{}, type, massesOfBar({}, says, type), nullptr, {}, {}).figures;
  };
  BOOST_TEST(of(bar(50.0, 30.0)).head.heavier == 0.6, near(1e-12));
  BOOST_TEST(of(bar(50.0, 30.0)).head.lighter == 0.6, near(1e-12));
  BOOST_TEST(of(bar(50.0, std::nullopt)).head.heavier == 0.0);
  BOOST_TEST(of(bar(50.0, std::nullopt)).head.lighter == 0.0);
  BOOST_TEST(of(bar(50.0, std::nullopt)).frame.heavier == 1.0, near(1e-12));
}

/// Cables of 10 kg and a chain of 100 links of 20 mm, 3 kg a metre: 2 % of 16 kg more either way.
BOOST_AUTO_TEST_CASE(cables_and_chain_are_in_doubt_with_the_frame) {
  const House says = house(2.0, 0.5);
  const catalogue::BarType type = bar(50.0, 30.0);
  const auto frame = [&](const catalogue::ChainType* chain, const calendar::Hang& hang) {
    return doubtsOf(says, Stack{}, type, massesOfBar({}, says, type), chain, hang, {}).figures.frame;
  };
  catalogue::ChainType chain;
  chain.mass = kilogramsPerMetre(3.0);
  chain.pitch = metres(0.02);
  chain.links = 100;
  calendar::Hang hang;
  hang.cableMass = kilograms(10.0);
  BOOST_TEST(frame(nullptr, {}).heavier == 1.0, near(1e-12));
  BOOST_TEST(frame(nullptr, hang).heavier == 1.2, near(1e-12));
  BOOST_TEST(frame(nullptr, hang).lighter == 1.2, near(1e-12));
  BOOST_TEST(frame(&chain, {}).heavier == 1.12, near(1e-12));
  BOOST_TEST(frame(&chain, {}).lighter == 1.12, near(1e-12));
  BOOST_TEST(frame(&chain, hang).heavier == 1.32, near(1e-12));
  BOOST_TEST(doubtsOf(says, Stack{}, type, massesOfBar({}, says, type), nullptr, {}, {}).gearHeavier == 1.02,
             near(1e-12));
}

/// A cabinet that nobody weighed and whose maker states no tolerance is among the masses; else it has a line
/// of its own.
BOOST_AUTO_TEST_CASE(a_cabinets_own_mass_in_doubt_is_told_of_it) {
  const auto told = [](bool stated, bool weighedToo) {
    catalogue::CabinetType cabinet;
    cabinet.name = QStringLiteral("Marram bass");
    cabinet.mass = kilograms(90.0);
    cabinet.tolerances.mass = stated ? std::optional(kilograms(1.5)) : std::nullopt;
    Snapshot snapshot;
    if (weighedToo) {
      snapshot.units = {
          hangbook::testing::unitOf(QStringLiteral("B1"), fleet::UnitKind::cabinet, cabinet.name)};
      snapshot.units[0].weighed = kilograms(92.0);
    }
    const House says = house(2.0, 0.5);
    Stack stack;
    stack.cabinets = {&cabinet};
    const catalogue::BarType type = bar(50.0, std::nullopt);
    const RigDoubts doubts = doubtsOf(says, stack, type, massesOfBar({}, says, type), nullptr, {},
                                      {massOfType(snapshot, says, cabinet)});
    const auto own =
        std::ranges::find(doubts.sources, QStringLiteral("mass of Marram bass"), &DoubtFigure::what);
    BOOST_TEST((doubts.weighed.size() == 1) == weighedToo);
    BOOST_TEST(std::ranges::count(doubts.sources, QStringLiteral("masses"), &DoubtFigure::what) ==
               1); // the bar's
    return own == doubts.sources.end() ? std::string() : own->figure.toStdString();
  };
  BOOST_TEST(told(false, false) == "");
  BOOST_TEST(told(true, false) == "− 1.5 kg + 1.5 kg");
  BOOST_TEST(told(false, true) == "− 0.46 kg + 0.46 kg"); // all are weighed: half a per cent of 92 kg
}

/// Four digits, parts in per cent and lengths in millimetres.
BOOST_AUTO_TEST_CASE(doubts_are_told_in_four_digits) {
  const auto says = [](const char* figure, double value) {
    return venue::HouseFigure{
        QString::fromUtf8(figure), value, {}, QStringLiteral("test"), QStringLiteral("Edda"),
        QDate(2027, 3, 1)};
  };
  const House own{
      {says("mass-doubt", 12.3441), says("centre-doubt", 0.0567841), says("length-doubt", 0.001)}, {}, {}};
  const catalogue::BarType type = bar(50.0, 30.0);
  const RigDoubts doubts = doubtsOf(own, Stack{}, type, massesOfBar({}, own, type), nullptr, {}, {});
  const auto told = [&doubts](const char* what) {
    for (const DoubtFigure& each : doubts.sources) {
      if (each.what == QLatin1String(what)) {
        return each.figure.toStdString();
      }
    }
    return std::string();
  };
  BOOST_TEST(told("masses") == "± 12.34 %");
  BOOST_TEST(told("centres of gravity") == "± 56.78 mm");
  BOOST_TEST(told("lengths and places") == "± 1 mm");
}

/// Each kind of doubt alone puts a setting at its unfavourable end.
BOOST_AUTO_TEST_CASE(one_doubt_alone_is_a_doubt) {
  const auto taken = [](const RigDoubts& doubts) {
    Room room;
    hang::Doubts figures = doubts.figures;
    figures.stack.resize(room.input.stack.size());
    hang::Doubting doubting(room.input, figures);
    takeDoubts(doubting, room.input, doubts, room.settled);
    return room.settled;
  };
  BOOST_TEST((taken({}).doubt == nullptr));
  RigDoubts longer;
  longer.longer = 0.002;
  BOOST_REQUIRE((taken(longer).doubt != nullptr));
  BOOST_TEST(taken(longer).doubt->longer == 0.002);
  RigDoubts heavier;
  heavier.gearHeavier = 1.02;
  BOOST_REQUIRE((taken(heavier).doubt != nullptr));
  BOOST_TEST(taken(heavier).gearHeavier == 1.02);
  RigDoubts figures;
  figures.figures.stack.resize(2);
  figures.figures.stack[0].heavier = 1.0;
  BOOST_TEST((taken(figures).doubt != nullptr));
}

/// Shares to four digits; what is not there is not in doubt.
BOOST_AUTO_TEST_CASE(what_figures_may_be_off_by_in_words) {
  const House says(
      {{QStringLiteral("mass-doubt"), 2.34567, {}, {}, QStringLiteral("Edda"), QDate(2027, 3, 1)},
       {QStringLiteral("length-doubt"), 0.00123456, {}, {}, QStringLiteral("Edda"), QDate(2027, 3, 1)}},
      {}, {});
  const catalogue::BarType type = bar(50.0, std::nullopt);
  const RigDoubts doubts = doubtsOf(says, {}, type, massesOfBar({}, says, type), nullptr, {}, {});
  BOOST_TEST(doubts.figures.head.heavier == 0.0);
  BOOST_TEST(doubts.figures.head.lighter == 0.0);
  BOOST_TEST(doubts.figures.frame.heavier == 0.0234567 * 50.0, near(1e-12));
  const auto figureOf = [&doubts](const char* what) {
    const auto found = std::ranges::find(doubts.sources, QString::fromUtf8(what), &DoubtFigure::what);
    return found == doubts.sources.end() ? std::string() : found->figure.toStdString();
  };
  BOOST_TEST(figureOf("masses") == "± 2.346 %");
  BOOST_TEST(figureOf("lengths and places") == "± 1.235 mm");
}

/// A chain's wear is told in per cent to four digits; a link of 14 mm within 0.1 mm is longer by that and
/// by 1.2346 % of 14.1 mm.
BOOST_AUTO_TEST_CASE(what_a_chain_may_be_longer_by) {
  const House says(
      {{QStringLiteral("chain-wear"), 1.23456, {}, {}, QStringLiteral("Edda"), QDate(2027, 3, 1)}}, {}, {});
  catalogue::ChainType chain;
  chain.name = QStringLiteral("Marram chain");
  chain.pitch = metres(0.014);
  chain.pitchTolerance = metres(0.0001);
  const catalogue::BarType type = bar(50.0, std::nullopt);
  const RigDoubts doubts = doubtsOf(says, {}, type, massesOfBar({}, says, type), &chain, {}, {});
  const auto wear =
      std::ranges::find(doubts.sources, QStringLiteral("wear of Marram chain"), &DoubtFigure::what);
  BOOST_REQUIRE((wear != doubts.sources.end()));
  BOOST_TEST(wear->figure.toStdString() == "+ 1.235 %");
  BOOST_TEST(doubts.figures.linkShorter == 0.0001, near(1e-12));
  BOOST_TEST(doubts.figures.linkLonger == 0.0001 + 0.0123456 * 0.0141, near(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()
