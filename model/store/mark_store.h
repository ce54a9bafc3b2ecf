// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "marks/mark.h"
#include "store/store.h"

namespace hangbook::store {

/// All marks that were ever used, corrected ones too, newest first.
std::vector<marks::MarkUsed> loadMarks(Store& store);
/// Those that no later one corrects, of the same stack, bar and type of chain, newest first.
std::vector<marks::MarkUsed> recallMarks(Store& store, const QStringList& stack, const QString& bar,
                                         const QString& chain);
/// Those that no later one corrects, of one chain, newest first.
std::vector<marks::MarkUsed> recallMarksOf(Store& store, const QString& chain, const QString& serial);
/// Those that no later one corrects, of one show, newest first.
std::vector<marks::MarkUsed> loadMarksOf(Store& store, const QString& tour, const QString& show);

/// Appends a fact (see fleet_store.h).
marks::MarkUsed append(Store& store, const marks::MarkUsed& mark);

} // namespace hangbook::store
