// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of sheet of unlike shows, on both papers, in both unit systems, read back word by word: what
// somebody in a dark arena must be able to rely on. Kinds of fault that were once seen on printed pages have
// a check each.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <set>
#include <tuple>

#include <QFile>
#include <QJsonArray>
#include <QRegularExpression>

#include "exchange/csv_records.h"
#include "printed_demo.h"

namespace data = boost::unit_test::data;
using namespace hangbook::testing;

namespace {

const QStringList american{QStringLiteral("--units"), QStringLiteral("us"), QStringLiteral("--paper"),
                           QStringLiteral("letter")};

/// The demo with an option chosen for the show outdoors and for the one with bridles too. An option's id is
/// made from names alone, so that it stays.
const Printed& everyKind() {
  static const Printed made;
  static const bool chosen = [] {
    for (const auto& [show, hang, option] :
         {std::tuple{"Lindrake", "left", "c3d6af64"}, std::tuple{"Lindrake", "right", "4959be64"},
          std::tuple{"Brankstead", "left", "7228d0fa"}, std::tuple{"Brankstead", "right", "2cf3382e"}}) {
      const Said said =
          made.say({QStringLiteral("choose"), QStringLiteral("--show"), QString::fromUtf8(show),
                    QStringLiteral("--hang"), QString::fromUtf8(hang), QStringLiteral("--option"),
                    QString::fromUtf8(option), QStringLiteral("--by"), QStringLiteral("Orla Tench")});
      BOOST_REQUIRE_MESSAGE(said.status == 0, said.err.toStdString());
    }
    return true;
  }();
  BOOST_REQUIRE(chosen);
  return made;
}

std::vector<QStringList> recordsOf(const QString& file) {
  QFile csv(file);
  BOOST_REQUIRE(csv.open(QIODevice::ReadOnly));
  std::vector<QStringList> records;
  std::vector<hangbook::exchange::Fault> faults;
  for (const auto& record :
       hangbook::exchange::splitCsv(QString::fromUtf8(csv.readAll()), QLatin1Char(','), faults)) {
    records.push_back(record.cells);
  }
  BOOST_REQUIRE(faults.empty());
  return records;
}

/// Words that the CSV says and no page does: cut through, or pushed off the page.
QStringList missingWords(const std::vector<QStringList>& records, const std::vector<PrintedPage>& pages) {
  std::set<QString> printed;
  for (const PrintedPage& page : pages) {
    for (const PrintedWord& word : page.words) {
      printed.insert(word.text);
    }
  }
  QStringList missing;
  static const QRegularExpression space(QStringLiteral("\\s+"));
  for (const QStringList& record : records) {
    if (record.front() == QLatin1String("printed") || record.front() == QLatin1String("code")) {
      continue;
    }
    for (const QString& cell : record.mid(1)) {
      for (const QString& word : cell.split(space, Qt::SkipEmptyParts)) {
        if (!printed.contains(word) && !missing.contains(word)) {
          missing << word;
        }
      }
    }
  }
  return missing;
}

/// Trim, mark and the sum of the points' loads at rest, as the options' JSON has them.
void agrees(const Printed& demo, const QStringList& cells, const QString& show, const QString& chosen) {
  const QJsonObject options = demo.say({QStringLiteral("options"), QStringLiteral("--show"), show,
                                        QStringLiteral("--hang"), cells[3], QStringLiteral("--json")})
                                  .json();
  for (const QJsonValue& option :
       options[QLatin1String("hangs")].toArray().at(0).toObject()[QLatin1String("options")].toArray()) {
    if (option[QLatin1String("id")].toString() != chosen) {
      continue;
    }
    double sum = 0;
    for (const QJsonValue& point : option[QLatin1String("points")].toArray()) {
      sum += point[QLatin1String("static_kn")].toDouble();
    }
    const QJsonValue setting = option[QLatin1String("setting")];
    BOOST_TEST(cells[6].toStdString() == QStringLiteral("%1 kN").arg(sum, 0, 'f', 2).toStdString());
    BOOST_TEST(
        cells[7].toStdString() ==
        QStringLiteral("%1 m").arg(setting[QLatin1String("trim_m")].toDouble(), 0, 'f', 2).toStdString());
    BOOST_TEST(cells[8].toInt() == setting[QLatin1String("mark")].toInt());
    return;
  }
  BOOST_FAIL("the chosen option is not among the options");
}

} // namespace

BOOST_AUTO_TEST_SUITE(sheets)

