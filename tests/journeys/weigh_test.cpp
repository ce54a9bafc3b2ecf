// SPDX-License-Identifier: GPL-3.0-or-later
// Load cells after lifting, from the terminal: compared, explained, recorded.
#include <boost/test/unit_test.hpp>

#include <QJsonArray>
#include <QJsonObject>

#include "exchange/cell.h"
#include "program.h"
#include "store/reading_store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using hangbook::testing::FreshStore;
using hangbook::testing::program;
using hangbook::testing::Said;

namespace {

QString word(const char* text) {
  return QString::fromUtf8(text);
}

} // namespace

BOOST_AUTO_TEST_SUITE(load_cells)

BOOST_AUTO_TEST_CASE(a_reading_is_compared_explained_and_recorded) {
  const FreshStore fresh(store::Engine::sqlite);
  const auto say = [&fresh](const QStringList& words) {
    return program(words + QStringList{word("--store"), fresh.where(), word("--as-of"), word("2026-11-25"),
                                       word("--by"), word("Casimir Wold")});
  };
  BOOST_REQUIRE(say({word("demo")}).status == 0);
  const auto weigh = [&say](const char* left, const char* right, const QStringList& more = {}) {
    return say(QStringList{word("weigh"), word("--show"), word("Hallowfen"), word("--hang"), word("left"),
                           word("--pick"), word("left=") + word(left), word("--pick"),
                           word("right=") + word(right), word("--instrument"), word("cells 3 and 4")} +
               more);
  };
  // Twenty tonnes on each is nobody's hang: everything is listed, with what was computed.
  const Said wild = weigh("20 t", "20 t", {word("--json")});
  BOOST_TEST(wild.status == 1);
  const QJsonObject told = wild.json();
  BOOST_TEST(told[word("format")].toString().toStdString() == "hangbook.weigh/1");
  BOOST_TEST(told[word("stop")].toBool());
  BOOST_TEST(told[word("assumptions")].toArray().size() > 5);
  const QJsonArray picks = told[word("picks")].toArray();
  BOOST_REQUIRE(picks.size() == 2);
  const auto asComputed = [&picks](qsizetype pick) {
    return QByteArray::number(picks[pick][word("computed_kn")].toDouble(), 'f', 6);
  };
  const Said right = weigh((asComputed(0) + "kN").constData(), asComputed(1).constData());
  BOOST_TEST(right.status == 0);
  BOOST_TEST(right.out.contains("Every reading is within 5 %"));
  BOOST_TEST(!right.out.contains("STOP"));
  const Said off = weigh((asComputed(0) + "kN").constData(), "1.0kN");
  BOOST_TEST(off.status == 1);
  BOOST_TEST(off.out.contains("STOP, HOLD, COUNT AND INSPECT"));

  const auto store = fresh.open();
  const auto readings = store::loadReadingsOf(*store, word("Lanternfish Parade 2027"), word("Hallowfen"));
  BOOST_REQUIRE(readings.size() == 6U);
  BOOST_TEST(readings.front().by.toStdString() == "Casimir Wold");
  BOOST_TEST(readings.front().instrument.toStdString() == "cells 3 and 4");
  BOOST_CHECK(readings[0].lift == readings[1].lift);
  const QByteArray sheet = say({word("export"), word("--kind"), word("readings")}).out;
  BOOST_TEST(sheet.startsWith("tour,show,hang,option,lift,pick,cell at,reading [kN],computed [kN],"));
  BOOST_TEST(sheet.count('\n') == 1 + 6);
  BOOST_TEST(sheet.contains(",hook,1,") != sheet.contains(",point,1,")); // the cell that read 1.0 kN
  for (const marks::LoadReading& reading : readings) {
    const QByteArray computed = exchange::writeNumber(inKilonewtons(reading.computed)).toUtf8();
    const QByteArray line = ',' + reading.lift.toByteArray(QUuid::WithoutBraces) + ',' +
                            reading.pick.toUtf8() + ',' + reading.cellAt.toUtf8() + ',' +
                            exchange::writeNumber(inKilonewtons(reading.reading)).toUtf8() + ',' + computed +
                            ",cells 3 and 4,";
    BOOST_TEST(sheet.contains(line), line.constData());
  }
  BOOST_TEST(say({word("check-store")}).status == 0);

  for (const QStringList& wrong :
       {QStringList{word("--pick"), word("left")}, QStringList{word("--pick"), word("left=nothing")},
        QStringList{word("--pick"), word("left=4kN")},
        QStringList{word("--pick"), word("left=4kN"), word("--pick"), word("right=4kN"), word("--cell"),
                    word("roof")}}) {
    const Said refused = say(QStringList{word("weigh"), word("--show"), word("Hallowfen"), word("--hang"),
                                         word("left"), word("--instrument"), word("cells 3 and 4")} +
                             wrong);
    BOOST_TEST(refused.status == 2);
  }
  BOOST_TEST(store::loadReadingsOf(*store, word("Lanternfish Parade 2027"), word("Hallowfen")).size() == 6U);
}

