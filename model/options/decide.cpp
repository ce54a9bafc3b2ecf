// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include <QHash>

#include "options/best.h"
#include "options/hang_once.h"
#include "options/in_parallel.h"
#include "options/rig_fold.h"
#include "options/rig_shelf.h"
#include "options/search.h"
#include "options/ways.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

/// The tables that a hang considers, in order of name.
std::vector<const catalogue::StackingTable*> tablesFor(const Snapshot& snapshot, const calendar::Hang& hang,
                                                       QStringList& notes) {
  std::vector<const catalogue::StackingTable*> tables;
  for (const catalogue::StackingTable& table : snapshot.catalogue.tables) {
    if (hang.tables.isEmpty() || hang.tables.contains(table.name)) {
      tables.push_back(&table);
    }
  }
  for (const QString& name : hang.tables) {
    if (catalogue::find(snapshot.catalogue.tables, name) == nullptr) {
      notes.append(QStringLiteral("stacking table %1 is not in the makers' data and was left out").arg(name));
    }
  }
  return tables;
}

/// One stack on one bar, picked up one way.
struct Build {
  const catalogue::StackingTable* table;
  const catalogue::BarType* bar;
  const catalogue::PickArrangement* arrangement;
  Stack stack;
};

std::vector<Build> buildsFor(const Snapshot& snapshot, const calendar::Hang& hang, QStringList& notes) {
  std::vector<Build> builds;
  for (const catalogue::StackingTable* table : tablesFor(snapshot, hang, notes)) {
    const std::vector<Stack> stacks = stacksOf(snapshot.catalogue, *table);
    for (const QString& name : table->bars) {
      const catalogue::BarType* bar = catalogue::find(snapshot.catalogue.bars, name);
      if (bar == nullptr) {
        notes.append(QStringLiteral("bar %1 of table %2 is not in the makers' data and was left out")
                         .arg(name, table->name));
        continue;
      }
      for (const catalogue::PickArrangement& arrangement : bar->arrangements) {
        for (const Stack& stack : stacks) {
          builds.push_back({table, bar, &arrangement, stack});
        }
      }
    }
  }
  return builds;
}

/// Of two builds of one option (the same types on the same bar by another table, joint or pick spacing) the
/// better one is listed.
bool betterThan(const Option& one, const Option& other) {
  if (one.verdict != other.verdict) {
    return one.verdict < other.verdict;
  }
  return one.coveredPercent > other.coveredPercent;
}

struct Listing {
  HangOptions result;
  QHash<QString, std::size_t> places;

  void add(Option option, qint64 settings, const std::vector<BoundCount>& bounds) {
    result.decided.settings += settings;
    for (const BoundCount& each : bounds) {
      result.decided.byBound += each.settings;
      const auto line = std::ranges::find_if(result.decided.bounds, [&each](const BoundCount& other) {
        return other.bound == each.bound && other.rule == each.rule;
      });
      if (line == result.decided.bounds.end()) {
        result.decided.bounds.push_back(each);
      } else {
        line->settings += each.settings;
      }
    }
    const auto known = places.constFind(option.id);
    if (known == places.constEnd()) {
      places.insert(option.id, result.options.size());
      result.options.push_back(std::move(option));
    } else if (betterThan(option, result.options[*known])) {
      result.options[*known] = std::move(option);
    }
  }
};

/// One hoist at one way of reaching the points.
struct Way {
  std::vector<const venue::Point*> points;
  std::vector<const catalogue::HoistType*> hoists;
};

/// The ways of a build, of those options alone whose id begins with `idStart`.
std::vector<Way> waysOf(const Search& search, const Build& build,
                        const std::vector<const venue::Point*>& candidates, const QString& idStart) {
  const auto isWanted = [&](const catalogue::HoistType& hoist, const auto& points) {
    return idStart.isEmpty() ||
           idOf(keyOf(search, *build.table, build.stack, *build.bar, *build.arrangement, hoist, points))
               .startsWith(idStart);
  };
  std::vector<Way> ways;
  for (const auto& points : waysToReach(candidates, build.arrangement->picks)) {
    Way way{points, {}};
    for (const catalogue::HoistType& hoist : search.snapshot->catalogue.hoists) {
      if (idStart.isEmpty() || isWanted(hoist, points)) {
        way.hoists.push_back(&hoist);
      }
    }
    if (!way.hoists.empty()) {
      ways.push_back(std::move(way));
    }
  }
  return ways;
}

/// An option of a build with what deciding it took.
struct Found {
  Option option;
  qint64 settings = 0;
  std::vector<BoundCount> bounds;
};

/// A rig with all of its settings: the same for every hang that is put together alike.
struct SolvedRig {
  Rig rig;
  std::shared_ptr<const Settings> settings;
};

