// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/builds.h"

#include "options/best.h"
#include "options/rig_fold.h"
#include "options/ways.h"

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

/// The rig with all of its settings.
struct SolvedRig {
  Rig rig;
  std::shared_ptr<const Settings> settings;
};

SolvedRig solvedRig(const Search& search, const Build& build, RigShelf& shelf) {
  const catalogue::ChainType* chain =
      build.stack.held == 0 ? nullptr
                            : catalogue::find(search.snapshot->catalogue.chains, build.table->chain);
  SolvedRig solved{rigFor(build.stack, *build.bar, *build.arrangement, chain, *search.hang, *search.snapshot,
                          *search.house),
                   nullptr};
  solved.settings = solved.rig.missing.isEmpty() ? shelf.settingsOf(solved.rig, inDegrees(search.hang->pan))
                                                 : std::make_shared<Settings>();
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

} // namespace

QString Build::name() const {
  return (QStringList{table->name, bar->name, wordFor(arrangement->picks)} + stack.types())
      .join(QLatin1Char('\n'));
}

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

std::vector<Found> decideBuild(const Search& search, const Build& build, const std::vector<Way>& ways,
                               RigShelf& shelf, bool brief) {
  std::vector<Found> all;
  const SolvedRig solved = solvedRig(search, build, shelf);
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

} // namespace hangbook::options
