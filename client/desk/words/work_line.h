// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QTimer>
#include <QWidget>

#include "desk/source/work.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace hangbook::desk {

/// What is being worked out: a sentence, how far it is, Cancel while it runs, and a button to begin anew once
/// it was stopped or went wrong.
class WorkLine : public QWidget {
  Q_OBJECT
public:
  /// `name` begins the names of its parts: nameHead, nameProgress, nameCancel, nameAgain.
  WorkLine(const QString& name, const QString& again, QWidget* parent = nullptr);

  /// Follows the job until something else is said.
  void working(const QString& text, std::shared_ptr<Watch> watch);
  void say(const QString& text);
  /// The same, with the button to begin anew.
  void offerAgain(const QString& text);
  /// Room for a panel's own buttons, at the right end.
  void addControl(QWidget* control);

Q_SIGNALS:
  void cancelAsked();
  void againAsked();

private:
  void tell(const QString& text, bool running, bool again);

  QLabel* head_;
  QProgressBar* progress_;
  QPushButton* cancel_;
  QPushButton* again_;
  std::shared_ptr<Watch> watch_;
  QTimer timer_;
};

} // namespace hangbook::desk
