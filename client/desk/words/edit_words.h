// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "actions/plan_edit.h"
#include "catalogue/catalogue.h"
#include "desk/style/figures.h"

namespace hangbook::desk {

/// What an edit of the plans did, as it stands behind "Undo:": "trim 11.4 m for left at Gullwick".
QString editWords(const actions::PlanEdit& edit, const catalogue::Catalogue& catalogue,
                  const Figures& figures);

/// The edit the other way round.
actions::PlanEdit turned(const actions::PlanEdit& edit);

} // namespace hangbook::desk
