// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/stacks.h"

#include <algorithm>

#include "quantity/error.h"

namespace hangbook::options {
namespace {

using catalogue::CabinetType;
using catalogue::Catalogue;
using catalogue::Join;
using catalogue::JointKind;
using catalogue::StackingTable;

/// The same as hang::mostElements; stacks are walked before there is a hang.
constexpr std::size_t mostCabinetsInStack = 200;
/// A table with many joins and few ends could be walked for ever without giving a stack.
constexpr std::size_t mostPartialStacks = 2'000'000;

struct Walk {
  const Catalogue& catalogue;
  const StackingTable& table;
  std::vector<int> left; ///< of each row of counts: how many more may stand
  Stack partial;
  std::vector<Stack> found;
  std::size_t steps = 0;

  const catalogue::Count* countOf(const QString& type) const {
    for (const catalogue::Count& count : table.counts) {
      if (count.type == type) {
        return &count;
      }
    }
    return nullptr;
  }

  bool complete() const {
    if (partial.cabinets.empty() || std::find(table.lowest.begin(), table.lowest.end(),
                                              partial.cabinets.back()->name) == table.lowest.end()) {
      return false;
    }
    for (std::size_t row = 0; row < table.counts.size(); ++row) {
      if (table.counts[row].most - left[row] < table.counts[row].least) {
        return false;
      }
    }
    return true;
  }

  void keep();
  void below(const QString& above);
};

/// Which element the chain holds, and what the table leaves open about that.
void settleChain(Stack& stack, const StackingTable& table) {
  const auto mayBeHeld = [&table](const CabinetType* cabinet) {
    return std::find(table.held.begin(), table.held.end(), cabinet->name) != table.held.end();
  };
  int pivots = 0;
  bool seated = false;
  for (std::size_t i = 0; i < stack.joins.size(); ++i) {
    seated = seated || stack.joins[i]->kind == JointKind::seated;
    if (stack.joins[i]->kind == JointKind::pivot) {
      ++pivots;
      stack.held = static_cast<int>(i) + 1;
      if (!mayBeHeld(stack.cabinets[i])) {
        stack.missing.push_back(QStringLiteral("leave in table %1 for the chain to hold %2")
                                    .arg(table.name, stack.cabinets[i]->name));
      }
    }
  }
  if (pivots > 1) {
    stack.missing.push_back(
        QStringLiteral("a way to hold %1 pivots in one stack with one chain").arg(pivots));
  }
  if (pivots == 0 && seated) {
    for (std::size_t i = stack.cabinets.size(); i > 0 && stack.held == 0; --i) {
      if (mayBeHeld(stack.cabinets[i - 1])) {
        stack.held = static_cast<int>(i);
      }
    }
  }
  if (stack.held != 0 && table.chain.isEmpty()) {
    if (pivots > 0) {
      stack.missing.push_back(QStringLiteral("type of chain in table %1").arg(table.name));
    } else {
      stack.held = 0; // the maker has no chain: the seated joints must stay shut without one
    }
  }
}

void Walk::keep() {
  if (found.size() == mostStacks) {
    throw Error(Trouble::badInput,
                "permits more than " + std::to_string(mostStacks) +
                    " stacks; fewer of each type are expected",
                "stacking table " + table.name.toStdString());
  }
  Stack stack = partial;
  stack.downfill = std::any_of(stack.cabinets.begin(), stack.cabinets.end(),
                               [](const CabinetType* cabinet) { return cabinet->downfill; });
  settleChain(stack, table);
  found.push_back(std::move(stack));
}

void Walk::below(const QString& above) {
  for (const Join& join : table.joins) {
    if (join.above != above) {
      continue;
    }
    const catalogue::Count* count = countOf(join.below);
    const CabinetType* cabinet = catalogue::find(catalogue.cabinets, join.below);
    if (count == nullptr || cabinet == nullptr) {
      continue;
    }
    int& room = left[static_cast<std::size_t>(count - table.counts.data())];
    if (room <= 0) {
      continue;
    }
    if (partial.cabinets.size() == mostCabinetsInStack || ++steps > mostPartialStacks) {
      throw Error(Trouble::badInput, "permits more cabinets or orders than can be listed",
                  "stacking table " + table.name.toStdString());
    }
    --room;
    partial.cabinets.push_back(cabinet);
    partial.joins.push_back(&join);
    if (complete()) {
      keep();
    }
    below(join.below);
    partial.cabinets.pop_back();
    partial.joins.pop_back();
    ++room;
  }
}

} // namespace

QStringList Stack::types() const {
  QStringList names;
  for (const CabinetType* cabinet : cabinets) {
    names.append(cabinet->name);
  }
  return names;
}

std::vector<Stack> stacksOf(const Catalogue& catalogue, const StackingTable& table) {
  Walk walk{catalogue, table, {}, {}, {}};
  for (const catalogue::Count& count : table.counts) {
    walk.left.push_back(count.most);
  }
  walk.below({});
  return std::move(walk.found);
}

} // namespace hangbook::options
