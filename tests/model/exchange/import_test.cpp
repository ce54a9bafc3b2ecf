// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <QFile>

#include "demo_data.h"
#include "exchange/bounds.h"
#include "where.h"

namespace data = boost::unit_test::data;
using namespace hangbook;
using namespace hangbook::exchange;

namespace {

Import take(Kind kind, const char* file, const Data& before = demoData()) {
  Import import = readFile(kind, file, before, somebody());
  BOOST_TEST_REQUIRE(import.faults.empty(), faultsOf(import).toStdString());
  return import;
}

const venue::Venue& tallow(const Import& import) {
  return *catalogue::find(import.after.venues, QStringLiteral("Tallow Hall"));
}

/// The same venue in the forms in which spreadsheets write it: low steel of 6.5 m, with a point.
struct Form {
  const char* what;
  const char* file;
};

std::ostream& operator<<(std::ostream& out, const Form& form) {
  return out << form.what;
}

const std::vector<Form> forms = {
    {"comma", "name,time zone,low steel\nTallow Hall,Europe/London,6.5\n"},
    {"semicolon and decimal comma", "name;time zone;low steel\nTallow Hall;Europe/London;6,5\n"},
    {"tab", "name\ttime zone\tlow steel\nTallow Hall\tEurope/London\t6.5\n"},
    {"byte order mark", "\xEF\xBB\xBFname,time zone,low steel\r\nTallow Hall,Europe/London,6.5\r\n"},
    {"unit in brackets", "name,time zone,low steel [cm]\nTallow Hall,Europe/London,650\n"},
    {"unit in round brackets", "Name,Time zone,Low steel (mm)\nTallow Hall,Europe/London,6500\n"},
    {"unit behind an underscore", "NAME,TIME_ZONE,low_steel_cm\nTallow Hall,Europe/London,650\n"},
    {"unit in the cell", "name,time zone,low steel [ft]\nTallow Hall,Europe/London,6.5 m\n"},
    {"records", "record,name,time zone,low steel\nvenue,Tallow Hall,Europe/London,6.5\n"},
    {"other order, blank lines", "low steel,name\n\n6.5,Tallow Hall\n,\n"},
};

} // namespace

BOOST_AUTO_TEST_SUITE(exchange_import)

BOOST_DATA_TEST_CASE(one_venue_in_many_forms, data::make(forms), form) {
  const Import import = take(Kind::venues, form.file);
  BOOST_TEST(inMetres(*tallow(import).lowSteel) == 6.5);
  BOOST_TEST(tallow(import).points.size() == 4U); // left alone
  BOOST_TEST(tallow(import).town.toStdString() == "Pollan Cross");
  BOOST_TEST_REQUIRE(import.counts.size() == 1U);
  BOOST_TEST((import.counts.front() == Count{QStringLiteral("venue"), 0, 1, 0}));
  BOOST_TEST(import.changes.changed.venues.size() == 1U);
  BOOST_TEST(import.changes.added.venues.empty());
}

BOOST_AUTO_TEST_CASE(what_was_typed_is_kept_and_written_back) {
  Import import = take(Kind::venues, "name,low steel\nTallow Hall,32 ft 6 in\n");
  BOOST_TEST(inMetres(*tallow(import).lowSteel) == 9.906);
  BOOST_TEST(tallow(import).typed.at(QStringLiteral("low steel")).toStdString() == "32 ft 6 in");
  BOOST_TEST(writeFile(Kind::venues, import.after).contains(",32 ft 6 in,"));
  // Edited since, it says something else: the exact figure is written.
  import.after.venues.front().lowSteel = metres(9.9);
  BOOST_TEST(!writeFile(Kind::venues, import.after).contains("32 ft 6 in"));
  BOOST_TEST(writeFile(Kind::venues, import.after).contains(",9.9,"));
}

BOOST_AUTO_TEST_CASE(the_headings_unit_is_part_of_what_was_typed) {
  const Import import = take(Kind::venues, "venue,name,x,y,z,capacity (t)\nTallow Hall,L1,0.6,4.2,6.9,1.2\n");
  const auto& point = tallow(import).points.front();
  BOOST_TEST(inNewtons(*point.capacity) == 11767.98);
  BOOST_TEST(tallow(import).typed.at(QStringLiteral("point L1: capacity")).toStdString() == "1.2 t");
  const Import again =
      readFile(Kind::venues, writeFile(Kind::venues, import.after), import.after, somebody());
  BOOST_TEST((again.after == import.after));
}

BOOST_AUTO_TEST_CASE(an_empty_cell_says_not_known_and_a_missing_heading_nothing) {
  BOOST_TEST(!tallow(take(Kind::venues, "name,low steel\nTallow Hall,\n")).lowSteel.has_value());
  BOOST_TEST(tallow(take(Kind::venues, "name,town\nTallow Hall,Elsewhere\n")).lowSteel.has_value());
}

BOOST_AUTO_TEST_CASE(the_same_again_changes_nothing) {
  for (const Kind kind : allKinds()) {
    const Import import = readFile(kind, writeFile(kind, demoData()), demoData(), somebody());
    BOOST_TEST(import.faults.empty(), faultsOf(import).toStdString());
    BOOST_TEST((import.after == demoData()), wordFor(kind).toStdString());
    for (const Count& count : import.counts) {
      BOOST_TEST(count.added == 0);
      BOOST_TEST(count.changed == 0);
      BOOST_TEST(count.same > 0);
    }
  }
}

