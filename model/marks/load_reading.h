// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QString>
#include <QUuid>

#include "quantity/quantity.h"

namespace hangbook::marks {

/// A fact: what the load cell at one pick, or in a leg of its bridle, read after lifting. A record, not a
/// verdict.
struct LoadReading {
  QUuid id;
  QUuid lift; ///< the same for the picks that were read at once
  QString tour;
  QString show;
  QString hang;
  QString option; ///< id of the chosen option
  QString pick;   ///< left, right, front, rear, single
  QString cellAt; ///< hook or point
  QString legTo;  ///< the point that the leg goes to which the cell is in; else empty
  Force reading;
  Force computed;     ///< for that place, when it was read
  QString instrument; ///< which cells, by what they are told apart
  QString remark;
  QUuid corrects;
  QString by;
  QDateTime recordedAt; ///< UTC
  bool operator==(const LoadReading&) const = default;
};

} // namespace hangbook::marks
