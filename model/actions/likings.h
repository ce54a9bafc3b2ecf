// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "options/frozen.h"
#include "options/ranking.h"
#include "store/store.h"

namespace hangbook::actions {

/// In which order somebody at this machine last asked to see options; cover first where nobody did.
options::RankBy likedRanking(store::Store& store);
void likeRanking(store::Store& store, options::RankBy by);

/// What was chosen for the hang of that name at the show before this one on the tour; nothing where nothing
/// was.
std::optional<options::Choice> chosenYesterday(store::Store& store, const QString& tour, const QString& show,
                                               const QString& hang);
/// What was chosen for it the last time that any tour was in the same venue.
std::optional<options::Choice> chosenHereBefore(store::Store& store, const QString& tour, const QString& show,
                                                const QString& hang);

} // namespace hangbook::actions