BOOST_AUTO_TEST_CASE(identifier_and_revision_stay) {
  Data before = demoData();
  before.venues.front().id = QUuid::createUuid();
  before.venues.front().revision = 7;
  const Import import = take(Kind::venues, "name,low steel\nTallow Hall,6.5\n", before);
  BOOST_TEST_REQUIRE(import.changes.changed.venues.size() == 1U);
  BOOST_TEST((import.changes.changed.venues.front().id == before.venues.front().id));
  BOOST_TEST(import.changes.changed.venues.front().revision == 7);
}

BOOST_AUTO_TEST_CASE(a_plain_fleet_list_with_last_examinations) {
  const Import import = take(Kind::units, "serial,type,place,last examination,certificate,examiner\n"
                                          "H1099,Quernstone one,yard,2026-11-20,QL26-99,Ruben Fallow\n"
                                          "BC99,Bass cart,yard,,,\n");
  BOOST_TEST_REQUIRE(import.changes.added.units.size() == 2U);
  BOOST_TEST((import.changes.added.units[0].kind == fleet::UnitKind::hoist));
  BOOST_TEST((import.changes.added.units[1].kind == fleet::UnitKind::cart));
  BOOST_TEST_REQUIRE(import.changes.added.examinations.size() == 1U);
  const auto& fact = import.changes.added.examinations.front();
  BOOST_TEST(fact.rule.toStdString() == "hoist yearly");
  BOOST_TEST(fact.certificate.toStdString() == "QL26-99");
  BOOST_TEST(fact.by.toStdString() == "Casimir Wold");
  BOOST_TEST((fact.recordedAt == somebody().now));
}

BOOST_AUTO_TEST_CASE(an_examination_told_twice_is_one_fact) {
  const char* file = "serial,type,last examination,certificate\nH1001,Quernstone one,2026-11-20,QL9\n";
  const Import once = take(Kind::units, file);
  const Import twice = take(Kind::units, file, once.after);
  BOOST_TEST((once.after == twice.after));
  BOOST_TEST((twice.counts.back() == Count{QStringLiteral("examination"), 0, 0, 1}));
}

BOOST_AUTO_TEST_CASE(load_in_on_the_venues_clock) {
  const Import import =
      take(Kind::shows, "tour,name,load-in,load-out\n"
                        "Lanternfish Parade 2027,Vintersund,2027-04-21 08:00,2027-04-21T23:00+02:00\n");
  const auto& show = import.changes.changed.shows.front();
  BOOST_TEST((show.loadIn == QDateTime(QDate(2027, 4, 21), QTime(6, 0), Qt::UTC)));
  BOOST_TEST((show.loadOut == QDateTime(QDate(2027, 4, 21), QTime(21, 0), Qt::UTC)));
}

BOOST_AUTO_TEST_CASE(a_choice_stands_on_the_line_of_its_hang) {
  const Import import = take(
      Kind::shows, "tour,show,name,chosen option,chosen because,chosen by,chosen on\n"
                   "Lanternfish Parade 2027,Grenmouth,left,0123456789abcdef,why not,Orla Tench,2026-11-20\n");
  BOOST_TEST_REQUIRE(import.changes.added.chosen.size() == 1U);
  const Chosen& chosen = import.changes.added.chosen.front();
  BOOST_TEST(chosen.option.toStdString() == "0123456789abcdef");
  BOOST_TEST(import.lineOfChosen(chosen) == 2);
  BOOST_TEST((chosen.on == QDateTime(QDate(2026, 11, 20), QTime(0, 0), Qt::UTC)));
  // An empty cell does not take it back.
  const Import later = take(
      Kind::shows, "tour,show,name,chosen option\nLanternfish Parade 2027,Grenmouth,left,\n", import.after);
  BOOST_TEST((later.after == import.after));
}

BOOST_AUTO_TEST_CASE(fifty_thousand_units) {
  QByteArray file = "serial;type;place;weighed;last examination\n";
  for (int unit = 0; unit < 50'000; ++unit) {
    file += "N" + QByteArray::number(unit) + ";Marram bass;yard;92,5;2026-11-20\n";
  }
  const Import import = readFile(Kind::units, file, demoData(), somebody());
  BOOST_TEST(import.faults.empty());
  BOOST_TEST(import.changes.added.units.size() == 50'000U);
  BOOST_TEST(import.changes.added.examinations.size() == 50'000U);
}

BOOST_AUTO_TEST_CASE(the_dictionary_lists_every_heading) {
  QFile file(QStringLiteral(HANGBOOK_SOURCE_DIR "/model/exchange/README.md"));
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  const QString readme = QString::fromUtf8(file.readAll());
  for (const Kind kind : allKinds()) {
    for (const QString& heading : headingsOf(kind)) {
      const QString name = heading.section(QStringLiteral(" ["), 0, 0);
      BOOST_TEST(readme.contains(name), name.toStdString());
    }
  }
}

BOOST_AUTO_TEST_CASE(the_dictionary_lists_every_bound) {
  QFile file(QStringLiteral(HANGBOOK_SOURCE_DIR "/model/exchange/README.md"));
  BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
  const QString readme = QString::fromUtf8(file.readAll());
  for (const Bounds& bounds : allBounds()) {
    if (bounds.bound != Bound::any) {
      BOOST_TEST(readme.contains(QStringLiteral("| %1 |").arg(rangeText(bounds))),
                 rangeText(bounds).toStdString());
    }
  }
}

BOOST_AUTO_TEST_CASE(the_first_line_of_an_empty_export_is_a_template) {
  BOOST_TEST(writeFile(Kind::people, {}).toStdString() == "record,name,role\n");
}

BOOST_AUTO_TEST_SUITE_END()
