// SPDX-License-Identifier: GPL-3.0-or-later
// Load cells of a hang on bridles: at the hooks as ever, at the points in the legs.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

#include "bridled_fixture.h"
#include "hang/bridle.h"
#include "options/pick_path.h"
#include "options/search.h"
#include "options/weigh.h"
#include "options/weigh_cells.h"
#include "print.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

constexpr auto near = [](double tolerance) { return boost::test_tools::tolerance(tolerance); };
constexpr double g = 9.80665e-3; // kN per kg

using Change = std::function<void(Snapshot&)>;

struct Flown {
  Snapshot snapshot;
  Option option;
  explicit Flown(const Change& change = [](Snapshot&) {}) : snapshot(testing::bridledShow()) {
    change(snapshot);
    option = decide(snapshot).hangs[0].options.front();
    BOOST_REQUIRE(option.hangInput.has_value());
    BOOST_REQUIRE(option.bridles.size() == 2U);
  }
  Weighed weighed(CellAt at, const std::vector<CellReading>& readings) const {
    return weigh(snapshot, option, at, readings);
  }
  /// Every leg's pull × `times`.
  std::vector<CellReading> inLegs(const Option& as, double times = 1.0) const {
    std::vector<CellReading> readings;
    for (const BridleResult& bridle : as.bridles) {
      for (const BridleLegResult& leg : bridle.legs) {
        readings.push_back({bridle.pick, times * leg.tensionKn, leg.point});
      }
    }
    return readings;
  }
};

const Flown& flown() {
  static const Flown one;
  return one;
}

const Assumption* find(const Weighed& weighed, const char* words) {
  const auto found = std::ranges::find_if(weighed.assumptions, [words](const Assumption& each) {
    return each.what.contains(QString::fromUtf8(words));
  });
  return found == weighed.assumptions.end() ? nullptr : &*found;
}

double massOf(const char* piece) {
  return inKilograms(*catalogue::find(flown().snapshot.catalogue.hardware, QString::fromUtf8(piece))->mass);
}

} // namespace

BOOST_AUTO_TEST_SUITE(weighing_legs)

BOOST_AUTO_TEST_CASE(at_the_hooks_as_ever) {
  const Option& option = flown().option;
  const auto read = [&option](double times) {
    return flown().weighed(CellAt::hook, {{QStringLiteral("left"), times * option.pickLoads[0].loadKn, {}},
                                          {QStringLiteral("right"), option.pickLoads[1].loadKn, {}}});
  };
  const Weighed right = read(1.0);
  BOOST_REQUIRE(right.picks.size() == 2U);
  BOOST_TEST(!right.beyond);
  BOOST_TEST(right.picks[0].computedKn == option.pickLoads[0].loadKn, near(1e-12)); // the chains hang plumb
  BOOST_TEST(right.picks[0].point.isEmpty());
  const Weighed off = read(1.2);
  BOOST_TEST(off.beyond);
  // Above the hoist, below the apex: 58 kg, 22 m of chain and its bag.
  const Assumption* above = find(off, "the cells hang above the hoists");
  BOOST_REQUIRE(above != nullptr);
  BOOST_TEST(above->wouldKn[1] == option.pickLoads[1].loadKn + g * (58.0 + 22.0 * 1.3 + 2.5), near(1e-9));
  const Assumption* rigging = find(off, "the cells carry the rigging");
  BOOST_REQUIRE(rigging != nullptr);
  BOOST_TEST(rigging->wouldKn[0] == option.pickLoads[0].loadKn + g * 6.0 * 1.2, near(1e-9));
  BOOST_TEST(find(off, "readings of left and right are exchanged") != nullptr);
  const Weighed both =
      flown().weighed(CellAt::hook, {{QStringLiteral("left"), option.pickLoads[0].loadKn + g * 30.0},
                                     {QStringLiteral("right"), option.pickLoads[1].loadKn + g * 30.0}});
  const Assumption* bar = find(both, "on the bar not counted");
  BOOST_REQUIRE(bar != nullptr);
  BOOST_TEST(bar->missKn < 0.02); // its middle does not lie midway between the picks
  BOOST_TEST(bar->explains);
  BOOST_TEST(find(off, "than counted in the leg") == nullptr);
}

