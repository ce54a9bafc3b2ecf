// SPDX-License-Identifier: GPL-3.0-or-later
#include "twin/brute.h"

#include <algorithm>
#include <cmath>

#include "options/bridle_pick.h"
#include "options/room_limits.h"
#include "options/weight_limits.h"
#include "quantity/error.h"
#include "twin/brute_lists.h"

namespace hangbook::testing {
namespace {

using options::Case;
using options::Rule;
using options::Settled;
using options::TrimRange;
using options::Verdict;

/// Between two trims at which cover is looked at.
constexpr double trimStepM = 0.25;
/// Windows that the rules leave open without end are looked at so far.
constexpr double lowestM = 0.0;
constexpr double highestM = 25.0;

class Judge {
public:
  explicit Judge(const Case& option) : option_(option) {
    for (const auto part : {options::weightRules(), options::roomRules(), options::gearRules()}) {
      for (const Rule& rule : part) {
        (rule.needsSetting ? withSetting_ : without_).push_back(&rule);
      }
    }
    for (const Rule* rule : without_) {
      fixed_ = std::max(fixed_, rule->evaluate(option_, nullptr, options::notKnown).verdict);
    }
  }

  Verdict fixed() const { return fixed_; }

  /// Of the rules that depend on the setting.
  Verdict at(const Settled& settled, double trimM) const {
    Verdict worst = Verdict::holds;
    for (const Rule* rule : withSetting_) {
      worst = std::max(worst, rule->evaluate(option_, &settled, trimM).verdict);
      if (worst == Verdict::fails) {
        break;
      }
    }
    return worst;
  }

  double cover(const Settled& settled, double trimM) const {
    const double percent = options::coverRule.evaluate(option_, &settled, trimM).value;
    return std::isnan(percent) ? 0.0 : percent;
  }

  void take(const Settled& settled, Brute& into) const {
    ++into.settings;
    into.anySetting = true;
    const TrimRange room = withoutCover(settled);
    std::vector<double> places{room.low, room.high};
    if (room.low <= room.high && std::isfinite(room.low)) {
      const TrimRange both = withCover(settled, room);
      const double middle = std::isfinite(both.high) ? middleOf(both) : both.low;
      note(settled, middle, into);
      places.insert(places.end(), {both.low, both.high, 0.5 * (room.low + room.high)});
    } else if (room.low <= room.high) {
      note(settled, std::isfinite(room.high) ? room.high : options::notKnown, into);
    }
    for (const double trim : places) {
      if (std::isfinite(trim)) {
        into.anywhere = std::min(into.anywhere, at(settled, trim));
      }
    }
  }

private:
  void note(const Settled& settled, double trim, Brute& into) const {
    const Verdict verdict = at(settled, trim);
    into.anywhere = std::min(into.anywhere, verdict);
    if (verdict < into.least) {
      into.least = verdict;
      into.cover = 0.0;
    }
    if (verdict == into.least && verdict != Verdict::fails) {
      into.cover = std::max(into.cover, cover(settled, trim));
    }
  }

  static double middleOf(const TrimRange& range) {
    const double middle = 0.5 * (range.low + range.high);
    const double rounded = std::round(middle * 100.0) / 100.0;
    return rounded >= range.low && rounded <= range.high ? rounded : middle;
  }

  bool loadsHold(const Settled& settled, double trim) const {
    const auto rules = options::weightRules();
    return std::all_of(rules.begin(), rules.end(), [&](const Rule& rule) {
      return !rule.needsSetting || rule.evaluate(option_, &settled, trim).verdict != Verdict::fails;
    });
  }

  TrimRange withoutCover(const Settled& settled) const {
    TrimRange room;
    for (const Rule* rule : withSetting_) {
      if (rule->trimRange != nullptr && rule != coverOf()) {
        const TrimRange each = rule->trimRange(option_, settled);
        room.low = std::max(room.low, each.low);
        room.high = std::min(room.high, each.high);
      }
    }
    const bool finite = std::isfinite(room.low) && std::isfinite(room.high) && room.low <= room.high;
    if (finite && loadsHold(settled, room.low) && !loadsHold(settled, room.high)) {
      room.high = edge(room.low, room.high, [&](double trim) { return loadsHold(settled, trim); });
    }
    return room;
  }

