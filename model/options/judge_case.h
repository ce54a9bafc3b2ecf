// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <vector>

#include "options/rig.h"
#include "options/rule.h"

/// All rules on one case: numbers for the search, words for what is shown.
namespace hangbook::options {

/// Every rule in the order of the sheet: weight, trim and aim, gear.
const std::vector<const Rule*>& allRules();
const Rule* ruleNamed(const char* id);

struct HangOnce; // hang_once.h

/// What is the same for a whole search of one hang.
struct Search {
  const Snapshot* snapshot = nullptr;
  const House* house = nullptr;
  const calendar::Hang* hang = nullptr;
  std::vector<std::shared_ptr<const BridledPick>> bridles; ///< whose apexes may stand among the points
  std::shared_ptr<const HangOnce> once = nullptr;          ///< nullptr: each option works it out by itself
};

/// What names an option, and no more: quick enough to find one among thousands by its identifier.
OptionKey keyOf(const Search& search, const catalogue::StackingTable& table, const Stack& stack,
                const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
                const catalogue::HoistType& hoist, const std::vector<const venue::Point*>& points);

/// Parts, key and limits looked up; `missing` from the rig.
Case caseOf(const Search& search, const catalogue::StackingTable& table, const Stack& stack,
            const catalogue::BarType& bar, const catalogue::PickArrangement& arrangement,
            const catalogue::HoistType& hoist, const std::vector<const venue::Point*>& points,
            const QStringList& missing);

/// How one setting and trim do by the rules that depend on them, in numbers.
struct Score {
  Verdict verdict = Verdict::holds;
  int failing{};   ///< rules that fail
  int open{};      ///< rules that are unproven
  double beyond{}; ///< sum over failing rules of how far beyond, as a part of the limit
  double cover{};  ///< per cent; 0 where not known
};

/// The trims at which every rule that depends on the trim holds, each end labelled; ends are infinite where
/// no rule sets them.
struct Window {
  double low{};
  double high{};
  const char* lowSetBy = "";
  const char* highSetBy = "";
  bool open() const { return low <= high; }
};
/// Of a weight rule, by its place in `weightRules()`: whether it can fail at any trim at which the lean rule
/// holds.
using MayFail = std::function<bool(std::size_t)>;
/// `mayFail`: what is known beforehand; without it each rule is asked.
Window windowOf(const Case& option, const Settled& settled, bool withCover, const MayFail& mayFail = {});

/// Where in a window to hang: the middle, to the centimetre where that lies inside; the end that there is
/// where the other is not set; the lower end where the window is shut, so that what is short is room above.
/// NaN where no rule sets an end.
double middleOf(const Window& window);

/// The option at this setting and trim, with words. `settled` is null where no setting is possible; `why`
/// then says so, empty where figures are missing.
Option optionAt(const Case& option, const Rig& rig, const Settled* settled, double trimM, const QString& why);
/// The same without words and figures: identifier, key, verdict, cover, mass as stated, and each rule's
/// verdict.
Option outlineAt(const Case& option, const Settled* settled, double trimM, const QString& why);

} // namespace hangbook::options
