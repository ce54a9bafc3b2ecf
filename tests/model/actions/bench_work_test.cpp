// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/facts.h"
#include "actions/fleet_work.h"
#include "quantity/error.h"
#include "store/choice_store.h"
#include "store/connection.h"
#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "warehouse_house.h"

using namespace hangbook;
using namespace hangbook::actions;
using namespace hangbook::testing;

namespace {

const QDate today(2027, 3, 1);

fleet::Examination examination(const char* serial, fleet::ExaminationResult result) {
  fleet::Examination fact;
  fact.serial = QString::fromLatin1(serial);
  fact.rule = sampleRule().name;
  fact.date = today;
  fact.result = result;
  fact.examiner = QStringLiteral("Ida Marsh");
  return fact;
}

} // namespace

BOOST_AUTO_TEST_SUITE(work_at_the_bench)

BOOST_DATA_TEST_CASE(a_failed_examination_quarantines_and_names_every_show_to_come, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  store::append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  const std::vector<File> files{{QStringLiteral("b1.pdf"), QByteArray("certificate \0 with a zero", 25)}};
  const Recorded done =
      examine(*store, examination("B1", fleet::ExaminationResult::fail), files, today, technician);
  BOOST_TEST(done.quarantined);
  BOOST_REQUIRE(done.shows.size() == 1U);
  BOOST_TEST((done.shows[0].show == "Skerrymouth"));
  BOOST_TEST((store::loadUnit(*store, QStringLiteral("B1"))->state == fleet::UnitState::quarantined));

  const auto documents = store::loadDocuments(*store, QStringLiteral("B1"));
  BOOST_REQUIRE(documents.size() == 1U);
  BOOST_TEST((documents[0].examination == done.examination.id));
  BOOST_TEST((store::loadDocumentBytes(*store, documents[0].sha256) == files[0].bytes));
  BOOST_TEST(store::checkStore(*store).isEmpty());
  BOOST_CHECK_THROW(store->run(QStringLiteral("DELETE FROM unit_document")), Error);
  BOOST_CHECK_THROW(store->run(QStringLiteral("UPDATE document SET sha256 = sha256")), Error);
}

BOOST_DATA_TEST_CASE(a_pass_neither_moves_nor_names, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  store::append(*store, sampleChoice(QStringLiteral("Skerrymouth")));
  const Recorded done =
      examine(*store, examination("B1", fleet::ExaminationResult::pass), {}, today, technician);
  BOOST_TEST(!done.quarantined);
  BOOST_TEST(done.shows.empty());
  fleet::Examination later = examination("B1", fleet::ExaminationResult::pass);
  later.date = today.addDays(1);
  BOOST_CHECK_THROW(examine(*store, later, {}, today, technician), Error);
  later.date = today;
  later.serial = QStringLiteral("C1");
  BOOST_CHECK_THROW(examine(*store, later, {}, today, technician), Error); // the rule is not for carts
}

BOOST_DATA_TEST_CASE(a_fault_keeps_it_back_until_somebody_releases_it, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  fleet::Occurrence fault;
  fault.serial = QStringLiteral("B3");
  fault.kind = fleet::OccurrenceKind::fault;
  fault.date = today;
  fault.remark = QStringLiteral("dented grille");
  BOOST_TEST(recordOccurrence(*store, fault, {}, today, technician).quarantined);
  BOOST_TEST((scan(*store, taskOut(*store), QStringLiteral("B3"), monday, technician).word ==
              ScanAnswer::Word::refused));
  BOOST_CHECK_THROW(
      setState(*store, QStringLiteral("B3"), fleet::UnitState::ready, {}, {}, today, technician), Error);
  setState(*store, QStringLiteral("B3"), fleet::UnitState::ready, {}, QStringLiteral("new grille"), today,
           technician);
  BOOST_TEST((scan(*store, taskOut(*store), QStringLiteral("B3"), monday, technician).word ==
              ScanAnswer::Word::done));
  BOOST_CHECK_THROW(setState(*store, QStringLiteral("B4"), fleet::UnitState::away, {}, QStringLiteral("x"),
                             today, technician),
                    Error);
  BOOST_TEST(store::checkStore(*store).isEmpty());
}

BOOST_DATA_TEST_CASE(an_outing_counts_as_a_use_and_its_hours_must_be_recorded, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  fleet::ExaminationRule rule;
  rule.name = QStringLiteral("by use");
  rule.kind = fleet::UnitKind::cabinet;
  rule.uses = 1;
  store::save(*store, rule);
  fleet::Examination fact = examination("B1", fleet::ExaminationResult::pass);
  fact.rule = rule.name;
  fact.date = QDate(2027, 2, 1);
  fact.by = technician;
  store::append(*store, fact);
  const ScanTask out = taskOut(*store);
  BOOST_TEST((scan(*store, out, QStringLiteral("B1"), monday, technician).word == ScanAnswer::Word::done));
  BOOST_TEST((scan(*store, taskIn(), QStringLiteral("B1"), monday.addDays(2), technician).word ==
              ScanAnswer::Word::done));
  const ScanAnswer again = scan(*store, out, QStringLiteral("B1"), monday.addDays(3), technician);
  BOOST_TEST((again.word == ScanAnswer::Word::refused));
  BOOST_TEST(again.text.contains("by use"));
}

BOOST_DATA_TEST_CASE(a_file_that_was_tampered_with_is_found, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fillWarehouse(*store);
  keepDocument(*store, QStringLiteral("B1"),
               {QStringLiteral("b1.jpg"), QByteArray("picture"), fleet::DocumentKind::photograph},
               technician);
  store->connection().execute(engine == store::Engine::sqlite
                                  ? QStringLiteral("DROP TRIGGER document_no_update")
                                  : QStringLiteral("DROP TRIGGER document_stays ON document"));
  store->run(QStringLiteral("UPDATE document SET content = :bytes"), {{"bytes", QByteArray("another")}});
  BOOST_TEST(store::documentsAstray(*store).size() == 1);
  BOOST_TEST(!store::checkStore(*store).isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
