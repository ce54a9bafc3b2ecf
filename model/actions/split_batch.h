// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "fleet/unit.h"

namespace hangbook::actions {

/// So many pieces of a counted batch become a batch of their own under a new serial, at the same place and on
/// the same cart. What happened to the batch happened to them: movements, examinations, what happened and the
/// files that stand are told again of the new batch, on their days, so that nothing falls due later, or
/// counts as used less, than before. Answers the new batch. Throws Error where the unit is no batch of more
/// pieces, is away (it is known with which show as a whole) or written off, or where the serial is taken.
fleet::Unit splitBatch(store::Store& store, const QString& serial, int pieces, const QString& newSerial,
                       const QString& by = {});

} // namespace hangbook::actions
