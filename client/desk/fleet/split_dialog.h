// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "desk/source/batch_source.h"
#include "fleet/unit.h"

class QComboBox;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

/// Some pieces of a counted batch become a batch of their own.
class SplitDialog : public QDialog {
  Q_OBJECT
public:
  SplitDialog(const fleet::Unit& batch, const QStringList& people, const QString& atDesk,
              QWidget* parent = nullptr);

  SplitRequest request() const;

private:
  void check();

  QString serial_;
  QSpinBox* pieces_;
  QLineEdit* newSerial_;
  QComboBox* by_;
  QPushButton* accept_;
};

} // namespace hangbook::desk
