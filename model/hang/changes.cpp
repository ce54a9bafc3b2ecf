// SPDX-License-Identifier: GPL-3.0-or-later
#include "hang/changes.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "hang/settle.h"
#include "hang/solve.h"
#include "hang/uneven.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::hang {
namespace {

constexpr int mostCount = 2; ///< cabinets that are looked for as missing or too many
constexpr int mostLinks = 5; ///< either way
constexpr double panStepDeg = 0.25;

bool alike(const Element& one, const Element& other) {
  return one.name == other.name && one.mass == other.mass;
}

bool isHeld(const Hang& hang, std::size_t element) {
  return hang.chain && static_cast<std::size_t>(hang.chain->held) == element + 1;
}

class Changes {
public:
  Changes(const Hang& hang, const std::array<double, 2>& readings)
      : hang_(hang), readings_(readings), now_(carried(hang)) {}

  std::vector<Change> all() {
    counts();
    others();
    links();
    uneven();
    pulls();
    masses();
    panned();
    exchanged();
    return found_;
  }

private:
  /// The loads of a changed hang, or nothing where it cannot be.
  std::optional<std::array<double, 2>> loadsOf(const Hang& changed) const {
    try {
      const Statics statics = carried(changed);
      return std::array<double, 2>{statics.pickLoads[0].load, statics.pickLoads[1].load};
    } catch (const Error&) {
      return std::nullopt;
    }
  }

  void offer(std::optional<Change>& best, Change change, const Hang& changed) const {
    std::vector<std::optional<std::array<double, 2>>> ways{loadsOf(changed)};
    if (!ways.front() && changed.chain) {
      ways = atEndsOfTravel(changed);
    }
    for (const auto& loads : ways) {
      if (!loads) {
        continue;
      }
      change.loads = *loads;
      if (!best || missOf(change, readings_, now_.pickCount) < missOf(*best, readings_, now_.pickCount)) {
        best = change;
      }
    }
  }

  /// A chain that is too long or too short for what now hangs leaves its pivot at an end of its travel.
  std::vector<std::optional<std::array<double, 2>>> atEndsOfTravel(Hang hang) const {
    Element& held = hang.stack[static_cast<std::size_t>(hang.chain->held) - 1];
    const auto* pivot = std::get_if<Pivot>(&held.joint);
    if (pivot == nullptr) {
      return {};
    }
    const Range travel = pivot->travelDeg;
    hang.chain.reset();
    held.joint = heldAt(travel.low);
    const auto low = loadsOf(hang);
    held.joint = heldAt(travel.high);
    return {low, loadsOf(hang)};
  }

  void keep(const std::optional<Change>& change) {
    if (change) {
      found_.push_back(*change);
    }
  }

  /// Without the element; what hung from it hangs from what is above it.
  Hang without(Hang hang, std::size_t element) const {
    hang.stack.erase(hang.stack.begin() + static_cast<std::ptrdiff_t>(element));
    if (hang.chain && static_cast<std::size_t>(hang.chain->held) > element + 1) {
      --hang.chain->held;
    } else if (hang.chain && static_cast<std::size_t>(hang.chain->held) == element + 1) {
      hang.chain.reset();
    }
    return hang;
  }

  Hang twice(Hang hang, std::size_t element) const {
    Element one = hang.stack[element];
    hang.stack.insert(hang.stack.begin() + static_cast<std::ptrdiff_t>(element), one);
    if (hang.chain && static_cast<std::size_t>(hang.chain->held) > element) {
      ++hang.chain->held;
    }
    return hang;
  }

  bool firstOfItsKind(std::size_t element) const {
    return std::none_of(hang_.stack.begin(), hang_.stack.begin() + static_cast<std::ptrdiff_t>(element),
                        [&](const Element& each) { return alike(each, hang_.stack[element]); });
  }

  void counts() {
    for (std::size_t kind = 0; kind < hang_.stack.size(); ++kind) {
      if (!firstOfItsKind(kind)) {
        continue;
      }
      const Element& like = hang_.stack[kind];
      for (int count = 1; count <= mostCount; ++count) {
        std::optional<Change> fewer;
        std::optional<Change> more;
        for (std::size_t at = 0; at < hang_.stack.size(); ++at) {
          if (!alike(hang_.stack[at], like)) {
            continue;
          }
          Change change{.kind = ChangeKind::missing, .element = static_cast<int>(at) + 1, .count = count};
          if (const auto less = fewerBy(at, count)) {
            offer(fewer, change, *less);
          }
          change.kind = ChangeKind::extra;
          Hang longer = hang_;
          for (int i = 0; i < count; ++i) {
            longer = twice(longer, at);
          }
          if (!std::holds_alternative<Pivot>(like.joint)) {
            offer(more, change, longer);
          }
        }
        keep(fewer);
        keep(more);
      }
    }
  }

  /// `count` alike from `from` up; nothing where there are not so many. With none left it is refused later.
  std::optional<Hang> fewerBy(std::size_t from, int count) const {
    Hang hang = hang_;
    int taken = 0;
    for (std::size_t i = from + 1; i-- > 0 && taken < count;) {
      if (alike(hang_.stack[i], hang_.stack[from])) {
        hang = without(hang, i);
        ++taken;
      }
    }
    return taken == count ? std::optional(hang) : std::nullopt;
  }

