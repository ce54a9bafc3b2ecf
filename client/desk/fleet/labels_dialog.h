// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/words/ask_dialog.h"

class QSpinBox;

namespace hangbook::desk {

/// Which units get labels, on which sheet, into which file.
class LabelsDialog : public AskDialog {
  Q_OBJECT
public:
  /// `selected` empty: no unit is selected. `listed`: how many the list shows.
  LabelsDialog(const QString& selected, int listed, QWidget* parent = nullptr);

  /// Of the selected unit alone, else of all that are listed.
  bool selectedOnly() const;
  QString sheet() const;
  /// Places of the first sheet that are used already.
  int skip() const;
  QString file() const;

private:
  void fitSheet();

  QComboBox* which_;
  QComboBox* sheet_;
  QSpinBox* skip_;
  QLineEdit* file_;
};

} // namespace hangbook::desk
