// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "options/load_columns.h"

namespace hangbook::options {

/// What one of the weight rules says of all settings of a rig together, at no lean.
struct OverAll {
  Verdict least = Verdict::holds; ///< no setting does better
  Verdict most = Verdict::fails;  ///< no setting does worse
  bool same() const { return least == most; }
};

/// For each of `weightRules()`. Proven for rules whose use rises with each pick's load, as set and during the
/// build, and with the mass, and with nothing else that differs between settings: they are asked at the
/// corner where all of these are least and at the one where all are most (`LoadColumns::corners`, the same
/// for every hoist and every way). Those are the rules that `LoadSpan` speaks of, without a bridle, and while
/// every pick is loaded. For the others it says nothing (`holds` to `fails`).
std::vector<OverAll> overAll(const Case& option, const LoadColumns& all, const LoadColumns& corners);

/// The use depends neither on the trim nor on the points: on the rig alone, with the hoist's factor. Those
/// are `bar`, `joint`, `contact`, `chain`, `pick-share` and `travel`.
bool isOfRigAndHoist(const Rule& rule);

} // namespace hangbook::options
