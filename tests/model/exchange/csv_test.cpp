// SPDX-License-Identifier: GPL-3.0-or-later
// Files as spreadsheets write them, read as tables.
#include <boost/test/unit_test.hpp>

#include <ostream>

#include <QStringConverter>

#include "exchange/csv.h"

using namespace hangbook;
using namespace hangbook::exchange;

namespace {

std::string plain(const QString& text) {
  return text.toStdString();
}

/// The rows as text: cells joined by "|", each row on a line with its number in the file.
std::string rows(const CsvTable& table) {
  QString all;
  for (const CsvRecord& row : table.rows) {
    all += QStringLiteral("%1:%2\n").arg(row.line).arg(row.cells.join(u'|'));
  }
  return plain(all);
}

/// Headings as "name[unit]".
std::string headings(const CsvTable& table) {
  QStringList all;
  for (const CsvHeading& heading : table.headings) {
    all << (heading.unit.isEmpty() ? heading.name : QStringLiteral("%1[%2]").arg(heading.name, heading.unit));
  }
  return plain(all.join(u' '));
}

std::string faults(const CsvTable& table) {
  QString all;
  for (const Fault& fault : table.faults) {
    all += text(fault) + u'\n';
  }
  return plain(all);
}

bool contains(const std::string& whole, const std::string& part) {
  return whole.find(part) != std::string::npos;
}

} // namespace

BOOST_AUTO_TEST_SUITE(csv)

BOOST_AUTO_TEST_CASE(a_plain_file) {
  const CsvTable table = readCsv("serial,type,mass [kg]\nA1,Marram bass,92\nA2,Marram bass,92.5\n");
  BOOST_TEST(faults(table) == "");
  BOOST_TEST(headings(table) == "serial type mass[kg]");
  BOOST_TEST(rows(table) == "2:A1|Marram bass|92\n3:A2|Marram bass|92.5\n");
  BOOST_TEST(plain(formText(table)) == "separated by “,”, decimal mark “.”");
}

BOOST_AUTO_TEST_CASE(quotes_keep_separators_breaks_and_doubled_quotes) {
  const CsvTable table = readCsv("name,access\n\"North, bay\",\"ramp\r\nthen \"\"left\"\"\"\nSouth,door\n");
  BOOST_TEST(faults(table) == "");
  BOOST_TEST(rows(table) == "2:North, bay|ramp\r\nthen \"left\"\n4:South|door\n");
}

BOOST_AUTO_TEST_CASE(a_quote_inside_a_plain_cell_is_an_ordinary_character) {
  const CsvTable table = readCsv("name,low steel\nHall,32' 6\"\n");
  BOOST_TEST(faults(table) == "");
  BOOST_TEST(rows(table) == "2:Hall|32' 6\"\n");
}

BOOST_AUTO_TEST_CASE(every_way_to_end_a_line) {
  for (const char* file : {"a,b\n1,2\n3,4\n", "a,b\r\n1,2\r\n3,4\r\n", "a,b\r1,2\r3,4\r", "a,b\n1,2\n3,4"}) {
    BOOST_TEST(rows(readCsv(file)) == "2:1|2\n3:3|4\n");
  }
}

BOOST_AUTO_TEST_CASE(blank_lines_are_skipped_and_still_counted) {
  BOOST_TEST(rows(readCsv("\n\na,b\n\n1,2\n,\n \n\"\",\"\"\n3,4\n\n")) == "5:1|2\n9:3|4\n");
  BOOST_TEST(readCsv("\n\na,b\n").headingLine == 3);
}

BOOST_AUTO_TEST_CASE(the_separator_is_found_in_the_headings) {
  BOOST_TEST(readCsv("a;b\n1;2\n").separator == ';');
  BOOST_TEST(readCsv("a\tb\n1\t2\n").separator == '\t');
  BOOST_TEST(readCsv("a,b\n1,2\n").separator == ',');
  BOOST_TEST(readCsv("serial\nA1\n").separator == ',');
  // what stands in quotes does not count
  BOOST_TEST(readCsv("\"a, m\";\"b, kg\"\n1;2\n").separator == ';');
  // where the headings hold two, the lines tell
  BOOST_TEST(readCsv("name;low steel, ft\nHall;32\n").separator == ';');
  BOOST_TEST(headings(readCsv("name;low steel, ft\nHall;32\n")) == "name low_steel[ft]");
  BOOST_TEST(readCsv("sep=;\na, b;c\n1;2\n").separator == ';');
  BOOST_TEST(rows(readCsv("sep=;\r\na;c\r\n1;2\r\n")) == "3:1|2\n");
}

