// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QDateTime>
#include <QStringList>
#include <QUuid>

#include "quantity/quantity.h"

namespace hangbook::marks {

/// A fact: the mark that was really used. A record, not a verdict.
struct MarkUsed {
  QUuid id;
  QStringList stack; ///< type names from the bar down
  QString bar;
  QString chain;             ///< type of chain
  QString chainSerial;       ///< empty = not noted
  std::optional<Angle> tilt; ///< wanted aim
  /// Angle of each fixed joint that has more than one hole, from the bar down; empty = not noted, or none
  /// has.
  std::vector<Angle> holes;
  int mark = 0;
  std::optional<Angle> measured; ///< angle of the held element's joint, as measured
  QString tour;
  QString show; ///< empty = none of ours
  QString hang;
  QString place; ///< venue and town
  QString weather;
  QDate date; ///< local
  QString by;
  QUuid corrects;
  QDateTime recordedAt; ///< UTC
  bool operator==(const MarkUsed&) const = default;
};

} // namespace hangbook::marks