SolvedRig solvedRig(const Search& search, const Build& build, RigShelf* shelf) {
  const catalogue::ChainType* chain =
      build.stack.held == 0 ? nullptr
                            : catalogue::find(search.snapshot->catalogue.chains, build.table->chain);
  SolvedRig solved{rigFor(build.stack, *build.bar, *build.arrangement, chain, *search.hang, *search.snapshot,
                          *search.house),
                   nullptr};
  const double panDeg = inDegrees(search.hang->pan);
  if (!solved.rig.missing.isEmpty()) {
    solved.settings = std::make_shared<Settings>();
  } else if (shelf != nullptr) {
    solved.settings = shelf->settingsOf(solved.rig, panDeg);
  } else {
    solved.settings = std::make_shared<Settings>(settingsOf(solved.rig, panDeg));
  }
  return solved;
}

/// An option of which no more is asked than that it fails.
Option failing(const Case& option) {
  Option found;
  found.id = idOf(option.key);
  found.key = option.key;
  found.verdict = Verdict::fails;
  return found;
}

std::vector<Found> decideBuild(const Search& search, const Build& build, const SolvedRig& solved,
                               const std::vector<Way>& ways, bool brief) {
  std::vector<Found> all;
  all.reserve(std::transform_reduce(ways.begin(), ways.end(), std::size_t{0}, std::plus(),
                                    [](const Way& way) { return way.hoists.size(); }));
  const Rig& rig = solved.rig;
  const Settings& settings = *solved.settings;
  const auto at = [&](const Case& option, const Settled* settled, double trimM, const QString& why) {
    return brief ? outlineAt(option, settled, trimM, why) : optionAt(option, rig, settled, trimM, why);
  };
  RigFold fold(settings.settled);
  CoverRanges ranges(settings.settled.size());
  for (const Way& way : ways) {
    fold.startWay();
    for (const catalogue::HoistType* hoist : way.hoists) {
      Case option = caseOf(search, *build.table, build.stack, *build.bar, *build.arrangement, *hoist,
                           way.points, rig.missing + settings.missing);
      option.fold = &fold;
      if (settings.settled.empty()) {
        const QString why = settings.missing.isEmpty() ? settings.impossible : QString();
        all.push_back({at(option, nullptr, notKnown, why), 0, {}});
        continue;
      }
      const Best best = bestOf(option, settings.settled, ranges, brief ? 0 : nearTried);
      Option found = brief && best.allFail ? failing(option)
                                           : at(option, &settings.settled[best.setting], best.trimM, {});
      if (found.verdict == Verdict::fails && !settings.missing.isEmpty()) {
        // One of the settings whose shape hinges on a figure that nobody stated may hold.
        found = at(option, nullptr, notKnown, {});
      }
      all.push_back({std::move(found), static_cast<qint64>(settings.settled.size()), best.bounds});
    }
  }
  return all;
}

QString stepsInWords(const calendar::Hang& hang, const CandidatePoints& candidates, QStringList notes) {
  QStringList words{
      QStringLiteral(
          "every stack that the stacking tables permit, on every bar and way of picking it up, with every "
          "type of hoist, at every point or pair of the hang's %1 points and bridles")
          .arg(candidates.points.size()),
      QStringLiteral(
          "tilt in the bar's own steps (0.5° where none is stated) over its travel; every link of the chain "
          "that gives a single angle; every hole; trim as an interval"),
      QStringLiteral("pan as the show asks: %1°").arg(inDegrees(hang.pan)),
      QStringLiteral(
          "a stack that two tables or joints permit is listed once, by the one where it does better")};
  for (const QString& name : candidates.unknown) {
    notes.append(QStringLiteral("point %1 is not in the venue's sheet and was left out").arg(name));
  }
  return (words + notes).join(QStringLiteral("; "));
}

/// One hang on its way to being decided.
struct Deciding {
  const calendar::Hang* hang;
  CandidatePoints candidates;
  Search search;
  std::vector<std::vector<Found>> found; ///< by build
  Deciding(const Snapshot& snapshot, const House& house, const calendar::Hang& of, std::size_t builds)
      : hang(&of),
        candidates(candidatePoints(snapshot, house, of)), search{&snapshot, &house, &of, candidates.bridles,
                                                                 std::make_shared<HangOnce>(snapshot, house,
                                                                                            of)},
        found(builds) {}
};

HangOptions listed(Deciding deciding, const QStringList& notes) {
  Listing listing;
  listing.result.hang = deciding.hang->name;
  std::size_t most = 0;
  for (const std::vector<Found>& ofBuild : deciding.found) {
    most += ofBuild.size();
  }
  listing.result.options.reserve(most);
  for (std::vector<Found>& ofBuild : deciding.found) {
    for (Found& each : std::exchange(ofBuild, {})) { // given back before the next: a hall may have thousands
      listing.add(std::move(each.option), each.settings, each.bounds);
    }
  }
  listing.result.decided.options = static_cast<qint64>(listing.result.options.size());
  listing.result.decided.steps = stepsInWords(*deciding.hang, deciding.candidates, notes);
  std::ranges::stable_sort(listing.result.decided.bounds, std::ranges::greater(), &BoundCount::settings);
  rank(listing.result, Order::coverFirst);
  return std::move(listing.result);
}

