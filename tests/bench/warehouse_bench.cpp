// SPDX-License-Identifier: GPL-3.0-or-later
// How long the warehouse's answers take with 100,000 units and 2,000,000 movements, on both engines.
// Measured, never asserted. tests/bench/run builds and starts it; with `--fill FILE` it only makes such a
// store, to look at.
#include <benchmark/benchmark.h>

#include <map>

#include <QCoreApplication>

#include "actions/fleet_work.h"
#include "actions/import_file.h"
#include "actions/scan.h"
#include "calendar/where_best.h"
#include "filled_store.h"
#include "fleet/due.h"
#include "large_tour.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"
#include "support/postgresql_cluster.h"

using namespace hangbook;

namespace {

struct House {
  explicit House(store::Engine engine) : place(engine), store(place.open()) {
    testing::fillLarge(*store);
    if (engine ==
        store::Engine::postgresql) { // a server does so by itself; the tests' one has that switched off
      testing::PostgresqlCluster::shared().sql(testing::PostgresqlCluster::databaseOf(place.where()),
                                               QStringLiteral("VACUUM ANALYZE"));
    }
  }
  testing::FreshStore place;
  std::unique_ptr<store::Store> store;
};

std::map<store::Engine, std::unique_ptr<House>> houses;

House& house(const benchmark::State& state) {
  const auto engine = state.range(0) == 0 ? store::Engine::sqlite : store::Engine::postgresql;
  auto& made = houses[engine];
  if (!made) {
    made = std::make_unique<House>(engine);
  }
  return *made;
}

/// Nobody else is at work: no log is left, which would have the whole file checked (see the store's README).
void open(benchmark::State& state) {
  House& at = house(state);
  if (state.range(0) == 0) {
    at.store->rows(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
  }
  for (auto _ : state) {
    benchmark::DoNotOptimize(at.place.open());
  }
}

void findPart(benchmark::State& state) {
  House& at = house(state);
  for (auto _ : state) {
    benchmark::DoNotOptimize(store::findUnits(*at.store, QStringLiteral("4711")).all);
  }
}

void scanOne(benchmark::State& state) {
  House& at = house(state);
  actions::ScanTask task;
  task.kind = actions::ScanTask::Kind::transfer;
  static int number = 0; // over all rounds: no scan comes twice
  for (auto _ : state) {
    ++number;
    task.place = QStringLiteral("bay of scan %1").arg(number);
    const QString code = QStringLiteral("SN-%1").arg(1 + number * 37 % 99'999, 6, 10, QLatin1Char('0'));
    const auto answer =
        actions::scan(*at.store, task, code, QDateTime::currentDateTimeUtc(), QStringLiteral("Ada Fenn"));
    if (answer.word != actions::ScanAnswer::Word::done) {
      state.SkipWithError(answer.text.toUtf8().constData());
    }
  }
}

void dueOfAYear(benchmark::State& state) {
  House& at = house(state);
  std::size_t found = 0;
  for (auto _ : state) {
    const options::Stock stock = actions::loadStockUnderRules(*at.store);
    found = fleet::dueWithin(stock.units, stock.rules, stock.examinations, QDate(2027, 1, 1), 365,
                             stock.occurrences)
                .size();
  }
  state.counters["due"] = static_cast<double>(found);
}

/// A spreadsheet of 50,000 lines looked at, as before it is taken in: half of them are units that are there.
void lookAtLines(benchmark::State& state) {
  House& at = house(state);
  QByteArray file = "serial;type;place;weighed\n";
  for (int line = 0; line < 50'000; ++line) {
    file += (line % 2 == 0 ? "SN-" + QByteArray::number(line + 1).rightJustified(6, '0')
                           : "N" + QByteArray::number(line)) +
            ";Marram bass;yard;92,5\n";
  }
  for (auto _ : state) {
    const exchange::Import import =
        actions::importFile(*at.store, exchange::Kind::units, file,
                            {QStringLiteral("Ada Fenn"), QDateTime::currentDateTimeUtc()}, {}, true);
    if (!import.faults.empty()) {
      state.SkipWithError(exchange::text(import.faults.front()).toUtf8().constData());
    }
  }
}

BENCHMARK(open)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(findPart)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(scanOne)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(lookAtLines)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(dueOfAYear)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv) {
  QCoreApplication application(argc, argv);
  if (argc == 3 && qstrcmp(argv[1], "--fill") == 0) { // to look at, with 100,000 units and 500 shows
    store::OpenHow how;
    how.create = true;
    const auto store = store::Store::open(QString::fromLocal8Bit(argv[2]), how);
    testing::fillTour(*store);
    testing::addUnits(*store, testing::sortsOf(*store));
    return 0;
  }
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  houses.clear(); // before the application that they lean on
  return 0;
}
