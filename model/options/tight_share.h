// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hangbook::options {

/// Use of a load limit from which on it is tight.
inline constexpr double tightShare = 0.9;

} // namespace hangbook::options
