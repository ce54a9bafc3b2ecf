// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <vector>

#include <QStringList>

#include "build/plugging.h"
#include "hang/hang.h"
#include "quantity/text.h"

/// What a build plan is computed from, as plain figures: metres above the floor under the hang, degrees.
/// NaN: nobody stated it; the steps that need it say so.
namespace hangbook::build {

inline constexpr double notStated = std::numeric_limits<double>::quiet_NaN();

/// One hang as it is to stand, and its room.
struct Hanging {
  QString hang;
  hang::Hang rig;                     ///< as set: stack, joints, chain, bar
  QStringList types;                  ///< of each cabinet, from the bar down
  QStringList holes;                  ///< of each cabinet's joint to what is above it, in words
  std::vector<Plugs> plugs;           ///< of each cabinet
  std::vector<hang::Vec2> barOutline; ///< frame coordinates
  std::vector<double> engagement;     ///< of each cabinet: what stands above its top while it rides
  double hookMet = notStated;         ///< hooks where the bar is met on its case
  double hooksAtTrim = notStated;     ///< origin of the hang: midway between the picks, or the front pick
  double lowestAtTrim = notStated;    ///< lowest edge as set
  double datumAtTrim = notStated;     ///< tape height of the bar's datum
  double highestHook = notStated;     ///< where the hoists are run in
  double ceiling = notStated;         ///< what nothing of the hang may pass, clearance taken off
  double hoistDifference = notStated; ///< most that two hoists of the bar may differ
  QStringList points;                 ///< one for each pick
  QString bar;
  QString hoist;
  QString chain;         ///< type; empty: none
  QStringList secondary; ///< pieces of one secondary suspension
  double secondarySlack = notStated;
  QStringList missing; ///< without which nothing can be planned, in words
};

/// One type of cart, for one type of cabinet.
struct Carts {
  QString type; ///< empty: no cart is known
  QString cabinet;
  int most = 0; ///< 0: not stated
  int high = 0; ///< 0: not stated
  double deck = notStated;
  double height = notStated; ///< as stated, with `most` on it
};

struct Job {
  QString show;
  UnitSystem units = UnitSystem::metric; ///< of the words; figures stay metric
  std::vector<Hanging> hangs;            ///< in the order of the show
  std::vector<Carts> carts;
  double cartClearance = notStated;  ///< above a cart that is wheeled
  double swingClearance = notStated; ///< below a pivoting cabinet without its chain
};

} // namespace hangbook::build