/// Legs of 3.3 m to points 4 m apart: sin = √(3.3² − 2²) ÷ 3.3. At the apex hang the pick, the hoist with
/// chain and bag, the rigging of 7.2 kg and half of both legs; a cell at the top has half of its own leg
/// besides.
BOOST_AUTO_TEST_CASE(a_leg_reads_its_pull_by_hand) {
  const Option& option = flown().option;
  const Weighed weighed = flown().weighed(CellAt::point, flown().inLegs(option));
  BOOST_REQUIRE(weighed.picks.size() == 4U);
  BOOST_TEST(!weighed.beyond);
  const double leg = g * (massOf("steel 2") + massOf("steel 1") + 3.0 * massOf("shackle"));
  const double gear = g * (58.0 + 22.0 * 1.3 + 2.5 + 6.0 * 1.2);
  const double sine = std::sqrt(3.3 * 3.3 - 4.0) / 3.3;
  for (std::size_t i = 0; i < 4; ++i) {
    const double pick = option.pickLoads[i / 2].loadKn;
    BOOST_TEST(weighed.picks[i].computedKn == (pick + gear + leg) / (2.0 * sine) + 0.5 * leg, near(1e-9));
    BOOST_TEST(weighed.picks[i].percent == 0.0);
  }
  BOOST_TEST(wordsFor(weighed.picks[0]).toStdString() == "left, leg to L1");
  BOOST_TEST(weighed.picks[3].point.toStdString() == "L2 front");
  // A leg may be named by its point alone.
  std::vector<CellReading> bare = flown().inLegs(option, 1.049);
  for (CellReading& each : bare) {
    each.pick.clear();
  }
  BOOST_TEST(!flown().weighed(CellAt::point, bare).beyond);
  bare[2].kn *= 1.01;
  const Weighed off = flown().weighed(CellAt::point, bare);
  BOOST_TEST(off.beyond);
  BOOST_TEST(!off.picks[1].beyond);
  BOOST_TEST(off.picks[2].beyond);
}

/// Something else hangs than was computed: the legs as the same option has them with that very change are
/// explained by it, with leaning chains too.
BOOST_AUTO_TEST_CASE(what_explains_the_legs) {
  const Flown leaning([](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      if (point.name.startsWith(QLatin1String("L1"))) {
        point.y = metres(inMetres(point.y) + 1.2);
        point.x = metres(inMetres(point.x) + 0.5);
      }
    }
  });
  const auto paths = pickPaths(leaning.snapshot, leaning.option);
  const PickPath& lean = paths.at(0);
  BOOST_TEST(std::abs(lean.sideways[0]) > 0.005);
  BOOST_TEST(std::abs(lean.sideways[1]) > 0.005);
  BOOST_TEST(lean.hook == std::hypot(leaning.option.pickLoads[0].loadKn, lean.sideways[0], lean.sideways[1]),
             near(1e-9));
  const Cells cells(leaning.snapshot, leaning.option, CellAt::point);
  for (std::size_t i = 0; i < 4; ++i) { // all else at the top is balance
    double own = 0.0;
    for (const HardwareCount& piece : leaning.option.bridles[i / 2].legs[i % 2].pieces) {
      own += 0.5 * g * piece.count * massOf(piece.type.toUtf8().constData());
    }
    BOOST_TEST(cells.ownWeight(i) == own, near(1e-6));
  }
  // A piece more and a piece fewer of each.
  int pieces = 0;
  for (const LegPieces& change : cells.legChanges()) {
    BOOST_TEST(std::abs(change.more) == 1);
    pieces += change.more;
  }
  BOOST_TEST(pieces == 0);
  for (const Flown* each : {&flown(), &leaning}) {
    Snapshot really = each->snapshot;
    for (catalogue::BarType& bar : really.catalogue.bars) {
      bar.frameMass = kilograms(inKilograms(*bar.frameMass) + 60.0);
    }
    const Option heavier = judge(really, each->option.key, *each->option.setting);
    const Weighed weighed = each->weighed(CellAt::point, each->inLegs(heavier));
    BOOST_TEST(weighed.beyond);
    const Assumption* bar = find(weighed, "60.0 kg on the bar not counted");
    BOOST_REQUIRE(bar != nullptr);
    BOOST_TEST(bar->explains);
    BOOST_TEST(bar->missKn < 5e-3); // added at the middle of the whole bar, not of its frame alone
    for (std::size_t i = 1; i < weighed.assumptions.size(); ++i) {
      BOOST_TEST(weighed.assumptions[i - 1].missKn <= weighed.assumptions[i].missKn);
    }
    for (const Assumption& assumed : weighed.assumptions) {
      BOOST_TEST(assumed.wouldKn.size() == 4U);
    }
    BOOST_TEST(find(weighed, "below the hoists") == nullptr); // no cell in a leg hangs there
    BOOST_TEST(find(weighed, "carry the rigging") == nullptr);
  }
}

