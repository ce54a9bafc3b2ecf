// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/likings.h"

#include <algorithm>

#include "store/calendar_store.h"
#include "store/check_store.h"
#include "store/choice_store.h"

namespace hangbook::actions {
namespace {

const QString rankingName = QStringLiteral("options-order");

/// Of the shows before this one that `fits`, the latest that has something chosen for the hang.
template <class Fits>
std::optional<options::Choice> latestBefore(store::Store& store, const QString& tour, const QString& show,
                                            const QString& hang, Fits fits) {
  const auto own = store::loadShow(store, tour, show);
  if (!own) {
    return std::nullopt;
  }
  std::vector<calendar::Show> shows = store::loadShows(store);
  std::stable_sort(shows.begin(), shows.end(), [](const calendar::Show& one, const calendar::Show& other) {
    return one.from > other.from;
  });
  for (const calendar::Show& each : shows) {
    if (!(each.from < own->from) || !fits(*own, each)) {
      continue;
    }
    for (options::Choice& choice : store::loadChoices(store, each.tour, each.name)) {
      if (choice.hang == hang) {
        return std::move(choice);
      }
    }
  }
  return std::nullopt;
}

} // namespace

options::RankBy likedRanking(store::Store& store) {
  return options::rankBy(store::liking(store, rankingName)).value_or(options::RankBy::cover);
}

void likeRanking(store::Store& store, options::RankBy by) {
  if (store::liking(store, rankingName) != options::wordFor(by)) {
    store::setLiking(store, rankingName, options::wordFor(by));
  }
}

std::optional<options::Choice> chosenYesterday(store::Store& store, const QString& tour, const QString& show,
                                               const QString& hang) {
  return latestBefore(store, tour, show, hang, [](const calendar::Show& own, const calendar::Show& each) {
    return each.tour == own.tour;
  });
}

std::optional<options::Choice> chosenHereBefore(store::Store& store, const QString& tour, const QString& show,
                                                const QString& hang) {
  return latestBefore(store, tour, show, hang, [](const calendar::Show& own, const calendar::Show& each) {
    return each.venue == own.venue;
  });
}

} // namespace hangbook::actions