BOOST_DATA_TEST_CASE(every_page_is_legible_and_says_where_it_belongs,
                     data::make({"Ostrel", "Vintersund", "Lindrake", "Brankstead", "Ostrel", "Lindrake",
                                 "Pollan Cross", "Vintersund", "Ostrel", "Vintersund"}) ^
                         data::make({"load-sheet", "load-sheet", "load-sheet", "load-sheet", "build-sheet",
                                     "build-sheet", "build-sheet", "prep-list", "prep-list",
                                     "examination-register"}),
                     name, kind) {
  const Printed& demo = everyKind();
  const QString show = QString::fromUtf8(name);
  const QString sheet = QString::fromUtf8(kind);
  const QStringList more =
      show == QLatin1String("Vintersund") || show == QLatin1String("Lindrake") ? american : QStringList();
  const auto pages = printedPages(demo.sheet(sheet, show, more));
  const auto records = recordsOf(demo.sheet(sheet, show, more, ".csv"));
  BOOST_TEST(pages.front().size.width() == (more.isEmpty() ? 595.0 : 612.0),
             boost::test_tools::tolerance(0.01));
  const QStringList missing = missingWords(records, pages);
  BOOST_TEST(missing.isEmpty(), missing.join(QStringLiteral(" | ")).toStdString());
  static const QRegularExpression bare(QStringLiteral("^[+-]?\\d+[.]\\d+$"));
  for (const QStringList& record : records) {
    for (const QString& cell : record) {
      BOOST_CHECK_MESSAGE(!bare.match(cell).hasMatch(), cell.toStdString() << " has no unit");
    }
  }
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const QString text = pages[i].text();
    const QStringList faults = misplacedWords(pages[i], 36);
    BOOST_TEST(faults.isEmpty(), "page " << i + 1 << ": " << faults.join(QStringLiteral("; ")).toStdString());
    BOOST_TEST(text.contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size())));
    BOOST_TEST(text.contains(show));
    // Left and right never without whose; a page of steps never without its hang; no page without a body.
    BOOST_TEST((sheet == QLatin1String("examination-register") ||
                text.contains(QStringLiteral("seen from the stage"))));
    BOOST_TEST((sheet != QLatin1String("build-sheet") || text.contains(QStringLiteral("Hang LEFT")) ||
                text.contains(QStringLiteral("Hang RIGHT")) ||
                (i == 0 && text.contains(QStringLiteral("NOT CLEARED")))));
    BOOST_TEST(pages[i].words.size() > 60U);
    // Nothing reads as a permission.
    static const QRegularExpression permission(
        QStringLiteral("(safe to|may be|can be|ok to|clear to|ready to) (lift|fly|hang|raise)"),
        QRegularExpression::CaseInsensitiveOption);
    BOOST_TEST(!text.contains(permission));
    BOOST_TEST(text.count(QStringLiteral("CLEARED TO LIFT")) ==
               text.count(QStringLiteral("NOT CLEARED TO LIFT")));
    BOOST_TEST((sheet == QLatin1String("examination-register") ||
                text.contains(QStringLiteral("NOT CLEARED")) == (show == QLatin1String("Vintersund"))));
  }
}

BOOST_AUTO_TEST_CASE(the_tour_summary_keeps_a_show_on_one_page_and_agrees_with_the_route) {
  const Printed& demo = Printed::demo();
  const QJsonObject route = demo.say({QStringLiteral("route"), QStringLiteral("--json")}).json();
  const auto records = recordsOf(demo.sheet(QStringLiteral("tour-summary"), {}, {}, ".csv"));
  std::vector<QStringList> rows;
  std::ranges::copy_if(records, std::back_inserter(rows), [](const QStringList& record) {
    return record.front() == QLatin1String("shows") && record.value(3) != QLatin1String("Hang");
  });
  std::size_t row = 0;
  int compared = 0;
  for (const QJsonValue& stop : route[QLatin1String("shows")].toArray()) {
    for (const QJsonValue& hang : stop[QLatin1String("hangs")].toArray()) {
      BOOST_REQUIRE(row < rows.size());
      const QStringList& cells = rows[row++];
      BOOST_TEST(cells[3].toStdString() == hang[QLatin1String("hang")].toString().toStdString());
      const QString chosen = hang[QLatin1String("chosen")].toString();
      BOOST_TEST(cells[7].isEmpty() == chosen.isEmpty());
      BOOST_TEST(cells[4].toStdString() ==
                 (chosen.isEmpty() ? QStringLiteral("not chosen") : hang[QLatin1String("verdict")].toString())
                     .toStdString());
      if (stop[QLatin1String("show")].toString() == QLatin1String("Ostrel")) {
        agrees(demo, cells, QStringLiteral("Ostrel"), chosen);
        ++compared;
      }
    }
  }
  BOOST_TEST(compared == 2);
  BOOST_TEST(row == rows.size());
  for (const QStringList& more : {QStringList(), american}) {
    const auto pages = printedPages(demo.sheet(QStringLiteral("tour-summary"), {}, more));
    const QStringList missing =
        missingWords(recordsOf(demo.sheet(QStringLiteral("tour-summary"), {}, more, ".csv")), pages);
    BOOST_TEST(missing.isEmpty(), missing.join(QStringLiteral(" | ")).toStdString());
    for (const PrintedPage& page : pages) {
      const QStringList faults = misplacedWords(page, 36);
      BOOST_TEST(faults.isEmpty(), faults.join(QStringLiteral("; ")).toStdString());
      // Each show has two hangs in the demo.
      const auto count = [&page](const char* word) {
        return std::ranges::count(page.words, QString::fromUtf8(word), &PrintedWord::text);
      };
      BOOST_TEST(count("left") == count("right"));
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
