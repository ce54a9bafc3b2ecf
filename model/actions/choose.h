// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/frozen.h"
#include "options/snapshot.h"

namespace hangbook::actions {

/// The choice of a computed option, frozen with all that it was computed from, to follow what stands chosen
/// for its hang in the snapshot. Throws Error: notPossible where the option fails (naming the rules) or where
/// no setting of it is possible; badInput where it is unproven and no reason is given.
options::Choice choiceOf(const options::Snapshot& snapshot, const options::Option& option,
                         const QString& reason = {});

/// The sentences of the rules that give an option its verdict, in one line.
QString becauseOf(const options::Option& option);

} // namespace hangbook::actions
