// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/overview.h"

namespace hangbook::desk {

/// What `Overview::due` holds, from the rest of the overview. Takes its time on a large fleet: the worker's
/// to call.
std::vector<calendar::Planned> dueLines(const Overview& overview);

/// With everything filled in that follows from the rest: `due`, where it is empty, what is made of it,
/// `sums`.
Overview workedOut(Overview overview);

} // namespace hangbook::desk
