// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QString>

#include "quantity/text.h"

/// Figures as people type them.
namespace hangbook::desk {

/// How numbers are written where the person is.
NumberForm formOfLocale();

/// The unit in which a bare number of a house figure is meant; `unit` is the rule's own ("m", "°", "d", "").
QString houseUnit(const QString& unit, UnitSystem system);
/// The figure in the rule's own unit; a length may say its unit. None where it cannot be read.
std::optional<double> houseFigureTyped(const QString& text, const QString& unit, UnitSystem system);

} // namespace hangbook::desk
