// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "options/weight_limits.h"

namespace hangbook::options {

/// A gust against the whole hang, from in front (or behind) or from the side: force = ρ v²/2 × force
/// coefficient × area, ρ = 1.25 kg/m³ (EN 1991-1-4 § 4.5), summed over the cabinets and the bar's frame, each
/// at the middle of its outline. Left out: that a tilted or panned hang shows the wind some of its other
/// faces too, and a gust from aslant, which meets both. Of faces alike in height, aslant shows up to √(width²
/// + depth²).
struct Gust {
  double force = 0.0; ///< N
  double below = 0.0; ///< of the picks: where the force acts, m
};

struct WindForce {
  Gust front;
  Gust side;
  QStringList missing; ///< in words
};
WindForce windForce(const Case& option, const Settled& settled);

/// q = ρ v²/2, N/m².
double gustPressure(double metresPerSecond);

} // namespace hangbook::options
