// SPDX-License-Identifier: GPL-3.0-or-later
// The warehouse's whole day through the terminal: two shows prepared, brought to their venues and taken back,
// with wrong scans and a failed examination among them; what stands in the end is worked out from the facts
// alone.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <map>

#include <QJsonArray>
#include <QJsonDocument>

#include "fleet/due.h"
#include "journeys/program.h"
#include "store/fleet_store.h"
#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

QString word(const char* text) {
  return QString::fromUtf8(text);
}

/// A code and what the scanner must answer.
struct Line {
  QString code;
  QString answer = word("done");
};

class Day {
public:
  explicit Day(store::Engine engine) : place_(engine) {}

  Said say(QStringList words, const QByteArray& input = {}) {
    words << word("--store") << place_.where() << word("--by") << word("Ingrid Paddock");
    return program(words, input);
  }

  /// Scans the lines in one run and compares every answer.
  void scan(const QStringList& task, const std::vector<Line>& lines) {
    QByteArray input;
    for (const Line& line : lines) {
      input += line.code.toUtf8() + '\n';
    }
    const Said said = say(QStringList(word("scan")) + task + QStringList(word("--json")), input);
    const QList<QByteArray> answers = said.out.trimmed().split('\n');
    BOOST_REQUIRE_MESSAGE(answers.size() == static_cast<qsizetype>(lines.size()),
                          said.err.toStdString() << said.out.toStdString());
    bool allGood = true;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const QJsonObject answer = QJsonDocument::fromJson(answers[static_cast<qsizetype>(i)]).object();
      const QString got = answer[word("answer")].toString();
      BOOST_TEST((got == lines[i].answer), lines[i].code.toStdString()
                                               << ": " << got.toStdString() << " instead of "
                                               << lines[i].answer.toStdString() << " ("
                                               << answer[word("text")].toString().toStdString() << ")");
      const bool good = got == word("done") || got == word("again") || got == word("undone");
      allGood = allGood && good;
      wrong_ += good && got != word("again") ? 0 : 1;
    }
    scans_ += static_cast<int>(lines.size());
    BOOST_TEST(said.status == (allGood ? 0 : 1));
  }

  std::unique_ptr<store::Store> store() const { return place_.open(); }
  int scans() const { return scans_; }
  int wrong() const { return wrong_; }

private:
  FreshStore place_;
  int scans_ = 0;
  int wrong_ = 0;
};

struct Gear {
  std::vector<Line> first;  ///< all carts with what rides on them, and forty pieces of hardware
  std::vector<Line> second; ///< hoists, bars, chains and the rest of the hardware
  QString late;             ///< falls due while away
  QString kept;             ///< quarantined
};

/// What may go, by the same dates that the demo's files say.
Gear gearOf(store::Store& store) {
  const auto rules = store::loadExaminationRules(store);
  const auto examinations = store::loadNewestExaminations(store);
  const fleet::LastExaminations last(examinations);
  Gear gear;
  for (const fleet::Unit& unit : store::loadUnits(store)) {
    const QDate until = fleet::standsUntil(unit, rules, last);
    if (unit.kind == fleet::UnitKind::cart) {
      gear.first.push_back({unit.serial});
    } else if (unit.state == fleet::UnitState::quarantined) {
      gear.kept = unit.serial;
    } else if (unit.kind == fleet::UnitKind::cabinet || unit.hiredUntil.isValid() ||
               unit.serial == word("H0501")) {
      continue;
    } else if (unit.kind != fleet::UnitKind::loom && until < QDate(2027, 4, 6)) { // no rule is for looms
      gear.late = unit.serial;
    } else if (unit.kind == fleet::UnitKind::hardware && gear.first.size() < 67) {
      gear.first.push_back({unit.serial});
    } else {
      gear.second.push_back({unit.serial});
    }
  }
  return gear;
}

/// Where each unit is by its movements, folded here anew: in order of happening and recording, without the
/// corrected.
std::map<QString, fleet::Movement> folded(store::Store& store) {
  const std::vector<fleet::Movement> all = store::loadMovements(store);
  std::map<QUuid, bool> corrected;
  for (const fleet::Movement& each : all) {
    if (!each.corrects.isNull()) {
      corrected[each.corrects] = true;
    }
  }
  std::map<QString, fleet::Movement> last;
  for (const fleet::Movement& each : all) {
    if (!corrected.contains(each.id)) {
      last[each.serial] = each;
    }
  }
  return last;
}

