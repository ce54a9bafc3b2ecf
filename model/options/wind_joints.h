// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "hang/gust.h"
#include "options/wind_force.h"

/// What a gust does to the joints and the chain of one setting. It pushes on all that hangs below a joint,
/// each body at its middle; the joint holds that push and its moment. Where the picks let the hang swing
/// (about their line, or any way under a single one) it turns until its weight holds the moment about them. A
/// gust takes hold before the hang has swung, and the hang is still swung when it is gone; between the two
/// the one takes from the other. So each joint is judged at the worse of both. A gust that turns about while
/// the hang is still swung is dynamic response, which is left out.
namespace hangbook::options {

/// Front and back, sides, top and bottom of one body; none where it is not known.
using BodyFaces = std::array<WindFace, 3>;

/// At 1 N/m², from whatever direction is worst for each figure. `bodies`: one a cabinet; `picks`: their
/// height in the hang's own frame, from which their faces are measured.
std::vector<hang::SidePush> pushesBelow(const Case&, const Settled&, const std::vector<BodyFaces>& bodies,
                                        double picks);

/// Bearing, seen from above, of the line through two picks, from the second to the first.
double pickLineDeg(const Settled&);

/// How far the hang turns about its picks until its weight holds the wind: tan = moment ÷ (weight × depth of
/// its centre), the lightest and the least deep. NaN where the centre is not below the picks.
double swingRadians(const Settled&, const WindForce&, double pressure);

/// Joints and chain in a gust of `pressure` N/m². `heavier`: what wet cloth and ice make of the weight.
hang::Pushed pushedBy(const Case&, const Settled&, const WindForce&, double pressure, double heavier);

} // namespace hangbook::options
