// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "desk/lists/table_model.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// Two things on the route that do not go together, with what would part them.
struct Clash {
  enum class Kind { gear, examination, travel } kind = Kind::gear;
  QDate day{}; ///< the first day on which it hurts
  QString tour{};
  QString show{};
  QString what{};   ///< a sentence
  QString wayOut{}; ///< a sentence: worked out from the same facts, never a guess
  bool operator==(const Clash&) const = default;
};

/// The fastest that a heavy vehicle may go by its own speed limiter, km/h (Council Directive 92/6/EEC,
/// article 3, as amended by 2002/85/EC; from memory). No road is shorter than the way over the ground: what
/// that speed does not reach over it, no truck reaches.
constexpr double fastestTruckKmh = 90.0;

/// The clashes from today on, in order of day: gear that shows which are away at once want more of than there
/// is, examinations that run out while the gear is away, and stops of one tour that no truck can reach in
/// time. What is not known clashes with nothing: a stop without its times or its place is not judged. Takes a
/// while with a large fleet: not for the window's thread.
std::vector<Clash> clashesOf(const Overview& overview, const Figures& figures);

enum class ClashColumn { day, show, kind, what, wayOut, count };

class ClashModel : public ListOf<Clash, ClashColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(ClashColumn column) const override;
  Cell cellOf(const Clash& clash, ClashColumn column) const override;
  QString keyOf(const Clash& clash) const override { return clash.tour + QLatin1Char('\n') + clash.show; }
};

} // namespace hangbook::desk