std::vector<Line> with(std::vector<Line> lines, const std::vector<Line>& more) {
  lines.insert(lines.end(), more.begin(), more.end());
  return lines;
}

} // namespace

BOOST_AUTO_TEST_SUITE(whole_day)

BOOST_DATA_TEST_CASE(two_shows_out_and_back, bothEngines, engine) {
  Day day(engine);
  BOOST_REQUIRE(day.say({word("demo")}).status == 0);
  const auto store = day.store();
  const Gear gear = gearOf(*store);
  const auto before = store::loadUnits(*store);
  const Line nobody{word("ZZ-404"), word("unknown")};
  const QString bass = gear.first.front().code;

  const QStringList outFirst{word("--out"), word("Pollan Cross"), word("--truck"), word("truck 1")};
  day.scan(outFirst, with(gear.first, {nobody,
                                       nobody,
                                       {bass, word("again")},
                                       {gear.first[30].code, word("again")},
                                       {word("undo"), word("undone")},
                                       {gear.first.back().code}}));

  const Said failed =
      day.say({word("examine"), word("H0501"), word("--result"), word("fail"), word("--remark"),
               word("hook worn"), word("--as-of"), word("2027-03-30"), word("--json")});
  BOOST_TEST(failed.status == 1);
  BOOST_TEST(failed.json()[word("quarantined")].toBool());
  for (const QJsonValue& show : failed.json()[word("shows")].toArray()) {
    BOOST_TEST((show[word("away_from")].toString() >= word("2027-03-30")),
               "only shows that are still to come");
  }

  const QStringList outSecond{word("--out"), word("Tamberwick"), word("--truck"), word("truck 2")};
  day.scan(outSecond, with(gear.second, {{bass, word("wrong place")},
                                         {gear.first.back().code, word("wrong place")},
                                         {gear.late, word("refused")},
                                         {gear.kept, word("refused")},
                                         {word("H0501"), word("refused")},
                                         {word("undo"), word("undone")},
                                         {gear.second.back().code}}));
  day.scan({word("--to"), word("Tallow Hall")}, with(gear.first, {nobody, nobody, {bass, word("again")}}));
  day.scan({word("--to"), word("Cooperage Theatre")},
           with(gear.second, {nobody, {gear.second.front().code, word("again")}}));
  for (const fleet::Unit& unit : store::loadUnits(*store)) {
    if (unit.kind == fleet::UnitKind::cabinet && !unit.cart.isEmpty()) {
      BOOST_TEST((unit.place == word("Tallow Hall")), unit.serial.toStdString() << " rode on its cart");
      BOOST_TEST((unit.state == fleet::UnitState::away));
    }
  }
  day.scan({word("--in"), word("warehouse bay 1")},
           with(gear.first, {nobody, nobody, {bass, word("again")}, {gear.first[40].code, word("again")}}));
  day.scan({word("--in"), word("warehouse bay 1")},
           with(gear.second, {nobody, nobody, {gear.second.front().code, word("again")}}));
  BOOST_TEST(day.scans() >= 390);
  BOOST_TEST(day.wrong() >= day.scans() / 20);

  // The end, from the facts alone.
  const auto facts = folded(*store);
  const auto after = store::loadUnits(*store);
  BOOST_REQUIRE(after.size() == before.size());
  int back = 0;
  for (std::size_t i = 0; i < after.size(); ++i) {
    const fleet::Unit& unit = after[i];
    const fleet::Movement& fact = facts.at(unit.serial);
    BOOST_TEST((unit.place == fact.toPlace && unit.state == fact.toState && unit.cart == fact.toCart &&
                unit.cartPosition == fact.cartPosition),
               unit.serial.toStdString());
    BOOST_TEST((unit.cart == before[i].cart), unit.serial.toStdString() << " is on the cart that it left on");
    const bool went = fact.act == fleet::Act::in;
    back += went ? 1 : 0;
    const fleet::UnitState expected =
        unit.serial == word("H0501") ? fleet::UnitState::quarantined : before[i].state;
    BOOST_TEST((unit.state == expected), unit.serial.toStdString());
    BOOST_TEST((unit.place == (went ? word("warehouse bay 1") : before[i].place)), unit.serial.toStdString());
  }
  BOOST_TEST(back > 190);
  const Said sound = day.say({word("check-store")});
  BOOST_TEST(sound.status == 0, sound.out.toStdString());
}

BOOST_AUTO_TEST_SUITE_END()
