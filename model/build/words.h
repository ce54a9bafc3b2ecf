// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/plan.h"

namespace hangbook::build {

/// "1.32 m", to the centimetre, or as feet; "not known" for NaN.
QString lengthText(double metres, UnitSystem units);

/// What holds for every build, whatever its figures.
QStringList usualCautions();

/// The steps back: each that was done undone, in the opposite order.
std::vector<Step> loadOutOf(const Plan& plan);

} // namespace hangbook::build
