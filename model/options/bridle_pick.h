// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <memory>
#include <vector>

#include <QString>
#include <QStringList>

#include "hang/bridle.h"
#include "hang/bridle_pushed.h"
#include "options/house_figures.h"
#include "options/snapshot.h"

/// A pick held by a bridle: its legs made up from the steels that there are, and where its apex then hangs.
namespace hangbook::options {

/// One type of hardware in a leg.
struct LegPiece {
  const catalogue::HardwareType* type = nullptr;
  int count{};
};

struct BridleLeg {
  const venue::Point* point = nullptr;
  double wanted{};              ///< m
  double length{};              ///< m, as made up; as wanted where no make-up is known
  std::vector<LegPiece> pieces; ///< steels, then the shackle; empty where no make-up is known
  int shackles{};
  double weight = std::numeric_limits<double>::quiet_NaN();  ///< N of all of it; NaN: not known
  double stretch = std::numeric_limits<double>::quiet_NaN(); ///< m per N; NaN: not known
  hang::LegForce plumb; ///< for a load of 1 N that hangs straight down from the apex
  double worstOfTwo{};  ///< its tension where it and one other carry that load alone
  /// The same figures where every leg is as much longer or shorter than stated as its pieces may be off in
  /// all, at the corner that is worst for each: factors on its pull and on what it puts on its point, and how
  /// much flatter it stands.
  double pullMore = 1.0;
  double downMore = 1.0;
  double flatterDeg{};
  bool mayHangSlack{}; ///< at one of these corners
  double twoMore = 1.0;
};

struct BridledPick {
  const venue::Bridle* bridle = nullptr;
  venue::Point apex; ///< as it hangs, under the bridle's name; no capacity of its own
  hang::Vec3 wanted; ///< venue coordinates
  std::vector<BridleLeg> legs;
  QString fault;       ///< why it cannot be rigged so; empty: it can
  QStringList missing; ///< figures that are not stated, in words
  double legWeight{};  ///< N of all legs; NaN: not known
  double apexLower{};  ///< m, by which its apex may hang lower than computed, for the same reason
  /// What a push from the side does to its legs: as made up, and at every corner of their lengths. Empty
  /// where no figure follows; `atEnds` too where one of its corners gives none.
  std::vector<hang::PushedBridle> asMade;
  std::vector<hang::PushedBridle> atEnds;

  /// Forces where this load (N, venue coordinates) pulls at the apex; legs' own weight left out. Empty where
  /// the legs cannot hold it.
  std::vector<hang::LegForce> forces(hang::Vec3 load) const;
  /// How far the apex sinks and moves under a plumb load, by its legs' stretch, m; NaN: not known, as under
  /// none.
  double shiftUnder(double plumbN) const;
};

using Bridles = std::vector<std::shared_ptr<const BridledPick>>;

/// Looked up and solved once. Where it cannot be, or figures are missing, the apex stands where it is wanted.
std::shared_ptr<const BridledPick> bridledPick(const Snapshot& snapshot, const House& house,
                                               const venue::Bridle& bridle);

} // namespace hangbook::options
