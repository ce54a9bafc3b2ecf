// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/building/hung_model.h"
#include "desk/source/hung_source.h"
#include "desk/source/session.h"
#include "desk/words/ask_dialog.h"

class QLabel;
class QTableView;

namespace hangbook::desk {

/// Which unit hangs where in the session's hang, by serial: scanned or typed from the bar down, looked at one
/// by one before anything is recorded. It only asks; whoever opened it does what it answers.
class HungDialog : public AskDialog {
  Q_OBJECT
public:
  explicit HungDialog(Session& session, QWidget* parent = nullptr);

  /// What is to be recorded of the hang.
  const actions::HungFor& wish() const { return wish_; }

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  void take(const QString& code);
  void clearPlace();
  void look(const actions::HungFor& wanted, int then);
  void show(const HungLook& found, int row);
  void say(const QString& words);
  int row() const;

  Session& session_;
  actions::HungFor stored_;
  actions::HungFor wish_;
  HungModel model_;
  QLineEdit* code_;
  QTableView* table_;
  QLabel* sum_;
  QLabel* says_;
  QPushButton* clear_;
  std::shared_ptr<Watch> watch_;
};

} // namespace hangbook::desk
