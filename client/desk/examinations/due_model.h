// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/where_best.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {

enum class DueColumn { state, due, days, serial, type, rule, best, last, place, count };

/// A due examination and where it is best made, in words: "warehouse by 2027-04-09".
QString bestInWords(const calendar::Planned& line);
bool isOverdue(const fleet::Due& due);

class DueModel : public ListOf<calendar::Planned, DueColumn> {
public:
  using ListOf::ListOf;
  void setLines(std::vector<calendar::Planned> lines, QDate today);

private:
  Heading headingOf(DueColumn column) const override;
  Cell cellOf(const calendar::Planned& line, DueColumn column) const override;
  QString keyOf(const calendar::Planned& line) const override { return line.due.serial; }
  Cell stateOf(const calendar::Planned& line) const;

  QDate today_;
};

} // namespace hangbook::desk
