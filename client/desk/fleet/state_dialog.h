// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/source.h"
#include "desk/words/ask_dialog.h"

namespace hangbook::desk {

/// Another state for a unit, with a reason. `away` is not among them: that is what a scan is for.
class StateDialog : public AskDialog {
  Q_OBJECT
public:
  StateDialog(const fleet::Unit& unit, const QStringList& people, const QString& atDesk,
              QWidget* parent = nullptr);

  StateChange change() const;

private:
  QString serial_;
  QComboBox* state_;
  QLineEdit* reason_ = nullptr;
};

} // namespace hangbook::desk
