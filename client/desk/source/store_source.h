// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include "desk/source/source.h"

namespace hangbook::desk {

struct WindowWords;

/// The source that the program runs on: a store, opened on the worker at the first question (the usual place
/// and its folder are made where there is none), read through the repositories and written through the use
/// cases alone.
std::shared_ptr<Source> openStoreSource(const WindowWords& words);

} // namespace hangbook::desk
