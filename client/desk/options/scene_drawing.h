// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/options/drawing.h"
#include "desk/style/figures.h"
#include "options/scene.h"

namespace hangbook::desk {

/// The lines, areas, texts and dimensions of a scene. Nothing is moved or rounded: it is as true as the
/// scene.
Drawing drawingOf(const options::Scene& scene, const Figures& figures);

} // namespace hangbook::desk
