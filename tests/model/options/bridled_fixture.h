// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/snapshot.h"

namespace hangbook::testing {

/// Like the small show, but each pick of the left hang hangs 2 m in front of its old point, from that and
/// from a point 4 m in front of it.
options::Snapshot bridledShow();

} // namespace hangbook::testing
