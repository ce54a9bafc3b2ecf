// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <limits>

#include <QTimeZone>

#include "quantity/quantity.h"
#include "store/store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::bothEngines;
using hangbook::testing::FreshStore;

namespace {

const std::vector<Migration> steps{testing::step(
    1, QStringLiteral("kinds"),
    "CREATE TABLE kinds (id @uuid NOT NULL PRIMARY KEY, words @text NOT NULL, figure @real, number @int, "
    "flag @bool, day @date, moment @instant, notes @json) @strict;")};

const QString insert =
    QStringLiteral("INSERT INTO kinds (id, words, figure, number, flag, day, moment, notes) "
                   "VALUES (:id, :words, :figure, :number, :flag, :day, :moment, :notes)");

Bindings bindings(const QUuid& id, const QString& words = QString()) {
  return {{"id", id},
          {"words", words},
          {"figure", std::nullopt},
          {"number", std::nullopt},
          {"flag", std::nullopt},
          {"day", std::nullopt},
          {"moment", std::nullopt},
          {"notes", std::nullopt}};
}

bool says(const Error& error, const char* words) {
  const bool found = std::string(error.what()).find(words) != std::string::npos;
  if (!found) {
    BOOST_TEST_MESSAGE(error.what());
  }
  return found;
}

} // namespace

BOOST_AUTO_TEST_SUITE(statement)

BOOST_DATA_TEST_CASE(every_kind_comes_back_as_it_went_in, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const QUuid id = QUuid::createUuid();
  const QDateTime moment(QDate(2027, 3, 28), QTime(1, 30, 15, 123), QTimeZone("Europe/Berlin"));
  const QString words = QStringLiteral("Käfig ‘ÿ’ 'quoted' \\ back; ? :x $1 line\nnext");
  store->run(insert, {{"id", id},
                      {"words", words},
                      {"figure", 0.1 + 0.2},
                      {"number", std::numeric_limits<qint64>::max()},
                      {"flag", true},
                      {"day", QDate(2028, 2, 29)},
                      {"moment", moment},
                      {"notes", QStringLiteral("[1, 2.5]")}});
  const auto row = store->one(QStringLiteral("SELECT * FROM kinds WHERE id = :id"), {{"id", id}});
  BOOST_REQUIRE(row);
  BOOST_CHECK(row->uuid("id") == id);
  BOOST_TEST(row->text("words").toStdString() == words.toStdString());
  BOOST_TEST(row->real("figure") == 0.1 + 0.2, boost::test_tools::tolerance(0.0));
  BOOST_TEST(row->integer("number") == std::numeric_limits<qint64>::max());
  BOOST_TEST(row->flag("flag"));
  BOOST_CHECK(row->date("day") == QDate(2028, 2, 29));
  BOOST_CHECK(row->instant("moment") == moment);
  BOOST_CHECK(row->instant("moment").timeSpec() == Qt::UTC);
  BOOST_TEST(row->text("notes").toStdString() == "[1, 2.5]");
}

BOOST_DATA_TEST_CASE(figures_keep_every_bit, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  for (const double figure :
       {0.0, 1.0 / 3, 5e-324, 1.7976931348623157e308, -123456.78901234567, 1e22, 9007199254740993.0}) {
    const QUuid id = QUuid::createUuid();
    Bindings values = bindings(id);
    values[2].second = figure;
    store->run(insert, values);
    const double back =
        store->one(QStringLiteral("SELECT figure FROM kinds WHERE id = :id"), {{"id", id}})->real("figure");
    BOOST_TEST(back == figure, boost::test_tools::tolerance(0.0));
  }
}