BOOST_AUTO_TEST_CASE(a_separator_that_is_not_clear_is_a_fault_until_it_is_said) {
  const QByteArray file = "a,b;c\n1,2;3\n";
  BOOST_TEST(contains(faults(readCsv(file)), "line 1: expected headings with one separator"));
  BOOST_TEST(rows(readCsv(file, {.separator = ';', .decimalMark = {}})) == "2:1,2|3\n");
  BOOST_TEST(rows(readCsv(file, {.separator = ',', .decimalMark = {}})) == "2:1|2;3\n");
  BOOST_CHECK_THROW(readCsv(file, {.separator = '|', .decimalMark = {}}), Error);
  BOOST_CHECK_THROW(readCsv(file, {.separator = {}, .decimalMark = ';'}), Error);
}

BOOST_AUTO_TEST_CASE(byte_order_marks) {
  BOOST_TEST(headings(readCsv("\xEF\xBB\xBF"
                              "a,b\n1,2\n")) == "a b");
  const QString file = QStringLiteral("größe,b\n1,2\n");
  for (const auto encoding : {QStringConverter::Utf16LE, QStringConverter::Utf16BE}) {
    QStringEncoder encoder(encoding, QStringConverter::Flag::WriteBom);
    const QByteArray bytes = encoder(file);
    const CsvTable table = readCsv(bytes);
    BOOST_TEST(faults(table) == "");
    BOOST_TEST(headings(table) == "größe b");
    BOOST_TEST(contains(faults(readCsv(bytes.chopped(1))), "UTF-16 with broken characters"));
  }
}

BOOST_AUTO_TEST_CASE(other_bytes_are_a_fault_with_line_and_byte) {
  BOOST_TEST(
      faults(readCsv("a,b\r\n1,2\r\nx,Caf\xE9\r\n")) ==
      "line 3: read “0xe9 at byte 6”, expected UTF-8: save the file as UTF-8 (it may be Windows-1252 or "
      "Latin-1)\n");
  BOOST_TEST(readCsv("a,b\nCaf\xE9,1\n").rows.empty());
  for (const char* wrong : {"a\x80", "a\xC0\xAF", "a\xE0\x80\xAF", "a\xED\xA0\x80", "a\xF4\x90\x80\x80",
                            "a\xF5\x80\x80\x80", "a\xE2\x82"}) {
    BOOST_TEST(contains(faults(readCsv(wrong)), "at byte 2"));
  }
  BOOST_TEST(faults(readCsv("a\n\xF0\x9F\x8E\xBA\xC2\xB0\xE2\x80\x9C\n")) == "");
}

BOOST_AUTO_TEST_CASE(nul_is_refused) {
  BOOST_TEST(contains(faults(readCsv(QByteArray("a,b\n1,\0\n", 8))), "line 2: read “a NUL at byte 3”"));
}

BOOST_AUTO_TEST_CASE(a_quote_that_is_never_closed_names_its_first_line) {
  BOOST_TEST(contains(faults(readCsv("a,b\n1,2\n3,\"4\n5,6\n7,8\n")),
                      "line 3: read “\"4 5,6 7,8 ”, expected a closing quotation mark"));
}

BOOST_AUTO_TEST_CASE(quotes_in_the_wrong_place) {
  BOOST_TEST(contains(faults(readCsv("a,b\n\"x\" y,2\n")), "line 2: read “ y”, expected a separator"));
  BOOST_TEST(
      contains(faults(readCsv("a,b\n1, \"x, y\"\n")), "line 2: read “ \"x”, expected no space before"));
}

BOOST_AUTO_TEST_CASE(ragged_rows) {
  const CsvTable shorter = readCsv("a,b,c\n1\n1,2\n");
  BOOST_TEST(faults(shorter) == "");
  BOOST_TEST(rows(shorter) == "2:1||\n3:1|2|\n");
  // what is empty beyond the headings is nothing
  BOOST_TEST(faults(readCsv("a,b,,\n1,2,,\n")) == "");
  BOOST_TEST(faults(readCsv("a,b\n1,2,,3\n")) ==
             "line 2: read “3”, expected at most 2 cells, one for each heading, not 4\n");
}

BOOST_AUTO_TEST_CASE(headings_that_cannot_stand) {
  BOOST_TEST(faults(readCsv("mass,Mass\n1,2\n")) ==
             "line 1, column Mass: read “Mass”, expected each heading once; column 1 is “mass”\n");
  BOOST_TEST(contains(faults(readCsv("low steel,x,Low-Steel [ft]\n")), "column 1 is “low steel”"));
  BOOST_TEST(contains(faults(readCsv("mass (kg),mass_lb\n")), "each heading once"));
  BOOST_TEST(contains(faults(readCsv("a,,c\n1,2,3\n")), "a heading over column 2"));
  BOOST_TEST(contains(faults(readCsv("")), "expected a line of headings"));
  BOOST_TEST(contains(faults(readCsv("\n \n")), "expected a line of headings"));
}

