// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include <QDialog>

#include "desk/importing/import_lines.h"
#include "desk/source/session.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

class ColumnsTable;

/// Takes one spreadsheet in: its columns go with ours, and every change is shown before it is made. Whatever
/// is changed is looked at again off the window's thread; it can be taken in once a look found nothing wrong.
class ImportDialog : public QDialog {
  Q_OBJECT
public:
  explicit ImportDialog(Session& session, QWidget* parent = nullptr);

  void setFile(const QString& file);
  /// Who names the file; by default the person in front of the screen.
  void setFileAsker(std::function<QString()> asker) { fileAsker_ = std::move(asker); }

private:
  QWidget* fields();
  ImportWish wish() const;
  void look(bool recall);
  void show(const ImportLook& look, bool columnsToo);
  void takeIn();
  void setState(const QString& text, bool ready);
  void check();

  Session& session_;
  QLineEdit* file_;
  QPushButton* browse_;
  QComboBox* kind_;
  QSpinBox* headingLine_;
  QLineEdit* dates_;
  QLineEdit* everywhere_;
  QComboBox* by_;
  ColumnsTable* columns_;
  ImportLines lines_;
  QLabel* state_;
  QPushButton* accept_;
  bool ready_ = false; ///< the last look found nothing wrong
  std::shared_ptr<Watch> looking_;
  std::function<QString()> fileAsker_;
};

} // namespace hangbook::desk
