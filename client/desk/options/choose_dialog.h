// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/words/ask_dialog.h"
#include "options/option.h"

namespace hangbook::desk {

/// Who chooses, and why where a rule is unproven. A failing option has no button to choose it.
class ChooseDialog : public AskDialog {
  Q_OBJECT
public:
  /// `what` names the option and setting in words; `people` are the known names.
  ChooseDialog(const options::Option& option, const QString& what, const QStringList& people,
               QWidget* parent = nullptr);

  QString reason() const;

private:
  QLineEdit* reason_;
};

} // namespace hangbook::desk