BOOST_DATA_TEST_CASE(what_is_not_known_stays_not_known, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  store->run(insert, bindings(QUuid::createUuid()));
  const Rows rows = store->rows(QStringLiteral("SELECT * FROM kinds"));
  BOOST_REQUIRE(rows.size() == 1U);
  const Row& row = rows.front();
  BOOST_TEST(row.text("words").isEmpty());
  BOOST_TEST(!row.isNull("words"));
  BOOST_TEST(!row.maybeReal("figure"));
  BOOST_TEST(!row.maybe<Length>("figure"));
  BOOST_TEST(!row.maybeNumber("number"));
  BOOST_TEST(!row.maybeFlag("flag"));
  BOOST_TEST(row.maybeDate("day").isNull());
  BOOST_TEST(row.maybeInstant("moment").isNull());
  BOOST_CHECK_EXCEPTION(row.real("figure"), Error, [](const Error& e) { return says(e, "figure"); });
  BOOST_CHECK_EXCEPTION(row.real("figurre"), Error,
                        [](const Error& e) { return says(e, "no column figurre"); });
}

BOOST_AUTO_TEST_CASE(a_figure_that_is_not_finite_is_refused) {
  BOOST_CHECK_THROW(Value(std::numeric_limits<double>::quiet_NaN()), Error);
  BOOST_CHECK_THROW(Value(std::numeric_limits<double>::infinity()), Error);
  BOOST_CHECK_THROW(Value(metres(std::nan(""))), Error);
}

BOOST_DATA_TEST_CASE(names_are_compared_with_the_statement, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const QString sql = QStringLiteral("SELECT count(*) AS n FROM kinds WHERE words = :words");
  BOOST_CHECK_EXCEPTION(store->rows(sql, {{"wrods", "a"}}), StoreError,
                        [](const Error& e) { return says(e, "\"wrods\" is bound but has no placeholder"); });
  BOOST_CHECK_EXCEPTION(store->rows(sql), StoreError,
                        [](const Error& e) { return says(e, "nothing is bound to \":words\""); });
  BOOST_CHECK_EXCEPTION(store->rows(sql, {{"words", "a"}, {"words", "b"}}), StoreError,
                        [](const Error& e) { return says(e, "bound twice"); });
  BOOST_TEST(store->one(sql, {{"words", "a"}})->integer("n") == 0);
}

BOOST_DATA_TEST_CASE(one_refuses_more_rows_than_one, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  store->run(insert, bindings(QUuid::createUuid()));
  BOOST_CHECK(store->one(QStringLiteral("SELECT id FROM kinds")));
  store->run(insert, bindings(QUuid::createUuid()));
  BOOST_CHECK_THROW(store->one(QStringLiteral("SELECT id FROM kinds")), StoreError);
  BOOST_CHECK(!store->one(QStringLiteral("SELECT id FROM kinds WHERE words = 'none'")));
}

BOOST_DATA_TEST_CASE(answers_stand_beside_each_other_and_block_nothing, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  store->run(insert, bindings(QUuid::createUuid(), QStringLiteral("a")));
  const Rows first = store->rows(QStringLiteral("SELECT * FROM kinds"));
  store->rows(QStringLiteral("SELECT count(*) AS n FROM kinds"));
  BOOST_TEST(first.at(0).text("words").toStdString() == "a");
  BOOST_TEST(store->run(QStringLiteral("DELETE FROM kinds")) == 1);
  if (engine == Engine::sqlite) { // an open SELECT would block it
    BOOST_CHECK_NO_THROW(store->run(QStringLiteral("DROP TABLE kinds")));
  }
}

BOOST_DATA_TEST_CASE(refusals_carry_their_cause, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open(&steps);
  const QUuid id = QUuid::createUuid();
  store->run(insert, bindings(id));
  BOOST_CHECK_EXCEPTION(store->run(insert, bindings(id)), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::duplicate; });
  BOOST_CHECK_EXCEPTION(store->run(insert, bindings(QUuid())), StoreError,
                        [](const StoreError& e) { return e.cause() == Cause::check; });
  BOOST_CHECK_EXCEPTION(
      store->run(QStringLiteral("INSERT INTO kinds (id, words, day) VALUES (:id, '', :day)"),
                 {{"id", QUuid::createUuid()}, {"day", "soon"}}),
      StoreError, [](const StoreError& e) { return e.cause() == Cause::check; });
}

BOOST_AUTO_TEST_SUITE_END()
