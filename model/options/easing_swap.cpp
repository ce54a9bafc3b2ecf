// SPDX-License-Identifier: GPL-3.0-or-later
// Another hoist, fewer cabinets, picked up another way, other points, another bar: one part put in another's
// place, the nearest to what is there first.
#include <algorithm>
#include <cmath>
#include <set>

#include "options/easing_lever.h"
#include "options/house_figures.h"
#include "options/stacks.h"
#include "options/ways.h"

namespace hangbook::options {
namespace {

Lever leverOf(const char* kind) {
  Lever lever;
  lever.kind = QString::fromLatin1(kind);
  return lever;
}

void add(Lever& lever, int steps, const QString& what, const QString& words,
         std::function<void(Trial&)> apply) {
  lever.swaps.push_back(
      {steps, std::move(apply), {lever.kind, words, {}, 1.0, {{what, std::nullopt, std::nullopt, steps}}}});
}

void keep(Lever lever, std::vector<Lever>& into) {
  std::ranges::stable_sort(lever.swaps, {}, &Swap::steps);
  if (!lever.swaps.empty()) {
    into.push_back(std::move(lever));
  }
}

/// Sizes above first come in the order of what they lift; a smaller one may do where the room is short.
void addHoists(const Trial& trial, std::vector<Lever>& into) {
  std::vector<const catalogue::HoistType*> sizes;
  for (const catalogue::HoistType& each : trial.snapshot.catalogue.hoists) {
    if (each.limit) {
      sizes.push_back(&each);
    }
  }
  std::ranges::stable_sort(sizes, {}, [](const auto* each) { return inNewtons(*each->limit); });
  const auto own = std::find_if(sizes.begin(), sizes.end(),
                                [&](const auto* each) { return each->name == trial.key.hoist; });
  if (own == sizes.end()) {
    return;
  }
  Lever lever = leverOf("hoist");
  for (auto each = sizes.begin(); each != sizes.end(); ++each) {
    if (each != own) {
      const QString name = (*each)->name;
      add(lever, static_cast<int>(std::abs(each - own)), name,
          QStringLiteral("Hoist %1 instead of %2").arg(name, trial.key.hoist),
          [name](Trial& other) { other.key.hoist = name; });
    }
  }
  keep(std::move(lever), into);
}

/// Whether `fewer` is `stack` with some taken out.
bool isWithin(const QStringList& fewer, const QStringList& stack) {
  qsizetype at = 0;
  for (const QString& each : stack) {
    at += at < fewer.size() && fewer[at] == each ? 1 : 0;
  }
  return at == fewer.size();
}

QString takenOut(const QStringList& fewer, const QStringList& stack) {
  QStringList words;
  qsizetype at = 0;
  for (qsizetype i = 0; i < stack.size(); ++i) {
    if (at < fewer.size() && fewer[at] == stack[i]) {
      ++at;
    } else {
      words.append(QStringLiteral("%1 (%2 from the bar)").arg(stack[i]).arg(i + 1));
    }
  }
  return words.join(QStringLiteral(", "));
}

void addFewerCabinets(const Trial& trial, std::vector<Lever>& into) {
  Lever lever = leverOf("fewer-cabinets");
  const QStringList& stack = trial.key.stack;
  std::set<QStringList> seen;
  const QStringList& tables = hangOf(trial).tables;
  for (const catalogue::StackingTable& table : trial.snapshot.catalogue.tables) {
    const bool isFor = std::find(table.bars.begin(), table.bars.end(), trial.key.bar) != table.bars.end();
    if (!isFor || (!tables.isEmpty() && !tables.contains(table.name))) {
      continue;
    }
    for (const Stack& other : stacksOf(trial.snapshot.catalogue, table)) {
      const QStringList types = other.types();
      if (types.size() >= stack.size() || !isWithin(types, stack) || !seen.insert(types).second) {
        continue;
      }
      const int fewer = static_cast<int>(stack.size() - types.size());
      const QString out = takenOut(types, stack);
      add(lever, fewer, out,
          QStringLiteral("%1 fewer: without %2")
              .arg(fewer == 1 ? QStringLiteral("One cabinet") : QStringLiteral("%1 cabinets").arg(fewer),
                   out),
          [types, name = table.name](Trial& moved) {
            moved.key.stack = types;
            moved.key.table = name;
          });
    }
  }
  keep(std::move(lever), into);
}

struct Reach {
  QStringList names;
  double moved = 0.0; ///< m, all points together
};

/// Ways of reaching these points with these picks, with how far each pick's point moves.
std::vector<Reach> reachesOf(const CandidatePoints& candidates, catalogue::Picks picks,
                             const std::vector<const venue::Point*>& from) {
  std::vector<Reach> all;
  for (const auto& points : waysToReach(candidates.points, picks)) {
    Reach reach;
    for (std::size_t i = 0; i < points.size(); ++i) {
      reach.names.append(points[i]->name);
      if (i < from.size()) {
        reach.moved += std::hypot(inMetres(points[i]->x) - inMetres(from[i]->x),
                                  inMetres(points[i]->y) - inMetres(from[i]->y),
                                  inMetres(points[i]->z) - inMetres(from[i]->z));
      }
    }
    all.push_back(std::move(reach));
  }
  return all;
}

/// Every point and bridle of the venue, whether or not the hang may use it now.
void addPoints(const Trial& trial, std::vector<Lever>& into) {
  const Snapshot& snapshot = trial.snapshot;
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  calendar::Hang own;
  own.points = trial.key.points;
  const CandidatePoints from = candidatePoints(snapshot, house, own);
  calendar::Hang any;
  for (const venue::Point& each : snapshot.venue.points) {
    any.points.append(each.name);
  }
  for (const venue::Bridle& each : snapshot.venue.bridles) {
    any.points.append(each.name);
  }
  const CandidatePoints all = candidatePoints(snapshot, house, any);
  std::vector<Reach> reaches = reachesOf(all, trial.key.picks, from.points);
  std::stable_sort(reaches.begin(), reaches.end(),
                   [](const Reach& one, const Reach& other) { return one.moved < other.moved; });
  Lever lever = leverOf("points");
  int steps = 0;
  for (const Reach& each : reaches) {
    if (each.names == trial.key.points) {
      continue;
    }
    const QString names = each.names.join(QStringLiteral(" and "));
    const bool known = std::all_of(each.names.begin(), each.names.end(),
                                   [&](const QString& name) { return hangOf(trial).points.contains(name); });
    add(lever, ++steps, names,
        QStringLiteral("From %1 instead of %2%3")
            .arg(names, trial.key.points.join(QStringLiteral(" and ")),
                 known ? QString() : QStringLiteral(", which the hang must then be allowed to use")),
        [points = each.names](Trial& other) {
          other.key.points = points;
          calendar::Hang& hang = hangOf(other);
          for (const QString& name : points) {
            if (!hang.points.contains(name)) {
              hang.points.append(name);
            }
          }
        });
  }
  keep(std::move(lever), into);
}

/// Other holes of the same bar, and other bars: each with every way of reaching the hang's own points.
void addPicks(const Trial& trial, std::vector<Lever>& into) {
  const Snapshot& snapshot = trial.snapshot;
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const CandidatePoints candidates = candidatePoints(snapshot, house, hangOf(trial));
  const auto* table = catalogue::find(snapshot.catalogue.tables, trial.key.table);
  if (table == nullptr) {
    return;
  }
  Lever picks = leverOf("picks");
  Lever bars = leverOf("bar");
  for (const QString& name : table->bars) {
    const auto* bar = catalogue::find(snapshot.catalogue.bars, name);
    if (bar == nullptr) {
      continue;
    }
    for (const catalogue::PickArrangement& arrangement : bar->arrangements) {
      const bool same = name == trial.key.bar;
      if (same && arrangement.picks == trial.key.picks) {
        continue;
      }
      for (const Reach& reach : reachesOf(candidates, arrangement.picks, {})) {
        const QString what =
            QStringLiteral("%1 as %2 from %3")
                .arg(name, wordFor(arrangement.picks), reach.names.join(QStringLiteral(" and ")));
        add(same ? picks : bars, 1, what,
            (same ? QStringLiteral("Picked up at its other holes: %1") : QStringLiteral("On another bar: %1"))
                .arg(what),
            [name, picks = arrangement.picks, points = reach.names](Trial& other) {
              other.key.bar = name;
              other.key.picks = picks;
              other.key.points = points;
            });
      }
    }
  }
  keep(std::move(picks), into);
  keep(std::move(bars), into);
}

} // namespace

void addSwapLevers(const Trial& trial, std::vector<Lever>& into) {
  addPoints(trial, into);
  addPicks(trial, into);
  addHoists(trial, into);
  addFewerCabinets(trial, into);
}

} // namespace hangbook::options
