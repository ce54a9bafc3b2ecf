// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/flown.h"
#include "desk/lists/table_model.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

enum class ChangeColumn { what, was, becomes, count };

/// What would be another figure or verdict than the one that is signed.
class ChangeModel : public ListOf<build::FlownChange, ChangeColumn> {
public:
  using ListOf::ListOf;
  void setFigures(const Figures& figures) {
    figures_ = figures;
    refresh();
  }

private:
  Heading headingOf(ChangeColumn column) const override;
  Cell cellOf(const build::FlownChange& change, ChangeColumn column) const override;
  QString keyOf(const build::FlownChange& change) const override { return change.what; }

  Figures figures_;
};

} // namespace hangbook::desk
