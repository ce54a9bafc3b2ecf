// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "desk/source/source.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

/// Another state for a unit, with a reason. `away` is not among them: that is what a scan is for.
class StateDialog : public QDialog {
  Q_OBJECT
public:
  StateDialog(const fleet::Unit& unit, const QStringList& people, const QString& atDesk,
              QWidget* parent = nullptr);

  StateChange change() const;

private:
  void check();

  QString serial_;
  QComboBox* state_;
  QLineEdit* reason_;
  QComboBox* by_;
  QPushButton* accept_;
};

} // namespace hangbook::desk