  void others() {
    for (std::size_t kind = 0; kind < hang_.stack.size(); ++kind) {
      for (std::size_t instead = 0; instead < hang_.stack.size(); ++instead) {
        if (!firstOfItsKind(kind) || !firstOfItsKind(instead) ||
            alike(hang_.stack[kind], hang_.stack[instead])) {
          continue;
        }
        std::optional<Change> best;
        for (std::size_t at = 0; at < hang_.stack.size(); ++at) {
          if (!alike(hang_.stack[at], hang_.stack[kind]) || isHeld(hang_, at)) {
            continue;
          }
          Hang changed = hang_;
          const Joint joint = changed.stack[at].joint;
          const std::optional<Vec2> nextPin = changed.stack[at].nextPin;
          changed.stack[at] = hang_.stack[instead];
          changed.stack[at].joint = joint;
          changed.stack[at].nextPin = changed.stack[at].nextPin ? changed.stack[at].nextPin : nextPin;
          offer(best,
                {.kind = ChangeKind::other,
                 .element = static_cast<int>(at) + 1,
                 .instead = static_cast<int>(instead) + 1},
                changed);
        }
        keep(best);
      }
    }
  }

  void links() {
    if (!hang_.chain) {
      return;
    }
    std::optional<Change> best;
    for (int by = -mostLinks; by <= mostLinks; ++by) {
      if (by == 0 || hang_.chain->mark + by < 1) {
        continue;
      }
      Hang changed = hang_;
      changed.chain->mark += by;
      offer(best,
            {.kind = ChangeKind::links, .element = hang_.chain->held, .amount = static_cast<double>(by)},
            changed);
    }
    // Between side by side picks the shape moves nothing: no reading tells of it.
    if (best && missOf(*best, {now_.pickLoads[0].load, now_.pickLoads[1].load}, now_.pickCount) >
                    1e-6 * now_.mass * standardGravity) {
      keep(best);
    }
  }

  void uneven() {
    const double sum = readings_[0] + readings_[1];
    if (!(sum > 0.0)) {
      return;
    }
    // A single pick has no other that it could be uneven with: no rise.
    if (const auto rise = riseForShare(hang_.bar, now_, readings_[0] / sum)) {
      if (const auto there = unevenBy(hang_.bar, now_, *rise)) {
        found_.push_back({.kind = ChangeKind::uneven, .amount = *rise, .loads = there->loads});
      }
    }
  }

  void pulls() {
    for (std::size_t pick = 0; pick < now_.pickCount; ++pick) {
      Change change{.kind = ChangeKind::pull,
                    .element = static_cast<int>(pick) + 1,
                    .amount = readings_[pick] - now_.pickLoads[pick].load,
                    .loads = {now_.pickLoads[0].load, now_.pickLoads[1].load}};
      change.loads[pick] = readings_[pick];
      found_.push_back(change);
    }
  }

  void masses() {
    const double total = now_.pickCount < 2 ? readings_[0] : readings_[0] + readings_[1];
    const double more = total / standardGravity - now_.mass;
    std::optional<Change> onBar;
    if (hang_.bar.frameMass + more >= 0.0) {
      Hang changed = hang_;
      changed.bar.frameMass += more;
      offer(onBar, {.kind = ChangeKind::barMass, .amount = more}, changed);
    }
    keep(onBar);
    double cabinets = 0.0;
    for (const Element& each : hang_.stack) {
      cabinets += each.mass;
    }
    const double times = 1.0 + more / cabinets;
    Hang changed = hang_;
    for (Element& each : changed.stack) {
      each.mass *= times;
    }
    std::optional<Change> heavier;
    offer(heavier, {.kind = ChangeKind::heavier, .amount = times},
          changed); // no mass is not above 0: refused
    keep(heavier);
  }

  void panned() {
    const auto* pair = std::get_if<SidePair>(&hang_.bar.picks);
    if (pair == nullptr) {
      return;
    }
    std::optional<Change> best;
    const Range travel = pair->panTravelDeg;
    const auto steps = std::lround(std::floor((travel.high - travel.low) / panStepDeg));
    for (long step = 0; step <= steps; ++step) {
      const double pan = travel.low + static_cast<double>(step) * panStepDeg;
      if (std::abs(pan - hang_.set.panDeg) >= panStepDeg) {
        Hang changed = hang_;
        changed.set.panDeg = pan;
        offer(best, {.kind = ChangeKind::panned, .amount = pan}, changed);
      }
    }
    keep(best);
  }

  void exchanged() {
    if (now_.pickCount == 2) {
      found_.push_back(
          {.kind = ChangeKind::exchanged, .loads = {now_.pickLoads[1].load, now_.pickLoads[0].load}});
    }
  }

  const Hang& hang_;
  const std::array<double, 2>& readings_;
  Statics now_;
  std::vector<Change> found_;
};

} // namespace

Statics carried(const Hang& hang) {
  const bool opens = std::any_of(hang.stack.begin(), hang.stack.end(), [](const Element& element) {
    const auto* seated = std::get_if<Seated>(&element.joint);
    return seated != nullptr && seated->openToDeg > 0.0;
  });
  if (!opens) {
    return solve(hang);
  }
  const Settled settled = settle(hang);
  Statics statics;
  statics.mass = settled.mass;
  statics.cg = settled.cg;
  statics.tiltDeg = settled.tiltDeg;
  statics.side = settled.side;
  statics.bottom = settled.bottom;
  statics.pickLoads = settled.pickLoads;
  statics.pickCount = settled.pickCount;
  return statics;
}

std::vector<Change> singleChanges(const Hang& hang, const std::array<double, 2>& readings) {
  return Changes(hang, readings).all();
}

double missOf(const Change& change, const std::array<double, 2>& readings, std::size_t picks) {
  double miss = 0.0;
  for (std::size_t pick = 0; pick < picks; ++pick) {
    miss = std::max(miss, std::abs(readings[pick] - change.loads[pick]));
  }
  return miss;
}

} // namespace hangbook::hang
