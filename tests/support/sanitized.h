// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hangbook::testing {

/// Whether this program runs under a sanitizer, where everything takes about ten times as long: what only
/// tries more of the same (random cases, further shows) tries fewer of them there. The plain run has tried
/// them all.
#if defined(__SANITIZE_ADDRESS__)
inline constexpr bool underSanitizer = true;
#else
inline constexpr bool underSanitizer = false;
#endif

} // namespace hangbook::testing
