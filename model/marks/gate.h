// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QString>
#include <QUuid>

namespace hangbook::marks {

/// A fact: somebody signed a hold point of a build, or skipped it and said why.
struct GateSigned {
  QUuid id;
  QString tour;
  QString show;
  QString hang;
  QString option; ///< id of the chosen option that was built
  QString gate;   ///< as the build plan names it: "pins 3", "chain", "secondary steel", "final check"
  bool skipped = false;
  QString reason; ///< needed where it was skipped
  QUuid corrects;
  QString by;
  QDateTime recordedAt; ///< UTC
  bool operator==(const GateSigned&) const = default;
};

/// Since when a hang's hold points count. They are signed anew for each build; a hang that is moved once it
/// has been flown keeps those of its build, but for the two that every move opens again.
struct GatesSince {
  QDateTime chosen; ///< UTC, of the setting that stands
  QDateTime built;  ///< of the setting that it was built to; `chosen` where it was not moved
  const QDateTime& of(const QString& gate) const {
    const bool moved =
        gate == QLatin1String("secondary steel") || gate == QLatin1String("final check") || !built.isValid();
    return moved ? chosen : built;
  }
};

} // namespace hangbook::marks
