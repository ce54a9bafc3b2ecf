// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "exchange/csv_form.h"
#include "exchange/import.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::exchange;
namespace data = boost::unit_test::data;

namespace {

Import taken(const QByteArray& bytes, const QString& format) {
  CsvForm form;
  form.dateFormat = format;
  const Importer importer{QStringLiteral("Thea Lockyard"),
                          QDateTime(QDate(2027, 1, 1), QTime(8, 0), Qt::UTC)};
  return readFile(Kind::shows, bytes, {}, importer, form);
}

QByteArray tourOf(const char* date) {
  return QByteArray("record,name,source,source date\ntour,Ostler Run,office,") + date + "\n";
}

} // namespace

BOOST_AUTO_TEST_SUITE(exchange_date_format)

BOOST_AUTO_TEST_CASE(dates_are_read_as_was_said) {
  const Import import = taken(tourOf("31.12.2026"), QStringLiteral("dd.MM.yyyy"));
  BOOST_REQUIRE(import.faults.empty());
  BOOST_REQUIRE(import.after.tours.size() == 1);
  BOOST_TEST((import.after.tours[0].source.date == QDate(2026, 12, 31)));
  BOOST_TEST((taken(tourOf("3/4/2027"), QStringLiteral("M/d/yyyy")).after.tours.at(0).source.date ==
              QDate(2027, 3, 4)));
}

BOOST_DATA_TEST_CASE(what_is_written_otherwise_is_a_fault,
                     data::make({"2026-12-31", "31.12.26", "1.12.2026", "31.13.2026", "30.02.2027",
                                 "31.12.2026 "
                                 "x"}),
                     text) {
  const Import import = taken(tourOf(text), QStringLiteral("dd.MM.yyyy"));
  BOOST_REQUIRE(import.faults.size() == 1);
  BOOST_TEST(import.faults[0].line == 2);
  BOOST_TEST(import.faults[0].column.toStdString() == "source date");
  BOOST_TEST(import.faults[0].expected.toStdString() == "a date such as 02.04.2027");
  BOOST_TEST(import.after.tours.empty());
}

BOOST_DATA_TEST_CASE(formats_that_do_not_tell_every_day_are_refused,
                     data::make({"dd.MM.yy", "MM.yyyy", "dd.yyyy", "dMyyyy", "yyyy", "ddd MM yyyy", "day"}),
                     format) {
  BOOST_TEST(!tellsEveryDay(QString::fromLatin1(format)));
  BOOST_CHECK_THROW(taken(tourOf("01.01.2027"), QString::fromLatin1(format)), Error);
}

BOOST_DATA_TEST_CASE(formats_that_tell_every_day_are_taken,
                     data::make({"dd.MM.yyyy", "d.M.yyyy", "M/d/yyyy", "yyyyMMdd", "d MMM yyyy",
                                 "yyyy-MM-dd"}),
                     format) {
  BOOST_TEST(tellsEveryDay(QString::fromLatin1(format)));
}

BOOST_AUTO_TEST_SUITE_END()
