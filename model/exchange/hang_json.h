// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>

#include "hang/hang.h"
#include "hang/settle.h"
#include "hang/statics.h"

/// The JSON forms of a hang and of its statics.
namespace hangbook::exchange {

/// Reads `hangbook.hang/1`. Throws Error(badInput) whose place is the key: unknown or missing keys, wrong
/// types, figures that are not finite or absurd, what is no hang (see hang/check.h).
hang::Hang hangFromJson(const QJsonValue& value);

/// Writes `hangbook.hang/1`; reading it back gives the same hang to the bit.
QJsonObject toJson(const hang::Hang& hang);

/// Writes `hangbook.statics/1`: metres, kg, kN, kN·m, degrees.
QJsonObject toJson(const hang::Statics& statics);

/// Writes `hangbook.settled/1`.
QJsonObject toJson(const hang::Settled& settled);

} // namespace hangbook::exchange
