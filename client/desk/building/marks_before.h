// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// Marks recorded before that speak of the same stack, bar and kind of chain, newest first. They are records,
/// not verdicts.
std::vector<marks::MarkUsed> marksBefore(const Overview& overview, const options::OptionKey& key);

enum class MarkColumn { date, mark, measured, tilt, place, chain, by, count };

class MarkModel : public ListOf<marks::MarkUsed, MarkColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(MarkColumn column) const override;
  Cell cellOf(const marks::MarkUsed& used, MarkColumn column) const override;
  QString keyOf(const marks::MarkUsed& used) const override { return used.id.toString(QUuid::WithoutBraces); }
};

} // namespace hangbook::desk
