// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QDialog>

class QComboBox;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

/// Which units get labels, on which sheet, into which file.
class LabelsDialog : public QDialog {
  Q_OBJECT
public:
  /// `selected` empty: no unit is selected. `listed`: how many the list shows.
  LabelsDialog(const QString& selected, int listed, QWidget* parent = nullptr);

  /// Of the selected unit alone, else of all that are listed.
  bool selectedOnly() const;
  QString sheet() const;
  int skip() const;
  QString file() const;
  /// Who names the file; by default the person in front of the screen.
  void setFileAsker(std::function<QString()> asker) { fileAsker_ = std::move(asker); }

private:
  void check();

  QComboBox* which_;
  QComboBox* sheet_;
  QSpinBox* skip_;
  QLineEdit* file_;
  QPushButton* accept_;
  std::function<QString()> fileAsker_;
};

} // namespace hangbook::desk
