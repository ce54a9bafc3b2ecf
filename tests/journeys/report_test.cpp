// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets as somebody prints them: the text of the PDF agrees with the figures of the JSON, the code on it
// reads back.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QJsonArray>
#include <QRegularExpression>

#include "printed_demo.h"

namespace data = boost::unit_test::data;
using namespace hangbook::testing;

namespace {

QString shown(double value, const char* unit) {
  return QStringLiteral("%1 %2").arg(value, 0, 'f', 2).arg(QString::fromUtf8(unit));
}

} // namespace

BOOST_AUTO_TEST_SUITE(report)

BOOST_DATA_TEST_CASE(the_load_sheet_says_what_the_options_say,
                     data::make({"Ostrel", "Pollan Cross", "Vintersund"}), name) {
  const Printed& demo = Printed::demo();
  const QString show = QString::fromUtf8(name);
  const QString text = Printed::text(demo.sheet(QStringLiteral("load-sheet"), show));
  const QJsonObject route = demo.say({QStringLiteral("route"), QStringLiteral("--json")}).json();
  const QJsonObject options =
      demo.say({QStringLiteral("options"), QStringLiteral("--show"), show, QStringLiteral("--json")}).json();
  int checked = 0;
  for (const QJsonValue& stop : route[QLatin1String("shows")].toArray()) {
    for (const QJsonValue& chosen : stop[QLatin1String("hangs")].toArray()) {
      for (const QJsonValue& hang : options[QLatin1String("hangs")].toArray()) {
        for (const QJsonValue& option : hang[QLatin1String("options")].toArray()) {
          if (stop[QLatin1String("show")].toString() != show ||
              option[QLatin1String("id")] != chosen[QLatin1String("chosen")]) {
            continue;
          }
          for (const QJsonValue& point : option[QLatin1String("points")].toArray()) {
            QString line = point[QLatin1String("point")].toString() + QStringLiteral(" ");
            for (const char* key : {"static_kn", "worst_static_kn", "dynamic_kn", "worst_dynamic_kn"}) {
              const QJsonValue load = point[QLatin1String(key)];
              BOOST_REQUIRE_MESSAGE(load.isDouble(), key);
              line += QStringLiteral(".*") + QRegularExpression::escape(shown(load.toDouble(), "kN"));
            }
            BOOST_TEST(point[QLatin1String("worst_dynamic_kn")].toDouble() >
                       point[QLatin1String("dynamic_kn")].toDouble());
            BOOST_TEST(text.contains(QRegularExpression(line)), line.toStdString());
            ++checked;
          }
        }
      }
    }
  }
  BOOST_TEST(checked == 4);
  BOOST_TEST(text.contains(QStringLiteral("NOT CLEARED TO LIFT")) == (show == QLatin1String("Vintersund")));
  BOOST_TEST(text.contains(QStringLiteral("seen from the stage")));
  BOOST_TEST(text.contains(QStringLiteral("page 1 of ")));
}

BOOST_AUTO_TEST_CASE(the_build_sheet_says_what_build_says) {
  const Printed& demo = Printed::demo();
  const QString text = Printed::text(demo.sheet(QStringLiteral("build-sheet"), QStringLiteral("Ostrel")));
  const QJsonObject plan = demo.say({QStringLiteral("build"), QStringLiteral("--show"),
                                     QStringLiteral("Ostrel"), QStringLiteral("--json")})
                               .json();
  int checked = 0;
  for (const QJsonValue& step : plan[QLatin1String("steps")].toArray()) {
    if (!step[QLatin1String("hooks_m")].isDouble()) {
      continue;
    }
    // The step's number and, on its first line, where it leaves the hooks.
    const QString line = QStringLiteral("(^|\\n) *%1 .*").arg(step[QLatin1String("number")].toInt()) +
                         QRegularExpression::escape(shown(step[QLatin1String("hooks_m")].toDouble(), "m"));
    BOOST_TEST(text.contains(QRegularExpression(line)), line.toStdString());
    ++checked;
  }
  BOOST_TEST(checked > 20);
  const QJsonObject marks = demo.say({QStringLiteral("mark"), QStringLiteral("--show"),
                                      QStringLiteral("Ostrel"), QStringLiteral("--json")})
                                .json();
  for (const QJsonValue& hang : marks[QLatin1String("hangs")].toArray()) {
    BOOST_TEST(text.contains(QString::number(hang[QLatin1String("mark")].toInt())));
  }
  BOOST_TEST(text.count(QStringLiteral("HOLD POINT")) == 2 * 8);
}

