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

} // namespace hangbook::marks