/// A hang on bridles: at the points its cells sit in the legs, named by the points that these go to.
BOOST_AUTO_TEST_CASE(cells_in_the_legs_of_a_bridle) {
  const FreshStore fresh(store::Engine::sqlite);
  const auto say = [&fresh](const QStringList& words) {
    return program(words + QStringList{word("--store"), fresh.where(), word("--as-of"), word("2026-11-25"),
                                       word("--by"), word("Casimir Wold")});
  };
  BOOST_REQUIRE(say({word("demo")}).status == 0);
  const QStringList at{word("--show"), word("Brankstead"), word("--hang"), word("left")};
  const QJsonObject option = say(QStringList{word("options"), word("--json")} + at)
                                 .json()[word("hangs")][0][word("options")][0]
                                 .toObject();
  BOOST_REQUIRE(option[word("bridles")].toArray().size() == 2);
  const Said chosen = say(QStringList{word("choose"), word("--option"), option[word("id")].toString(),
                                      word("--reason"), word("to be weighed")} +
                          at);
  BOOST_TEST(chosen.err.toStdString() == "");
  const QStringList cells{word("--cell"), word("point"), word("--instrument"), word("cells 5 to 8")};
  QStringList legs;
  for (const QJsonValue& bridle : option[word("bridles")].toArray()) {
    for (const QJsonValue& leg : bridle[word("legs")].toArray()) {
      legs << word("--leg")
           << leg[word("point")].toString() + QLatin1Char('=') +
                  QString::number(leg[word("tension_kn")].toDouble(), 'f', 6) + word("kN");
    }
  }
  BOOST_REQUIRE(legs.size() == 8);
  const Said right = say(QStringList{word("weigh")} + at + cells + legs);
  BOOST_TEST(right.status == 0, right.err.toStdString());
  BOOST_TEST(right.out.contains("left, leg to L1 "));
  BOOST_TEST(right.out.contains("Every reading is within 5 %"));
  legs.last() = word("F2=0.4 kN");
  const Said off = say(QStringList{word("weigh"), word("--json")} + at + cells + legs);
  BOOST_TEST(off.status == 1);
  BOOST_TEST(off.json()[word("stop")].toBool());
  BOOST_TEST(off.json()[word("picks")].toArray().size() == 4);
  BOOST_TEST(off.json()[word("picks")][3][word("leg_to")].toString().toStdString() == "F2");
  BOOST_TEST(off.json()[word("assumptions")][0][word("would_read_kn")].toArray().size() == 4);
  const Said asPicks =
      say(QStringList{word("weigh"), word("--pick"), word("left=2kN"), word("--pick"), word("right=2kN")} +
          at + cells);
  BOOST_TEST(asPicks.status == 2);
  BOOST_TEST(
      asPicks.err.contains("it has left, leg to L1; left, leg to F1; right, leg to L2; right, leg to F2"));
  const QByteArray sheet = say({word("export"), word("--kind"), word("readings")}).out;
  BOOST_TEST(sheet.contains("leg to"));
  BOOST_TEST(sheet.count(",F2\n") + sheet.count(",F2\r\n") == 2);
}

BOOST_AUTO_TEST_SUITE_END()
