// SPDX-License-Identifier: GPL-3.0-or-later
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <sstream>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "exchange/hang_json.h"
#include "support/example_hang.h"
#include "terminal/run.h"

using namespace hangbook;
using hangbook::testing::exampleHang;
using terminal::Ending;

namespace {

struct Ran {
  Ending ending;
  QJsonDocument out;
  std::string err;
};

Ran statics(const QByteArray& input) {
  std::istringstream in(input.toStdString());
  std::ostringstream out;
  std::ostringstream err;
  const Ending ending = terminal::run({"statics"}, in, out, err);
  return {ending, QJsonDocument::fromJson(QByteArray::fromStdString(out.str())), err.str()};
}

QByteArray listOf(const QJsonArray& entries) {
  return QJsonDocument(entries).toJson();
}

QJsonObject unreachable() {
  hang::Hang hang = exampleHang();
  hang.set.tiltDeg = 60.0;
  return exchange::toJson(hang);
}

} // namespace

BOOST_TEST_DONT_PRINT_LOG_VALUE(Ending)

BOOST_AUTO_TEST_SUITE(statics_command)

BOOST_AUTO_TEST_CASE(one_hang_gives_one_object) {
  const Ran ran = statics(QJsonDocument(exchange::toJson(exampleHang())).toJson());
  BOOST_TEST(ran.ending == Ending::done);
  BOOST_TEST(ran.err.empty());
  BOOST_TEST(ran.out.object().value(QLatin1String("mass_kg")).toDouble() == 250.0);
}

BOOST_AUTO_TEST_CASE(a_list_ends_with_its_worst_entry) {
  const QJsonObject good = exchange::toJson(exampleHang());
  BOOST_TEST(statics(listOf({good, good})).ending == Ending::done);
  BOOST_TEST(statics(listOf({good, unreachable()})).ending == Ending::failing);
  BOOST_TEST(statics(listOf({7, unreachable(), good})).ending == Ending::badInput);
  BOOST_TEST(statics("[]").ending == Ending::done);
  BOOST_TEST(statics("[]").out.isArray());
}

BOOST_AUTO_TEST_CASE(each_refused_entry_is_an_error_in_its_place) {
  const QJsonObject good = exchange::toJson(exampleHang());
  const Ran ran = statics(listOf({7, unreachable(), good, QJsonArray{good}}));
  const QJsonArray answers = ran.out.array();
  BOOST_REQUIRE(answers.size() == 4);
  BOOST_TEST(answers[0][QLatin1String("error")].toString().toStdString() == "[0]: must be an object");
  BOOST_TEST(answers[1][QLatin1String("error")].toString().startsWith(QLatin1String("[1]: a tilt of 60")));
  BOOST_TEST(!answers[2].toObject().contains(QLatin1String("error")));
  BOOST_TEST(answers[3][QLatin1String("error")].toString().toStdString() == "[3]: must be an object");
  BOOST_TEST(std::count(ran.err.begin(), ran.err.end(), '\n') == 3);
}

BOOST_AUTO_TEST_CASE(text_that_is_not_json_ends_with_2) {
  for (const char* text : {"", "hang", "{\"format\": }", "\"text\"", "{\"a\": 1, \"a\": 2}"}) {
    const Ran ran = statics(text);
    BOOST_TEST(ran.ending == Ending::badInput);
    BOOST_TEST(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    BOOST_TEST(ran.out.object().contains(QLatin1String("error")));
  }
}

BOOST_AUTO_TEST_SUITE_END()
