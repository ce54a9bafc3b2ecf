// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "catalogue/source.h"
#include "quantity/quantity.h"

namespace hangbook::catalogue {

enum class JointKind { seated, pinned, pivot };

/// Who may stand under whom, and with which joint.
struct Join {
  QString above; ///< type of cabinet; empty = straight under the bar
  QString below;
  JointKind kind = JointKind::pinned;
  std::vector<Angle> angles;                  ///< fixed joints: the angle of each hole; each is tried
  std::optional<std::array<Angle, 2>> travel; ///< pivot: what the joint allows
  std::optional<Force> pinLimit;              ///< worst pin or link of one side
  std::optional<Force> contactLimit;          ///< seated: most push at the rear contact
  std::optional<double> sideShare;            ///< share that the more loaded side takes; 0.5 = evenly
  bool limitIncludesFactors = false;
  std::optional<Angle> opensTo;   ///< seated: how far its rear can open; 0: not at all
  std::optional<Force> stopLimit; ///< seated: most pull at the stop that ends the opening
  bool operator==(const Join&) const = default;
};

/// How many of a type a stack must and may have.
struct Count {
  QString type;
  int least = 0;
  int most = 0;
  bool operator==(const Count&) const = default;
};

/// A maker's stacking table. The stacks that it permits are all sequences from the bar down in which each
/// pair is joined by one of `joins`, each type's number is within `counts` (a type without a row may not
/// stand at all), and the lowest is one of `lowest`. No stack is written in code.
struct StackingTable : Record {
  QString name;
  QString maker;
  std::vector<QString> bars; ///< types of bar that it is for
  QString chain;             ///< type of chain, empty where the table has none
  std::vector<Join> joins;
  std::vector<Count> counts;
  std::vector<QString> lowest; ///< types that may be the lowest
  std::vector<QString> held;   ///< types that the chain may hold by their eye
  bool operator==(const StackingTable&) const = default;
};

} // namespace hangbook::catalogue
