// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "options/option.h"
#include "options/snapshot.h"

/// A hang in its room as a side view to scale, from the same geometry that the rules judge. Plain figures in
/// metres, for a window or a sheet to draw.
namespace hangbook::options {

/// A place in the vertical plane along the hang's bearing. `along` is counted so that the hang's origin
/// stands at its own x in the venue: with a hang that faces along the venue's x it is the venue's x. `height`
/// is above the datum.
struct ScenePlace {
  double along{};
  double height{};
};

struct SceneSection {
  QString name;
  std::vector<ScenePlace> floor; ///< first row to last, at its distance from the hang in plan
  std::vector<ScenePlace> ears;  ///< empty where the ear height is not known
  bool mustBeCovered{};          ///< by this hang
};

/// A stretch of rows that no cabinet covers, one place for each sampled row. Of a section with a front line a
/// row is drawn where it is nearest to the hang's line, and `partly` says that only some of its seats are
/// missed.
struct SceneMissed {
  QString section;
  std::vector<ScenePlace> ears;
  bool partly{};
};

struct SceneObstruction {
  QString name;
  double from{}; ///< along
  double to{};
  double underside{};
  bool overHang{}; ///< some of it is above the bar or a cabinet, seen in plan
};

struct SceneHoist {
  QString point;                ///< or the bridle's name
  ScenePlace pointAt;           ///< of a bridle: its apex
  std::vector<ScenePlace> legs; ///< of a bridle: the points that its legs go up to
  ScenePlace hook;
  /// The run-in hoist where it stands: at the hook where its body climbs, else under its rigging. None where
  /// its closed length, the rigging or which end it stays at is not known.
  std::optional<ScenePlace> bodyTop;
  std::optional<ScenePlace> bodyBottom;
};

struct SceneCabinet {
  QString name;
  int element{}; ///< counted from 1 at the bar
  std::vector<ScenePlace> outline;
  double aimDeg{};
  bool covers{};
};

struct SceneChain {
  ScenePlace anchor;
  ScenePlace eye;
  int mark{};
  std::optional<double> unused; ///< length of the links beyond the mark; none where it is not known
};

/// An edge of a covering cabinet's vertical cover: from where the sound leaves to the end of its throw, or to
/// the lowest floor.
struct SceneEdge {
  int element{}; ///< counted from 1
  bool upper{};
  ScenePlace from;
  ScenePlace to;
};

/// A line from the topmost covering cabinet to the nearest or farthest ear that must be covered.
struct SceneSight {
  ScenePlace from;
  ScenePlace to;
  bool lastRow{};
  bool covered{};
};

struct SceneDimension {
  QString name; ///< "trim", "headroom"
  ScenePlace from;
  ScenePlace to;
  double metres{};
};

struct Scene {
  QString hang;
  ScenePlace from; ///< lower left corner of all that is drawn
  ScenePlace to;   ///< upper right
  std::vector<SceneSection> sections;
  std::optional<double> lowSteel; ///< height
  std::vector<SceneObstruction> obstructions;
  std::vector<SceneHoist> hoists;
  std::vector<ScenePlace> barOutline; ///< of the frame; empty where it is not known
  /// From the picks' origin to where the frame is held (its tilt axis), side pair only.
  std::vector<ScenePlace> head;
  std::vector<SceneCabinet> cabinets;
  std::optional<SceneChain> chain;
  std::optional<ScenePlace> centreOfGravity;
  std::vector<ScenePlace> pickLine; ///< plumb line from the picks' middle down past the centre of gravity
  std::vector<SceneDimension> dimensions;
  std::vector<SceneEdge> edges;
  std::vector<SceneSight> sights;
  std::vector<SceneMissed> missed;
};

/// The option at its setting. Without a setting (or with figures missing) only the room is drawn. For a
/// setting of somebody's own: sceneOf(snapshot, judge(snapshot, key, setting)).
/// Throws Error (badInput) where the option names a hang that the show does not have.
Scene sceneOf(const Snapshot& snapshot, const Option& option);

} // namespace hangbook::options
