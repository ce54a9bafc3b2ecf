// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/load_columns.h"

#include <algorithm>
#include <cmath>

#include "options/loads.h"

namespace hangbook::options {
namespace {

constexpr auto unproven = static_cast<double>(Verdict::unproven);

/// Sums and products of a few figures differ by far less from what they are exactly, as a part of them.
constexpr double roundingAtMost = 1e-13;

std::vector<double> endsOf(const std::vector<double>& column) {
  const auto [least, most] = std::minmax_element(column.begin(), column.end());
  return {*least * (1.0 - roundingAtMost), *most * (1.0 + roundingAtMost)};
}

void resize(LoadColumns::Pick& pick, std::size_t size) {
  pick.load.resize(size);
  pick.most.resize(size);
}

} // namespace

LoadColumns::LoadColumns(const Case& option, std::span<const Settled> settings)
    : weight(settings.size()), build(settings.size()), bounded(settings.size()) {
  if (settings.empty()) {
    alike = false;
    return;
  }
  picks = settings.front().statics.pickCount;
  gearHeavier = settings.front().gearHeavier;
  sidePair = isSidePair(settings.front());
  for (std::size_t stand = 0; stand < (sidePair ? 3U : 1U); ++stand) {
    for (std::size_t pick = 0; pick < picks; ++pick) {
      resize(stands.at(stand).at(pick), settings.size());
    }
  }
  for (std::size_t i = 0; i < settings.size(); ++i) {
    const Settled& settled = settings[i];
    weight[i] = weightBelow(settled);
    build[i] = settled.build.unknown ? unproven : 0.0;
    bounded[i] = settled.doubt == nullptr || settled.doubt->worst.bounded ? 0.0 : unproven;
    for (std::size_t pick = 0; pick < picks; ++pick) {
      followsAndLifts(pickLoad(settled, pick));
      follows(settled.build.most[pick]);
      stands[0].at(pick).load[i] = pickLoad(settled, pick);
      stands[0].at(pick).most[i] = std::max(settled.build.most[pick], pickLoad(settled, pick));
    }
    if (!sidePair) {
      continue;
    }
    const auto loads = unevenLoads(option, settled);
    if (!loads) {
      alike = false;
      return;
    }
    for (std::size_t higher = 0; higher < 2; ++higher) {
      for (std::size_t pick = 0; pick < 2; ++pick) {
        const double load = loads->at(higher).at(pick);
        followsAndLifts(load);
        stands.at(1 + higher).at(pick).load[i] = load;
        stands.at(1 + higher).at(pick).most[i] = std::max(settled.build.most[pick], load);
      }
    }
  }
}

void LoadColumns::follows(double load) {
  if (!std::isfinite(load)) {
    alike = false;
  }
}

void LoadColumns::followsAndLifts(double load) {
  follows(load);
  if (!(load > 0.0)) {
    loaded = false;
  }
}

LoadColumns LoadColumns::corners() const {
  LoadColumns ends;
  for (std::size_t stand = 0; stand < (sidePair ? 3U : 1U); ++stand) {
    for (std::size_t pick = 0; pick < picks; ++pick) {
      const Pick& from = stands.at(stand).at(pick);
      ends.stands.at(stand).at(pick) = {endsOf(from.load), endsOf(from.most)};
    }
  }
  ends.picks = picks;
  ends.weight = endsOf(weight);
  ends.gearHeavier = gearHeavier;
  const auto plainEnds = [](const std::vector<double>& verdicts) {
    const auto [least, most] = std::minmax_element(verdicts.begin(), verdicts.end());
    return std::vector<double>{*least, *most};
  };
  ends.build = plainEnds(build);
  ends.bounded = plainEnds(bounded);
  ends.sidePair = sidePair;
  return ends;
}

LoadColumns LoadColumns::leaning(double factor) const {
  LoadColumns more = *this;
  for (auto& stand : more.stands) {
    for (Pick& pick : stand) {
      for (std::vector<double>* column : {&pick.load, &pick.most}) {
        for (double& each : *column) {
          each *= factor;
        }
      }
    }
  }
  return more;
}

} // namespace hangbook::options
