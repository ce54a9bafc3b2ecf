// SPDX-License-Identifier: GPL-3.0-or-later
// The demo tour through the store, on both engines: in by its files, out by files, and in again.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <map>
#include <optional>

#include "actions/import_file.h"
#include "demo/demo.h"
#include "demo_tour.h"
#include "options/search.h"
#include "store/choice_store.h"
#include "store/snapshot_store.h"
#include "support/fresh_store.h"

namespace data = boost::unit_test::data;
using namespace hangbook;
using hangbook::testing::bothEngines;
using hangbook::testing::FreshStore;

namespace {

exchange::Importer somebody() {
  return {QStringLiteral("Casimir Wold"), QDateTime(demoToday(), QTime(18, 0), Qt::UTC)};
}

QString faultsOf(const exchange::Import& import) {
  QString all;
  for (const exchange::Fault& fault : import.faults) {
    all += exchange::text(fault) + QLatin1Char('\n');
  }
  return all;
}

exchange::Import take(store::Store& store, exchange::Kind kind, const QByteArray& bytes) {
  exchange::Import import = actions::importFile(store, kind, bytes, somebody());
  BOOST_TEST_REQUIRE(import.faults.empty(), faultsOf(import).toStdString());
  return import;
}

void fill(store::Store& store) {
  for (const demo::File& file : demo::files()) {
    take(store, exchange::kindFrom(file.kind), file.bytes);
  }
}

struct Filled {
  explicit Filled(store::Engine which) : place(which), store(place.open()) { fill(*store); }
  FreshStore place;
  std::unique_ptr<store::Store> store;
};

std::map<store::Engine, std::unique_ptr<Filled>>& allFilled() {
  static std::map<store::Engine, std::unique_ptr<Filled>> all;
  return all;
}

/// Stores are closed while the application and its drivers are still there.
struct ClosesStores {
  ~ClosesStores() { allFilled().clear(); }
};
BOOST_TEST_GLOBAL_FIXTURE(ClosesStores);

/// A store with the demo in it, filled once for each engine; every test leaves it as it was.
store::Store& filled(store::Engine engine) {
  auto& one = allFilled()[engine];
  if (!one) {
    one = std::make_unique<Filled>(engine);
  }
  return *one->store;
}

/// Without what a store gives to each record: identifiers, revisions, and when and by whom it was entered.
exchange::Data bare(exchange::Data data) {
  const auto strip = [](auto& list) {
    for (auto& each : list) {
      each.id = {};
      each.revision = 0;
    }
  };
  strip(data.catalogue.cabinets);
  strip(data.catalogue.bars);
  strip(data.catalogue.hoists);
  strip(data.catalogue.chains);
  strip(data.catalogue.hardware);
  strip(data.catalogue.carts);
  strip(data.catalogue.tables);
  strip(data.cabling.connectors);
  strip(data.cabling.sockets);
  strip(data.cabling.ends);
  strip(data.cabling.plugs);
  strip(data.people);
  strip(data.examinationRules);
  strip(data.units);
  strip(data.venues);
  strip(data.tours);
  strip(data.shows);
  return data;
}

/// Verdict, option and setting of everything chosen, in words.
QStringList route(store::Store& store) {
  QStringList told;
  const exchange::Data all = actions::everything(store);
  for (const exchange::Chosen& chosen : all.chosen) {
    for (const options::Choice& choice : store::loadChoices(store, chosen.tour, chosen.show)) {
      told << QStringList{choice.show,
                          choice.hang,
                          choice.option,
                          options::wordFor(choice.verdict),
                          QString::number(choice.setting.trimM, 'g', 17),
                          QString::number(choice.setting.tiltDeg, 'g', 17),
                          QString::number(choice.setting.mark.value_or(-1)),
                          choice.reason,
                          choice.by}
                  .join(QLatin1Char('|'));
    }
  }
  told.removeDuplicates();
  told.sort();
  return told;
}

QStringList optionsOfOstrel(store::Store& store) {
  const QString tour = actions::everything(store).tours.front().name;
  const options::Snapshot snapshot = store::loadSnapshot(store, tour, QStringLiteral("Ostrel"), demoToday());
  const options::ShowOptions show = options::decide(snapshot, QStringLiteral("left"));
  QStringList told;
  for (const options::Option& option : show.hangs.front().options) {
    told << QStringLiteral("%1 %2 %3")
                .arg(option.id, options::wordFor(option.verdict),
                     option.setting ? QString::number(option.setting->trimM, 'g', 17) : QStringLiteral("-"));
  }
  return told;
}

} // namespace

BOOST_AUTO_TEST_SUITE(demo_in_a_store)

