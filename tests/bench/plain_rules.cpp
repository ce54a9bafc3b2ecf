// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/plain_rules.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <limits>
#include <stdexcept>

#include "options/load_span.h"
#include "options/loads.h"
#include "options/weight_limits.h"

namespace hangbook::bench {
namespace {

constexpr double noLean = -std::numeric_limits<double>::infinity(); // the trim at which no chain leans
const std::array rules{&options::pointLoadRule, &options::zoneLoadRule, &options::hoistRule,
                       &options::barRule};
constexpr double none = std::numeric_limits<double>::infinity();

void write(const std::string& file, const std::vector<double>& figures) {
  std::ofstream(file, std::ios::binary)
      .write(reinterpret_cast<const char*>(figures.data()),
             static_cast<std::streamsize>(figures.size() * sizeof(double)));
}

} // namespace

PlainRules::PlainRules(options::Snapshot snapshot) : seam_(std::move(snapshot)) {
  for (const OneOption& one : seam_.all()) {
    settings_ += static_cast<long>(seam_.settingsOf(one).size());
    while (columns_.size() <= one.rig) { // rigs are counted on
      columns_.emplace_back(one.option, seam_.settingsOf(one));
    }
  }
}

void PlainRules::check(std::vector<unsigned char>& into) const {
  std::vector<double> worst;
  std::size_t at = 0;
  for (const OneOption& one : seam_.all()) {
    if (columns_[one.rig].size() == 0) {
      continue;
    }
    const options::LoadSpan span(one.option, columns_[one.rig]);
    if (!span.usable()) {
      throw std::logic_error("the plain rules are for chains that hang plumb");
    }
    worst.assign(columns_[one.rig].size(), 0.0);
    for (const options::Rule* rule : rules) {
      span.raise(*rule, worst);
    }
    for (const double each : worst) {
      into[at++] = static_cast<unsigned char>(each);
    }
  }
}

std::vector<unsigned char> PlainRules::checkOneByOne() const {
  std::vector<unsigned char> verdicts;
  verdicts.reserve(static_cast<std::size_t>(settings_));
  for (const OneOption& one : seam_.all()) {
    for (const options::Settled& settled : seam_.settingsOf(one)) {
      options::Verdict worst = options::Verdict::holds;
      for (const options::Rule* rule : rules) {
        worst = std::max(worst, rule->evaluate(one.option, &settled, noLean).verdict);
      }
      verdicts.push_back(static_cast<unsigned char>(worst));
    }
  }
  return verdicts;
}

void PlainRules::writeTo(const char* folder) const {
  const std::string to = folder;
  std::vector<double> settings;
  std::vector<double> limits;
  for (const OneOption& one : seam_.all()) {
    const options::Case& option = one.option;
    const options::WeightLimits& weight = *option.weight;
    const bool two = option.points.size() == 2;
    const options::ZoneLoad& zone = weight.zones.front();
    const double heavier = seam_.settingsOf(one).empty() ? 1.0 : seam_.settingsOf(one).front().gearHeavier;
    limits.insert(
        limits.end(),
        {static_cast<double>(seam_.settingsOf(one).size()), weight.capacity[0],
         two ? weight.capacity[1] : none, heavier * weight.hoistBody, heavier * weight.hoistChain,
         heavier * weight.rigging,
         *option.hoist->bodyClimbs ? heavier * (weight.hoistBody + weight.hoistChain) : 0.0,
         options::factorsFor(weight, false), inNewtons(*option.hoist->limit) * weight.hoistPart.value,
         inNewtons(*option.arrangement->limit) * weight.accessory.value,
         options::factorsFor(weight, option.arrangement->limitIncludesFactors), zone.capacity,
         zone.otherHangsAtRest, zone.others, static_cast<double>(zone.times.front()), two ? 1.0 : 0.0});
    for (const options::Settled& settled : seam_.settingsOf(one)) {
      for (std::size_t pick = 0; pick < 2; ++pick) {
        const bool there = pick < option.points.size();
        settings.push_back(there ? options::pickLoad(settled, pick) : 0.0);
        settings.push_back(there ? settled.build.most[pick] : 0.0);
      }
      settings.push_back(options::weightBelow(settled));
    }
  }
  write(to + "/settings.f64", settings);
  write(to + "/limits.f64", limits);
  const std::vector<unsigned char> verdicts = checkOneByOne();
  std::ofstream(to + "/verdicts.u8", std::ios::binary)
      .write(reinterpret_cast<const char*>(verdicts.data()), static_cast<std::streamsize>(verdicts.size()));
}

} // namespace hangbook::bench
