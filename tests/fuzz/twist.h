// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>

#include <QJsonValue>

#include "hang/hang.h"

/// Makes hangs that nobody would build out of hangs that somebody might.
namespace hangbook::testing {

/// A figure that breaks formulas: 0, tiny, huge, of the other sign; NaN and infinities where `anything`.
double oddFigure(double before, std::mt19937_64& chance, bool anything);

/// Changes one value, key or item somewhere in a JSON value.
QJsonValue twisted(const QJsonValue& value, std::mt19937_64& chance);

/// Changes one figure of a hang.
void twist(hang::Hang& hang, std::mt19937_64& chance);

} // namespace hangbook::testing
