// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "options/judge_case.h"
#include "options/pick_path.h"
#include "options/search.h"
#include "options/ways.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

[[noreturn]] void unknown(const char* place, const QString& name) {
  throw Error(Trouble::badInput, "there is no “" + name.toStdString() + "”", place);
}

template <class Type>
const Type& named(const std::vector<Type>& list, const QString& name, const char* place) {
  const Type* found = catalogue::find(list, name);
  if (found == nullptr) {
    unknown(place, name);
  }
  return *found;
}

/// Points and bridles of any name, whether or not the hang lists them.
CandidatePoints pointsNamed(const Snapshot& snapshot, const House& house, const QStringList& names) {
  calendar::Hang asked;
  asked.points = names;
  CandidatePoints found = candidatePoints(snapshot, house, asked);
  if (!found.unknown.isEmpty()) {
    unknown("point", found.unknown.front());
  }
  return found;
}

} // namespace

Option judge(const Snapshot& snapshot, const OptionKey& key, const Setting& setting) {
  return judge(snapshot, key, setting, {});
}

Option judge(const Snapshot& snapshot, const OptionKey& key, const Setting& setting, const Seen& seen) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const calendar::Hang& hang = named(snapshot.show.hangs, key.hang, "hang");
  const catalogue::StackingTable& table = named(snapshot.catalogue.tables, key.table, "stacking table");
  const catalogue::BarType& bar = named(snapshot.catalogue.bars, key.bar, "bar");
  const catalogue::HoistType& hoist = named(snapshot.catalogue.hoists, key.hoist, "hoist");
  const CandidatePoints found = pointsNamed(snapshot, house, key.points);
  const std::vector<const venue::Point*>& points = found.points;
  const std::size_t picks = key.picks == catalogue::Picks::single ? 1 : 2;
  if (points.size() != picks) {
    throw Error(Trouble::badInput, "expected one point for each pick", "points");
  }
  const Search search{&snapshot, &house, &hang, found.bridles};
  std::optional<Option> best;
  std::optional<Error> refused;
  for (const Stack& stack : stacksOf(snapshot.catalogue, table)) {
    if (stack.types() != key.stack) {
      continue;
    }
    for (const catalogue::PickArrangement& arrangement : bar.arrangements) {
      if (arrangement.picks != key.picks) {
        continue;
      }
      const catalogue::ChainType* chain =
          stack.held == 0 ? nullptr : catalogue::find(snapshot.catalogue.chains, table.chain);
      Rig rig = rigFor(stack, bar, arrangement, chain, hang, snapshot, house);
      Case option = caseOf(search, table, stack, bar, arrangement, hoist, points, rig.missing);
      Option judged;
      std::optional<Settled> settled;
      if (!rig.missing.isEmpty()) {
        judged = optionAt(option, rig, nullptr, notKnown, {});
      } else {
        try {
          settled = settle(rig, setting, option.missing);
          judged = optionAt(option, rig, settled ? &*settled : nullptr, setting.trimM, {});
        } catch (const Error& error) {
          if (error.trouble() != Trouble::notPossible) {
            refused = error; // another joint of the same stack may take these holes
            continue;
          }
          judged = optionAt(option, rig, nullptr, notKnown, QString::fromUtf8(error.what()));
        }
      }
      if (!best || judged.verdict < best->verdict) {
        best = std::move(judged);
        if (seen) {
          seen(option, settled ? &*settled : nullptr);
        }
      }
    }
  }
  if (!best && refused) {
    throw *refused;
  }
  if (!best) {
    unknown("stack", key.stack.join(QStringLiteral(", ")));
  }
  return std::move(*best);
}

} // namespace hangbook::options
