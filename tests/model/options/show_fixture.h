// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/snapshot.h"

namespace hangbook::testing {

/// A whole invented show with every figure known: a large family with a downfill on a chain, a smaller one on
/// feet, three hoists, two mirrored hangs of two points each in a large hall, and units enough.
options::Snapshot harbourShow();

/// The same with a table small enough to be counted by hand: two or three bass, one upper, with and without
/// the downfill (8 stacks), and one hoist.
options::Snapshot smallHarbourShow();

} // namespace hangbook::testing
