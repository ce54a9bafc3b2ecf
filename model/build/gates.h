// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/plan.h"

namespace hangbook::build {

/// A hang's hold points, in the order of its build.
QStringList gatesOf(const Plan& plan, const QString& hang);

} // namespace hangbook::build
