// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets that are longer, wider and fuller than any that the demo prints, read back from the PDF word by
// word.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "reports/figures.h"
#include "reports/pdf.h"
#include "support/printed_page.h"

using namespace hangbook;
using namespace hangbook::reports;
using namespace hangbook::testing;
namespace data = boost::unit_test::data;

namespace {

constexpr double margin = 36; // points; the frame keeps 40 and its heavy bars stand in the margin

std::vector<PrintedPage> printed(const Sheet& sheet, Paper paper) {
  const QTemporaryDir folder;
  const QString name = folder.filePath(QStringLiteral("sheet.pdf"));
  QFile file(name);
  BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(pdfOf(sheet,
                   {QStringLiteral("0.0"), QDateTime::currentDateTimeUtc(), QStringLiteral("01234567"),
                    QStringLiteral("HANGBOOK1|a|b|c|d|e|f")},
                   paper));
  file.close();
  return printedPages(name);
}

Sheet named(const QString& show) {
  Sheet sheet;
  sheet.kind = QStringLiteral("load-sheet");
  sheet.title = QStringLiteral("Load sheet");
  sheet.show = show;
  sheet.about = {QStringLiteral("A hall"), QStringLiteral("A tour")};
  sheet.revision = QStringLiteral("show r1");
  sheet.sides = QStringLiteral("Left and right: as seen from the stage.");
  return sheet;
}

void allInPlace(const std::vector<PrintedPage>& pages) {
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const QStringList faults = misplacedWords(pages[i], margin);
    BOOST_TEST(faults.isEmpty(), "page " << i + 1 << ": " << faults.join(QStringLiteral("; ")).toStdString());
    BOOST_TEST(pages[i].text().contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())));
    BOOST_TEST(!pages[i].words.empty());
  }
}

bool hasWord(const std::vector<PrintedPage>& pages, const QString& word) {
  return std::ranges::any_of(pages, [&](const PrintedPage& page) {
    return std::ranges::any_of(page.words, [&](const PrintedWord& each) { return each.text == word; });
  });
}

} // namespace

BOOST_AUTO_TEST_SUITE(sheet_pages)

BOOST_DATA_TEST_CASE(long_names_push_the_body_down, data::make({false, true}), american) {
  const Paper paper = american ? Paper::letter : Paper::a4;
  Sheet sheet =
      named(QStringLiteral("The very long name of a show that nobody would ever abbreviate ").repeated(3));
  sheet.about = {QStringLiteral("A hall whose name goes on and on, as some halls' names do ").repeated(4),
                 QStringLiteral("A tour that is named after everything that was on it ").repeated(4)};
  for (int i = 0; i < 14; ++i) {
    sheet.revision += QStringLiteral(", hang number %1 r%1").arg(i);
  }
  sheet.notCleared = {QStringLiteral("a reason")};
  sheet.blocks.emplace_back(Text{Text::Size::body, QStringLiteral("first line of the body")});
  sheet.blocks.emplace_back(NewPage{});
  sheet.blocks.emplace_back(Text{Text::Size::body, QStringLiteral("second page")});
  const auto pages = printed(sheet, paper);
  BOOST_TEST(pages.size() == 2U);
  allInPlace(pages);
}

BOOST_AUTO_TEST_CASE(reasons_that_fill_more_than_a_page_are_all_read) {
  Sheet sheet = named(QStringLiteral("A show"));
  for (int i = 1; i <= 60; ++i) {
    sheet.notCleared << QStringLiteral(
                            "Reason R%1: the venue's sheet states no capacity for it, and the sum of what "
                            "other departments hang there is not known.")
                            .arg(i);
  }
  const auto pages = printed(sheet, Paper::letter);
  allInPlace(pages);
  for (int i = 1; i <= 60; ++i) {
    BOOST_TEST(hasWord(pages, QStringLiteral("R%1:").arg(i)), i);
  }
  for (const PrintedPage& page : pages) {
    BOOST_TEST(page.text().contains(QStringLiteral("NOT CLEARED TO LIFT")));
  }
}

BOOST_AUTO_TEST_CASE(a_table_names_itself_on_each_page_and_is_not_torn_without_need) {
  Sheet sheet = named(QStringLiteral("A show"));
  Table table;
  table.title = QStringLiteral("Hang LEFT, up");
  table.columns = {{QStringLiteral("No."), 0.5, true}, {QStringLiteral("Step"), 6, false}};
  for (int i = 1; i <= 80; ++i) {
    table.rows.push_back({{QString::number(i), QStringLiteral("step")}, false, i % 9 == 0, false});
  }
  sheet.blocks.emplace_back(table);
  Table small = table;
  small.title = QStringLiteral("SMALL");
  small.rows.resize(6);
  for (int i = 0; i < 4; ++i) {
    sheet.blocks.emplace_back(small);
  }
  const auto pages = printed(sheet, Paper::a4);
  allInPlace(pages);
  int smalls = 0;
  for (const PrintedPage& page : pages) {
    BOOST_TEST(
        (page.text().contains(QStringLiteral("LEFT")) || page.text().contains(QStringLiteral("SMALL"))));
    BOOST_TEST(!page.text().contains(QStringLiteral("SMALL, continued")));
    smalls += static_cast<int>(page.text().count(QStringLiteral("SMALL")));
  }
  BOOST_TEST(smalls == 4);
  BOOST_TEST(pages[1].text().contains(QStringLiteral("Hang LEFT, up, continued")));
}

