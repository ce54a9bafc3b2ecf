// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/setting_map.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <functional>
#include <map>

#include "options/box.h"
#include "options/cover_fold.h"
#include "options/judge_case.h"
#include "options/ways.h"

namespace hangbook::options {
namespace {

/// How far up and down is looked where no rule ends the trim: from the datum, so far.
constexpr double openEndM = 30.0;
/// What is told of the map's own mark; the rest are the other marks.
constexpr double columnsPart = 0.5;

/// One way in which the option's types can be put together, with all its settings at the holes that are
/// meant.
struct Make {
  Rig rig;
  Case option;
  std::vector<Settled> settled;
  Verdict always = Verdict::holds; ///< worst of the rules that no setting changes
  const char* alwaysRule = "";
};

/// What all rules say of one trim.
struct Place {
  Verdict verdict = Verdict::fails;
  const char* rule = ""; ///< the first that fails
};

/// All trims of one setting of one make.
class Column {
public:
  Column(const Make& make, const Settled& settled)
      : make_(make), settled_(settled), cover_(make.option, settled),
        window_(windowOf(make.option, settled, false)) {
    ofRig_ = {make.always, make.alwaysRule};
    for (const Rule* rule : allRules()) {
      if (rule->needsSetting && isOfRigAndHoist(*rule)) {
        take(ofRig_, *rule, rule->evaluate(make.option, &settled, notKnown).verdict);
      }
    }
  }

  /// The first and the last step between which a trim may stand. Below and above a rule that is linear in
  /// the trim fails.
  std::optional<std::pair<long, long>> steps() const {
    if (ofRig_.verdict == Verdict::fails || !window_.open()) {
      return std::nullopt;
    }
    const double low = std::isfinite(window_.low) ? window_.low : std::min(0.0, window_.high);
    const double high = std::isfinite(window_.high) ? window_.high : low + openEndM;
    const long first = std::lround(std::ceil(low / mapTrimStepM - slack)) - 1;
    const long last = std::lround(std::floor(high / mapTrimStepM + slack)) + 1;
    return std::pair{first, last};
  }

  /// Rules are asked until it is `enough` or worse.
  Place at(long step, Verdict enough) {
    const double trim = static_cast<double>(step) * mapTrimStepM;
    Place place = ofRig_;
    for (const Rule* rule : allRules()) {
      if (place.verdict >= enough) {
        break;
      }
      if (rule->needsSetting && !isOfRigAndHoist(*rule)) {
        const Use use = rule->evaluate == coverRule.evaluate ? cover_.at(make_.option, trim)
                                                             : rule->evaluate(make_.option, &settled_, trim);
        take(place, *rule, use.verdict);
      }
    }
    return place;
  }

  /// Rules without which a trim would be left.
  QStringList shutBy() const {
    QStringList rules;
    if (ofRig_.verdict == Verdict::fails) {
      rules << QString::fromLatin1(ofRig_.rule);
    }
    if (!window_.open()) {
      rules << QString::fromLatin1(window_.lowSetBy) << QString::fromLatin1(window_.highSetBy);
    }
    return rules;
  }

private:
  static constexpr double slack = 1e-9; ///< an end on a step but for its last bits: one step more is run

  static void take(Place& place, const Rule& rule, Verdict verdict) {
    if (verdict == Verdict::fails && place.verdict != Verdict::fails) {
      place.rule = rule.id;
    }
    place.verdict = std::max(place.verdict, verdict);
  }

  const Make& make_;
  const Settled& settled_;
  CoverFold cover_;
  Window window_;
  Place ofRig_;
};

/// Columns of one tilt, of every make that reaches it.
class Columns {
public:
  void add(const Make& make, const Settled& settled) { columns_.emplace_back(make, settled); }

