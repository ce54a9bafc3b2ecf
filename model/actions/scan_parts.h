// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/scan.h"

/// What booking and taking back share. Not for use outside.
namespace hangbook::actions {

/// Thrown inside one scan: it cannot be done, and this is why.
struct Cannot {
  ScanAnswer::Word word;
  QString text;
};

} // namespace hangbook::actions
