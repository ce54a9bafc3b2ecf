// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "desk/source/overview.h"
#include "options/easing.h"
#include "options/ranking.h"
#include "options/reserve.h"
#include "options/search.h"
#include "options/setting_map.h"
#include "options/snapshot.h"

namespace hangbook::desk {

class Source;

/// What would keep a failing option from failing, what an unproven one lacks, and how far one that stands is
/// from its first limits.
struct WhatWouldDo {
  options::Easings easings{};
  std::vector<options::Reserve> reserves{};
};

enum class SameAs { yesterday, hereBefore };

/// What planning asks beside the options themselves. A source that can answer is one of these too;
/// everything here may take long and refuses to run on the window's thread. Throws Error with words for
/// people, options::Cancelled where `progress` says so.
class PlanningSource {
public:
  PlanningSource() = default;
  PlanningSource(const PlanningSource&) = delete;
  PlanningSource& operator=(const PlanningSource&) = delete;
  virtual ~PlanningSource() = default;

  /// In which order somebody at this machine last asked to see options.
  virtual options::RankBy likedRanking() = 0;
  virtual void likeRanking(options::RankBy by) = 0;
  /// What was chosen for the hang at the show before on the tour, or the last time in the venue; nothing
  /// where nothing was.
  virtual std::optional<options::Choice> chosenBefore(const ShowKey& show, const QString& hang,
                                                      SameAs when) = 0;
  /// The same option here; none: the makers' data or the venue do not give it.
  virtual std::optional<options::Option> sameAgain(const options::Snapshot& snapshot,
                                                   const options::OptionKey& before,
                                                   const options::Progress& progress) = 0;
  /// `own`: of this very setting; else of the option, at whichever of its settings.
  virtual WhatWouldDo whatWouldDo(const options::Snapshot& snapshot, const options::Option& option, bool own,
                                  const options::Progress& progress) = 0;
  virtual options::SettingMap settingMap(const options::Snapshot& snapshot, const options::Option& option,
                                         const options::Progress& progress) = 0;
};

/// The source's planning side. Throws Error (badInput) where it has none.
PlanningSource& planningOf(Source& source);

} // namespace hangbook::desk