  /// The longest of the stretches in which cover does not fail; the room itself where there is none.
  TrimRange withCover(const Settled& settled, TrimRange room) const {
    const TrimRange looked{std::max(room.low, lowestM), std::min(room.high, highestM)};
    const auto holds = [&](double trim) {
      return options::coverRule.evaluate(option_, &settled, trim).verdict != Verdict::fails;
    };
    const auto steps = static_cast<int>(std::ceil((looked.high - looked.low) / trimStepM));
    TrimRange best = room;
    double longest = -1.0;
    bool was = holds(looked.low);
    double since = looked.low;
    for (int i = 1; i <= steps; ++i) {
      const double from = looked.low + (i - 1) * (looked.high - looked.low) / steps;
      const double trim = looked.low + i * (looked.high - looked.low) / steps;
      const bool is = holds(trim);
      if (is && !was) {
        since = edge(trim, from, holds);
      }
      const double until = was && !is ? edge(from, trim, holds) : trim;
      if ((is || was) && until - since > longest) {
        longest = until - since;
        best = {since, until};
      }
      was = is;
    }
    if (was && steps == 0) {
      best = looked;
    }
    return best;
  }

  /// The last place from `within`, where it holds, towards `beyond`, where it does not.
  template <class Holds>
  static double edge(double within, double beyond, Holds holds) {
    for (int i = 0; i < 40; ++i) {
      const double middle = 0.5 * (within + beyond);
      (holds(middle) ? within : beyond) = middle;
    }
    return within;
  }

  static const Rule* coverOf() {
    const auto rules = options::roomRules();
    return &*std::find_if(rules.begin(), rules.end(),
                          [](const Rule& rule) { return rule.evaluate == options::coverRule.evaluate; });
  }

  const Case& option_;
  std::vector<const Rule*> withSetting_;
  std::vector<const Rule*> without_;
  Verdict fixed_ = Verdict::holds;
};

/// The data of one hang, and the parts of one option.
struct Data {
  options::House house;
  options::Search search;
  std::vector<const venue::Point*> points;

  explicit Data(const options::Snapshot& snapshot)
      : house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house),
        search{&snapshot, &house, &snapshot.show.hangs.front(), {}} {
    for (const venue::Bridle& bridle : snapshot.venue.bridles) {
      search.bridles.push_back(options::bridledPick(snapshot, house, bridle));
    }
    for (const QString& name : snapshot.show.hangs.front().points) {
      for (const venue::Point& point : snapshot.venue.points) {
        if (point.name == name) {
          points.push_back(&point);
        }
      }
      for (const auto& bridle : search.bridles) {
        if (bridle->bridle->name == name) {
          points.push_back(&bridle->apex);
        }
      }
    }
  }

  Case parts(const catalogue::StackingTable& table, const options::Stack& stack,
             const catalogue::BarType& bar, const catalogue::PickArrangement& picks,
             const catalogue::HoistType& hoist, const std::vector<const venue::Point*>& way,
             const QStringList& missing) const {
    return options::caseOf(search, table, stack, bar, picks, hoist, way, missing);
  }
};

/// Calls `look(table, stack, bar, picks)` for all of them.
template <class Look>
void overBuilds(const options::Snapshot& snapshot, Look look) {
  for (const catalogue::StackingTable& table : snapshot.catalogue.tables) {
    for (const options::Stack& stack : bruteStacks(snapshot, table)) {
      for (const catalogue::BarType& bar : snapshot.catalogue.bars) {
        if (std::count(table.bars.begin(), table.bars.end(), bar.name) > 0) {
          for (const catalogue::PickArrangement& picks : bar.arrangements) {
            look(table, stack, bar, picks);
          }
        }
      }
    }
  }
}

options::Rig rigOf(const options::Snapshot& snapshot, const catalogue::StackingTable& table,
                   const options::Stack& stack, const catalogue::BarType& bar,
                   const catalogue::PickArrangement& picks) {
  const auto* chain = stack.held == 0 ? nullptr : catalogue::find(snapshot.catalogue.chains, table.chain);
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  return options::rigFor(stack, bar, picks, chain, snapshot.show.hangs.front(), snapshot, house);
}

void merge(Brute&& made, std::map<QString, Brute>& all) {
  const QString id = options::idOf(made.key);
  const auto [place, isNew] = all.try_emplace(id, made);
  Brute& known = place->second;
  if (!isNew) {
    if (made.least < known.least || (made.least == known.least && made.cover > known.cover)) {
      known.cover = made.cover;
      known.least = made.least;
    }
    known.anywhere = std::min(known.anywhere, made.anywhere);
    known.anySetting = known.anySetting || made.anySetting;
    known.settings += made.settings;
  }
}

} // namespace

