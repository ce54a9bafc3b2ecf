// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/lists/table_model.h"
#include "desk/style/figures.h"
#include "fleet/load_list.h"
#include "options/cart_plan.h"

namespace hangbook::desk {

enum class CartColumn { number, cart, riding, hangs, gross, count };

/// The carts that a show needs, in the order in which they are needed.
class CartPlanModel : public ListOf<options::PlannedCart, CartColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(CartColumn column) const override;
  Cell cellOf(const options::PlannedCart& line, CartColumn column) const override;
  QString keyOf(const options::PlannedCart& line) const override { return line.cabinet; }

  Figures figures_;
};

enum class LoadColumn { number, unit, type, riding, gross, floor, count };

/// What is in a truck, in the order in which it comes out.
class LoadModel : public ListOf<fleet::Load, LoadColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures);

private:
  Heading headingOf(LoadColumn column) const override;
  Cell cellOf(const fleet::Load& line, LoadColumn column) const override;
  QString keyOf(const fleet::Load& line) const override { return line.unit.serial; }

  Figures figures_;
};

} // namespace hangbook::desk