  std::optional<std::pair<long, long>> steps() const {
    std::optional<std::pair<long, long>> all;
    for (const Column& each : columns_) {
      if (const auto steps = each.steps()) {
        all = all ? std::pair{std::min(all->first, steps->first), std::max(all->second, steps->second)}
                  : *steps;
      }
    }
    return all;
  }
  Place at(long step, Verdict enough = Verdict::fails) {
    std::optional<Place> best;
    for (Column& each : columns_) {
      const Place place = each.at(step, enough);
      if (!best || place.verdict < best->verdict) {
        best = place;
      }
    }
    return best.value(); // a tilt has a column at least
  }
  QStringList shutBy() const {
    QStringList rules;
    for (const Column& each : columns_) {
      rules += each.shutBy();
    }
    rules.removeDuplicates();
    return rules;
  }

private:
  std::deque<Column> columns_;
};

SettingColumn columnOf(double tiltDeg, Columns& columns, qint64& runs, const std::function<void()>& tell) {
  SettingColumn column{tiltDeg, {}, {}};
  const auto range = columns.steps();
  if (!range) {
    column.shutBy = columns.shutBy();
    return column;
  }
  QStringList failing;
  bool open = false;
  const char* below = "";
  for (long step = range->first; step <= range->second; ++step) {
    tell();
    const Place place = columns.at(step);
    ++runs;
    const double trim = static_cast<double>(step) * mapTrimStepM;
    if (place.verdict == Verdict::fails) {
      if (open) {
        column.stretches.back().highRule = QString::fromLatin1(place.rule);
      }
      failing << QString::fromLatin1(place.rule);
      below = place.rule;
      open = false;
      continue;
    }
    if (!open) {
      column.stretches.push_back({trim, trim, QString::fromLatin1(below), {}, {}});
    }
    SettingStretch& stretch = column.stretches.back();
    stretch.highM = trim;
    if (!open || stretch.parts.back().verdict != place.verdict) {
      stretch.parts.push_back({trim, trim, place.verdict});
    }
    stretch.parts.back().highM = trim;
    open = true;
  }
  if (column.stretches.empty()) {
    failing.removeDuplicates();
    column.shutBy = failing;
  }
  return column;
}

/// The best verdict that some trim of these has, from the middle outwards until one stands.
Verdict bestOf(Columns& columns, qint64& runs, const std::function<void()>& tell) {
  const auto range = columns.steps();
  Verdict best = Verdict::fails;
  if (!range) {
    return best;
  }
  const long middle = range->first + (range->second - range->first) / 2;
  for (long away = 0; best > Verdict::tight; ++away) {
    bool inside = false;
    for (const long step : {middle - away, middle + away}) {
      if (step >= range->first && step <= range->second) {
        inside = true;
        ++runs;
        best = std::min(best, columns.at(step, best).verdict); // what is no better ends early
      }
    }
    if (!inside) {
      break;
    }
    tell();
  }
  return best;
}

std::deque<Make> makesOf(const Search& search, const Option& option, const CandidatePoints& found,
                         QString& impossible) {
  std::deque<Make> makes;
  const Snapshot& snapshot = *search.snapshot;
  const auto* table = catalogue::find(snapshot.catalogue.tables, option.key.table);
  const auto* bar = catalogue::find(snapshot.catalogue.bars, option.key.bar);
  const auto* hoist = catalogue::find(snapshot.catalogue.hoists, option.key.hoist);
  const std::size_t picks = option.key.picks == catalogue::Picks::single ? 1 : 2;
  if (table == nullptr || bar == nullptr || hoist == nullptr || found.points.size() != picks) {
    impossible = QStringLiteral("the makers' data or the venue no longer have all of its parts");
    return makes;
  }
  for (const Stack& stack : stacksOf(snapshot.catalogue, *table)) {
    for (const catalogue::PickArrangement& arrangement : bar->arrangements) {
      if (stack.types() != option.key.stack || arrangement.picks != option.key.picks) {
        continue;
      }
      const catalogue::ChainType* chain =
          stack.held == 0 ? nullptr : catalogue::find(snapshot.catalogue.chains, table->chain);
      Make make;
      make.rig = rigFor(stack, *bar, arrangement, chain, *search.hang, snapshot, *search.house);
      make.option = caseOf(search, *table, stack, *bar, arrangement, *hoist, found.points, make.rig.missing);
      if (!make.rig.missing.isEmpty()) {
        impossible = QStringLiteral("not stated: %1").arg(make.rig.missing.join(QStringLiteral("; ")));
        continue;
      }
      Settings all = settingsOf(make.rig, option.setting->panDeg);
      if (all.settled.empty()) {
        impossible = all.impossible.isEmpty()
                         ? QStringLiteral("not stated: %1").arg(all.missing.join(QStringLiteral("; ")))
                         : all.impossible;
      }
      for (Settled& each : all.settled) {
        if (each.setting.holesDeg == option.setting->holesDeg) {
          make.settled.push_back(std::move(each));
        }
      }
      for (const Rule* rule : allRules()) {
        if (!rule->needsSetting) {
          const Verdict verdict = rule->evaluate(make.option, nullptr, notKnown).verdict;
          if (verdict > make.always) {
            make.always = verdict;
            make.alwaysRule = rule->id;
          }
        }
      }
      if (!make.settled.empty()) {
        makes.push_back(std::move(make));
      }
    }
  }
  return makes;
}

} // namespace

SettingMap settingMap(const Snapshot& snapshot, const Option& option, const Progress& progress) {
  SettingMap map;
  const calendar::Hang* hang = catalogue::find(snapshot.show.hangs, option.key.hang);
  if (!option.setting || hang == nullptr) {
    map.impossible = hang == nullptr ? QStringLiteral("the show has no such hang")
                                     : QStringLiteral("no setting is possible");
    return map;
  }
  map.mark = option.setting->mark;
  const auto tell = [&](double share) {
    if (progress && !progress(share)) {
      throw Cancelled{};
    }
  };
  tell(0.0);
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  calendar::Hang asked;
  asked.points = option.key.points;
  const CandidatePoints found = candidatePoints(snapshot, house, asked);
  const Search search{&snapshot, &house, hang, found.bridles};
  const std::deque<Make> makes = makesOf(search, option, found, map.impossible);
  if (makes.empty()) {
    return map;
  }
  map.impossible.clear();
  map.tiltStepDeg = makes.front().rig.tiltStepDeg;
  // Tilts are multiples of the step: the same to the bit for every mark.
  std::map<std::optional<int>, std::map<double, Columns>> all;
  for (const Make& make : makes) {
    for (const Settled& each : make.settled) {
      all[each.setting.mark][each.setting.tiltDeg].add(make, each);
    }
  }
  auto& own = all[map.mark];
  if (own.empty()) {
    map.impossible = QStringLiteral("no tilt of the grid is possible at mark %1").arg(map.mark.value_or(0));
  }
  for (auto& [tilt, columns] : own) {
    const double done =
        columnsPart * static_cast<double>(map.columns.size()) / static_cast<double>(own.size());
    map.columns.push_back(columnOf(tilt, columns, map.runs, [&] { tell(done); }));
  }
  for (auto& [mark, tilts] : all) {
    if (!mark || tilts.empty()) {
      continue;
    }
    const double done = columnsPart + (1.0 - columnsPart) * static_cast<double>(map.marks.size()) /
                                          static_cast<double>(all.size());
    MarkLine line{*mark, {}};
    for (auto& [tilt, columns] : tilts) {
      tell(done);
      const Verdict best = bestOf(columns, map.runs, [&] { tell(done); });
      if (best < Verdict::fails) {
        line.at.push_back({tilt, best});
      }
    }
    map.marks.push_back(std::move(line));
  }
  return map;
}

} // namespace hangbook::options