std::map<QString, Brute> bruteForce(const options::Snapshot& snapshot) {
  const Data data(snapshot);
  std::map<QString, Brute> all;
  overBuilds(snapshot, [&](const auto& table, const auto& stack, const auto& bar, const auto& picks) {
    options::Rig rig = rigOf(snapshot, table, stack, bar, picks);
    std::optional<BruteSettings> settings;
    for (const auto& way : bruteWays(data.points, picks.picks)) {
      for (const catalogue::HoistType& hoist : snapshot.catalogue.hoists) {
        const Case option = data.parts(table, stack, bar, picks, hoist, way, rig.missing);
        if (!settings) {
          settings = rig.missing.isEmpty()
                         ? bruteSettings(rig, option, inDegrees(snapshot.show.hangs.front().pan))
                         : BruteSettings{};
        }
        const Judge judge(option);
        Brute made;
        made.key = option.key;
        for (const Settled& settled : settings->settled) {
          judge.take(settled, made);
        }
        made.least = std::max(made.least, judge.fixed());
        made.anywhere = std::max(made.anywhere, judge.fixed());
        // Where figures are missing, or hinge on one, another setting may hold.
        if (!rig.missing.isEmpty() || (settings->unknownShape && made.least == Verdict::fails)) {
          made.least = std::max(judge.fixed(), Verdict::unproven);
          made.anywhere = std::min(made.anywhere, made.least);
        }
        merge(std::move(made), all);
      }
    }
  });
  return all;
}

BruteAnswer bruteAt(const options::Snapshot& snapshot, const options::Option& shown) {
  const Data data(snapshot);
  BruteAnswer best{Verdict::fails, 0.0};
  bool any = false;
  overBuilds(snapshot, [&](const auto& table, const auto& stack, const auto& bar, const auto& picks) {
    if (table.name != shown.key.table || stack.types() != shown.key.stack || bar.name != shown.key.bar ||
        picks.picks != shown.key.picks) {
      return;
    }
    options::Rig rig = rigOf(snapshot, table, stack, bar, picks);
    for (const auto& way : bruteWays(data.points, picks.picks)) {
      for (const catalogue::HoistType& hoist : snapshot.catalogue.hoists) {
        const Case option = data.parts(table, stack, bar, picks, hoist, way, rig.missing);
        if (options::idOf(option.key) != shown.id) {
          continue;
        }
        QStringList missing;
        try {
          const auto settled = options::settle(rig, *shown.setting, missing);
          if (!settled) {
            continue;
          }
          const Judge judge(option);
          const BruteAnswer answer{std::max(judge.fixed(), judge.at(*settled, shown.setting->trimM)),
                                   judge.cover(*settled, shown.setting->trimM)};
          if (!any || answer.verdict < best.verdict ||
              (answer.verdict == best.verdict && answer.cover > best.cover)) {
            best = answer;
          }
          any = true;
        } catch (const Error&) { // another joint of the same stack takes these holes
        }
      }
    }
  });
  return best;
}

} // namespace hangbook::testing