BOOST_AUTO_TEST_CASE(cabling_on_the_sheets_is_what_the_data_state) {
  const Printed& demo = Printed::demo();
  const auto planOf = [&demo](const char* show) {
    return demo
        .say({QStringLiteral("build"), QStringLiteral("--show"), QString::fromUtf8(show),
              QStringLiteral("--json")})
        .json();
  };
  const auto flat = [&demo](const char* kind, const char* show) {
    QStringList pages;
    for (const PrintedPage& page :
         printedPages(demo.sheet(QString::fromUtf8(kind), QString::fromUtf8(show)))) {
      pages << page.text();
    }
    return pages.join(QLatin1Char(' '));
  };
  const QString sheet = flat("build-sheet", "Ostrel");
  int plugged = 0;
  for (const QJsonValue& step : planOf("Ostrel")[QLatin1String("steps")].toArray()) {
    const QString what = step[QLatin1String("what")].toString();
    for (const QJsonValue& plug : step[QLatin1String("plugs")].toArray()) {
      const auto word = [&plug](const char* key) { return plug[QLatin1String(key)].toString(); };
      const QString called =
          QStringLiteral("socket %1: %2 “%3”, end %4, connector %5, colour %6, reach %7 m, "
                         "rack %8, channel %9;")
              .arg(word("socket"), word("loom"), word("label"), word("end"), word("connector"),
                   word("colour"), QString::number(plug[QLatin1String("reach_m")].toDouble(), 'f', 2),
                   word("rack"), word("channel"));
      BOOST_TEST(what.contains(called), what.toStdString() << " / " << called.toStdString());
      BOOST_TEST(sheet.contains(called), called.toStdString());
      ++plugged;
    }
  }
  BOOST_TEST(plugged == 10);
  BOOST_TEST(!sheet.contains(QStringLiteral("channel not stated")));
  const QString prep = flat("prep-list", "Ostrel");
  BOOST_TEST(prep.contains(QStringLiteral("Marram loom 25 “left 1” 25.00 m left A, B, C, D, F")),
             prep.toStdString());

  // Nothing is stated for this one: each plug step says so, none is filled in.
  const QString bare = flat("build-sheet", "Eskerholt");
  int plugs = 0;
  for (const QJsonValue& step : planOf("Eskerholt")[QLatin1String("steps")].toArray()) {
    plugs += step[QLatin1String("kind")].toString() == QLatin1String("plug") ? 1 : 0;
    BOOST_TEST(step[QLatin1String("plugs")].toArray().isEmpty());
  }
  BOOST_TEST(plugs > 0);
  BOOST_TEST(bare.count(QStringLiteral(
                 "loom, connector, colour and channel not stated: follow the maker's data")) == plugs);
  BOOST_TEST(flat("prep-list", "Eskerholt").contains(QStringLiteral("Looms are not stated")));
}