/// One bass less: what the statics of the others give, through to the legs.
BOOST_AUTO_TEST_CASE(a_missing_cabinet) {
  const Option& option = flown().option;
  hang::Hang really = *option.hangInput;
  BOOST_REQUIRE(option.key.stack.front() == QStringLiteral("bass"));
  const Weighed wild = flown().weighed(CellAt::point, flown().inLegs(option, 0.7));
  const Assumption* missing = find(wild, "one bass missing");
  BOOST_REQUIRE(missing != nullptr);
  // Half of a bass less at each pick, about: both legs of it by 1/(2 sin) of that.
  const double less =
      g * inKilograms(*catalogue::find(flown().snapshot.catalogue.cabinets, QStringLiteral("bass"))->mass);
  double all = 0.0;
  const double sine = std::sqrt(3.3 * 3.3 - 4.0) / 3.3;
  for (std::size_t i = 0; i < 4; ++i) {
    all += (wild.picks[i].computedKn - missing->wouldKn[i]) * sine;
  }
  BOOST_TEST(all == less, near(0.01));
}

BOOST_AUTO_TEST_CASE(cells_that_are_exchanged) {
  const Flown uneven([](Snapshot& s) {
    for (venue::Bridle& bridle : s.venue.bridles) {
      bridle.x = metres(inMetres(catalogue::find(s.venue.points, bridle.points[0])->x) + 1.3);
      bridle.tolerance = metres(0.3);
    }
  });
  std::vector<CellReading> readings = uneven.inLegs(uneven.option);
  BOOST_TEST(std::abs(readings[0].kn / readings[1].kn - 1.0) > 0.06);
  std::swap(readings[0].kn, readings[1].kn);
  const Weighed weighed = uneven.weighed(CellAt::point, readings);
  BOOST_TEST(weighed.beyond);
  BOOST_TEST(weighed.assumptions.front().what.toStdString() ==
             "the readings of (left, leg to L1) and (left, leg to L1 front) are exchanged");
  BOOST_TEST(weighed.assumptions.front().missKn < 1e-9);
  BOOST_TEST(find(weighed, "readings of left and right are exchanged") == nullptr);
}

/// A steel of 1 m more in one leg: 4.3 m beside 3.3 m. By the triangle of 4, 4.3 and 3.3 m, and the
/// balance at its apex.
BOOST_AUTO_TEST_CASE(another_make_up_of_a_leg) {
  const Option& option = flown().option;
  const Weighed wild = flown().weighed(CellAt::point, flown().inLegs(option, 1.3));
  const Assumption* more = find(wild, "one steel 1 more than counted in the leg to L1 (");
  BOOST_REQUIRE(more != nullptr);
  const double leg = g * (massOf("steel 2") + massOf("steel 1") + 3.0 * massOf("shackle"));
  const double steel = g * massOf("steel 1");
  const double gear = g * (58.0 + 22.0 * 1.3 + 2.5 + 6.0 * 1.2);
  const double load = option.pickLoads[0].loadKn + gear + leg + 0.5 * steel;
  const double foot = (16.0 + 4.3 * 4.3 - 3.3 * 3.3) / 8.0; // of the apex, from L1
  const double depth = std::sqrt(4.3 * 4.3 - foot * foot);
  BOOST_TEST(more->wouldKn[0] == load * (4.0 - foot) / 4.0 * 4.3 / depth + 0.5 * (leg + steel), near(1e-9));
  BOOST_TEST(more->wouldKn[1] == load * foot / 4.0 * 3.3 / depth + 0.5 * leg, near(1e-9));
  BOOST_TEST(more->wouldKn[2] == wild.picks[2].computedKn);
  BOOST_TEST(find(wild, "one shackle fewer than counted in the leg to L2 front") != nullptr);
}

