// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <deque>
#include <mutex>
#include <span>
#include <utility>

#include <QHash>

#include "options/builds.h"
#include "options/hang_once.h"
#include "options/in_parallel.h"
#include "options/ways.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

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
  QStringList notes; ///< what was left out, in words
  std::vector<Build> builds;
  std::vector<std::vector<Found>> found; ///< by build
  Deciding(const Snapshot& snapshot, const House& house, const calendar::Hang& of)
      : hang(&of),
        candidates(candidatePoints(snapshot, house, of)), search{&snapshot, &house, &of, candidates.bridles,
                                                                 std::make_shared<HangOnce>(snapshot, house,
                                                                                            of)},
        builds(buildsFor(snapshot, of, notes)), found(builds.size()) {}
};

HangOptions listed(Deciding deciding) {
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
  listing.result.decided.steps = stepsInWords(*deciding.hang, deciding.candidates, deciding.notes);
  std::ranges::stable_sort(listing.result.decided.bounds, std::ranges::greater(), &BoundCount::settings);
  rank(listing.result, Order::coverFirst);
  return std::move(listing.result);
}

/// One show on its way: its hangs, or what keeps it from being decided.
class ShowDeciding {
public:
  ShowDeciding(const Snapshot& snapshot, const std::optional<QString>& hang)
      : snapshot_(snapshot), house_(snapshot.tour.house, snapshot.venue.house, snapshot.show.house) {
    guarded(0, [&] {
      for (const calendar::Hang& each : snapshot.show.hangs) {
        if (!hang || each.name == *hang) {
          hangs_.emplace_back(snapshot, house_, each);
        }
      }
      if (hang && hangs_.empty()) {
        throw Error(Trouble::badInput,
                    "show " + snapshot.show.name.toStdString() + " has no hang " + hang->toStdString(),
                    "hang");
      }
    });
  }

  std::vector<Deciding>& hangs() { return hangs_; }

  /// Keeps what goes wrong; of several the lowest number's, whichever thread comes first.
  template <class Work>
  void guarded(std::size_t number, Work work) {
    try {
      work();
    } catch (const Error& error) {
      const std::lock_guard lock(mutex_);
      if (!trouble_ || number < troubleAt_) {
        trouble_ = error;
        troubleAt_ = number;
      }
    }
  }

  DecidedShow finish() {
    DecidedShow done{{snapshot_.tour.name, snapshot_.show.name, snapshot_.venue.name, {}}, trouble_};
    for (std::size_t i = 0; i < hangs_.size() && !trouble_; ++i) {
      done.options.hangs.push_back(listed(std::move(hangs_[i])));
    }
    return done;
  }

private:
  const Snapshot& snapshot_;
  House house_;
  std::vector<Deciding> hangs_;
  std::mutex mutex_;
  std::optional<Error> trouble_;
  std::size_t troubleAt_ = 0;
};

/// The same build of all hangs that have it, whose rigs are mostly the same: a system travels, and what a
/// venue changes (points, heights, capacities, audience) is in no rig.
struct Job {
  struct Part {
    ShowDeciding* show;
    Deciding* hang;
    std::size_t build;
  };
  std::vector<Part> parts;
};

std::vector<Job> jobsOf(std::deque<ShowDeciding>& shows) {
  std::vector<Job> jobs;
  QHash<QString, std::size_t> known;
  for (ShowDeciding& show : shows) {
    for (Deciding& hang : show.hangs()) {
      for (std::size_t build = 0; build < hang.builds.size(); ++build) {
        const QString name = hang.builds[build].name();
        const auto place = known.constFind(name);
        if (place == known.constEnd()) {
          known.insert(name, jobs.size());
          jobs.push_back({{{&show, &hang, build}}});
        } else {
          jobs[*place].parts.push_back({&show, &hang, build});
        }
      }
    }
  }
  return jobs;
}

