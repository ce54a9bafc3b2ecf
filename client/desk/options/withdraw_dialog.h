// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/words/ask_dialog.h"
#include "options/frozen.h"

namespace hangbook::desk {

/// What is chosen for a hang is to be chosen no longer: who says so, and why.
class WithdrawDialog : public AskDialog {
  Q_OBJECT
public:
  /// `stack` says the option in words.
  WithdrawDialog(const options::Choice& choice, const QString& stack,
                 const std::vector<people::Person>& people, const QString& atDesk, QWidget* parent = nullptr);

  QString reason() const;

private:
  QLineEdit* reason_;
};

} // namespace hangbook::desk