BOOST_AUTO_TEST_CASE(columns_are_found_in_any_spelling_and_with_their_unit) {
  const CsvTable table = readCsv("Low Steel [ft],mass_kg,level at 1 m,load_in,level_at_2_m\n");
  BOOST_TEST((table.column(QStringLiteral("low-steel")) == 0));
  BOOST_TEST(plain(table.unit(QStringLiteral("low_steel"))) == "ft");
  BOOST_TEST((table.column(QStringLiteral("mass")) == 1));
  BOOST_TEST(plain(table.unit(QStringLiteral("mass"))) == "kg");
  BOOST_TEST((table.column(QStringLiteral("level at 1 m")) == 2));
  BOOST_TEST(plain(table.unit(QStringLiteral("level at 1 m"))) == "");
  BOOST_TEST((table.column(QStringLiteral("load-in")) == 3));
  BOOST_TEST((table.column(QStringLiteral("level at 2 m")) == 4));
  BOOST_TEST(plain(table.unit(QStringLiteral("level at 2 m"))) == "");
  BOOST_TEST(!table.column(QStringLiteral("load")).has_value());
  BOOST_TEST(plain(table.unit(QStringLiteral("load"))) == "");
}

BOOST_AUTO_TEST_CASE(the_decimal_mark_is_found_where_commas_do_not_separate) {
  const auto mark = [](const QByteArray& file) {
    const CsvTable table = readCsv(file);
    BOOST_TEST(faults(table) == "");
    return table.numbers.decimalMark;
  };
  BOOST_TEST(mark("a;b\n2,5;3\n") == ',');
  BOOST_TEST(mark("a\tb\n2,5 m\t3\n") == ',');
  BOOST_TEST(mark("a;b\n2.5;3\n") == '.');
  BOOST_TEST(mark("a;b\n2;3\n") == '.');
  BOOST_TEST(mark("a;b\n0,125;3\n") == ',');        // 0 thousand does not exist
  BOOST_TEST(mark("a;b\n1,234;3\n2,5;4\n") == ','); // the second tells
  BOOST_TEST(mark("a;b\n32 ft 6,5 in;x\n") == ',');
  BOOST_TEST(mark("a\tb\nx\t-0,35 1,5; 2\n") == ',');
  BOOST_TEST(mark("a;b\nramp, 2.5 m;2,5\n") == ','); // words do not count
  BOOST_TEST(mark("a;b\n02.04.2027;2,5\n") == ',');  // nor dates
  BOOST_TEST(mark("a,b\n1.234,3\n") == '.');
}

BOOST_AUTO_TEST_CASE(a_decimal_mark_that_is_not_clear_is_a_fault_until_it_is_said) {
  const QByteArray grouped = "a;b\nx;1\ny;1,234\n";
  BOOST_TEST(contains(faults(readCsv(grouped)),
                      "line 3: read “1,234”, expected a figure that cannot be a grouped thousand"));
  const CsvTable said = readCsv(grouped, {.separator = {}, .decimalMark = ','});
  BOOST_TEST(faults(said) == "");
  BOOST_TEST(said.numbers.decimalMark == ',');
  BOOST_TEST(contains(faults(readCsv("a;b\n2,5;1\n3;2.5\n")),
                      "line 3: read “2.5”, expected one decimal mark all through: say "
                      "which it is (line 2 has “2,5”)"));
}

BOOST_AUTO_TEST_CASE(limits) {
  QByteArray wide = "a";
  for (int count = 0; count < mostCsvColumns; ++count) {
    wide += ",a";
  }
  BOOST_TEST(contains(faults(readCsv(wide)), "at most 1000 columns"));
  BOOST_TEST(contains(faults(readCsv(QByteArray(64 * 1024 * 1024 + 1, 'a'))), "at most 67108864 bytes"));
}

BOOST_AUTO_TEST_CASE(a_fault_as_text) {
  BOOST_TEST(
      plain(text({7, QStringLiteral("capacity"), QStringLiteral("1 ton"), QStringLiteral("a force")})) ==
      "line 7, column capacity: read “1 ton”, expected a force");
  BOOST_TEST(plain(text({0, {}, {}, QStringLiteral("a file")})) == "expected a file");
  const std::string cut = plain(text({1, {}, QString(200, u'x'), QStringLiteral("less")}));
  BOOST_TEST(cut.size() < 100U);
  BOOST_TEST(contains(cut, "x…”"));
}

BOOST_AUTO_TEST_CASE(fifty_thousand_lines) {
  for (const QByteArray separator : {",", ";"}) {
    QByteArray file = QByteArray("serial,type,mass [kg],place,owner,cart,remark\n").replace(",", separator);
    for (int count = 0; count < 50'000; ++count) {
      file += QByteArray("SA-%1,Marram bass,92.5,warehouse bay 3,,C-17,\"as new, \"\"blue\"\"\"\n")
                  .replace("%1", QByteArray::number(count))
                  .replace(",", separator);
    }
    const CsvTable table = readCsv(file);
    BOOST_TEST(faults(table) == "");
    BOOST_TEST(table.rows.size() == 50'000U);
    BOOST_TEST(table.rows.back().line == 50'001);
  }
}

BOOST_AUTO_TEST_SUITE_END()
