// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "options/house_figures.h"
#include "options/snapshot.h"

/// What changing a house rule does to what is chosen.
namespace hangbook::options {

/// Whose house rules.
struct HouseSite {
  HousePlace place = HousePlace::tour;
  QString tour; ///< of a show
  QString name; ///< of the tour, venue or show
};

/// Whether these house rules count for the snapshot's show.
bool countsFor(const HouseSite& site, const Snapshot& snapshot);

/// The site's rules in a snapshot that they count for.
std::vector<venue::HouseFigure>& houseOf(const HouseSite& site, Snapshot& snapshot);

/// A chosen option as the rules judge it now; none: it cannot be judged any more, and `why` says so.
struct ChosenNow {
  const Choice* choice = nullptr;
  std::optional<Option> option;
  QString why;
  Verdict verdict() const { return option ? option->verdict : Verdict::unproven; }
};

/// Each chosen option of the snapshot's show, judged at its own setting. The choices stand in the snapshot.
std::vector<ChosenNow> chosenNow(const Snapshot& snapshot);

/// A chosen option whose verdict is another one.
struct VerdictChange {
  QString tour;
  QString show;
  QString hang;
  QString option;
  Verdict before = Verdict::unproven;
  Verdict now = Verdict::unproven;
  QString because; ///< the sentences of the rules that now decide
};

struct HouseEffect {
  int judged{}; ///< chosen options that the rule counts for
  std::vector<VerdictChange> changed;
};

/// Judges every chosen option of these shows with the site's rules as they are and as `rules` has them.
HouseEffect effectOf(const std::vector<Snapshot>& shows, const HouseSite& site,
                     const std::vector<venue::HouseFigure>& rules);

} // namespace hangbook::options
