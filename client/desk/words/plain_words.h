// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "catalogue/bar.h"
#include "catalogue/cabling.h"
#include "catalogue/lifting.h"
#include "catalogue/stacking.h"
#include "fleet/occurrence.h"
#include "fleet/unit.h"

namespace hangbook::desk {

/// Enums as people say them.
QString wordOf(fleet::UnitKind kind);
QString wordOf(fleet::UnitState state);
QString wordOf(fleet::ExaminationResult result);
QString wordOf(fleet::OccurrenceKind kind);
QString wordOf(catalogue::Picks picks);
QString wordOf(catalogue::Basis basis);
QString wordOf(catalogue::Carries carries);
QString wordOf(catalogue::JointKind kind);
QString wordOf(catalogue::HardwareKind kind);
/// A rule of the sheet in plain words: "point-load" is "load on each point". An id that is not known here is
/// its own word.
QString ruleWords(const QString& rule);
/// A date as the window writes it; "not known" where it is null.
QString dateText(const QDate& date);

} // namespace hangbook::desk
