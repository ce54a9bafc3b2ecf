// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "quantity/decimal.h"
#include "quantity/units.h"

/// The grammar of what people type:
///   quantity = [sign] part [part]          the second part only for inches after whole feet
///   part     = amount unit
///   amount   = number | [whole] fraction   fraction: 1/2, 3-1/2, ½; halves to sixty-fourths
/// Typographic spaces, minus, primes and quotation marks count as their plain forms.
namespace hangbook::reading {

/// The text in kg, m, N, m/s, ° or kg/m, exact. Throws QuantityError.
decimal::Decimal quantity(units::Kind kind, std::string_view text, std::string_view defaultUnit,
                          NumberForm form);

/// The text as a bare number. Throws QuantityError.
decimal::Decimal number(std::string_view text, NumberForm form);

} // namespace hangbook::reading
