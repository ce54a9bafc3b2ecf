// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>

#include "hang/shape_energy.h"

namespace hangbook::hang {

struct Rest {
  Eigen::VectorXd angles; ///< of the movable joints, radians
  double pull{};          ///< the chain's tension per total weight
};

/// Lets the movable joints go from `start` until they rest: least energy with every angle between `low` and
/// `high` and the chain no longer than `chainLimit` (infinite without a chain). Steps are at most about 1°,
/// so that the shape found is the one that the start runs down to. Newton's method on the joints that are
/// free, joints at an end and the taut chain taken as fixed until their forces would have to change sign.
/// Throws Error(notPossible) where it does not come to rest or would rest on a knife's edge.
Rest runDown(ShapeEnergy& energy, const Eigen::VectorXd& start, const Eigen::VectorXd& low,
             const Eigen::VectorXd& high, double chainLimit);

} // namespace hangbook::hang
