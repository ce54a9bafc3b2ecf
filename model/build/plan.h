// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "build/job.h"

/// The ordered steps from cases on the floor to a hang at trim, and back onto the carts. Heights in metres
/// above the floor under the hang.
namespace hangbook::build {

enum class StepKind {
  barInPlace,
  raise, ///< or lower: the sign of `move` says it
  cartIn,
  lowerOn,
  pin,
  plug,
  releaseCart,
  cartAway,
  cartAcross,
  chainOn,
  aim,
  clearBelow,
  secondarySteel,
  finalCheck,
  secondaryOff,
  level,
  chainOff,
  setDown,
  unplug,
  unpin,
  barAway,
};

/// The word of it in JSON: "cart-in".
QString wordFor(StepKind kind);

struct Step {
  int number = 0; ///< counted from 1, over all hangs
  QString hang;
  StepKind kind = StepKind::raise;
  QString what;   ///< one sentence, as it is called out
  int people = 1; ///< at least, besides whoever runs the hoists
  bool nobodyBeneath = false;
  int element = 0; ///< counted from 1 at the bar; 0: none
  QString cabinet; ///< its type
  QString cart;    ///< such as "Bass cart 2"
  QString across;  ///< the hang that a shared cart goes to
  QString hole;    ///< of the joint, in words
  int pinsASide = 0;
  QString gate;               ///< a hold point that asks for a name; empty: none
  std::vector<Plugged> plugs; ///< that go in or come out
  std::optional<int> mark;
  std::optional<double> move;   ///< of the hooks, up positive
  std::optional<double> hooks;  ///< afterwards
  std::optional<double> lowest; ///< of all that hangs, afterwards, however it swings
  std::optional<double> clears; ///< what must pass beneath: its height, clearance left out
  QStringList missing;          ///< what nobody stated; the step is then unproven
};

/// One cart as it comes from the truck.
struct CartRide {
  struct Place {
    int hang = 0;    ///< counted from 0
    int element = 0; ///< counted from 0
  };
  QString name;
  QString type; ///< empty: no cart is known
  QString cabinet;
  std::vector<std::vector<Place>> columns; ///< each from its top down
  QStringList hangs;                       ///< two or more: they share it
};

enum class Standing { planned, unproven, notPossible };

struct Plan {
  QString show;
  QStringList hangs; ///< those planned; a `CartRide::Place` counts in these
  Standing standing = Standing::planned;
  std::vector<CartRide> carts; ///< in the order in which they come in
  std::vector<Step> steps;
  std::vector<Step> loadOut;
  QStringList missing;    ///< each once
  QStringList impossible; ///< what does not fit, in words
  QStringList cautions;
};

QString wordFor(Standing standing);

/// The plan of all hangs at once, since they share carts. Pure. A figure that nobody stated leaves the steps
/// that need it without heights, and the plan unproven; a raise beyond hoist or room makes it not possible.
Plan planBuild(const Job& job);

} // namespace hangbook::build
