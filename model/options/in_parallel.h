// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>

namespace hangbook::options {

/// Does jobs 0 … count − 1, up to `threads` of them at a time (0: as many as there are cores). `told` hears
/// on the caller's thread how many are done, and may throw: no further job is begun then. Where jobs throw,
/// the exception of the lowest job that did is thrown once all that were begun have ended.
void inParallel(std::size_t count, int threads, const std::function<void(std::size_t)>& job,
                const std::function<void(std::size_t)>& told);

} // namespace hangbook::options
