// SPDX-License-Identifier: GPL-3.0-or-later
// SIGKILL in the middle of scanning: what was answered is in the store, and the store is sound.
// HANGBOOK_KILL_ROUNDS says how often, HANGBOOK_KILL_SEED at which moments; tests/long/kill makes it a
// thousand.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <cstdlib>
#include <random>

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include "journeys/program.h"
#include "store/fleet_store.h"
#include "store/snapshot_store.h"
#include "store/warehouse_store.h"
#include "support/fresh_store.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

int roundsFor(store::Engine engine) {
  const char* said = std::getenv("HANGBOOK_KILL_ROUNDS");
  const int rounds = said != nullptr ? std::atoi(said) : 20;
  // Nothing of ours is on disk with PostgreSQL: a quarter of the rounds.
  return std::max(engine == store::Engine::sqlite ? rounds : rounds / 4, 1);
}

unsigned seed() {
  const char* said = std::getenv("HANGBOOK_KILL_SEED");
  return said != nullptr ? static_cast<unsigned>(std::atoi(said)) : 20270402U;
}

/// Lets the program scan and kills it once so many answers are read. What was answered, with what was still
/// in the pipe; a line without its end was not answered.
QList<QByteArray> answeredBeforeKill(const QStringList& words, const QByteArray& codes, int answers) {
  QProcess process;
  process.start(programPath(), words);
  BOOST_REQUIRE(process.waitForStarted());
  process.write(codes);
  QByteArray out;
  while (out.count('\n') < answers && process.waitForReadyRead(300'000)) {
    out += process.readAllStandardOutput();
  }
  process.kill();
  process.waitForFinished(-1);
  out += process.readAllStandardOutput();
  QList<QByteArray> lines = out.split('\n');
  lines.removeLast();
  return lines;
}

} // namespace

BOOST_AUTO_TEST_SUITE(killed)

BOOST_DATA_TEST_CASE(no_acknowledged_scan_is_lost, bothEngines, engine) {
  const FreshStore place(engine);
  BOOST_REQUIRE(program({QStringLiteral("demo"), QStringLiteral("--store"), place.where()}).status == 0);
  QByteArray codes;
  int count = 0;
  for (const fleet::Unit& unit : store::loadUnits(*place.open())) {
    if (unit.kind == fleet::UnitKind::hardware || unit.kind == fleet::UnitKind::cart) {
      codes += unit.serial.toUtf8() + '\n';
      ++count;
    }
  }
  BOOST_REQUIRE(count > 40);
  std::mt19937 random(seed());
  std::uniform_int_distribution<int> some(1, count - 1);
  int cutShort = 0;
  qsizetype acknowledged = 0;
  for (int round = 1; round <= roundsFor(engine); ++round) {
    const QString bay = QStringLiteral("bay of round %1").arg(round);
    const auto lines = answeredBeforeKill(
        {QStringLiteral("scan"), QStringLiteral("--to"), bay, QStringLiteral("--json"),
         QStringLiteral("--by"), QStringLiteral("Ingrid Paddock"), QStringLiteral("--store"), place.where()},
        codes, some(random));
    cutShort += lines.size() < count ? 1 : 0;
    acknowledged += lines.size();
    const auto store = place.open(); // what the killed one left is recovered here
    for (const QByteArray& line : lines) {
      const QJsonObject answer = QJsonDocument::fromJson(line).object();
      BOOST_REQUIRE_MESSAGE(answer[QStringLiteral("answer")].toString() == QStringLiteral("done"),
                            line.toStdString());
      const auto facts =
          store::loadScan(*store, QUuid::fromString(answer[QStringLiteral("scan")].toString()));
      BOOST_TEST(!facts.empty(), "lost: " << line.toStdString());
      const auto unit = store::loadUnit(*store, answer[QStringLiteral("code")].toString());
      BOOST_TEST((unit->place == bay),
                 "acknowledged, but not where it was scanned to: " << line.toStdString());
    }
    const QStringList faults = store::checkStore(*store);
    BOOST_REQUIRE_MESSAGE(faults.isEmpty(), faults.join('\n').toStdString());
  }
  BOOST_TEST_MESSAGE(roundsFor(engine) << " rounds, seed " << seed() << ": " << acknowledged
                                       << " scans were acknowledged, none is lost; cut short " << cutShort);
  BOOST_TEST(cutShort > 0, "no run was killed before it was through");
}

BOOST_AUTO_TEST_SUITE_END()
