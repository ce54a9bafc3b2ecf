// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/weight_limits.h"

/// What a piece of hardware may take here: its working load limit, and how much of it over people.
namespace hangbook::options {

/// Row of a table of working coefficients (least breaking force ÷ load).
struct WorkingCoefficient {
  const char* what;  ///< in words
  double without;    ///< with nobody beneath
  double withPeople; ///< NaN: the source says nothing
};

/// A table of them, by its source.
struct CoefficientTable {
  const char* source;
  WorkingCoefficient wireRope;
  WorkingCoefficient fibre;
  WorkingCoefficient chain; ///< and other metal
  WorkingCoefficient shackle;
};

/// By the house figure `working-coefficients`: 1 DGUV Information 215-313, table 1; 2 Machinery Directive,
/// Annex I 4.1.2.5. nullptr for any other number.
const CoefficientTable* coefficientTable(double number);

/// The table's row for a piece. A sling counts as fibre, the stricter, since its material is not stated.
const WorkingCoefficient& coefficientOf(const CoefficientTable& table, const catalogue::HardwareType& type);

/// A maker's or venue's limit, N. One below 0 is a slip, and a slip is not a figure: `notKnown`, as where
/// none is stated.
double limitIn(const std::optional<Force>& stated);

/// The working load limit × the part that may be used here, N. Over people the part is the least of the
/// house's and (the maker's design factor, or where it is not stated the table's without people) ÷ the
/// table's with people. Where nobody is beneath, all of it; but no more than the table's coefficient leaves
/// where the maker states a lower design factor. `notKnown` where limit, table or people are not known.
double usableLimit(const WeightLimits& limits, const catalogue::HardwareType& type);
double usableLimit(const WeightLimits& limits, const Piece& piece);

/// Where that part comes from.
QString usableSource(const WeightLimits& limits, const catalogue::HardwareType& type);

} // namespace hangbook::options
