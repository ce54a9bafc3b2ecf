// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "calendar/hung.h"
#include "store/store.h"

namespace hangbook::store {

/// Which unit hangs where, from each bar down, of all shows; of one where `show` is not empty. Places whose
/// record was taken back are among them, without a serial.
std::vector<calendar::Hung> loadHung(Store& store, const QString& tour = {}, const QString& show = {});

calendar::Hung save(Store& store, const calendar::Hung& hung);

} // namespace hangbook::store
