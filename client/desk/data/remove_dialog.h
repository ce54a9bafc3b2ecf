// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/words/ask_dialog.h"

namespace hangbook::desk {

/// Asks once before a record is taken out, and by whom.
class RemoveDialog : public AskDialog {
  Q_OBJECT
public:
  RemoveDialog(const QString& record, const QStringList& people, const QString& atDesk,
               QWidget* parent = nullptr);
};

} // namespace hangbook::desk
