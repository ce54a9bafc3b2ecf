// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include <boost/test/unit_test.hpp>

#include "exchange/hang_json.h"
#include "exchange/options_json.h"

using namespace hangbook;

BOOST_AUTO_TEST_SUITE(options_json)

BOOST_AUTO_TEST_CASE(keysOfTheContract) {
  options::ShowOptions show;
  show.tour = QStringLiteral("Lanternfish Parade");
  show.show = QStringLiteral("Harbour night");
  show.venue = QStringLiteral("Tide Hall");
  options::Option option;
  option.id = QStringLiteral("0123456789abcdef");
  option.key.stack = {QStringLiteral("bass")};
  option.setting = options::Setting{-2.5, 1.0, 8.0, std::nullopt, {}};
  hang::Hang hang;
  hang.bar.picks = hang::SinglePick{};
  option.hangInput = hang;
  options::Option impossible;
  impossible.verdict = options::Verdict::fails;
  show.hangs.push_back(
      {QStringLiteral("left"),
       {2, 7, 3, {{QStringLiteral("no-better"), QStringLiteral("hoist"), 3}}, QStringLiteral("every one")},
       {option, impossible}});

  const QJsonObject object = exchange::toJson(show);
  BOOST_TEST((object.value(QLatin1String("format")) == QStringLiteral("hangbook.options/1")));
  const QJsonObject left = object.value(QLatin1String("hangs")).toArray().first().toObject();
  const QJsonObject decided = left.value(QLatin1String("decided")).toObject();
  BOOST_TEST(decided.value(QLatin1String("settings")).toInt() == 7);
  BOOST_TEST(decided.value(QLatin1String("by_bound")).toInt() == 3);
  const QJsonObject bound = decided.value(QLatin1String("bounds")).toArray().first().toObject();
  BOOST_TEST((bound.value(QLatin1String("bound")).toString() == QStringLiteral("no-better")));
  BOOST_TEST((bound.value(QLatin1String("rule")).toString() == QStringLiteral("hoist")));
  BOOST_TEST(bound.value(QLatin1String("settings")).toInt() == 3);
  const QJsonArray list = left.value(QLatin1String("options")).toArray();
  const QJsonObject first = list[0].toObject();
  BOOST_TEST(first.value(QLatin1String("setting")).toObject().value(QLatin1String("mark")).isNull());
  BOOST_TEST(first.value(QLatin1String("trim_window_m")).isNull());
  BOOST_TEST((first.value(QLatin1String("hang_input")).toObject() == exchange::toJson(hang)));
  const QJsonObject second = list[1].toObject();
  BOOST_TEST(second.value(QLatin1String("setting")).isNull());
  BOOST_TEST(second.value(QLatin1String("hang_input")).isNull());
  BOOST_TEST((second.value(QLatin1String("verdict")) == QStringLiteral("fails")));
}

BOOST_AUTO_TEST_SUITE_END()
