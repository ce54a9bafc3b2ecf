// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <limits>
#include <map>
#include <string>

#include "options/house_figures.h"

using namespace hangbook;
using namespace hangbook::options;

namespace {

std::vector<venue::HouseFigure> states(const char* id, double value, const char* unit = "") {
  return {{QString::fromUtf8(id), value, QString::fromUtf8(unit), QStringLiteral("agreed"),
           QStringLiteral("Edda"), QDate(2027, 3, 1)}};
}

} // namespace

BOOST_AUTO_TEST_SUITE(house_figures)

BOOST_AUTO_TEST_CASE(kinds_are_in_order_with_a_source_each) {
  const auto kinds = houseFigureKinds();
  BOOST_REQUIRE(!kinds.empty());
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    BOOST_TEST(!kinds[i].what.isEmpty());
    BOOST_TEST(!kinds[i].source.isEmpty(), kinds[i].id.toStdString());
    if (i > 0) {
      BOOST_TEST((kinds[i - 1].id < kinds[i].id), kinds[i].id.toStdString());
    }
  }
}

BOOST_AUTO_TEST_CASE(without_a_statement_the_usual_value_and_its_source) {
  const House house({}, {}, {});
  BOOST_TEST(house.figure("people-beneath-hoist").value.value() == 0.5);
  BOOST_TEST(house.figure("people-beneath-hoist").source.contains("DGUV"));
  BOOST_TEST(!house.figure("dynamic-factor").value.has_value());
}

/// Every figure that has a usual value, with it; metres, degrees and per cent as they are typed.
BOOST_AUTO_TEST_CASE(the_usual_values) {
  const std::map<std::string, double> usual{{"angle-margin", 0.5},
                                            {"bar-met-height", 0.5},
                                            {"bridle-angle-least", 30.0},
                                            {"bridle-angle-preferred", 45.0},
                                            {"bridle-tolerance", 0.1},
                                            {"cart-clearance", 0.08},
                                            {"centre-doubt", 0.01},
                                            {"chain-tail", 0.0},
                                            {"chain-wear", 0.5},
                                            {"cover-margin", 0.5},
                                            {"cover-share", 100.0},
                                            {"examination-margin", 7.0},
                                            {"examine-cabinets", 1.0},
                                            {"hardware-by-serial", 0.0},
                                            {"headroom-clearance", 0.1},
                                            {"headroom-margin", 0.1},
                                            {"hoist-difference", 0.01},
                                            {"joint-open-most", 0.0},
                                            {"lean-most", 5.0},
                                            {"least-trim", 2.5},
                                            {"length-doubt", 0.0012},
                                            {"lift-height-margin", 0.5},
                                            {"lift-share", 1.0},
                                            {"mass-doubt", 2.0},
                                            {"people-beneath-accessory", 0.5},
                                            {"people-beneath-hoist", 0.5},
                                            {"pick-share-least", 10.0},
                                            {"pitch-doubt", 0.3},
                                            {"scale-doubt", 0.5},
                                            {"scale-tolerance", 5.0},
                                            {"secondary-drop", 0.0},
                                            {"secondary-factor", 2.0},
                                            {"side-difference", 25.0},
                                            {"spare-bars", 0.0},
                                            {"spare-cabinets", 0.0},
                                            {"spare-chains", 0.0},
                                            {"spare-hoists", 0.0},
                                            {"swing-clearance", 0.5},
                                            {"trim-margin", 0.05},
                                            {"wind-first-action", 60.0},
                                            {"wind-force-coefficient", 2.1},
                                            {"wind-second-action", 80.0},
                                            {"working-coefficients", 1.0}};
  std::map<std::string, double> found;
  for (const HouseFigureKind& kind : houseFigureKinds()) {
    if (kind.usual) {
      found[kind.id.toStdString()] = *kind.usual;
    }
  }
  BOOST_TEST(found.size() == usual.size());
  for (const auto& [id, value] : usual) {
    BOOST_TEST_INFO(id);
    BOOST_TEST_REQUIRE(found.contains(id));
    BOOST_TEST(found.at(id) == value);
  }
}

BOOST_AUTO_TEST_CASE(free_figures_take_the_one_nearest_to_the_show) {
  const auto tour = states("cover-share", 90, "%");
  const auto venue = states("cover-share", 99, "%");
  const auto show = states("cover-share", 95, "%");
  BOOST_TEST(House(tour, venue, show).figure("cover-share").value.value() == 95);
  BOOST_TEST(House(tour, venue, {}).figure("cover-share").value.value() == 99);
  BOOST_TEST(House(tour, {}, {}).figure("cover-share").value.value() == 90);
  BOOST_TEST((House(tour, venue, show).figure("cover-share").source ==
              "house rule of the show: agreed (Edda, 2027-03-01)"));
}

BOOST_AUTO_TEST_CASE(figures_of_law_and_makers_are_only_tightened) {
  const auto looser = states("people-beneath-hoist", 1.0);
  const auto stricter = states("people-beneath-hoist", 0.25);
  BOOST_TEST(House({}, {}, looser).figure("people-beneath-hoist").value.value() == 0.5);
  BOOST_TEST(House(stricter, {}, looser).figure("people-beneath-hoist").value.value() == 0.25);
  BOOST_TEST(House({}, {}, states("lift-share", 1.2)).figure("lift-share").value.value() == 1.2);
  BOOST_TEST(House({}, {}, states("lift-share", 0.9)).figure("lift-share").value.value() == 1.0);
  // No usual value: the strictest of those stated.
  BOOST_TEST(House(states("dynamic-factor", 1.3), {}, states("dynamic-factor", 1.1))
                 .figure("dynamic-factor")
                 .value.value() == 1.3);
}

