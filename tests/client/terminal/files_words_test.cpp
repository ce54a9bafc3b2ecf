// SPDX-License-Identifier: GPL-3.0-or-later
// Files in and out of a store, and the same words on either engine.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>
#include <QFileInfo>

#include "client/terminal/demo_fixture.h"
#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using hangbook::testing::Demo;
using hangbook::testing::FreshStore;
using hangbook::testing::listOf;
using hangbook::testing::optionOf;
using hangbook::testing::Ran;
using hangbook::testing::textOf;
using terminal::Ending;
namespace data = boost::unit_test::data;

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

BOOST_FIXTURE_TEST_SUITE(files_words, Demo)

BOOST_AUTO_TEST_CASE(a_broken_file_is_told_line_by_line_and_nothing_is_written) {
  const std::string before = run({"export", "--kind", "venues"}).out;
  const std::string broken = "record,venue,name,x,y,z,capacity\n"
                             "point,Tallow Hall,N1,0,0,9,1 ton\n"
                             "point,Tallow Hall,N2,0,0,nine,2 kN\n"
                             "point,Tallow Hall,N3,0,0,9,2 kN\n";
  const Ran ran = run({"import", "--kind", "venues", "-", "--by", "Casimir Wold"}, broken);
  BOOST_TEST(ran.ending == Ending::badInput);
  BOOST_TEST(ran.warned("line 2, column capacity: read “1 ton”, expected"));
  BOOST_TEST(ran.warned("line 3, column z: read “nine”, expected"));
  BOOST_TEST(ran.warned("2 faults; nothing was written"));
  BOOST_TEST((run({"export", "--kind", "venues"}).out == before));
  const QJsonObject json = run({"import", "--kind", "venues", "-", "--json"}, broken).json();
  BOOST_TEST(listOf(json, "faults").size() == 2);
  BOOST_TEST(!json[QLatin1String("written")].toBool());
}

BOOST_AUTO_TEST_CASE(a_dry_run_says_what_would_be_and_writes_nothing) {
  const std::string before = run({"export", "--kind", "people"}).out;
  const std::string file = "name,role\nIda Quill,rigger\n";
  const Ran dry = run({"import", "--kind", "people", "-", "--dry-run"}, file);
  BOOST_TEST(dry.ending == Ending::done);
  BOOST_TEST(dry.said("person: 1 new, 0 changed, 0 the same already"));
  BOOST_TEST((run({"export", "--kind", "people"}).out == before));
  BOOST_TEST(run({"import", "--kind", "people", "-"}, file).ending == Ending::done);
  BOOST_TEST(run({"export", "--kind", "people"}).said("Ida Quill"));
}

BOOST_AUTO_TEST_CASE(dates_and_decimal_marks_are_read_as_was_said) {
  const std::string file = "record;serial;rule;date\nexamination;MR04;bar half-yearly;24.11.2026\n";
  BOOST_TEST(run({"import", "--kind", "units", "-"}, file).ending == Ending::badInput);
  BOOST_TEST(run({"import", "--kind", "units", "-", "--date-format", "dd.MM.yyyy"}, file).ending ==
             Ending::done);
  BOOST_TEST(run({"export", "--kind", "units"}).said("2026-11-24"));
  BOOST_TEST(run({"import", "--kind", "units", "-", "--date-format", "dd.MM"}, file).ending ==
             Ending::badInput);
  const std::string point = "record\tvenue\tname\tx\ty\tz\npoint\tTallow Hall\tN9\t1,250\t0\t9\n";
  const Ran unsaid = run({"import", "--kind", "venues", "-"}, point);
  BOOST_TEST(unsaid.ending == Ending::badInput); // 1,250 may be one thousand and more
  BOOST_TEST(run({"import", "--kind", "venues", "-", "--decimal-mark", ","}, point).ending == Ending::done);
  BOOST_TEST(run({"import", "--kind", "venues", "-", "--decimal-mark", ";"}, point).ending ==
             Ending::badInput);
}

BOOST_AUTO_TEST_CASE(import_of_what_cannot_be_read_makes_no_store) {
  const std::string fresh = folder.filePath(QStringLiteral("fresh.sqlite")).toStdString();
  for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
           {"import", "--kind", "people", "no-such-file.csv", "--store", fresh},
           {"import", "--kind", "people", folder.path().toStdString(), "--store", fresh},
           {"import", "--kind", "crews", "-", "--store", fresh},
           {"import", "--kind", "people", "-", "--store", fresh},
           {"import", "--kind", "people", "-", "--dry-run", "--store", fresh}}) {
    BOOST_TEST(testing::ranWith(words, "name,shoe size\nIda Quill,38\n").ending == Ending::badInput);
    BOOST_TEST(!QFileInfo::exists(QString::fromStdString(fresh)));
  }
  BOOST_TEST(
      testing::ranWith({"import", "--kind", "people", "-", "--store", fresh}, "name\nIda Quill\n").ending ==
      Ending::done);
  BOOST_TEST(QFileInfo::exists(QString::fromStdString(fresh)));
}

