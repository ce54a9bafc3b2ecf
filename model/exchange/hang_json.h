// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "hang/hang.h"
#include "hang/settle.h"
#include "hang/statics.h"

/// The JSON forms of a hang and of its statics.
namespace hangbook::exchange {

/// Which version of the form a hang says it is in: 2 where it says `hangbook.hang/2`, else 1.
int hangFormat(const QJsonValue& value);

/// Reads `hangbook.hang/1`, and `hangbook.hang/2` (with a pull-back) where `newest` is 2. Throws
/// Error(badInput) whose place is the key: unknown or missing keys, wrong types, figures that are not finite
/// or absurd, what is no hang (see hang/check.h).
hang::Hang hangFromJson(const QJsonValue& value, int newest = 1);

/// Writes `hangbook.hang/1`, or `/2` where there is a pull-back; reading it back gives the same hang to the
/// bit.
QJsonObject toJson(const hang::Hang& hang);

/// Writes `hangbook.statics/1`: metres, kg, kN, kN·m, degrees.
QJsonObject toJson(const hang::Statics& statics);

/// Writes `hangbook.statics/2`: besides, the pull-back, the ends of what balance leaves open, and what a roll
/// turns over to one side.
QJsonObject toSecondJson(const hang::Statics& statics);

/// Writes `hangbook.settled/1`.
QJsonObject toJson(const hang::Settled& settled);

} // namespace hangbook::exchange
