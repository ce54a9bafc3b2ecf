// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "calendar/where_best.h"
#include "desk/lists/table_model.h"
#include "desk/source/overview.h"

namespace hangbook::desk {

enum class DueColumn { state, due, days, serial, type, rule, best, last, place, count };

/// A due examination and where it is best made, in words: "warehouse by 2027-04-09".
QString bestInWords(const calendar::Planned& line);
bool isOverdue(const fleet::Due& due);

/// Its lines are those of the facts that it keeps: nothing of 100,000 is copied.
class DueModel : public ListOf<const calendar::Planned*, DueColumn> {
public:
  using ListOf::ListOf;
  /// Of `workedOut` facts.
  void setFacts(std::shared_ptr<const Overview> facts);

private:
  Heading headingOf(DueColumn column) const override;
  Cell cellOf(const calendar::Planned* const& line, DueColumn column) const override {
    return shown(*line, column);
  }
  QString keyOf(const calendar::Planned* const& line) const override { return line->due.serial; }
  Cell shown(const calendar::Planned& line, DueColumn column) const;
  Cell stateOf(const calendar::Planned& line) const;

  std::shared_ptr<const Overview> facts_;
};

} // namespace hangbook::desk