/// Whether one hang's rigs are another's: the same tables, the same pan, the same cable on the bar. A mass of
/// cable that is not stated is told with the hang's name.
bool sameRigs(const calendar::Hang& one, const calendar::Hang& other) {
  return one.tables == other.tables && inDegrees(one.pan) == inDegrees(other.pan) && one.cableMass &&
         one.cableMass == other.cableMass;
}

/// Hangs of the same rigs: each rig is solved once for all of them.
std::vector<HangOptions> decideHangs(const Snapshot& snapshot, const House& house,
                                     const std::vector<const calendar::Hang*>& hangs, const QString& idStart,
                                     const std::function<void(double)>& tell, int threads,
                                     const DecideHow& how) {
  QStringList notes;
  const std::vector<Build> builds = buildsFor(snapshot, *hangs.front(), notes);
  std::vector<Deciding> all;
  all.reserve(hangs.size());
  for (const calendar::Hang* hang : hangs) {
    all.emplace_back(snapshot, house, *hang, builds.size());
  }
  const auto decideAll = [&](std::size_t number) {
    std::optional<SolvedRig> solved;
    for (Deciding& each : all) {
      const auto ways = waysOf(each.search, builds[number], each.candidates.points, idStart);
      if (ways.empty()) {
        continue;
      }
      if (!solved) {
        solved = solvedRig(each.search, builds[number], how.shelf);
      }
      each.found[number] = decideBuild(each.search, builds[number], *solved, ways, how.brief);
    }
  };
  inParallel(builds.size(), threads, decideAll,
             [&](std::size_t done) { tell(static_cast<double>(done) / static_cast<double>(builds.size())); });
  std::vector<HangOptions> results;
  results.reserve(all.size());
  for (Deciding& each : all) {
    results.push_back(listed(std::move(each), notes));
  }
  return results;
}

} // namespace

ShowOptions decide(const Snapshot& snapshot, const std::optional<QString>& hang, const Progress& progress,
                   int threads, const DecideHow& how) {
  return decideOnly(snapshot, {}, hang, progress, threads, how);
}

ShowOptions decideOnly(const Snapshot& snapshot, const QString& idStart, const std::optional<QString>& hang,
                       const Progress& progress, int threads, const DecideHow& how) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  std::vector<const calendar::Hang*> hangs;
  for (const calendar::Hang& each : snapshot.show.hangs) {
    if (!hang || each.name == *hang) {
      hangs.push_back(&each);
    }
  }
  if (hang && hangs.empty()) {
    throw Error(Trouble::badInput,
                "show " + snapshot.show.name.toStdString() + " has no hang " + hang->toStdString(), "hang");
  }
  std::vector<HangOptions> decided(hangs.size());
  std::vector<bool> taken(hangs.size(), false);
  std::size_t begun = 0;
  for (std::size_t i = 0; i < hangs.size(); ++i) {
    if (taken[i]) {
      continue;
    }
    std::vector<std::size_t> alike;
    std::vector<const calendar::Hang*> together;
    for (std::size_t j = i; j < hangs.size(); ++j) {
      if (j == i || (!taken[j] && sameRigs(*hangs[i], *hangs[j]))) {
        alike.push_back(j);
        together.push_back(hangs[j]);
        taken[j] = true;
      }
    }
    const auto tell = [&](double part) {
      const double done = static_cast<double>(begun) + part * static_cast<double>(together.size());
      if (progress && !progress(done / static_cast<double>(hangs.size()))) {
        throw Cancelled{};
      }
    };
    tell(0.0);
    std::vector<HangOptions> results = decideHangs(snapshot, house, together, idStart, tell, threads, how);
    for (std::size_t k = 0; k < alike.size(); ++k) {
      decided[alike[k]] = std::move(results[k]);
    }
    begun += together.size();
  }
  if (how.brief) {
    for (HangOptions& each : decided) {
      const bool allFail = std::ranges::all_of(
          each.options, [](const Option& option) { return option.verdict == Verdict::fails; });
      if (allFail) { // then the best of them is one that fails, and which it is takes looking at all
        each =
            std::move(decideOnly(snapshot, idStart, each.hang, progress, threads, {how.shelf}).hangs.front());
      }
    }
  }
  ShowOptions all{snapshot.tour.name, snapshot.show.name, snapshot.venue.name, std::move(decided)};
  if (progress && !progress(1.0)) {
    throw Cancelled{};
  }
  return all;
}

} // namespace hangbook::options
