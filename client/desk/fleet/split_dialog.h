// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/batch_source.h"
#include "desk/words/ask_dialog.h"
#include "fleet/unit.h"

class QSpinBox;

namespace hangbook::desk {

/// Some pieces of a counted batch become a batch of their own.
class SplitDialog : public AskDialog {
  Q_OBJECT
public:
  SplitDialog(const fleet::Unit& batch, const QStringList& people, const QString& atDesk,
              QWidget* parent = nullptr);

  SplitRequest request() const;

private:
  QString serial_;
  QSpinBox* pieces_;
  QLineEdit* newSerial_ = nullptr;
};

} // namespace hangbook::desk
