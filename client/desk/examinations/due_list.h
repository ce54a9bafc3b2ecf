// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "desk/source/overview.h"

namespace hangbook::desk {

/// One examination that a unit owes.
struct DueLine {
  QString serial{};
  QString type{};
  fleet::UnitKind kind = fleet::UnitKind::cabinet;
  QString rule{};
  QDate last{}; ///< null: none recorded
  QDate due{};  ///< last day on which the last one stands; null where none was recorded
  QString place{};
  QString stop{}; ///< the last stop that still comes before the day, empty where none does

  bool neverExamined() const { return !last.isValid(); }
  bool overdue(QDate today) const { return due.isValid() && due < today; }
};

/// What every unit that is not written off owes under every rule that speaks of it, earliest first, what was
/// never examined before all.
std::vector<DueLine> dueLines(const Overview& overview);

/// The last day on which an examination stands: the interval in months clamps to the month's end, since "at
/// least every 6 months" must not be overshot.
QDate dueDay(QDate last, int months);

/// The earliest due line of one unit, or none where no rule speaks of it.
std::optional<DueLine> nextDue(const std::vector<DueLine>& lines, const QString& serial);

} // namespace hangbook::desk
