// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QObject>

#include "desk/source/session.h"

class QAction;
class QMenu;

namespace hangbook::desk {

class WithdrawDialog;

/// Undo and redo of what was edited in this window, by name, and taking a choice back.
class Editing : public QObject {
  Q_OBJECT
public:
  /// Asks who and why; true: take it back.
  using Asker = std::function<bool(WithdrawDialog&)>;

  Editing(Session& session, QWidget* window);
  void addTo(QMenu& menu);
  void setAsker(Asker asker) { asker_ = std::move(asker); }

Q_SIGNALS:
  /// What was done and saved, for the status line.
  void told(const QString& what);

private:
  void refresh();
  void move(bool back);
  void withdraw();
  void send(std::function<void(Source&)> job, const QString& done, const QString& kept);

  Session& session_;
  QWidget* window_;
  QAction* undo_;
  QAction* redo_;
  QAction* withdraw_;
  Asker asker_;
  bool sending_ = false;
};

} // namespace hangbook::desk
