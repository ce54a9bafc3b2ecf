// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "options/option.h"

class QComboBox;
class QPushButton;
class QLineEdit;

namespace hangbook::desk {

/// Who chooses, and why where a rule is unproven. A failing option has no button to choose it.
class ChooseDialog : public QDialog {
  Q_OBJECT
public:
  /// `what` names the option and setting in words; `people` are the known names.
  ChooseDialog(const options::Option& option, const QString& what, const QStringList& people,
               QWidget* parent = nullptr);

  QString by() const;
  QString reason() const;

private:
  void check();

  options::Verdict verdict_;
  QComboBox* by_;
  QLineEdit* reason_;
  QPushButton* choose_;
};

} // namespace hangbook::desk
