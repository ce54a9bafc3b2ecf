// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCoreApplication>

#include "desk/data/record_models.h"
#include "desk/examinations/due_model.h"
#include "desk/fleet/fleet_model.h"
#include "desk/lists/list_page.h"
#include "desk/lists/natural.h"
#include "desk/options/option_list_model.h"
#include "desk/route/load_chart.h"
#include "desk/route/route_model.h"
#include "desk/source/due_lines.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"
#include "fixture_source.h"

using namespace hangbook;
using namespace hangbook::desk;
using hangbook::testing::smallOverview;

namespace {

constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

std::string column(const QAbstractItemModel& model, int which) {
  QStringList texts;
  for (int row = 0; row < model.rowCount(); ++row) {
    texts << model.index(row, which).data().toString();
  }
  return texts.join(QLatin1Char('|')).toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(lists)

BOOST_DATA_TEST_CASE(serials_sort_by_their_numbers,
                     boost::unit_test::data::make({"MB-2", "MB-9", "MB-9a", "a", "A10", ""}) ^
                         boost::unit_test::data::make({"MB-10", "MB-10", "MB-10", "A10", "a011", "0"}),
                     before, after) {
  BOOST_TEST(compareNatural(QLatin1String(before).toString(), QLatin1String(after).toString()) < 0);
  BOOST_TEST(compareNatural(QLatin1String(after).toString(), QLatin1String(before).toString()) > 0);
  BOOST_TEST(compareNatural(QLatin1String(after).toString(), QLatin1String(after).toString()) == 0);
}

BOOST_AUTO_TEST_CASE(fleet_sorts_searches_and_keeps_what_is_not_known_last) {
  FleetModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  model.setFacts(std::make_shared<const Overview>(workedOut(smallOverview())));
  SortFilter proxy;
  const QAbstractItemModelTester proxyTester(&proxy, fatal);
  proxy.setModel(model);
  proxy.sort(static_cast<int>(FleetColumn::serial));
  BOOST_TEST(column(proxy, 0) == "MB-2|MB-9|MB-10|MH-1");
  for (const auto order : {Qt::AscendingOrder, Qt::DescendingOrder}) {
    proxy.sort(static_cast<int>(FleetColumn::weighed), order);
    BOOST_TEST(proxy.index(0, 0).data().toString().toStdString() == "MB-2");
  }
  proxy.sort(static_cast<int>(FleetColumn::serial));
  proxy.setWords(QStringLiteral("marram  QUARANT"));
  BOOST_TEST(column(proxy, 0) == "MB-9");
  proxy.setWords(QStringLiteral("nothing of the kind"));
  BOOST_TEST(proxy.rowCount() == 0);
}

BOOST_AUTO_TEST_CASE(due_list_puts_first_what_has_no_record_then_the_earliest) {
  const Overview overview = smallOverview();
  const auto lines = dueLines(overview);
  BOOST_TEST_REQUIRE(lines.size() == 4u);
  BOOST_TEST(lines[2].due.serial.toStdString() == "MB-2");
  BOOST_TEST((lines[3].due.due == QDate(2027, 4, 30)));
  BOOST_TEST(bestInWords(lines[3]).toStdString() == "warehouse by 2027-04-30");
  DueModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  model.setFacts(std::make_shared<const Overview>(workedOut(overview)));
  BOOST_TEST(column(model, static_cast<int>(DueColumn::state)) ==
             "none recorded|none recorded|overdue|due soon");
}

BOOST_AUTO_TEST_CASE(route_shows_the_worst_of_what_was_chosen) {
  Overview overview = smallOverview();
  options::Choice choice;
  choice.tour = QStringLiteral("Test tour");
  choice.show = QStringLiteral("Oxmere night");
  choice.hang = QStringLiteral("left");
  choice.verdict = options::Verdict::holds;
  choice.points = {{QStringLiteral("P1"), 3.0, 3.5, 5.0, {}, 0.0, {}, {}},
                   {QStringLiteral("P2"), 4.0, 4.5, 5.0, {}, 0.0, {}, {}}};
  choice.key.stack = {QStringLiteral("Marram bass"), QStringLiteral("Marram bass")};
  overview.choices.push_back(choice);
  choice.hang = QStringLiteral("right");
  choice.verdict = options::Verdict::unproven;
  overview.choices.push_back(choice);
  for (venue::Venue& each : overview.venues) { // a tenth of a degree apart on the equator
    each.latitude = 0.0;
    each.longitude = each.name == overview.shows[0].venue ? 7.0 : 7.1;
  }
  const auto stops = stopsOf(overview);
  BOOST_TEST_REQUIRE(stops.size() == 2u);
  BOOST_TEST((stops[0].verdict == options::Verdict::unproven));
  BOOST_TEST(stops[0].heaviestPoint.toStdString() == "P2");
  BOOST_TEST(stops[0].stacks.toStdString() == "left, right: 2 bass");
  BOOST_TEST((!stops[1].verdict.has_value()));
  BOOST_TEST((stops[0].heaviestCapacityKn == 5.0));
  BOOST_TEST(describeLoads(stops, Figures()).toStdString() ==
             "Oxmere night: point P2 carries 4.00 kN of 5.00 kN.");
  BOOST_TEST(!describeLoads({}, Figures()).isEmpty());
  BOOST_TEST((stops[1].daysBefore == 2));
  RouteModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  model.setRows(stops);
  BOOST_TEST(column(model, static_cast<int>(RouteColumn::verdict)) == "unproven|not chosen");
  model.setFigures(Figures(UnitSystem::usCustomary));
  BOOST_TEST(column(model, static_cast<int>(RouteColumn::heaviest)) == "899 lbf|–");
  BOOST_TEST(column(model, static_cast<int>(RouteColumn::way)) == "–|7 mi");
  model.setFigures(Figures());
  BOOST_TEST(column(model, static_cast<int>(RouteColumn::way)) == "–|11 km");
}

BOOST_AUTO_TEST_CASE(a_window_of_trim_is_told_inside_its_ends) {
  const Figures metric;
  BOOST_TEST(windowText(5.671, 5.714, metric).toStdString() == "5.68–5.71");
  BOOST_TEST(windowText(5.57, 5.57, metric).toStdString() == "5.57");
  BOOST_TEST(windowText(5.5711, 5.5744, metric).toStdString() == "5.572–5.574"); // no hundredth lies in it
  const Figures customary(UnitSystem::usCustomary, metric.names());
  BOOST_TEST(windowText(4.695, 5.517, customary).toStdString() == "15.5–18.1");
  for (int i = 0; i < 400; ++i) {
    const double low = 3.0 + 0.01237 * i;
    const double high = low + 0.0007 * (i % 40) + 0.0002;
    for (const auto& [figures, unit] : {std::pair{metric, 1.0}, std::pair{customary, 0.3048}}) {
      for (const QString& each : windowText(low, high, figures).split(QStringLiteral("–"))) {
        BOOST_TEST(each.toDouble() * unit >= low - 1e-6);
        BOOST_TEST(each.toDouble() * unit <= high + 1e-6);
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_long_tour_is_drawn_around_the_stop_that_is_looked_at) {
  std::vector<Stop> stops(100);
  for (std::size_t i = 0; i < stops.size(); ++i) {
    stops[i].show.tour = QStringLiteral("Parade");
    stops[i].show.name = QString::number(i);
  }
  const auto firstAround = [&](const char* show) {
    const auto shown = stopsAround(stops, {QStringLiteral("Parade"), QString::fromLatin1(show)});
    BOOST_TEST(shown.size() == mostBars);
    return shown.front().show.name.toStdString();
  };
  BOOST_TEST(firstAround("50") == "45");
  BOOST_TEST(firstAround("5") == "0");
  BOOST_TEST(firstAround("6") == "1");
  BOOST_TEST(firstAround("0") == "0");
  BOOST_TEST(firstAround("94") == "89");
  BOOST_TEST(firstAround("99") == "89");
  BOOST_TEST(firstAround("none of them") == "89");
  stops.resize(mostBars);
  BOOST_TEST(stopsAround(stops, {}).size() == mostBars);
}

BOOST_AUTO_TEST_CASE(records_tell_what_is_not_known) {
  const auto records = recordsOf(smallOverview());
  RecordModel model;
  const QAbstractItemModelTester tester(&model, fatal);
  model.setRows(records);
  FigureModel figures;
  const QAbstractItemModelTester figureTester(&figures, fatal);
  for (const RecordLine& each : records) {
    figures.setRows(each.figures);
    if (each.kind == RecordKind::cabinet) {
      BOOST_TEST(each.unknown() > 0);
      BOOST_TEST(column(figures, static_cast<int>(FigureColumn::value)).find("92.0 kg") != std::string::npos);
      BOOST_TEST(column(figures, static_cast<int>(FigureColumn::value)).find("not known") !=
                 std::string::npos);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_stack_reads_as_crew_say_it) {
  const auto catalogue = smallOverview().catalogue;
  const QString bass = QStringLiteral("Marram bass");
  const QString upper = QStringLiteral("Marram upper");
  const QString down = QStringLiteral("Marram downfill");
  BOOST_TEST(stackText({bass, bass, bass, upper, down}, catalogue).toStdString() ==
             "3 bass · 1 upper · downfill");
  BOOST_TEST(stackText({bass, upper, bass}, catalogue).toStdString() == "1 bass · 1 upper · 1 bass");
  BOOST_TEST(stackText({QStringLiteral("unheard of")}, catalogue).toStdString() == "1 unheard of");
  BOOST_TEST(stackText({}, catalogue).isEmpty());
}

BOOST_AUTO_TEST_CASE(columns_share_what_is_over_and_keep_their_least_width) {
  FleetModel model;
  model.setFacts(std::make_shared<const Overview>(workedOut(smallOverview())));
  ListPage page(QStringLiteral("fitList"), QStringLiteral("Units"), model,
                static_cast<int>(FleetColumn::owner), 0, Qt::AscendingOrder);
  const auto widths = [&](int width) {
    page.resize(width, 300);
    page.show();
    QCoreApplication::processEvents();
    std::vector<int> all;
    for (int column = 0; column < model.columnCount(); ++column) {
      all.push_back(page.table().columnWidth(column));
    }
    return all;
  };
  const auto narrow = widths(300);
  const auto wide = widths(1600);
  int sum = 0;
  for (std::size_t i = 0; i < wide.size(); ++i) {
    BOOST_TEST(wide[i] >= narrow[i]);
    sum += wide[i];
  }
  BOOST_TEST(sum == page.table().viewport()->width());
  BOOST_TEST(widths(300) == narrow, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(an_empty_list_says_why) {
  FleetModel model;
  ListPage page(QStringLiteral("testList"), QStringLiteral("Units"), model, 0, 0, Qt::AscendingOrder);
  page.setEmptyTexts(QStringLiteral("none at all"), QStringLiteral("none fits"));
  auto* empty = page.findChild<QWidget*>(QStringLiteral("testListEmpty"));
  BOOST_TEST_REQUIRE(empty != nullptr);
  BOOST_TEST(empty->property("text").toString().toStdString() == "none at all");
  model.setFacts(std::make_shared<const Overview>(workedOut(smallOverview())));
  BOOST_TEST(empty->isHidden());
  page.proxy().setWords(QStringLiteral("xyzzy"));
  BOOST_TEST(!empty->isHidden());
  BOOST_TEST(empty->property("text").toString().toStdString() == "none fits");
}

/// A serial is what a thing is known by: of a house with 100,000 of them it is read whole in the smallest
/// window.
BOOST_AUTO_TEST_CASE(a_serial_is_read_whole) {
  QFont bold(QApplication::font());
  bold.setBold(true);
  const int needed = QFontMetrics(bold).horizontalAdvance(QStringLiteral("SN-000281"));
  const int character = QFontMetrics(QApplication::font()).averageCharWidth();
  BOOST_TEST(FleetModel().heading(static_cast<int>(FleetColumn::serial)).characters * character >= needed);
  BOOST_TEST(DueModel().heading(static_cast<int>(DueColumn::serial)).characters * character >= needed);
}

BOOST_AUTO_TEST_SUITE_END()