/// Legs of one steel each: without it there is no leg, and nothing is told of that.
BOOST_AUTO_TEST_CASE(what_cannot_be_is_left_out) {
  const Flown single([](Snapshot& s) {
    catalogue::HardwareType steel = s.catalogue.hardware.back();
    steel.name = QStringLiteral("steel 3.1");
    steel.length = metres(3.1);
    s.catalogue.hardware.push_back(steel);
    for (venue::Bridle& bridle : s.venue.bridles) {
      bridle.steels = {steel.name};
    }
  });
  const Weighed wild = single.weighed(CellAt::point, single.inLegs(single.option, 1.3));
  BOOST_TEST(find(wild, "one steel 3.1 fewer") == nullptr);
  BOOST_TEST(find(wild, "one shackle fewer") != nullptr);
  for (const Assumption& each : wild.assumptions) {
    BOOST_TEST(std::ranges::all_of(each.wouldKn, [](double kn) { return std::isfinite(kn); }),
               each.what.toStdString());
  }
}

/// Chains lean along the line between the two apexes, each towards the other's hook: the points stand further
/// apart than the picks.
BOOST_AUTO_TEST_CASE(what_pulls_aside_lies_between_the_apexes) {
  const Flown aslant([](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      if (point.name.startsWith(QLatin1String("L1"))) {
        point.x = metres(inMetres(point.x) + 0.9);
        point.y = metres(inMetres(point.y) + 1.2);
      }
    }
  });
  const auto paths = pickPaths(aslant.snapshot, aslant.option);
  const auto& bridles = aslant.option.bridles;
  const double ahead = bridles[1].apexM[0] - bridles[0].apexM[0];
  const double aside = bridles[1].apexM[1] - bridles[0].apexM[1];
  BOOST_TEST(std::abs(ahead) > 0.5);
  for (const std::size_t pick : {0U, 1U}) {
    const std::array<double, 2>& pulled = paths.at(pick).sideways;
    const double towards = pick == 0 ? 1.0 : -1.0;
    BOOST_TEST(towards * (pulled[0] * ahead + pulled[1] * aside) > 0.01);
    BOOST_TEST(std::abs(pulled[0] * aside - pulled[1] * ahead) < 1e-6);
  }
}

