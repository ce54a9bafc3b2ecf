// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "desk/run.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::desk;

BOOST_AUTO_TEST_SUITE(words)

BOOST_AUTO_TEST_CASE(no_word_or_an_option_opens_the_window_and_a_word_does_not) {
  BOOST_TEST(wantsWindow({}));
  BOOST_TEST(wantsWindow({"--demo"}));
  BOOST_TEST(wantsWindow({"--store", "a.sqlite"}));
  BOOST_TEST(!wantsWindow({"options", "--show", "x"}));
  BOOST_TEST(!wantsWindow({"--help"}));
  BOOST_TEST(!wantsWindow({"help"}));
}

BOOST_AUTO_TEST_CASE(options_are_read) {
  const WindowWords read = readWindowWords({"--store", "a b.sqlite", "--demo", "--picture", "p.png",
                                            "--place", "fleet", "--show", "Night one", "--hang", "left",
                                            "--dark", "--us", "--size", "1280x720", "--as-of", "2027-04-02"});
  BOOST_TEST(read.store->toStdString() == "a b.sqlite");
  BOOST_TEST(read.demo);
  BOOST_TEST(read.dark);
  BOOST_TEST(read.us);
  BOOST_TEST(read.picture.toStdString() == "p.png");
  BOOST_TEST(read.place.toStdString() == "fleet");
  BOOST_TEST(read.show.toStdString() == "Night one");
  BOOST_TEST(read.hang.toStdString() == "left");
  BOOST_TEST((read.size == QSize(1280, 720)));
  BOOST_TEST(read.sized);
  BOOST_TEST(!readWindowWords({"--dark"}).sized);
  BOOST_TEST((read.asOf == QDate(2027, 4, 2)));
}

BOOST_DATA_TEST_CASE(what_cannot_be_read_is_named,
                     boost::unit_test::data::make({"--size", "--size", "--as-of", "--as-of"}) ^
                         boost::unit_test::data::make({"wide", "10x10", "tomorrow", "2027-02-30"}),
                     word, text) {
  try {
    readWindowWords({word, text});
    BOOST_ERROR("it was read");
  } catch (const Error& error) {
    BOOST_TEST(error.place() == word);
    BOOST_TEST((error.trouble() == Trouble::badInput));
  }
}

BOOST_AUTO_TEST_CASE(an_unknown_option_and_one_without_its_text_are_refused) {
  BOOST_CHECK_THROW(readWindowWords({"--colour"}), Error);
  BOOST_CHECK_THROW(readWindowWords({"--store"}), Error);
}

BOOST_AUTO_TEST_SUITE_END()