BOOST_DATA_TEST_CASE(in_out_and_in_again, data::make(bothEngines), engine) {
  store::Store& one = filled(engine);
  const FreshStore second(engine);
  const auto other = second.open();
  for (const exchange::Kind kind : exchange::allKinds()) {
    take(*other, kind, exchange::writeFile(kind, actions::everything(one)));
  }
  const exchange::Data before = bare(actions::everything(one));
  const exchange::Data after = bare(actions::everything(*other));
  BOOST_TEST((before.catalogue == after.catalogue));
  BOOST_TEST((before.people == after.people));
  BOOST_TEST((before.examinationRules == after.examinationRules));
  BOOST_TEST((before.units == after.units));
  BOOST_TEST((before.examinations == after.examinations)); // facts keep their identifiers
  BOOST_TEST((before.venues == after.venues));
  BOOST_TEST((before.tours == after.tours));
  BOOST_TEST((before.shows == after.shows));
  BOOST_TEST((before.marks == after.marks));
  BOOST_TEST((before.chosen == after.chosen));
  BOOST_TEST(route(one).size() == 10);
  BOOST_TEST((route(one) == route(*other)));
  const QStringList ours = optionsOfOstrel(one);
  const QStringList theirs = optionsOfOstrel(*other);
  BOOST_TEST_REQUIRE(ours.size() == theirs.size());
  for (qsizetype at = 0; at < ours.size(); ++at) {
    BOOST_TEST(ours[at].toStdString() == theirs[at].toStdString());
  }
  BOOST_TEST(store::checkStore(*other).join(QLatin1Char('\n')).toStdString() == "");
}

BOOST_DATA_TEST_CASE(the_same_again_writes_nothing_new, data::make(bothEngines), engine) {
  store::Store& store = filled(engine);
  const exchange::Data before = actions::everything(store);
  for (const demo::File& file : demo::files()) {
    for (const exchange::Count& count : take(store, exchange::kindFrom(file.kind), file.bytes).counts) {
      BOOST_TEST(count.added == 0, count.sort.toStdString());
      BOOST_TEST(count.changed == 0, count.sort.toStdString());
    }
  }
  BOOST_TEST((actions::everything(store) == before));
}

BOOST_DATA_TEST_CASE(one_wrong_line_and_nothing_is_written, data::make(bothEngines), engine) {
  store::Store& store = filled(engine);
  const exchange::Data before = actions::everything(store);
  const exchange::Import import = actions::importFile(
      store, exchange::Kind::units,
      "serial,type,place\nN1,Marram bass,yard\nN2,Marram bass,yard\nN3,Morram bass,yard\n", somebody());
  BOOST_TEST_REQUIRE(import.faults.size() == 1U);
  BOOST_TEST(import.faults.front().line == 4);
  BOOST_TEST((actions::everything(store) == before));
}

BOOST_DATA_TEST_CASE(an_option_that_fails_cannot_be_chosen_by_a_file, data::make(bothEngines), engine) {
  store::Store& store = filled(engine);
  const exchange::Data before = actions::everything(store);
  const exchange::Import import = actions::importFile(
      store, exchange::Kind::shows,
      "tour,show,name,chosen option,chosen by\n"
      "Lanternfish Parade 2027,Lindrake,left,4e574ee219dff3ce,Orla Tench\n"  // holds
      "Lanternfish Parade 2027,Grenmouth,left,f6317d0f37428e3f,Orla Tench\n" // the points are too weak
      "Lanternfish Parade 2027,Morrowby,left,0000000000000000,Orla Tench\n", // no such option
      somebody());
  BOOST_TEST_REQUIRE(import.faults.size() == 2U, faultsOf(import).toStdString());
  BOOST_TEST(import.faults[0].line == 3);
  BOOST_TEST(import.faults[1].line == 4);
  BOOST_TEST(import.faults[0].read.toStdString() == "f6317d0f37428e3f");
  BOOST_TEST(import.faults[0].expected.contains(QStringLiteral("point-load")));
  BOOST_TEST(import.faults[1].read.toStdString() == "0000000000000000");
  BOOST_TEST((actions::everything(store) == before));
}

BOOST_DATA_TEST_CASE(a_dry_run_says_the_same_and_writes_nothing, data::make(bothEngines), engine) {
  store::Store& store = filled(engine);
  const exchange::Data before = actions::everything(store);
  const QByteArray file = "venue,name,x,y,z,capacity\n"
                          "Tallow Hall,S1,2,0,6.9,3 kN\nTallow Hall,L1,0.6,4.2,6.9,5.5\n";
  const auto dry = actions::importFile(store, exchange::Kind::venues, file, somebody(), {}, true);
  BOOST_TEST(dry.faults.empty());
  BOOST_TEST((actions::everything(store) == before));
  struct BackAgain {};
  std::optional<exchange::Import> real;
  std::size_t points = 0;
  BOOST_CHECK_THROW(store.transact([&] {
    real = actions::importFile(store, exchange::Kind::venues, file, somebody());
    const exchange::Data within = actions::everything(store);
    points = catalogue::find(within.venues, QStringLiteral("Tallow Hall"))->points.size();
    throw BackAgain{};
  }),
                    BackAgain);
  BOOST_TEST(points == 5U);
  BOOST_TEST((dry.counts == real->counts));
  BOOST_TEST((dry.counts == std::vector{exchange::Count{QStringLiteral("point"), 1, 1, 0}}));
  BOOST_TEST((actions::everything(store) == before));
}

BOOST_AUTO_TEST_SUITE_END()