/// Any two of the four may be exchanged, and each then reads what the other was computed to.
BOOST_AUTO_TEST_CASE(any_two_readings_may_be_exchanged) {
  const Flown leaning([](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      if (point.name == QLatin1String("L1") || point.name == QLatin1String("L2 front")) {
        point.z = metres(inMetres(point.z) + (point.name == QLatin1String("L1") ? 0.1 : 0.2));
      }
    }
  });
  std::vector<CellReading> readings = leaning.inLegs(leaning.option);
  readings[0].kn *= 1.3;
  const Weighed weighed = leaning.weighed(CellAt::point, readings);
  for (std::size_t i = 0; i < 4; ++i) {
    for (std::size_t j = i + 1; j < 4; ++j) {
      const std::string words = "the readings of (" + wordsFor(weighed.picks[i]).toStdString() + ") and (" +
                                wordsFor(weighed.picks[j]).toStdString() + ") are exchanged";
      const Assumption* exchanged = find(weighed, words.c_str());
      BOOST_TEST_REQUIRE(exchanged != nullptr, words);
      for (std::size_t k = 0; k < 4; ++k) {
        const std::size_t as = k == i ? j : k == j ? i : k;
        BOOST_TEST(exchanged->wouldKn[k] == weighed.picks[as].computedKn, near(1e-12));
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(readings_that_do_not_fit_the_cells) {
  const auto refused = [](CellAt at, const std::vector<CellReading>& readings, const char* words) {
    try {
      flown().weighed(at, readings);
      BOOST_ERROR(std::string("taken: ") + words);
    } catch (const Error& error) {
      BOOST_TEST((error.trouble() == Trouble::badInput));
      BOOST_TEST(std::string(error.what()).find(words) != std::string::npos, error.what());
    }
  };
  const std::vector<CellReading> whole = flown().inLegs(flown().option);
  std::vector<CellReading> one = whole;
  one.pop_back();
  refused(CellAt::point, one, "the leg to point L2 front of the right pick's bridle has no reading");
  one = whole;
  one.push_back(whole[0]);
  refused(CellAt::point, one, "the leg to point L1 of the left pick's bridle has two readings");
  one = whole;
  one.push_back(whole[3]);
  refused(CellAt::point, one, "the leg to point L2 front of the right pick's bridle has two readings");
  const QString hook = QStringLiteral("left");
  refused(CellAt::hook, {{hook, 3.0, {}}, {hook, 3.0, {}}}, "the left pick has two readings");
  one = whole;
  one[0].kn = -1.0;
  refused(CellAt::point, one, "must be above 0");
  one = whole;
  one[0].point = QStringLiteral("L9");
  refused(CellAt::point, one, "the hang has no cell");
  one = whole;
  one[0].pick = QStringLiteral("right");
  refused(CellAt::point, one, "it has left, leg to L1; left, leg to L1 front; right");
  refused(CellAt::point, {{QStringLiteral("left"), 3.0, {}}, {QStringLiteral("right"), 3.0, {}}},
          "the hang has no cell \"left\"");
  refused(CellAt::hook, whole, "a leg is read at its point");
  // Not where legs are read, nor to who named none.
  const auto ends = [](CellAt at, const std::vector<CellReading>& readings, const char* words) {
    BOOST_CHECK_EXCEPTION(flown().weighed(at, readings), Error,
                          [words](const Error& error) { return std::string(error.what()).ends_with(words); });
  };
  ends(CellAt::hook, {{QStringLiteral("middle"), 3.0, {}}}, "it has left, right");
  one = whole;
  one[0].point = QStringLiteral("L9");
  ends(CellAt::point, one, "; right, leg to L2 front");
  one = whole;
  one.erase(one.begin());
  refused(CellAt::point, one,
          "the leg to point L1 of the left pick's bridle has no reading: every cell of the hang");
  refused(CellAt::hook, {{hook, 3.0, {}}}, "the right pick has no reading: every pick of the hang");
}

/// One leg reads more and its fellow, alike, as much less: no more hangs there. A leg that reads more alone
/// counts for half.
BOOST_AUTO_TEST_CASE(both_legs_say_how_much_more_hangs) {
  const Cells cells(flown().snapshot, flown().option, CellAt::point);
  const auto readings = [&](double first, double second) {
    std::vector<double> kn;
    for (const BridleResult& bridle : flown().option.bridles) {
      kn.push_back(bridle.legs[0].tensionKn + first);
      kn.push_back(bridle.legs[1].tensionKn + second);
    }
    return cells.moreBy(kn);
  };
  const double sine = std::sqrt(3.3 * 3.3 - 4.0) / 3.3;
  for (const std::size_t pick : {0U, 1U}) {
    BOOST_TEST(std::abs(readings(0.2, -0.2).at(pick)) < 1e-6);
    BOOST_TEST(readings(0.2, 0.0).at(pick) == 0.2 * sine, near(1e-6));
    BOOST_TEST(readings(0.0, 0.2).at(pick) == 0.2 * sine, near(1e-6));
    BOOST_TEST(readings(0.2, 0.2).at(pick) == 0.4 * sine, near(1e-6));
  }
}

/// Chains that lean swing their bridles, so that pulls do not go quite straight with the load: more at the
/// one pick and less at the other is found all the same.
BOOST_AUTO_TEST_CASE(both_picks_of_leaning_chains_are_found) {
  const Flown aslant([](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      if (point.name.startsWith(QLatin1String("L1"))) {
        point.x = metres(inMetres(point.x) + 0.9);
        point.y = metres(inMetres(point.y) + 1.2);
      }
    }
  });
  const Cells cells(aslant.snapshot, aslant.option, CellAt::point);
  const std::array<double, 2> more = cells.moreBy(cells.with(std::array{2.0, -0.5}));
  BOOST_TEST(more[0] == 2.0, near(1e-9));
  BOOST_TEST(more[1] == -0.5, near(1e-9));
}

/// One pick in a bridle and one straight under its point, in the middle of where the other's legs would have
/// been: the bridle's legs say how much more hangs there, the other cell says it itself.
BOOST_AUTO_TEST_CASE(one_pick_in_a_bridle_and_one_without) {
  Snapshot snapshot = testing::bridledShow();
  snapshot.show.hangs[0].points = {QStringLiteral("BL1"), QStringLiteral("L2")};
  for (venue::Point& point : snapshot.venue.points) {
    if (point.name == QLatin1String("L2")) {
      point.x = metres(inMetres(point.x) + 2.0);
    }
  }
  const Option option = decide(snapshot).hangs[0].options.front();
  BOOST_REQUIRE(option.bridles.size() == 1U);
  const Cells cells(snapshot, option, CellAt::point);
  BOOST_REQUIRE(cells.all().size() == 3U);
  const auto bridled = static_cast<std::size_t>(cells.all()[0].leg < 0); // whichever pick that is
  std::vector<double> readings;
  for (std::size_t i = 0; i < 3; ++i) {
    readings.push_back(cells.computed(i) + (cells.all()[i].leg < 0 ? 0.3 : 0.2));
  }
  const std::array<double, 2> more = cells.moreBy(readings);
  BOOST_TEST(more.at(bridled) == 0.4 * std::sqrt(3.3 * 3.3 - 4.0) / 3.3, near(1e-6));
  BOOST_TEST(more.at(1 - bridled) == 0.3, near(1e-12));
}

/// What an option does not say cannot be compared, and the leg of which it is missing is named.
BOOST_AUTO_TEST_CASE(an_option_that_does_not_say_its_loads) {
  const auto refused = [](const std::function<void(Option&)>& change, const char* words) {
    Option option = flown().option;
    change(option);
    BOOST_CHECK_EXCEPTION(Cells(flown().snapshot, option, CellAt::point), Error, [words](const Error& error) {
      return error.trouble() == Trouble::notPossible &&
             std::string(error.what()).find(words) != std::string::npos;
    });
  };
  const char* loads = "the loads of this option are not known";
  refused([](Option& option) { option.hangInput.reset(); }, loads);
  refused([](Option& option) { option.pickLoads.clear(); }, loads);
  refused([](Option& option) { option.pickLoads.pop_back(); }, loads);
  refused([](Option& option) { option.bridles[0].legs[1].tensionKn = notKnown; },
          "in the leg to L1 front reads");
  refused([](Option& option) { option.bridles[1].legs[0].tensionKn = notKnown; }, "in the leg to L2 reads");
}

/// Legs of both picks to one point: its name alone does not say which.
BOOST_AUTO_TEST_CASE(two_legs_to_one_point) {
  const Flown shared([](Snapshot& s) {
    for (venue::Point& point : s.venue.points) {
      point.y = metres(point.name.startsWith(QLatin1String("L1")) ? 11.0 : 9.0);
      if (point.name == QLatin1String("L1 front")) {
        point.y = metres(10.0);
      }
    }
    for (venue::Bridle& bridle : s.venue.bridles) {
      bridle.points.last() = QStringLiteral("L1 front");
      bridle.tolerance = metres(0.3);
    }
  });
  std::vector<CellReading> readings = shared.inLegs(shared.option);
  BOOST_REQUIRE(readings.size() == 4U);
  const Weighed weighed = shared.weighed(CellAt::point, readings);
  BOOST_TEST(!weighed.beyond);
  readings[1].pick.clear();
  BOOST_CHECK_EXCEPTION(shared.weighed(CellAt::point, readings), Error, [](const Error& error) {
    return std::string(error.what()).find("two legs go to point") != std::string::npos;
  });
}

BOOST_AUTO_TEST_CASE(a_bridle_of_which_nothing_is_known) {
  Snapshot snapshot = flown().snapshot;
  snapshot.catalogue.hardware[4].mass.reset();
  const Option option = judge(snapshot, flown().option.key, *flown().option.setting);
  BOOST_CHECK_EXCEPTION(weigh(snapshot, option, CellAt::point, flown().inLegs(flown().option)), Error,
                        [](const Error& error) { return error.trouble() == Trouble::notPossible; });
  // At the hooks nothing of that is needed.
  BOOST_TEST(!weigh(snapshot, option, CellAt::hook,
                    {{QStringLiteral("left"), option.pickLoads[0].loadKn, {}},
                     {QStringLiteral("right"), option.pickLoads[1].loadKn, {}}})
                  .beyond);
}

/// A cell is named by its pick, and by its leg where it hangs in one; what hangs at a hook has no leg of its
/// own.
BOOST_AUTO_TEST_CASE(what_a_cell_is_called) {
  WeighedPick cell;
  cell.name = QStringLiteral("left");
  BOOST_TEST(wordsFor(cell).toStdString() == "left");
  cell.point = QStringLiteral("L1");
  BOOST_TEST(wordsFor(cell).toStdString() == "left, leg to L1");
  BOOST_TEST(wordsFor(Cell{}).toStdString() == "");
  const Cells hooks(flown().snapshot, flown().option, CellAt::hook);
  BOOST_TEST(!hooks.inLegs());
  BOOST_TEST(hooks.ownWeight(0) == 0.0);
}

BOOST_AUTO_TEST_SUITE_END()
