// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/flown.h"
#include "desk/words/ask_dialog.h"

namespace hangbook::desk {

/// Who signs a flown hang's new setting, and why; the steps stand above, in the order in which they are done.
class MoveDialog : public AskDialog {
  Q_OBJECT
public:
  /// `openGates`: hold points that nobody signed, so that it is not known to be up.
  MoveDialog(const build::Flown& flown, const QStringList& people, const QStringList& openGates,
             QWidget* parent = nullptr);

  QString reason() const;

private:
  QLineEdit* reason_;
};

} // namespace hangbook::desk
