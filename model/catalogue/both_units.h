// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "catalogue/catalogue.h"

/// What `inBothUnits` (quantity/both_units.h) must leave alone: a roundsling named "4 t" keeps its name.
namespace hangbook::catalogue {

/// Names of makers' data in which a quantity stands.
std::vector<std::string> namesWithQuantities(const Catalogue& all);

/// A text in both unit systems, as quantity/both_units.h has it.
QString inBothUnits(const QString& text, const std::vector<std::string>& names);

} // namespace hangbook::catalogue