/// Build by build, each for all shows that have it.
std::vector<DecidedShow> decideAll(std::deque<ShowDeciding>& shows, const QString& idStart,
                                   const std::function<void(double)>& tell, int threads, bool brief) {
  const std::vector<Job> jobs = jobsOf(shows);
  tell(0.0);
  inParallel(
      jobs.size(), threads,
      [&](std::size_t number) {
        RigShelf shelf; // every rig of a build is asked for by this job alone
        for (const Job::Part& part : jobs[number].parts) {
          part.show->guarded(number, [&] {
            Deciding& hang = *part.hang;
            const Build& build = hang.builds[part.build];
            const auto ways = waysOf(hang.search, build, hang.candidates.points, idStart);
            if (!ways.empty()) {
              hang.found[part.build] = decideBuild(hang.search, build, ways, shelf, brief);
            }
          });
        }
      },
      [&](std::size_t done) { tell(static_cast<double>(done) / static_cast<double>(jobs.size())); });
  std::vector<DecidedShow> all;
  all.reserve(shows.size());
  for (ShowDeciding& each : shows) {
    all.push_back(each.finish());
  }
  return all;
}

/// Tells a share of the whole way.
std::function<void(double)> partOf(const Progress& progress, double from, double to) {
  return [&progress, from, to](double part) {
    if (progress && !progress(from + part * (to - from))) {
      throw Cancelled{};
    }
  };
}

bool allFail(const HangOptions& hang) {
  return std::ranges::all_of(hang.options,
                             [](const Option& option) { return option.verdict == Verdict::fails; });
}

/// Of a hang that fails altogether the best is one that fails, and which it is takes looking at all of them.
void decideFailingInFull(std::vector<DecidedShow>& all, std::span<const Snapshot* const> snapshots,
                         const QString& idStart, const std::function<void(double)>& tell, int threads) {
  struct Again {
    std::size_t show;
    std::size_t hang;
  };
  std::vector<Again> which;
  std::deque<ShowDeciding> again;
  for (std::size_t show = 0; show < all.size(); ++show) {
    const std::vector<HangOptions>& hangs = all[show].options.hangs;
    for (std::size_t hang = 0; hang < hangs.size(); ++hang) {
      if (allFail(hangs[hang])) {
        which.push_back({show, hang});
        again.emplace_back(*snapshots[show], hangs[hang].hang);
      }
    }
  }
  if (which.empty()) {
    return;
  }
  std::vector<DecidedShow> found = decideAll(again, idStart, tell, threads, false);
  for (std::size_t i = 0; i < which.size(); ++i) {
    if (found[i].trouble) {
      all[which[i].show].trouble = found[i].trouble;
    } else {
      all[which[i].show].options.hangs[which[i].hang] = std::move(found[i].options.hangs.front());
    }
  }
}

std::vector<DecidedShow> decideShows(std::span<const Snapshot* const> snapshots, const QString& idStart,
                                     const std::optional<QString>& hang, const Progress& progress,
                                     int threads, bool brief) {
  std::deque<ShowDeciding> shows;
  for (const Snapshot* each : snapshots) {
    shows.emplace_back(*each, hang);
  }
  const double most = brief ? 0.7 : 1.0; // what fails altogether is looked at again
  std::vector<DecidedShow> all = decideAll(shows, idStart, partOf(progress, 0.0, most), threads, brief);
  if (brief) {
    decideFailingInFull(all, snapshots, idStart, partOf(progress, most, 1.0), threads);
  }
  partOf(progress, 0.0, 1.0)(1.0);
  return all;
}

} // namespace

ShowOptions decide(const Snapshot& snapshot, const std::optional<QString>& hang, const Progress& progress,
                   int threads, bool brief) {
  return decideOnly(snapshot, {}, hang, progress, threads, brief);
}

ShowOptions decideOnly(const Snapshot& snapshot, const QString& idStart, const std::optional<QString>& hang,
                       const Progress& progress, int threads, bool brief) {
  const Snapshot* const one = &snapshot;
  std::vector<DecidedShow> decided = decideShows({&one, 1}, idStart, hang, progress, threads, brief);
  if (decided.front().trouble) {
    throw Error(*decided.front().trouble);
  }
  return std::move(decided.front().options);
}

std::vector<DecidedShow> decideTogether(std::span<const Snapshot* const> snapshots, const Progress& progress,
                                        int threads) {
  return decideShows(snapshots, {}, {}, progress, threads, true);
}

} // namespace hangbook::options
