// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <sstream>

#include "terminal/table.h"

using hangbook::terminal::brokenInto;
using hangbook::terminal::Column;
using hangbook::terminal::shownWidth;
using hangbook::terminal::Table;

namespace {

std::string printed(const Table& table, int width = 110) {
  std::ostringstream out;
  table.print(out, {}, width);
  return out.str();
}

int widestLine(const std::string& text) {
  int widest = 0;
  for (const QString& line : QString::fromStdString(text).split(QLatin1Char('\n'))) {
    widest = std::max(widest, shownWidth(line));
  }
  return widest;
}

} // namespace

BOOST_AUTO_TEST_SUITE(terminal_table)

BOOST_AUTO_TEST_CASE(words_stand_flush_left_and_figures_flush_right) {
  Table table({{QStringLiteral("point")}, {QStringLiteral("load [kN]"), Column::Kind::figure}});
  table.add({QStringLiteral("L1"), QStringLiteral("2.50")});
  table.add({QStringLiteral("Größe"), QStringLiteral("12.00")});
  BOOST_TEST(printed(table) == "point  load [kN]\n"
                               "L1          2.50\n"
                               "Größe      12.00\n");
}

BOOST_AUTO_TEST_CASE(a_column_without_a_filled_cell_is_left_out) {
  Table table({{QStringLiteral("a")}, {QStringLiteral("b")}, {QStringLiteral("c")}});
  table.add({QStringLiteral("1"), QString(), QStringLiteral("3")});
  BOOST_TEST(printed(table) == "a  c\n1  3\n");
}

BOOST_AUTO_TEST_CASE(text_gives_way_until_the_table_fits) {
  Table table(
      {{QStringLiteral("rule")}, {QStringLiteral("sentence"), Column::Kind::text}, {QStringLiteral("end")}});
  table.add({QStringLiteral("headroom"),
             QStringLiteral("the bar stands 0.42 m under the low steel of this room, which is too little"),
             QStringLiteral("x")});
  const std::string narrow = printed(table, 40);
  BOOST_TEST(widestLine(narrow) <= 40);
  for (const char* word : {"headroom", "0.42", "steel", "little"}) {
    BOOST_TEST(narrow.find(word) != std::string::npos);
  }
}

BOOST_AUTO_TEST_CASE(a_note_stands_under_its_row_over_the_whole_width) {
  Table table({{QStringLiteral("rule")}, {QStringLiteral("verdict")}});
  table.add({QStringLiteral("bar"), QStringLiteral("holds")},
            {QStringLiteral("a sentence longer than both columns together"), QStringLiteral("its source")});
  table.add({QStringLiteral("count"), QStringLiteral("holds")});
  const std::string text = printed(table, 30);
  BOOST_TEST(text == "rule   verdict\n"
                     "bar    holds\n"
                     "    a sentence longer than\n"
                     "    both columns together\n"
                     "    its source\n"
                     "count  holds\n");
}

BOOST_AUTO_TEST_CASE(width_is_that_of_the_letters_shown) {
  BOOST_TEST(shownWidth(QStringLiteral("e\u0301")) == 1); // e and an accent that sits on it
  BOOST_TEST(shownWidth(QStringLiteral("日本")) == 4);
  BOOST_TEST(shownWidth(QString()) == 0);
}

BOOST_AUTO_TEST_CASE(text_breaks_between_words_and_inside_what_is_too_long) {
  BOOST_TEST((brokenInto(QStringLiteral("one two three"), 7) ==
              QStringList{QStringLiteral("one two"), QStringLiteral("three")}));
  BOOST_TEST(
      (brokenInto(QStringLiteral("abcdefgh i"), 3) ==
       QStringList{QStringLiteral("abc"), QStringLiteral("def"), QStringLiteral("gh"), QStringLiteral("i")}));
  BOOST_TEST((brokenInto(QString(), 5) == QStringList{QString()}));
}

BOOST_AUTO_TEST_SUITE_END()
