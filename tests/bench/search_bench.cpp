// SPDX-License-Identifier: GPL-3.0-or-later
// How fast the search is, in one run on one core: tests/bench/search builds it, starts it and sets a NumPy
// script and a constraint solver beside it. Measured, never asserted; that all say the same is asserted.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <iostream>

#include <sys/resource.h>

#include <QCoreApplication>

#include "bench/made_up_tour.h"
#include "bench/plain_rules.h"
#include "bench/seam.h"
#include "options/search.h"
#include "options/ways.h"

using namespace hangbook;

namespace {

std::uint64_t seed = 1;

/// Every rule on every setting of every option, no bound: what a setting costs when nothing is skipped.
void settingsWithAllRules(benchmark::State& state) {
  const bench::Seam seam(bench::showOfTour(seed, 0));
  double checked = 0.0;
  for (auto _ : state) {
    checked += static_cast<double>(seam.checkAll());
  }
  state.counters["settings"] = benchmark::Counter(checked, benchmark::Counter::kIsRate);
}

/// The part that the NumPy script does too: five load rules and the trims that lowest edge and headroom
/// leave.
void settingsWithPlainRules(benchmark::State& state) {
  const bench::PlainRules plain(bench::showOfTour(seed, 0));
  double checked = 0.0;
  std::vector<unsigned char> verdicts(static_cast<std::size_t>(plain.settings()));
  for (auto _ : state) {
    plain.check(verdicts);
    benchmark::DoNotOptimize(verdicts.data());
    checked += static_cast<double>(plain.settings());
  }
  if (verdicts != plain.checkOneByOne()) {
    std::cerr << "the rules say otherwise one by one\n";
    std::exit(1);
  }
  state.counters["settings"] = benchmark::Counter(checked, benchmark::Counter::kIsRate);
}

/// Options alone, nothing judged: what the constraint solver does.
void discretePart(benchmark::State& state) {
  const options::Snapshot snapshot = bench::showOfTour(seed, 0);
  double listed = 0.0;
  for (auto _ : state) {
    listed += static_cast<double>(bench::listOptions(snapshot).size());
  }
  state.counters["options"] = benchmark::Counter(listed, benchmark::Counter::kIsRate);
}

/// A made-up tour, no two venues alike, by `decideTogether`, which leaves out what a bound proves.
void tour(benchmark::State& state) {
  const int together = state.range(1) > 4 ? 1 : 8;
  double settings = 0.0;
  double byBound = 0.0;
  double optionCount = 0.0;
  double holding = 0.0;
  for (auto _ : state) {
    for (int first = 0; first < state.range(0); first += together) { // as `route --check` takes them
      std::vector<options::Snapshot> shows;
      for (int show = first; show < std::min(first + together, static_cast<int>(state.range(0))); ++show) {
        shows.push_back(bench::showOfTour(seed, show, static_cast<int>(state.range(1))));
      }
      std::vector<const options::Snapshot*> all;
      std::ranges::transform(shows, std::back_inserter(all), [](const auto& show) { return &show; });
      for (const options::DecidedShow& found : options::decideTogether(all, {}, 1)) {
        for (const options::HangOptions& hang : found.options.hangs) {
          settings += static_cast<double>(hang.decided.settings);
          byBound += static_cast<double>(hang.decided.byBound);
          optionCount += static_cast<double>(hang.options.size());
          holding +=
              static_cast<double>(std::ranges::count_if(hang.options, [](const options::Option& option) {
                return option.verdict <= options::Verdict::tight;
              }));
        }
      }
    }
  }
  const double shows = static_cast<double>(state.iterations()) * static_cast<double>(state.range(0));
  state.counters["a show"] =
      benchmark::Counter(shows, benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
  state.counters["settings a show"] = settings / shows;
  state.counters["by bound %"] = 100.0 * byBound / settings;
  state.counters["holding %"] = 100.0 * holding / optionCount;
  rusage used{};
  getrusage(RUSAGE_SELF, &used);
  state.counters["peak MiB"] = static_cast<double>(used.ru_maxrss) / 1024.0;
}

/// One change of tilt or trim while dragging: all rules, with words.
void drag(benchmark::State& state) {
  const options::Snapshot snapshot = bench::showOfTour(seed, 0);
  const auto found = options::decide(snapshot, QStringLiteral("left"), {}, 1);
  const auto& list = found.hangs.front().options;
  const auto option = std::ranges::find_if(list, [](const auto& each) { return each.setting.has_value(); });
  std::vector<double> took;
  int step = 0;
  for (auto _ : state) {
    options::Setting setting = *option->setting;
    setting.trimM += 0.01 * (step % 200 - 100);
    setting.tiltDeg += 0.5 * (step / 200 % 7 - 3);
    ++step;
    const auto from = std::chrono::steady_clock::now();
    benchmark::DoNotOptimize(options::judge(snapshot, option->key, setting).verdict);
    took.push_back(
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from).count());
  }
  std::ranges::sort(took);
  state.counters["p50 ms"] = took[took.size() / 2];
  state.counters["p99 ms"] = took[took.size() * 99 / 100];
  state.counters["worst ms"] = took.back();
}

/// What the machine does of the plainest arithmetic: one multiplication, one addition and one comparison.
void arithmetic(benchmark::State& state) {
  std::vector<double> loads(4096, 3.7);
  double limit = 4.0;
  for (auto _ : state) {
    int within = 0;
    benchmark::DoNotOptimize(limit);
    benchmark::DoNotOptimize(loads.data());
    for (const double load : loads) {
      within += load * 1.2 + 0.4 <= limit ? 1 : 0;
    }
    benchmark::DoNotOptimize(within);
  }
  const auto comparisons = static_cast<double>(state.iterations()) * static_cast<double>(loads.size());
  state.counters["comparisons"] = benchmark::Counter(comparisons, benchmark::Counter::kIsRate);
  const bench::Seam seam(bench::showOfTour(seed, 0));
  state.counters["a setting"] = seam.comparisonsASetting();
}

BENCHMARK(settingsWithAllRules)->Unit(benchmark::kMillisecond);
BENCHMARK(settingsWithPlainRules)->Unit(benchmark::kMillisecond);
BENCHMARK(discretePart)->Unit(benchmark::kMillisecond);
BENCHMARK(drag)->Unit(benchmark::kMicrosecond)->Iterations(2000);
BENCHMARK(arithmetic);
BENCHMARK(tour)
    ->Args({10, 2})
    ->Args({100, 2})
    ->Args({200, 2})
    ->Args({1000, 2})
    ->Args({1, 9})
    ->Args({10, 9})
    ->Args({200, 9})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

} // namespace

int main(int argc, char** argv) {
  const QCoreApplication application(argc, argv);
  benchmark::Initialize(&argc, argv);
  for (int i = 1; i + 1 < argc; i += 2) {
    const std::string word = argv[i];
    if (word == "--seed") {
      seed = std::stoull(argv[i + 1]);
    } else if (word == "--export") { // for the script beside it, and for the solver
      bench::PlainRules(bench::showOfTour(seed, 0)).writeTo(argv[i + 1]);
      bench::writeDiscrete(bench::showOfTour(seed, 0), argv[i + 1]);
      return 0;
    } else if (word == "--one-percent") { // of so many shows
      std::cout << bench::checkOnePercent(seed, std::stoi(argv[i + 1])) << '\n';
      return 0;
    } else {
      std::cerr << "search_bench takes --seed NUMBER, --export FOLDER or --one-percent SHOWS, and Google "
                   "Benchmark's words\n";
      return 2;
    }
  }
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
