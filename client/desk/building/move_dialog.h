// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "build/flown.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

/// Who signs a flown hang's new setting, and why; the steps stand above, in the order in which they are done.
class MoveDialog : public QDialog {
  Q_OBJECT
public:
  /// `openGates`: hold points that nobody signed, so that it is not known to be up.
  MoveDialog(const build::Flown& flown, const QStringList& people, const QStringList& openGates,
             QWidget* parent = nullptr);

  QString by() const;
  QString reason() const;

private:
  void check();

  QComboBox* by_;
  QLineEdit* reason_;
  QPushButton* sign_;
};

} // namespace hangbook::desk
