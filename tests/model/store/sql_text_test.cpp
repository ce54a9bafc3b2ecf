// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "quantity/error.h"
#include "store/sql_text.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::store;
using hangbook::testing::bothEngines;

namespace {

std::string joined(const QStringList& list) {
  return list.join(QStringLiteral(" | ")).toStdString();
}

} // namespace

BOOST_AUTO_TEST_SUITE(sql_text)

BOOST_DATA_TEST_CASE(statements_end_at_semicolons_outside_quotes_and_comments, bothEngines, engine) {
  const QString script = QStringLiteral("-- head; of the file\nINSERT INTO a VALUES ('x;''y', \"b;c\");\n"
                                        "/* a; block */ SELECT 1; ;\n-- only words; no statement\n");
  BOOST_TEST(joined(statementsOf(script, engine)) ==
             "-- head; of the file\nINSERT INTO a VALUES ('x;''y', \"b;c\"); | /* a; block */ SELECT 1;");
}

BOOST_AUTO_TEST_CASE(a_trigger_of_sqlite_is_one_statement) {
  const QString script =
      QStringLiteral("CREATE TRIGGER t BEFORE UPDATE ON a BEGIN SELECT CASE WHEN 1 THEN 2 END; "
                     "SELECT RAISE(ABORT, 'no; never'); END;\nSELECT 2;");
  BOOST_TEST(statementsOf(script, Engine::sqlite).size() == 2);
}

BOOST_AUTO_TEST_CASE(a_function_in_dollar_quotes_is_one_statement) {
  const QString script =
      QStringLiteral("CREATE FUNCTION f() RETURNS trigger LANGUAGE plpgsql AS $body$\nBEGIN\n"
                     "  RAISE EXCEPTION 'no; $$ never';\nEND; $body$;\nSELECT E'it\\'s; so';");
  BOOST_TEST(statementsOf(script, Engine::postgresql).size() == 2);
}

BOOST_DATA_TEST_CASE(an_open_quote_is_refused, bothEngines, engine) {
  BOOST_CHECK_THROW(statementsOf(QStringLiteral("SELECT 'abc; SELECT 2;"), engine), Error);
  BOOST_CHECK_THROW(statementsOf(QStringLiteral("SELECT 1 /* abc"), engine), Error);
}

BOOST_DATA_TEST_CASE(spans_join_to_the_text_again, bothEngines, engine) {
  const QString sql = QStringLiteral("SELECT ':a', \"b\"\"c\" -- :d\n, /* :e */ :f FROM g");
  QString again;
  for (const SqlSpan& span : spansOf(sql, engine)) {
    again += span.text;
  }
  BOOST_TEST(again.toStdString() == sql.toStdString());
}

BOOST_DATA_TEST_CASE(placeholders_are_found_outside_quotes_comments_and_casts, bothEngines, engine) {
  const Placeholders found = placeholdersOf(
      QStringLiteral("SELECT ':a', x::text, :name -- :b\nFROM t WHERE y = :name AND z > :low_m"), engine);
  BOOST_TEST(joined(found.names) == "name | name | low_m");
  BOOST_TEST(found.sql.toStdString() == "SELECT ':a', x::text, ?  \nFROM t WHERE y = ? AND z > ?");
}

BOOST_DATA_TEST_CASE(a_placeholder_without_a_name_is_refused, bothEngines, engine) {
  BOOST_CHECK_THROW(placeholdersOf(QStringLiteral("SELECT ?"), engine), Error);
  BOOST_TEST(placeholdersOf(QStringLiteral("SELECT '?'"), engine).names.isEmpty());
}

BOOST_AUTO_TEST_CASE(type_words_become_the_engines_types) {
  const QString sql =
      QStringLiteral("CREATE TABLE t (on_top @bool NOT NULL, x_m @real, '@real' @text) @strict");
  BOOST_TEST(
      withTypeWords(sql, Engine::sqlite).toStdString() ==
      "CREATE TABLE t (on_top INTEGER CHECK (on_top IN (0, 1)) NOT NULL, x_m REAL, '@real' TEXT) STRICT");
  BOOST_TEST(withTypeWords(sql, Engine::postgresql).toStdString() ==
             "CREATE TABLE t (on_top boolean NOT NULL, x_m double precision, '@real' TEXT COLLATE \"C\") ");
}

BOOST_DATA_TEST_CASE(an_unknown_type_word_is_refused, bothEngines, engine) {
  BOOST_CHECK_THROW(withTypeWords(QStringLiteral("x @reel"), engine), Error);
}

BOOST_AUTO_TEST_CASE(a_checked_word_needs_its_column) {
  BOOST_CHECK_THROW(withTypeWords(QStringLiteral("(@date)"), Engine::sqlite), Error);
}

BOOST_AUTO_TEST_SUITE_END()
