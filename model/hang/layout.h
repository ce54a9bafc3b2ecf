// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "hang/hang.h"
#include "hang/statics.h"

/// Where everything of a solved hang stands, for drawings, cover and clearance.
namespace hangbook::hang {

/// One element in the world; origin as in `Statics::cg`.
struct PlacedElement {
  double mass{}; ///< kg, as stated
  Vec3 pin;
  Vec3 cg;
  std::optional<Vec3> nextPin;
  std::optional<Vec3> chainEye;
  std::vector<Vec3> outline;
  Vec3 forward;    ///< unit vector: the way it aims
  double aimDeg{}; ///< elevation of that
};

struct Layout {
  std::vector<Vec3> picks; ///< in the order of `Statics::pickLoads`
  Vec3 frameOrigin;        ///< the tilt axis on a side-pair
  Vec3 forward;            ///< of the frame
  Vec3 left;
  Vec3 up;
  Vec3 frameCg;
  Vec3 stackPin;
  std::optional<Vec3> headCg;
  std::optional<Vec3> chainAnchor;
  std::vector<PlacedElement> elements;
};

/// `statics` must be what `solve` gave for `hang`.
Layout layOut(const Hang& hang, const Statics& statics);

} // namespace hangbook::hang
