// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "exchange/import.h"
#include "options/search.h"

namespace hangbook {

/// The day on which the demo's office plans.
QDate demoToday();

/// The demo tour as its files give it.
const exchange::Data& demoTour();

/// The same data once written and read again.
exchange::Data throughFiles(const exchange::Data& data);

/// The options of one show, nothing else being chosen.
options::ShowOptions optionsOf(const exchange::Data& data, const QString& show,
                               const std::optional<QString>& hang = {});

/// All options of one of the demo's shows; computed once.
const options::ShowOptions& demoOptions(const QString& show);

} // namespace hangbook
