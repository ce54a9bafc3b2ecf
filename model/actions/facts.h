// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/run.h"
#include "fleet/unit.h"
#include "marks/mark.h"
#include "options/frozen.h"

/// Recording facts and choosing options. Facts are appended; a later one may name the one that it corrects.
namespace hangbook::actions {

/// The mark that was really used.
marks::MarkUsed recordMark(store::Store& store, const marks::MarkUsed& mark, const QString& by = {});
/// A failed examination also quarantines the unit where it is.
fleet::Examination recordExamination(store::Store& store, const fleet::Examination& examination,
                                     const QString& by = {});
/// The unit went somewhere, or its state changed. One that is written off does not move any more.
fleet::Movement recordMovement(store::Store& store, const fleet::Movement& movement, const QString& by = {});

/// Chooses an option, computed and frozen by the caller, to follow the choice of `choice.revision` (0: none
/// stands).
options::Choice chooseOption(store::Store& store, const options::Choice& choice, const QString& by = {});
/// Takes a choice back.
void withdrawChoice(store::Store& store, const options::Choice& choice, const QString& reason,
                    const QString& by = {});

} // namespace hangbook::actions
