// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>
#include <QStringList>

#include "catalogue/catalogue.h"

namespace hangbook::options {

/// One way of putting cabinets together that a stacking table permits. The pointers go into the catalogue.
/// Two ways may have the same types in the same order and differ in a joint: they are one option, and the
/// search decides between them.
struct Stack {
  std::vector<const catalogue::CabinetType*> cabinets; ///< from the bar down
  std::vector<const catalogue::Join*> joins;           ///< each cabinet's joint to what is above it
  /// The element that the chain holds, counted from 1; 0 where there is nothing for a chain to hold: the
  /// pivot; else, where a joint is seated, the lowest whose type is in the table's `held`.
  int held{};
  bool downfill{};              ///< one of them is a downfill
  std::vector<QString> missing; ///< what the table leaves open that the statics need, in words

  QStringList types() const;
};

/// The most ways that one table may permit; a table that permits more is refused, since nobody could read the
/// list.
inline constexpr std::size_t mostStacks = 20000;

/// Every stack that the table permits, each once, in the order of the table's joins. Types that the
/// catalogue does not have are left out, and so is what would stand under them. Throws Error(badInput) where
/// the table permits more than `mostStacks` or more cabinets than one hang can have.
std::vector<Stack> stacksOf(const catalogue::Catalogue& catalogue, const catalogue::StackingTable& table);

} // namespace hangbook::options