BOOST_AUTO_TEST_CASE(the_code_on_a_sheet_reads_back_and_tells_whether_it_is_current) {
  const QTemporaryDir folder;
  Printed demo; // of its own: it is changed
  const QString pdf = demo.sheet(QStringLiteral("load-sheet"), QStringLiteral("Ostrel"));
  runTool(QStringLiteral("pdftoppm"),
          {QStringLiteral("-r"), QStringLiteral("200"), QStringLiteral("-gray"), QStringLiteral("-png"),
           QStringLiteral("-f"), QStringLiteral("1"), QStringLiteral("-l"), QStringLiteral("1"),
           QStringLiteral("-singlefile"), pdf, folder.filePath(QStringLiteral("page"))});
  const QString code =
      QString::fromUtf8(runTool(QStringLiteral("ZXingReader"),
                                {QStringLiteral("-format"), QStringLiteral("QRCode"),
                                 QStringLiteral("-bytes"), folder.filePath(QStringLiteral("page.png"))}));
  BOOST_TEST(code.startsWith(QStringLiteral("HANGBOOK1|load-sheet|")), code.toStdString());
  const QStringList verify{QStringLiteral("report"), QStringLiteral("--verify"), code};
  const Said current = demo.say(verify);
  BOOST_TEST(current.status == 0);
  BOOST_TEST(current.out.startsWith("current"));
  // A heavier cabinet: what was printed is no longer so.
  const QString types = folder.filePath(QStringLiteral("types.csv"));
  BOOST_REQUIRE(demo.say({QStringLiteral("export"), QStringLiteral("--kind"), QStringLiteral("types"),
                          QStringLiteral("-o"), types})
                    .status == 0);
  QFile file(types);
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  QByteArray bytes = file.readAll();
  file.close();
  const qsizetype at = bytes.indexOf("Marram bass,Eelgrass Sound Works,Marram,92,");
  BOOST_REQUIRE(at > 0);
  bytes.replace(at, 43, "Marram bass,Eelgrass Sound Works,Marram,95,");
  BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(bytes);
  file.close();
  const Said changed = demo.say({QStringLiteral("import"), QStringLiteral("--kind"), QStringLiteral("types"),
                                 types, QStringLiteral("--by"), QStringLiteral("Casimir Wold")});
  BOOST_REQUIRE_MESSAGE(changed.status == 0, changed.err.toStdString());
  const Said outdated = demo.say(verify);
  BOOST_TEST(outdated.status == 1);
  BOOST_TEST(outdated.out.startsWith("OUTDATED"));
  BOOST_TEST(
      demo.say({QStringLiteral("report"), QStringLiteral("--verify"), QStringLiteral("nonsense")}).status ==
      2);
}

BOOST_AUTO_TEST_CASE(every_kind_prints_in_both_unit_systems_on_both_papers_and_as_csv) {
  const Printed& demo = Printed::demo();
  const QString show = QStringLiteral("Ostrel");
  const QString american = Printed::text(demo.sheet(QStringLiteral("build-sheet"), show,
                                                    {QStringLiteral("--units"), QStringLiteral("us"),
                                                     QStringLiteral("--paper"), QStringLiteral("letter")}));
  BOOST_TEST(american.contains(QStringLiteral(" ft")));
  BOOST_TEST(!american.contains(QRegularExpression(QStringLiteral("[0-9] (m|kN|kg)\\b"))),
             "metric figures are left");
  const QByteArray size =
      runTool(QStringLiteral("pdfinfo"), {demo.sheet(QStringLiteral("load-sheet"), show,
                                                     {QStringLiteral("--paper"), QStringLiteral("letter")})});
  BOOST_TEST(size.contains("612 x 792"));
  for (const char* kind :
       {"load-sheet", "build-sheet", "prep-list", "examination-register", "tour-summary"}) {
    const QString file = demo.folder.filePath(QString::fromUtf8(kind) + QStringLiteral(".csv"));
    QStringList words{QStringLiteral("report"), QString::fromUtf8(kind), QStringLiteral("-o"), file};
    if (QByteArray(kind) != "tour-summary") {
      words << QStringLiteral("--show") << show;
    }
    BOOST_TEST(demo.say(words).status == 0, kind);
    QFile csv(file);
    BOOST_REQUIRE(csv.open(QIODevice::ReadOnly));
    const QByteArray bytes = csv.readAll();
    BOOST_TEST(bytes.contains("checksum,"));
    BOOST_TEST(bytes.count('\n') > 8);
  }
  const Said wrong =
      demo.say({QStringLiteral("report"), QStringLiteral("load-sheet"), QStringLiteral("--show"), show,
                QStringLiteral("-o"), QStringLiteral("x.doc")});
  BOOST_TEST(wrong.status == 2);
  BOOST_TEST(wrong.err.contains(".pdf or .csv"));
}

BOOST_AUTO_TEST_SUITE_END()
