// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <memory>
#include <span>
#include <vector>

#include "hang/build_loads.h"
#include "hang/doubt.h"
#include "hang/hang.h"
#include "hang/layout.h"
#include "hang/statics.h"
#include "options/house_figures.h"
#include "options/option.h"
#include "options/snapshot.h"

/// The seam between speed and words: a rule has one formula (`evaluate`) and its words (`explain`) are made
/// from that formula's own answer. Search, rule sheet and window all go through the same function.
namespace hangbook::options {

inline constexpr double notKnown = std::numeric_limits<double>::quiet_NaN();

struct WeightLimits; // weight_limits.h
struct RoomLimits;   // room_limits.h
struct GearNeeds;    // gear_needs.h
struct BridledPick;  // bridle_pick.h
class RigFold;       // rig_fold.h

/// One of the venue's points that an option loads, with the picks that do: each on a dead hang, or through a
/// leg of its bridle.
struct Carrier {
  struct From {
    std::size_t pick{};
    int leg = -1; ///< of the pick's bridle, counted from 0; −1: a dead hang
  };
  const venue::Point* point = nullptr;
  std::vector<From> from;
};

/// One option before it has a setting: its parts, looked up once, and the rules' limits as plain numbers.
/// The pointers go into the snapshot, which outlives it.
struct Case {
  const Snapshot* snapshot = nullptr;
  const House* house = nullptr;
  const calendar::Hang* hang = nullptr;
  OptionKey key;
  const catalogue::StackingTable* table = nullptr;
  std::vector<const catalogue::CabinetType*> cabinets; ///< from the bar down
  std::vector<const catalogue::Join*> joins;           ///< each cabinet's joint to what is above it
  const catalogue::BarType* bar = nullptr;
  const catalogue::PickArrangement* arrangement = nullptr;
  const catalogue::HoistType* hoist = nullptr;
  const catalogue::ChainType* chain = nullptr; ///< nullptr: none in this stack
  int held{};                                  ///< the element that it holds, counted from 1; 0: none
  std::vector<const venue::Point*> points;     ///< one for each pick, in its order; of a bridle the apex
  std::vector<std::shared_ptr<const BridledPick>> bridles; ///< one for each pick; nullptr: a dead hang
  std::vector<Carrier> carriers; ///< the real points, each once; without bridles: as `points`
  QStringList missing;           ///< figures without which the statics cannot be computed, in words
  std::shared_ptr<const WeightLimits> weight;
  std::shared_ptr<const RoomLimits> room;
  std::shared_ptr<const GearNeeds> gear;
  RigFold* fold = nullptr; ///< figures that a search has worked out already; nullptr: each anew
};

/// What a setting is like with its figures as stated, and how far it may be off.
struct SettledDoubt {
  hang::Statics statics; ///< as stated
  hang::BuildWorst build;
  hang::Unfavourable worst; ///< its angles and lengths; its loads are the setting's own
  hang::Doubts figures;     ///< what each figure of the hang may be off by
  double longer =
      0.0; ///< m, by which a hoist or a piece of hardware may be off its stated length, either way
};

/// One setting but for its trim, as numbers. Its loads are those at the unfavourable end of every figure's
/// doubt, which is where rules are judged; angles and places are as stated, and `doubt` says how far they are
/// off. Statics and layout stand in the hang's world frame: origin midway between the picks (side pair), at
/// the front pick or at the single pick; z up.
struct Settled {
  Setting setting; ///< trimM is not yet decided
  hang::Statics statics;
  hang::Layout layout;      ///< where outlines, pins, picks and eye stand, and which way each element aims
  hang::BuildWorst build;   ///< what the picks carry at the worst step of the build and of aiming
  double gearHeavier = 1.0; ///< factor on the masses of hoists and hardware: at their heaviest
  std::shared_ptr<const SettledDoubt> doubt; ///< nullptr: every figure is as stated
};

/// m, by which any height below the picks may be off, either way; 0 where nothing is in doubt.
inline double heightDoubt(const Settled& settled) {
  return settled.doubt == nullptr ? 0.0 : settled.doubt->worst.height;
}

/// m, by which a hoist or a piece of hardware may be off its stated length; 0 where nothing is in doubt.
inline double pieceDoubt(const Settled& settled) {
  return settled.doubt == nullptr ? 0.0 : settled.doubt->longer;
}

/// A rule's answer in numbers.
struct Use {
  Verdict verdict = Verdict::unproven;
  bool applies = true;
  double value = notKnown;
  double limit = notKnown;
  int which = -1; ///< the point, hoist, joint, row … that it is about; -1 = none
  int why{};      ///< the rule's own number for what is missing or does not apply
};

/// Where the trim may lie for a rule to hold; tight where it equals an end.
struct TrimRange {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  bool holds(double trimM) const { return trimM >= low && trimM <= high; }
};

struct Rule {
  const char* id;
  bool needsSetting; ///< false: the same for all settings of an option (gear, count)
  /// The formula. `settled` is never null where needsSetting; `trimM` is NaN where the trim is not decided.
  Use (*evaluate)(const Case&, const Settled*, double trimM);
  /// For rules that are linear in trim: where it holds. nullptr: the rule does not depend on the trim.
  TrimRange (*trimRange)(const Case&, const Settled&);
  /// Words from the very Use that evaluate gave.
  Finding (*explain)(const Case&, const Settled*, double trimM, const Use&);
};

/// In the order of the sheet: weight, trim and aim, gear.
std::span<const Rule> weightRules();
std::span<const Rule> roomRules(); ///< trim, aim and cover
std::span<const Rule> gearRules();

std::shared_ptr<const WeightLimits> weightLimits(const Case&);
std::shared_ptr<const RoomLimits> roomLimits(const Case&);
std::shared_ptr<const GearNeeds> gearNeeds(const Case&);

/// Upper limit on a load: equal is tight, 90 % or more is tight, beyond fails, NaN on either side is
/// unproven.
Verdict againstLoadLimit(double value, double limit);
/// A room to spare against the margin inside which it is tight: none to spare is tight, below 0 fails, a
/// figure that is not known is unproven (but what is short stays short, whatever the margin).
Verdict bySlack(double slack, double margin);
/// Upper or lower limit on a length or angle, with a margin in its own unit inside which it is tight.
Verdict againstUpperLimit(double value, double limit, double margin);
Verdict againstLowerLimit(double value, double limit, double margin);

} // namespace hangbook::options
