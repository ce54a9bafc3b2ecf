// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QString>
#include <QStringList>

#include "hang/hang.h"
#include "options/doubts.h"
#include "options/rule.h"
#include "options/stacks.h"

namespace hangbook::options {

/// One stack on one bar with one arrangement of picks, as figures for the statics: what all hoists and points
/// share.
struct Rig {
  hang::Hang hang;     ///< its setting, mark and holes are those last used
  QStringList missing; ///< what the statics need and nobody stated, in words; then `hang` is of no use
  /// Each fixed joint with more than one hole: its element (counted from 0) and the angles.
  struct Holes {
    std::size_t element{};
    std::vector<double> anglesDeg;
  };
  std::vector<Holes> holes;
  /// A seated joint whose maker does not say how far its rear can open. Until it would open that does not
  /// matter; `hang` lets it open freely.
  struct Opening {
    std::size_t element{}; ///< counted from 0
    QString what;          ///< in words
  };
  std::vector<Opening> openingUnknown;
  int mostMark{};                ///< links that the chain has
  double tiltStepDeg = 0.5;      ///< of the grid
  double foreAftReachDeg = 20.0; ///< how far a fore-aft pair is tried either way
  RigDoubts doubts;
};

/// Cable and its clamp count as part of the frame, at the frame's centre of gravity.
Rig rigFor(const Stack& stack, const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
           const catalogue::ChainType* chain, const calendar::Hang& hang, const Snapshot& snapshot,
           const House& house);

/// Puts each joint with holes at its angle (one for each of `rig.holes`).
void useHoles(Rig& rig, const std::vector<double>& anglesDeg);

/// The hang as an input to the statics: nothing opens by a figure that nobody stated.
hang::Hang asInput(const Rig& rig);

/// All settings of a rig, each solved once, in the shape that the hang then really takes: tilt on the grid
/// within the bar's travel × every usable mark × every hole. `impossible` says why, where there is none.
struct Settings {
  std::vector<Settled> settled;
  QString impossible;
  QStringList missing; ///< figures without which other settings have no shape, in words
};
Settings settingsOf(Rig& rig, double panDeg);

/// One setting as it is given; nothing where figures are missing that its shape depends on, which `missing`
/// then names. Throws Error where it is not possible.
std::optional<Settled> settle(Rig& rig, const Setting& setting, QStringList& missing);

} // namespace hangbook::options
