// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QDialog>

#include "on_demo.h"

namespace hangbook::testing {

/// A dialog of the window over the demo tour, not yet shown.
struct OneDialog {
  QString name{}; ///< of its picture; unlike every other's
  std::unique_ptr<QDialog> dialog{};
  /// Once it is shown: what somebody would have typed in it by then. May be empty.
  std::function<void()> fill{};
};

/// Every dialog that the window has, in the one list that all tests of dialogs walk: a class of dialogs that
/// is not in it is told by `keyboard_alone/no_dialog_is_left_out`. `on` outlives them and stands at the
/// demo's Ostrel, left.
std::vector<OneDialog> everyDialog(OnDemo& on);

/// Shows it, waits until it has read what it needs, and fills it in.
void showFilled(OnDemo& on, const OneDialog& one);

} // namespace hangbook::testing