BOOST_AUTO_TEST_CASE(words_and_figures_are_not_broken_where_there_is_room) {
  Sheet sheet = named(QStringLiteral("A show"));
  Table table;
  table.columns = {{QStringLiteral("Hang"), 0.1, false},
                   {QStringLiteral("Verdict"), 0.1, false},
                   {QStringLiteral("Stack"), 8, false},
                   {QStringLiteral("At rest"), 0.1, true}};
  table.rows.push_back({{QStringLiteral("right"), QStringLiteral("unproven"),
                         QStringLiteral("2 × Bass, ").repeated(40), QStringLiteral("1234.56 kN")},
                        true,
                        false,
                        true});
  sheet.blocks.emplace_back(table);
  const auto pages = printed(sheet, Paper::letter);
  allInPlace(pages);
  BOOST_TEST(hasWord(pages, QStringLiteral("right")));
  BOOST_TEST(hasWord(pages, QStringLiteral("unproven")));
  double figure = 0;
  double unit = -1;
  for (const PrintedWord& word : pages.front().words) {
    figure = word.text == QStringLiteral("1234.56") ? word.box.top() : figure;
    unit = word.text == QStringLiteral("kN") ? word.box.top() : unit;
  }
  BOOST_TEST(figure == unit, "a figure is torn from its unit");
}

BOOST_AUTO_TEST_CASE(a_chart_of_many_bars_and_long_names_goes_on_over_pages) {
  Sheet sheet = named(QStringLiteral("A tour"));
  Chart chart{QStringLiteral("Loads"), {}};
  for (int i = 1; i <= 70; ++i) {
    chart.bars.push_back({QStringLiteral("Town number N%1 with a name that takes two lines of it").arg(i),
                          static_cast<double>(i), QStringLiteral("%1.00 kN").arg(i)});
  }
  sheet.blocks.emplace_back(chart);
  const auto pages = printed(sheet, Paper::a4);
  allInPlace(pages);
  for (int i = 1; i <= 70; ++i) {
    BOOST_TEST(hasWord(pages, QStringLiteral("N%1").arg(i)), i);
  }
}

BOOST_AUTO_TEST_CASE(notes_of_a_drawing_keep_to_their_room) {
  Sheet sheet = named(QStringLiteral("A show"));
  Drawing drawing;
  drawing.caption =
      QStringLiteral("A caption that takes more than one line because it says a lot about what it shows ")
          .repeated(2);
  drawing.strokes.push_back({{{0, 0}, {0.5, 6}}, false, true, false});
  drawing.notes.push_back({{-0.2, 3}, QStringLiteral("up to L1 at 13.80 m, ").repeated(8), true, false});
  drawing.notes.push_back({{0.7, 3}, QStringLiteral("1 Marram upper at -3.0° "), false, false});
  for (int i = 0; i < 3; ++i) {
    drawing.notes.push_back({{0.1 * i, 6}, QStringLiteral("Point%1").arg(i), false, true, true});
  }
  Drawing::Note below{{0, 0}, QStringLiteral("stage right"), false, true};
  below.below = true;
  drawing.notes.push_back(below);
  drawing.height = 180;
  sheet.blocks.emplace_back(drawing);
  sheet.blocks.emplace_back(Text{Text::Size::body, QStringLiteral("what follows it")});
  allInPlace(printed(sheet, Paper::letter));
}

BOOST_AUTO_TEST_CASE(a_tape_reads_feet_and_inches) {
  const Figures metric;
  const Figures american(UnitSystem::usCustomary);
  BOOST_TEST(metric.tape(5.39) == QStringLiteral("5.39 m"));
  // 12 ft 6 in = 150 in = 3.81 m exactly, the inch being 25.4 mm (international yard and pound, 1959).
  BOOST_TEST(american.tape(3.81) == QStringLiteral("12.50 ft (12 ft 6 in)"));
  BOOST_TEST(american.tape(3.81 + 0.0254 / 2) == QStringLiteral("12.54 ft (12 ft 6 1/2 in)"));
  BOOST_TEST(american.tape(0.3048 * 2 - 0.0254 * 3 / 8) == QStringLiteral("1.97 ft (1 ft 11 5/8 in)"));
  BOOST_TEST(american.tape(0.3048 * 2 - 0.0001) == QStringLiteral("2.00 ft (2 ft 0 in)")); // no 1 ft 12 in
  BOOST_TEST(american.tape(std::nullopt) == notKnown());
}

BOOST_AUTO_TEST_SUITE_END()
