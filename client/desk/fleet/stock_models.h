// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/fleet/stock_look.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {

/// What decides stands first, so that a narrow window shows it.
enum class StockColumn { type, free, wanted, owned, hired, keptBack, due, away, kind, takers, count };

/// Each type on one day.
class StockModel : public ListOf<options::TypeOnDay, StockColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(StockColumn column) const override;
  Cell cellOf(const options::TypeOnDay& line, StockColumn column) const override;
  QString keyOf(const options::TypeOnDay& line) const override { return line.type; }
};

enum class ShortageColumn { show, type, lacking, day, fill, count };

/// What shows to come lack.
class ShortageModel : public ListOf<options::Shortage, ShortageColumn> {
public:
  using ListOf::ListOf;

private:
  Heading headingOf(ShortageColumn column) const override;
  Cell cellOf(const options::Shortage& line, ShortageColumn column) const override;
  QString keyOf(const options::Shortage& line) const override { return line.show; }
};

} // namespace hangbook::desk
