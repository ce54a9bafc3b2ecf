// SPDX-License-Identifier: GPL-3.0-or-later
// What is due is read on a shorter way than all of the stock: the lines are the same.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <random>

#include "actions/fleet_work.h"
#include "fleet/due.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;
using fleet::ExaminationResult;
using fleet::UnitKind;

namespace {

fleet::ExaminationRule rule(const QString& name, UnitKind kind, const QString& type) {
  fleet::ExaminationRule made;
  made.name = name;
  made.kind = kind;
  made.type = type;
  made.months = 6;
  return made;
}

/// Units of three kinds, two of them with rules (one for a type, one for the whole kind, which overlap), and
/// examinations at random: several on one day, some recorded at the same moment, some corrected, some of
/// units that no rule speaks of.
void fillAtRandom(store::Store& store, unsigned seed) {
  fill(store);
  for (const fleet::ExaminationRule& each : store::loadExaminationRules(store)) {
    store::remove(store, each);
  }
  const QString hoist = sampleHoist().name;
  store::save(store, rule(QStringLiteral("any hoist"), UnitKind::hoist, {}));
  store::save(store, rule(QStringLiteral("this hoist"), UnitKind::hoist, hoist));
  store::save(store, rule(QStringLiteral("this chain"), UnitKind::chain, sampleChain().name));
  std::mt19937 random(seed);
  const auto below = [&](unsigned count) { return static_cast<int>(random() % count); };
  for (int i = 0; i < 60; ++i) {
    fleet::Unit unit;
    unit.serial = QStringLiteral("U%1").arg(i);
    unit.kind = std::array{UnitKind::hoist, UnitKind::chain, UnitKind::cabinet}.at(i % 3);
    unit.type = std::array{hoist, sampleChain().name, QStringLiteral("Marram bass")}.at(i % 3);
    unit.place = QStringLiteral("bay %1").arg(below(3));
    unit.state = below(9) == 0 ? fleet::UnitState::writtenOff : fleet::UnitState::ready;
    store::save(store, unit, QStringLiteral("Ada Fenn"), QStringLiteral("entered"));
    QUuid lastOne;
    for (int k = below(5); unit.kind != UnitKind::cabinet && k > 0; --k) {
      fleet::Examination fact;
      fact.serial = unit.serial;
      fact.rule = unit.kind == UnitKind::chain ? QStringLiteral("this chain")
                  : below(2) == 0              ? QStringLiteral("any hoist")
                                               : QStringLiteral("this hoist");
      fact.date = QDate(2026, 9, 1).addDays(below(4) * 40);
      fact.result = below(5) == 0 ? ExaminationResult::fail : ExaminationResult::pass;
      fact.recordedAt = QDateTime(QDate(2027, 1, 1), QTime(8, below(3)), Qt::UTC);
      fact.by = QStringLiteral("Ada Fenn");
      fact.corrects = below(4) == 0 ? std::exchange(lastOne, QUuid()) : QUuid();
      lastOne = store::append(store, fact).id;
    }
  }
}

std::string inWords(const std::vector<fleet::Due>& lines) {
  QStringList all;
  for (const fleet::Due& each : lines) {
    all << QStringLiteral("%1 %2 %3 %4 %5 %6 %7 %8")
               .arg(each.serial, each.type, each.rule, each.place, each.last.toString(Qt::ISODate),
                    each.due.toString(Qt::ISODate), each.overdue ? "overdue" : "", each.note);
  }
  return all.join('\n').toStdString();
}

std::vector<fleet::Due> dueOf(const options::Stock& stock) {
  return fleet::dueWithin(stock.units, stock.rules, stock.examinations, QDate(2027, 2, 1), 90,
                          stock.occurrences);
}

} // namespace

BOOST_AUTO_TEST_SUITE(due_list)

BOOST_DATA_TEST_CASE(the_short_way_gives_the_same_lines, bothEngines* boost::unit_test::data::xrange(1, 4),
                     engine, seed) {
  const FreshStore place(engine);
  const auto store = place.open();
  fillAtRandom(*store, static_cast<unsigned>(seed));
  const std::vector<fleet::Due> all = dueOf(actions::loadStock(*store));
  BOOST_TEST(all.size() > 20u);
  BOOST_TEST(inWords(dueOf(actions::loadStockUnderRules(*store))) == inWords(all));
}

BOOST_AUTO_TEST_SUITE_END()