BOOST_AUTO_TEST_CASE(a_statement_that_cannot_be_read_is_not_known_rather_than_usual) {
  const House wrongUnit({}, {}, states("least-trim", 8, "ft"));
  BOOST_TEST(!wrongUnit.figure("least-trim").value.has_value());
  BOOST_TEST(wrongUnit.figure("least-trim").source.contains("ft"));
  const House noNumber(states("lift-share", std::numeric_limits<double>::quiet_NaN()), {}, {});
  BOOST_TEST(!noNumber.figure("lift-share").value.has_value());
  // Fewer spares than none, or a clearance into the steel, would let through what the rules are there to
  // stop.
  for (const HouseFigureKind& kind : houseFigureKinds()) {
    const House below({}, {}, states(kind.id.toUtf8().constData(), -0.5));
    BOOST_TEST(!below.figure(kind.id).value.has_value(), kind.id.toStdString());
    BOOST_TEST(below.figure(kind.id).source.contains("below 0"), kind.id.toStdString());
  }
  BOOST_TEST(!House({}, {}, {}).figure("no-such").value.has_value());
}

/// One that may move either way is put right by a signed one nearer to the show; of one that only tightens
/// the fault might have been the strictest, so that nothing is known of it.
BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_put_right_where_the_figure_is_free) {
  const auto faulty = [](const char* id) { return states(id, -1.0); };
  BOOST_TEST(
      House(faulty("cover-share"), {}, states("cover-share", 95)).figure("cover-share").value.value() == 95);
  BOOST_TEST(!House(faulty("people-beneath-hoist"), {}, states("people-beneath-hoist", 0.25))
                  .figure("people-beneath-hoist")
                  .value.has_value());
}

BOOST_AUTO_TEST_CASE(of_two_statements_of_one_list_the_newer_signature_counts) {
  auto show = states("spare-hoists", 2);
  show.push_back(show.front());
  show.front().value = 1;
  show.front().signedOn = QDate(2027, 4, 1);
  BOOST_TEST(House({}, {}, show).figure("spare-hoists").value.value() == 1);
}

namespace {

std::vector<venue::HouseFigure> unsignedly(const char* id, double value, const char* unit = "") {
  auto figures = states(id, value, unit);
  figures.front().signedBy.clear();
  return figures;
}

} // namespace

BOOST_AUTO_TEST_CASE(what_nobody_signed_only_tightens) {
  const auto value = [](const House& house, const char* id) { return house.figure(id).value.value(); };
  BOOST_TEST(value(House({}, {}, unsignedly("cover-share", 90, "%")), "cover-share") == 100);
  BOOST_TEST(value(House({}, {}, unsignedly("least-trim", 2, "m")), "least-trim") == 2.5);
  BOOST_TEST(value(House({}, {}, unsignedly("least-trim", 4, "m")), "least-trim") == 4);
  BOOST_TEST(
      value(House(states("least-trim", 3, "m"), {}, unsignedly("least-trim", 2.8, "m")), "least-trim") == 3);
  BOOST_TEST(value(House({}, {}, unsignedly("working-coefficients", 2)), "working-coefficients") == 1);
  BOOST_TEST(
      House({}, {}, unsignedly("least-trim", 4, "m")).figure("least-trim").source.contains("not signed"));
  // A later one without a signature does not push a signed one of the same list aside.
  auto show = states("least-trim", 5, "m");
  show.push_back(unsignedly("least-trim", 3, "m").front());
  BOOST_TEST(value(House({}, {}, show), "least-trim") == 5);
  // Without a usual value there is nothing that it could tighten.
  BOOST_TEST(House({}, {}, unsignedly("joint-side-share", 0.6)).figure("joint-side-share").unsignedAlone);
  BOOST_TEST(!House(states("joint-side-share", 0.6), {}, unsignedly("joint-side-share", 0.7))
                  .figure("joint-side-share")
                  .unsignedAlone);
}

/// Two that nobody signed prove no more than one: the stricter stands, by itself. A signature under the less
/// strict one is somebody who answers for no less than that.
BOOST_AUTO_TEST_CASE(of_two_that_nobody_signed_the_stricter_still_stands_alone) {
  const auto unsignedly = [](double value) {
    return std::vector<venue::HouseFigure>{
        {QStringLiteral("dynamic-factor"), value, QString(), QStringLiteral("agreed"), QString(), QDate()}};
  };
  const HouseValue two = House(unsignedly(1.3), {}, unsignedly(1.1)).figure("dynamic-factor");
  BOOST_TEST(two.value.value() == 1.3);
  BOOST_TEST(two.unsignedAlone);
  const HouseValue answered =
      House(unsignedly(1.3), {}, states("dynamic-factor", 1.1)).figure("dynamic-factor");
  BOOST_TEST(answered.value.value() == 1.3);
  BOOST_TEST(!answered.unsignedAlone);
}

BOOST_AUTO_TEST_CASE(a_finding_says_which_rule_came_from_where) {
  const House house(states("trim-margin", 0.1, "m"), states("least-trim", 4, "m"), {});
  const QString sources = house.sourcesOf("lowest-edge", {});
  BOOST_TEST((sources == "least-trim 4: house rule of the venue: agreed (Edda, 2027-03-01); "
                         "trim-margin 0.1: house rule of the tour: agreed (Edda, 2027-03-01)"));
  BOOST_TEST(house.sourcesOf("headroom", {}).isEmpty());
  BOOST_TEST(!house.sourcesOf("lowest-edge", "house rule of the venue: agreed (Edda, 2027-03-01)")
                  .contains("least-trim"));
}

BOOST_AUTO_TEST_SUITE_END()
