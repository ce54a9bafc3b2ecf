// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <stdexcept>

#include "bench/made_up_tour.h"
#include "bench/seam.h"
#include "options/search.h"

namespace hangbook::bench {
namespace {

options::Verdict leastOf(const options::Case& option, const std::vector<options::Settled>& settings) {
  options::Verdict least = options::Verdict::fails;
  for (const options::Settled& settled : settings) {
    const double trim = options::middleOf(options::windowOf(option, settled, true));
    options::Verdict worst = options::Verdict::holds;
    for (const options::Rule* rule : options::allRules()) {
      worst = std::max(worst, rule->evaluate(option, &settled, trim).verdict);
    }
    least = std::min(least, worst);
  }
  return least;
}

} // namespace

long checkOnePercent(std::uint64_t seed, int shows) {
  long compared = 0;
  for (int show = 0; show < shows; ++show) {
    const options::Snapshot snapshot = showOfTour(seed, show);
    const auto found = options::decide(snapshot, snapshot.show.hangs.front().name, {}, 1, true);
    std::map<QString, options::Verdict> byId;
    const Seam seam(snapshot);
    for (const OneOption& one : seam.all()) {
      const QString id = options::idOf(one.option.key);
      if (qHash(id, static_cast<size_t>(seed)) % 100 == 0) { // all builds of an option, or none
        const auto least = leastOf(one.option, seam.settingsOf(one));
        const auto known = byId.try_emplace(id, least);
        known.first->second = std::min(known.first->second, least);
      }
    }
    for (const options::Option& option : found.hangs.front().options) {
      const auto brute = byId.find(option.id);
      if (brute == byId.end()) {
        continue;
      }
      if (brute->second != option.verdict) {
        throw std::logic_error("brute force says otherwise of " + option.id.toStdString());
      }
      ++compared;
    }
  }
  return compared;
}

} // namespace hangbook::bench
