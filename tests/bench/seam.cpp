// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/seam.h"

#include <algorithm>
#include <fstream>

#include "options/box.h"
#include "options/cover_fold.h"
#include "options/load_span.h"
#include "options/loads.h"
#include "options/rig_fold.h"
#include "options/room_limits.h"
#include "options/ways.h"
#include "options/weight_limits.h"
#include "twin/discrete.h"

namespace hangbook::bench {
namespace {

using options::Case;
using options::Rule;

/// Calls `look(table, stack, bar, picks)` for every build.
template <class Look>
void overBuilds(const options::Snapshot& snapshot, Look look) {
  for (const catalogue::StackingTable& table : snapshot.catalogue.tables) {
    for (const options::Stack& stack : options::stacksOf(snapshot.catalogue, table)) {
      for (const QString& name : table.bars) {
        const catalogue::BarType* bar = catalogue::find(snapshot.catalogue.bars, name);
        for (const catalogue::PickArrangement& picks : bar->arrangements) {
          look(table, stack, *bar, picks);
        }
      }
    }
  }
}

} // namespace

Seam::Seam(options::Snapshot snapshot)
    : snapshot_(std::make_unique<options::Snapshot>(std::move(snapshot))),
      house_(std::make_unique<options::House>(snapshot_->tour.house, snapshot_->venue.house,
                                              snapshot_->show.house)) {
  const calendar::Hang& hang = snapshot_->show.hangs.front();
  const auto candidates = options::candidatePoints(*snapshot_, *house_, hang);
  const options::Search search{snapshot_.get(), house_.get(), &hang, {}};
  overBuilds(*snapshot_, [&](const auto& table, const auto& stack, const auto& bar, const auto& picks) {
    const auto* chain = stack.held == 0 ? nullptr : catalogue::find(snapshot_->catalogue.chains, table.chain);
    options::Rig rig = options::rigFor(stack, bar, picks, chain, hang, *snapshot_, *house_);
    settings_.push_back(options::settingsOf(rig, inDegrees(hang.pan)).settled);
    std::size_t way = 0;
    for (const auto& points : options::waysToReach(candidates.points, picks.picks)) {
      for (const catalogue::HoistType& hoist : snapshot_->catalogue.hoists) {
        options_.push_back({options::caseOf(search, table, stack, bar, picks, hoist, points, {}),
                            settings_.size() - 1, way});
      }
      ++way;
    }
  });
}

long Seam::checkAll() const {
  long checked = 0;
  std::size_t at = 0;
  int worst = 0;
  std::vector<double> verdicts;
  while (at < options_.size()) {
    const std::size_t rig = options_[at].rig;
    const auto& settings = settings_[rig];
    options::RigFold fold(settings);
    while (at < options_.size() && options_[at].rig == rig) {
      const std::size_t way = options_[at].way;
      fold.startWay();
      std::vector<std::optional<options::CoverFold>> cover(settings.size());
      for (; at < options_.size() && options_[at].rig == rig && options_[at].way == way; ++at) {
        Case option = options_[at].option;
        option.fold = &fold;
        const auto& loads = fold.loads(option);
        const options::LoadSpan span(option, loads.all);
        const bool plumb = span.usable() && !settings.empty() &&
                           options::leanDeg(option, settings.front(), options::notKnown, 0) == 0.0;
        verdicts.assign(settings.size(), 0.0);
        for (const Rule& rule : options::weightRules()) {
          if (plumb && options::LoadSpan::speaksOf(rule)) {
            span.raise(rule, verdicts);
          }
        }
        for (std::size_t i = 0; i < settings.size(); ++i) {
          const double trim = options::middleOf(options::windowOf(option, settings[i], false));
          for (const Rule* rule : options::allRules()) {
            if (!rule->needsSetting || (plumb && options::LoadSpan::speaksOf(*rule))) {
              continue;
            }
            if (rule->evaluate == options::coverRule.evaluate) {
              if (!cover[i]) {
                cover[i].emplace(option, settings[i]);
              }
              worst = std::max(worst, static_cast<int>(cover[i]->at(option, trim).verdict));
            } else if (options::isOfRigAndHoist(*rule)) {
              auto& kept = fold.uses(*rule, option.hoist)[i];
              if (!kept) {
                kept = rule->evaluate(option, &settings[i], trim);
              }
              worst = std::max(worst, static_cast<int>(kept->verdict));
            } else {
              worst = std::max(worst, static_cast<int>(rule->evaluate(option, &settings[i], trim).verdict));
            }
          }
          worst = std::max(worst, static_cast<int>(verdicts[i]));
          ++checked;
        }
      }
    }
  }
  return worst >= 0 ? checked : 0; // `worst` is needed, so that none of it is optimised away
}

double Seam::comparisonsASetting() const {
  double sum = 0.0;
  double count = 0.0;
  for (const OneOption& one : options_) {
    const options::WeightLimits& weight = *one.option.weight;
    const auto picks = static_cast<double>(one.option.points.size());
    // Loads: points, zones, hoists, hardware, each again with either hoist higher; bar, count, chain, lean,
    // share.
    const double path = picks * (2.0 + static_cast<double>(weight.hardware.size()) +
                                 2.0 * static_cast<double>(weight.secondarySteel.size())) +
                        static_cast<double>(weight.zones.size());
    const double joints = 2.0 * static_cast<double>(one.option.cabinets.size());
    const double room = 6.0 + static_cast<double>(one.option.room->ceilings.size()) *
                                  (picks + 1.0 + static_cast<double>(one.option.cabinets.size()));
    // Cover: each ear between two trims for each cabinet that covers.
    const double cover = 2.0 * static_cast<double>(one.option.room->audience.positions.size() *
                                                   one.option.room->audience.cabinets.size());
    const auto settings = static_cast<double>(settingsOf(one).size());
    sum += settings * (3.0 * path + 5.0 + joints + room + cover);
    count += settings;
  }
  return sum / count;
}

std::vector<QString> listOptions(const options::Snapshot& snapshot) {
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const calendar::Hang& hang = snapshot.show.hangs.front();
  const auto candidates = options::candidatePoints(snapshot, house, hang);
  const options::Search search{&snapshot, &house, &hang, {}};
  std::vector<QString> lines;
  overBuilds(snapshot, [&](const auto& table, const auto& stack, const auto& bar, const auto& picks) {
    for (const auto& points : options::waysToReach(candidates.points, picks.picks)) {
      for (const catalogue::HoistType& hoist : snapshot.catalogue.hoists) {
        const options::OptionKey key = options::keyOf(search, table, stack, bar, picks, hoist, points);
        lines.push_back(
            (key.stack + QStringList{key.bar, options::wordFor(key.picks), key.hoist} + key.points)
                .join(u'\n'));
      }
    }
  });
  std::ranges::sort(lines);
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  return lines;
}

void writeDiscrete(const options::Snapshot& snapshot, const char* folder) {
  const std::string to = folder;
  std::ofstream(to + "/discrete.dzn") << testing::Discrete({snapshot}).text().toStdString();
  std::ofstream(to + "/discrete.count") << listOptions(snapshot).size() << '\n';
}

} // namespace hangbook::bench
