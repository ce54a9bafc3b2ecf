// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "quantity/decimal.h"

/// Which US customary unit a metric one becomes in a text, and by how much, exactly.
namespace hangbook::customary {

struct Conversion {
  std::string_view from;
  std::string_view to;
  decimal::Factor toInside;   ///< one of `from` in SI, times …
  decimal::Factor fromInside; ///< … this is one of `from` in `to`
};

/// The conversion whose `from` is the longest that `text` begins with; nullptr where there is none. What
/// follows the unit is for the caller to look at.
const Conversion* beginning(std::string_view text);

/// value × both factors, rounded only where the quotient has no end (decimal.h).
decimal::Decimal converted(const decimal::Decimal& value, const Conversion& by);

} // namespace hangbook::customary
