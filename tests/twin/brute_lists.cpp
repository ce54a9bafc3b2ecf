// SPDX-License-Identifier: GPL-3.0-or-later
#include "twin/brute_lists.h"

#include <algorithm>
#include <cmath>

#include "quantity/error.h"

namespace hangbook::testing {
namespace {

using catalogue::JointKind;
using catalogue::StackingTable;
using options::Rig;
using options::Setting;
using options::Settled;
using options::Stack;

/// Steeper than any bar of these shows tilts.
constexpr double steepestDeg = 30.0;

bool keepsTo(const StackingTable& table, const Stack& stack) {
  const auto number = [&stack](const QString& type) {
    return std::count_if(stack.cabinets.begin(), stack.cabinets.end(),
                         [&type](const auto* cabinet) { return cabinet->name == type; });
  };
  const bool counted = std::all_of(table.counts.begin(), table.counts.end(), [&](const auto& row) {
    return number(row.type) >= row.least && number(row.type) <= row.most;
  });
  const bool known = std::all_of(stack.cabinets.begin(), stack.cabinets.end(), [&](const auto* cabinet) {
    return std::any_of(table.counts.begin(), table.counts.end(),
                       [&](const auto& row) { return row.type == cabinet->name; });
  });
  return counted && known && std::any_of(table.lowest.begin(), table.lowest.end(), [&](const QString& type) {
           return type == stack.cabinets.back()->name;
         });
}

void chainOf(Stack& stack, const StackingTable& table) {
  for (int i = static_cast<int>(stack.joins.size()); i > 0; --i) {
    const auto place = static_cast<std::size_t>(i) - 1;
    if (stack.joins[place]->kind == JointKind::pivot) {
      stack.held = i;
      if (table.chain.isEmpty()) {
        stack.missing.push_back(QStringLiteral("chain"));
      }
      return;
    }
  }
  const bool seated = std::any_of(stack.joins.begin(), stack.joins.end(),
                                  [](const auto* join) { return join->kind == JointKind::seated; });
  if (!seated || table.chain.isEmpty()) {
    return;
  }
  for (int i = 1; i <= static_cast<int>(stack.cabinets.size()); ++i) {
    const QString& type = stack.cabinets[static_cast<std::size_t>(i) - 1]->name;
    if (std::count(table.held.begin(), table.held.end(), type) > 0) {
      stack.held = i; // the lowest of them stays
    }
  }
}

double mostTilt(const Rig& rig, const options::Case& parts) {
  double most = steepestDeg;
  if (const auto* pair = std::get_if<hang::ForeAftPair>(&rig.hang.bar.picks)) {
    // So far as the hoists may stand apart in height, and 20° at most.
    most = 20.0;
    const double apart =
        std::hypot(pair->frontPick.x - pair->rearPick.x, pair->frontPick.z - pair->rearPick.z);
    if (parts.bar->hoistOffsetLimit) {
      const double sine = inMetres(*parts.bar->hoistOffsetLimit) / apart;
      most = std::min(most, std::asin(std::min(1.0, sine)) * 180.0 / M_PI);
    }
  }
  return most;
}

} // namespace

std::vector<Stack> bruteStacks(const options::Snapshot& snapshot, const StackingTable& table) {
  std::size_t longest = 0;
  for (const auto& row : table.counts) {
    longest += static_cast<std::size_t>(row.most);
  }
  std::vector<Stack> all;
  std::vector<Stack> shorter{Stack{}};
  for (std::size_t length = 1; length <= longest; ++length) {
    std::vector<Stack> these;
    for (const Stack& start : shorter) {
      for (const catalogue::Join& join : table.joins) {
        const auto* cabinet = catalogue::find(snapshot.catalogue.cabinets, join.below);
        const bool fits =
            start.cabinets.empty() ? join.above.isEmpty() : start.cabinets.back()->name == join.above;
        if (cabinet != nullptr && fits) {
          Stack next = start;
          next.cabinets.push_back(cabinet);
          next.joins.push_back(&join);
          these.push_back(next);
        }
      }
    }
    for (const Stack& each : these) {
      if (keepsTo(table, each)) {
        all.push_back(each);
        chainOf(all.back(), table);
      }
    }
    shorter = std::move(these);
  }
  return all;
}

std::vector<std::vector<const venue::Point*>> bruteWays(const std::vector<const venue::Point*>& candidates,
                                                        catalogue::Picks picks) {
  std::vector<std::vector<const venue::Point*>> ways;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    if (picks == catalogue::Picks::single) {
      ways.push_back({candidates[i]});
    }
    for (std::size_t j = 0; j < candidates.size() && picks != catalogue::Picks::single; ++j) {
      const bool side = picks == catalogue::Picks::sidePair;
      const Length first = side ? candidates[i]->y : candidates[i]->x;
      const Length second = side ? candidates[j]->y : candidates[j]->x;
      if (i != j && (first > second || (first == second && i < j))) {
        ways.push_back({candidates[i], candidates[j]});
      }
    }
  }
  return ways;
}

BruteSettings bruteSettings(Rig& rig, const options::Case& parts, double panDeg) {
  BruteSettings all;
  const bool single = std::holds_alternative<hang::SinglePick>(rig.hang.bar.picks);
  const bool pivot =
      rig.hang.chain && std::holds_alternative<hang::Pivot>(
                            rig.hang.stack[static_cast<std::size_t>(rig.hang.chain->held) - 1].joint);
  const double most = mostTilt(rig, parts);
  const auto steps = single ? 0 : static_cast<int>(most / rig.tiltStepDeg);
  std::vector<std::vector<double>> holes{{}};
  for (const Rig::Holes& each : rig.holes) {
    std::vector<std::vector<double>> longer;
    for (const auto& start : holes) {
      for (const double angle : each.anglesDeg) {
        longer.push_back(start);
        longer.back().push_back(angle);
      }
    }
    holes = longer;
  }
  for (const auto& set : holes) {
    for (int mark = rig.hang.chain ? 1 : 0; mark <= (rig.hang.chain ? rig.mostMark : 0); ++mark) {
      bool any = false;
      for (int step = -steps; step <= steps; ++step) {
        Setting setting{step * rig.tiltStepDeg, panDeg, options::notKnown, std::nullopt, set};
        if (rig.hang.chain) {
          setting.mark = mark;
        }
        try {
          QStringList missing;
          const auto settled = options::settle(rig, setting, missing);
          any = true;
          if (settled) {
            all.settled.push_back(*settled);
          } else {
            all.unknownShape = true;
          }
        } catch (const Error&) { // out of reach, or not for this kind of pick (a pan of a single one)
        }
      }
      if (any && !pivot) {
        break; // without a pivot the first link that reaches is the one: a longer chain only opens more
      }
    }
  }
  return all;
}

} // namespace hangbook::testing
