// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "quantity/error.h"
#include "terminal/figures.h"
#include "terminal/names.h"
#include "terminal/spans.h"

using namespace hangbook;
using namespace hangbook::terminal;
namespace data = boost::unit_test::data;

BOOST_AUTO_TEST_SUITE(terminal_names)

BOOST_AUTO_TEST_CASE(the_likest_names_come_first) {
  const QStringList known{QStringLiteral("Tamberwick"), QStringLiteral("Ostrel"),
                          QStringLiteral("Pollan Cross"), QStringLiteral("Grenmouth")};
  BOOST_TEST(nearest(QStringLiteral("pollan"), known).first().toStdString() == "Pollan Cross");
  BOOST_TEST(nearest(QStringLiteral("Ostrell"), known).first().toStdString() == "Ostrel");
  BOOST_TEST(nearest(QStringLiteral("cross"), known, 1).size() == 1);
  const std::string line = unknownName(QStringLiteral("Grenmuth"), QStringLiteral("a show"), known).what();
  BOOST_TEST(line == "“Grenmuth” is not a show; there are: Grenmouth, Ostrel, Tamberwick, Pollan Cross");
  BOOST_TEST(std::string(unknownName(QStringLiteral("x"), QStringLiteral("a show"), {}).what()) ==
             "“x” is not a show; there is none yet");
}

BOOST_AUTO_TEST_CASE(names_are_the_same_however_their_accents_were_typed) {
  BOOST_TEST(sameName(QStringLiteral("Caf\u00e9 Størm"), QStringLiteral("Cafe\u0301 Størm")));
  BOOST_TEST(!sameName(QStringLiteral("Ostrel"), QStringLiteral("ostrel")));
}

BOOST_AUTO_TEST_CASE(spans_are_days_weeks_or_months) {
  const QDate from(2027, 8, 31);
  BOOST_TEST((endOfSpan("--within", "90d", from) == QDate(2027, 11, 29)));
  BOOST_TEST((endOfSpan("--within", "12w", from) == QDate(2027, 11, 23)));
  BOOST_TEST((endOfSpan("--within", "6m", from) == QDate(2028, 2, 29)));
  BOOST_TEST((endOfSpan("--within", "0d", from) == from));
}

BOOST_DATA_TEST_CASE(what_is_no_span_is_refused,
                     data::make(std::vector<std::string>{"", "90", "d", "-3d", "1.5m", "90 days", "6y", "9d9",
                                                         "99999999999d", "2000m", "+5d"}),
                     text) {
  BOOST_CHECK_EXCEPTION(endOfSpan("--within", text, QDate(2027, 1, 1)), Error, [&](const Error& error) {
    return error.trouble() == Trouble::badInput && std::string(error.what()).starts_with("--within " + text);
  });
}

BOOST_AUTO_TEST_CASE(figures_that_are_not_known_are_a_dash_or_null) {
  BOOST_TEST(shown(std::nullopt, 2).toStdString() == "–");
  BOOST_TEST(shown(-0.001, 2).toStdString() == "0.00");
  BOOST_TEST(shownAngle(2.5).toStdString() == "+2.5");
  BOOST_TEST(shownAngle(-4.0).toStdString() == "-4.0");
  BOOST_TEST(shownAngle(0.0).toStdString() == "0.0");
  BOOST_TEST(jsonFigure(std::nullopt).isNull());
  BOOST_TEST(jsonFigure(0.0).isDouble());
  const QString bass = QStringLiteral("bass");
  BOOST_TEST(shownStack({bass, bass, QStringLiteral("upper"), bass}).toStdString() == "2 bass, upper, bass");
}

BOOST_AUTO_TEST_SUITE_END()