BOOST_AUTO_TEST_CASE(an_export_replaces_a_file_as_a_whole_or_not_at_all) {
  const QString target = folder.filePath(QStringLiteral("fleet.csv"));
  BOOST_TEST(run({"export", "--kind", "units", "-o", target.toStdString()}).ending == Ending::done);
  QFile file(target);
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  BOOST_TEST((file.readAll().toStdString() == run({"export", "--kind", "units"}).out));
  const Ran nowhere = run({"export", "--kind", "units", "-o",
                           folder.filePath(QStringLiteral("no/such/folder.csv")).toStdString()});
  BOOST_TEST(nowhere.ending == Ending::badInput);
  BOOST_TEST(nowhere.oneLineOfTrouble());
}

BOOST_AUTO_TEST_CASE(facts_and_kept_files_go_out) {
  QFile picture(folder.filePath(QStringLiteral("bent shackle.jpg")));
  BOOST_REQUIRE(picture.open(QIODevice::WriteOnly));
  picture.write("a picture");
  picture.close();
  BOOST_TEST(run({"happened", "K16-01", "--what", "fault", "--remark", "bent, \"badly\"", "--date",
                  "2026-11-25", "--file", picture.fileName().toStdString(), "--by", "Casimir Wold"})
                 .said("is quarantined"));
  const Ran movements = run({"export", "--kind", "movements"});
  BOOST_TEST(movements.out.starts_with("serial,happened at,what,place,state,"));
  BOOST_TEST(movements.said("K16-01,"));
  BOOST_TEST(movements.said("quarantined"));
  const Ran occurrences = run({"export", "--kind", "occurrences"});
  BOOST_TEST(occurrences.said("K16-01,2026-11-25,fault,,,"));
  BOOST_TEST(occurrences.said(",\"bent, \"\"badly\"\"\","));
  const QString kept = folder.filePath(QStringLiteral("kept"));
  BOOST_TEST(run({"export", "--kind", "files"}).ending == Ending::badInput); // where to is needed
  BOOST_TEST(run({"export", "--kind", "files", "-o", kept.toStdString()}).said("Wrote 1 files into"));
  QFile list(kept + QStringLiteral("/files.csv"));
  BOOST_REQUIRE(list.open(QIODevice::ReadOnly));
  const QList<QByteArray> cells = list.readAll().split('\n').at(1).split(',');
  BOOST_TEST(cells.at(0).toStdString() == "K16-01");
  BOOST_TEST(cells.at(2).endsWith("-bent_shackle.jpg"));
  QFile copy(kept + u'/' + QString::fromUtf8(cells.at(2)));
  BOOST_REQUIRE(copy.open(QIODevice::ReadOnly));
  BOOST_TEST(copy.readAll().toStdString() == "a picture");
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_DATA_TEST_CASE(reading_words_answer_alike_on_both_engines, testing::bothEngines, engine) {
  const FreshStore fresh(engine);
  const std::string where = fresh.where().toStdString();
  BOOST_REQUIRE_EQUAL(testing::ranWith({"demo", "--store", where, "--by", "Casimir Wold"}).err, "");
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{"options", "--show", "Pollan Cross", "--json"},
                                             {"route", "--json"},
                                             {"mark", "--show", "Ostrel", "--json"},
                                             {"due", "--within", "6m", "--json"},
                                             {"export", "--kind", "types"},
                                             {"export", "--kind", "venues"}}) {
    const auto answer = [&](const std::string& place) {
      std::vector<std::string> all = words;
      all.insert(all.end(), {"--store", place, "--as-of", "2026-11-25"});
      return testing::ranWith(all);
    };
    const Ran here = answer(where);
    const Ran there = answer(testing::filledDemo().toStdString());
    BOOST_TEST_CONTEXT(words[0]) {
      BOOST_TEST((here.ending == there.ending));
      BOOST_TEST((here.out == there.out));
      BOOST_TEST(!here.out.empty());
    }
  }
  BOOST_TEST(testing::ranWith({"check-store", "--store", where}).ending == Ending::done);
}
