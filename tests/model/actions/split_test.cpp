// SPDX-License-Identifier: GPL-3.0-or-later
// Some pieces of a counted batch become a batch of their own: nothing that counts for an examination is lost
// on the way.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/fleet_work.h"
#include "actions/split_batch.h"
#include "fleet/due.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "warehouse_house.h"

using namespace hangbook;
using namespace hangbook::actions;
using namespace hangbook::testing;

namespace {

const QDate today(2027, 3, 1);
const QString batch = QStringLiteral("SH-1");
const QString part = QStringLiteral("SH-2");

fleet::ExaminationRule countedRule() {
  fleet::ExaminationRule rule;
  rule.name = QStringLiteral("shackles");
  rule.kind = fleet::UnitKind::hardware;
  rule.months = 6;
  rule.uses = 3;
  rule.afterExceptional = true;
  return rule;
}

/// Examined, then out and back once.
void fillUsed(store::Store& store) {
  fillWarehouse(store);
  store::save(store, countedRule());
  fleet::Examination fact;
  fact.serial = batch;
  fact.rule = countedRule().name;
  fact.date = QDate(2027, 2, 1);
  examine(store, fact, {{QStringLiteral("sh1.pdf"), "certificate"}}, today, technician);
  BOOST_REQUIRE((scan(store, taskOut(store), batch, monday, technician).word == ScanAnswer::Word::done));
  BOOST_REQUIRE((scan(store, taskIn(), batch, monday.addDays(1), technician).word == ScanAnswer::Word::done));
}

fleet::Standing standing(store::Store& store, const QString& serial) {
  const auto examinations = store::loadExaminations(store, serial);
  const auto occurrences = store::loadHappened(store, serial);
  const fleet::LastExaminations last(examinations);
  const fleet::Happened happened(occurrences);
  return fleet::standingOf(countedRule(), last.of(serial, countedRule().name), happened.to(serial));
}

} // namespace

BOOST_AUTO_TEST_SUITE(split)

BOOST_DATA_TEST_CASE(what_is_split_off_has_been_through_the_same, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillUsed(*store);
  const fleet::Unit made = splitBatch(*store, batch, 15, part, technician);
  BOOST_TEST(made.pieces.value() == 15);
  BOOST_TEST((made.place == bay));
  BOOST_TEST(store::loadUnit(*store, batch)->pieces.value() == 25);
  BOOST_TEST(standing(*store, part).usesLeft.value() == 2);
  BOOST_TEST(standing(*store, batch).usesLeft.value() == 2);
  BOOST_TEST((standing(*store, part).until == QDate(2027, 8, 1)));
  const auto documents = store::loadDocuments(*store, part);
  BOOST_TEST_REQUIRE(documents.size() == 1U);
  BOOST_TEST((documents[0].examination == store::loadExaminations(*store, part).at(0).id));
  BOOST_TEST(store::checkStore(*store).isEmpty());
  // From here on each goes its own way.
  recordOccurrence(*store,
                   {.id = {},
                    .serial = part,
                    .kind = fleet::OccurrenceKind::exceptional,
                    .date = today,
                    .uses = {},
                    .hours = {},
                    .place = {},
                    .remark = QStringLiteral("dropped"),
                    .corrects = {},
                    .by = {},
                    .recordedAt = {}},
                   {}, today, technician);
  BOOST_TEST(!standing(*store, part).met);
  BOOST_TEST(standing(*store, batch).met);
  // And what happened before goes with a second split too.
  splitBatch(*store, part, 5, QStringLiteral("SH-3"), technician);
  BOOST_TEST(!standing(*store, QStringLiteral("SH-3")).met);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_split_stays_whole) {
  const FreshStore fresh(store::Engine::sqlite);
  const auto store = fresh.open();
  fillUsed(*store);
  for (const int pieces : {0, 40, 41, -3}) {
    BOOST_CHECK_THROW(splitBatch(*store, batch, pieces, part, technician), Error);
  }
  BOOST_CHECK_THROW(splitBatch(*store, batch, 5, QStringLiteral("B1"), technician), Error);
  BOOST_CHECK_THROW(splitBatch(*store, batch, 5, QStringLiteral("  "), technician), Error);
  BOOST_CHECK_THROW(splitBatch(*store, QStringLiteral("B1"), 1, part, technician), Error);
  BOOST_REQUIRE(
      (scan(*store, taskOut(*store), batch, monday.addDays(2), technician).word == ScanAnswer::Word::done));
  BOOST_CHECK_THROW(splitBatch(*store, batch, 5, part, technician), Error);
  BOOST_TEST(store::loadUnit(*store, batch)->pieces.value() == 40);
  BOOST_TEST(!store::loadUnit(*store, part));
}

BOOST_AUTO_TEST_SUITE_END()
