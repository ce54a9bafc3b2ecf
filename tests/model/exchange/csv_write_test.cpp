// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <random>

#include "exchange/csv.h"
#include "exchange/csv_bytes.h"
#include "exchange/csv_records.h"
#include "exchange/csv_write.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

std::string written(const std::vector<QStringList>& records, const CsvWriting& writing = {}) {
  return writeCsv(records, writing).toStdString();
}

std::vector<QStringList> readBack(const QByteArray& bytes, char separator) {
  std::vector<Fault> faults;
  const QString text = decodeCsv(bytes, faults);
  std::vector<QStringList> records;
  for (const CsvRecord& record : splitCsv(text, QLatin1Char(separator), faults)) {
    records.push_back(record.cells);
  }
  for (const Fault& fault : faults) {
    BOOST_ERROR(hangbook::exchange::text(fault).toStdString());
  }
  return records;
}

} // namespace

BOOST_AUTO_TEST_SUITE(csv_write)

BOOST_AUTO_TEST_CASE(quotes_only_where_they_are_needed) {
  BOOST_TEST(written({{QStringLiteral("a"), QStringLiteral("b c"), {}},
                      {QStringLiteral("1,5"), QStringLiteral("2;5")}}) == "a,b c,\n\"1,5\",2;5\n");
  BOOST_TEST(written({{QStringLiteral("32' 6\"")}}) == "\"32' 6\"\"\"\n");
  BOOST_TEST(written({{QStringLiteral("x\ny"), QStringLiteral(" z")}}) == "\"x\ny\",\" z\"\n");
  BOOST_TEST(written({{QString()}}) == "\"\"\n");
}

BOOST_AUTO_TEST_CASE(separators_breaks_and_mark) {
  const std::vector<QStringList> records = {{QStringLiteral("a;b"), QStringLiteral("°")}};
  BOOST_TEST(written(records, {';', true, true}) == "\xEF\xBB\xBF\"a;b\";°\r\n");
  BOOST_TEST(written(records, {'\t', false, false}) == "a;b\t°\n");
}

// A sheet may hold a text that a spreadsheet takes for a formula. It is written as it is: a mark in front
// would change the text without a word.
BOOST_AUTO_TEST_CASE(nothing_is_added_to_a_text) {
  BOOST_TEST(written({{QStringLiteral("=1+1"), QStringLiteral("-3"), QStringLiteral("@x")}}) ==
             "=1+1,-3,@x\n");
}

BOOST_AUTO_TEST_CASE(what_is_no_text_is_refused) {
  BOOST_CHECK_THROW(writeCsv({{QString(QChar(u'\0'))}}), Error);
  BOOST_CHECK_THROW(writeCsv({{QString(QChar(0xD800))}}), Error);
  BOOST_CHECK_THROW(writeCsv({QStringList()}), Error);
  BOOST_CHECK_THROW(writeCsv({{QStringLiteral("a")}}, {'|', false, false}), Error);
}

BOOST_AUTO_TEST_CASE(a_file_may_begin_with_any_text) {
  for (const QString& first :
       {QString(QChar(0xFEFF)) + QStringLiteral("a"), QStringLiteral("sep=;"), QStringLiteral("\"")}) {
    for (const bool mark : {false, true}) {
      const std::vector<QStringList> records = {{first, QStringLiteral("b")}};
      BOOST_TEST((readBack(writeCsv(records, {',', false, mark}), ',') == records));
    }
  }
}

BOOST_AUTO_TEST_CASE(any_text_reads_back_to_the_character) {
  std::mt19937 random(5);
  const QStringList pieces = {QStringLiteral("\""),   QStringLiteral(","),    QStringLiteral(";"),
                              QStringLiteral("\t"),   QStringLiteral("\n"),   QStringLiteral("\r"),
                              QStringLiteral("\r\n"), QStringLiteral(" "),    QStringLiteral("a"),
                              QStringLiteral("7"),    QStringLiteral("°"),    QStringLiteral("🎺"),
                              QString(QChar(0xFEFF)), QString(QChar(0x2028)), QStringLiteral("sep=")};
  const auto upTo = [&random](qsizetype most) {
    return std::uniform_int_distribution<qsizetype>(0, most)(random);
  };
  for (int round = 0; round < 4000; ++round) {
    std::vector<QStringList> records;
    for (qsizetype row = upTo(4); row >= 0; --row) {
      QStringList cells;
      for (qsizetype cell = upTo(3); cell >= 0; --cell) {
        QString text;
        for (qsizetype length = upTo(6); length > 0; --length) {
          text += pieces[upTo(pieces.size() - 1)];
        }
        cells << text;
      }
      records.push_back(cells);
    }
    const char separator = ",;\t"[upTo(2)];
    const CsvWriting writing{separator, upTo(1) == 1, upTo(1) == 1};
    const QByteArray bytes = writeCsv(records, writing);
    BOOST_TEST_REQUIRE((readBack(bytes, separator) == records), bytes.toStdString());
  }
}

// Whatever the bytes are, reading them ends with a table or with faults.
BOOST_AUTO_TEST_CASE(any_bytes_are_survived) {
  std::mt19937 random(6);
  const QByteArray alphabet = QByteArray("\",;\t\n\r 1a.\xC3\xA9\xFF\xFE\xEF\xBB\xBF", 18) + '\0';
  std::uniform_int_distribution<qsizetype> letter(0, alphabet.size() - 1);
  for (int round = 0; round < 20000; ++round) {
    QByteArray bytes;
    for (int length = round % 24; length > 0; --length) {
      bytes += alphabet[letter(random)];
    }
    std::vector<Fault> faults;
    const QString text = decodeCsv(bytes, faults);
    BOOST_TEST_REQUIRE((faults.empty() || text.isEmpty()));
    splitCsv(text, u',', faults);
    const CsvTable table = readCsv(bytes);
    for (const CsvRecord& row : table.rows) {
      BOOST_TEST_REQUIRE(row.cells.size() == static_cast<qsizetype>(table.headings.size()));
    }
    for (const Fault& fault : faults) {
      BOOST_TEST_REQUIRE(!fault.expected.isEmpty());
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
