// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "desk/source/overview.h"
#include "options/easing.h"
#include "options/house_change.h"
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

/// One hang of a checked tour; of a show that could not be decided one without a hang, with the trouble.
struct CheckedHang {
  QString show{};
  QString hang{};
  QString trouble{};
  qint64 options = 0;
  qint64 settings = 0;
  int holds = 0;
  int tight = 0;
  int unproven = 0;
  int fails = 0;
  std::optional<options::Verdict> best{}; ///< none: no option at all
  QStringList bestTypes{};
  QString bestStack{}; ///< in words, by whoever shows it
  QString bestBecause{};
  std::optional<options::Verdict> chosen{}; ///< of what is chosen, today; none: nothing is
  QString chosenBecause{};
  bool kept = false; ///< from an earlier check of the same inputs
};

struct RouteCheck {
  std::vector<CheckedHang> hangs{}; ///< in order of date
  int shows = 0;                    ///< that were checked
  int all = 0;
  bool stopped = false;
};

/// A house rule to be stated, or withdrawn where it has no value.
struct HouseWish {
  options::HouseSite site{};
  QString figure{};
  std::optional<double> value{};
  QString because{};
  QString by{};
  bool dryRun = false; ///< only tell what would change
};

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
  /// Every option of every show of the tour. `tell` and `stop` may be called on any thread; what is done when
  /// `stop` says so is kept and answered.
  virtual RouteCheck checkTour(const QString& tour, bool afresh, const std::function<void(double)>& tell,
                               const std::function<bool()>& stop) = 0;
  /// Which chosen options change their verdict by it.
  virtual options::HouseEffect changeHouse(const HouseWish& wish) = 0;
  virtual options::SettingMap settingMap(const options::Snapshot& snapshot, const options::Option& option,
                                         const options::Progress& progress) = 0;
};

/// The source's planning side. Throws Error (badInput) where it has none.
PlanningSource& planningOf(Source& source);

} // namespace hangbook::desk
