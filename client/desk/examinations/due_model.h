// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/examinations/due_list.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {

enum class DueColumn { state, due, days, serial, type, rule, last, place, stop, count };

class DueModel : public ListOf<DueLine, DueColumn> {
public:
  using ListOf::ListOf;
  void setLines(std::vector<DueLine> lines, QDate today);

private:
  Heading headingOf(DueColumn column) const override;
  Cell cellOf(const DueLine& line, DueColumn column) const override;
  QString keyOf(const DueLine& line) const override { return line.due.serial; }
  Cell stateOf(const DueLine& line) const;

  QDate today_;
};

} // namespace hangbook::desk
