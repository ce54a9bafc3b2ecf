// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include <QUuid>
#include <QWidget>

#include "desk/fleet/scan_log.h"
#include "desk/source/session.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace hangbook::actions {
struct ScanAnswer; // actions/scan.h
}

namespace hangbook::desk {

class ScanTaskForm;
class VerdictSign;

/// Booking by scanner: the task, the field that is always ready, the last answer in large type, and the ones
/// before. A scan counts as booked only when its answer is shown; each is one transaction, in the order in
/// which they came.
class ScanBench : public QWidget {
  Q_OBJECT
public:
  explicit ScanBench(Session& session, QWidget* parent = nullptr);

  void showFacts();
  /// As if the scanner had typed it.
  void scan(const QString& code);
  void takeLastBack();
  QLineEdit& field() { return *field_; }
  const ScanLog& log() const { return log_; }
  /// The sound for what was not booked; by default the desktop's own.
  void setSound(std::function<void()> sound) { sound_ = std::move(sound); }

Q_SIGNALS:
  /// Something was booked and no scan waits for its answer.
  void booked();

private:
  void answered(int number, const actions::ScanAnswer& answer);
  void answer(int number, const QString& word, const QString& text, options::Verdict sign);
  void refuse(const QString& code, const QString& why);
  void begin();
  void end();

  Session& session_;
  ScanTaskForm* task_;
  QLineEdit* field_;
  VerdictSign* sign_;
  QLabel* word_;
  QLabel* text_;
  QLabel* count_;
  QPushButton* back_;
  ScanLog log_;
  std::function<void()> sound_;
  std::vector<QUuid> undoable_;
  int waiting_ = 0;
  int done_ = 0;
  int refused_ = 0;
  bool changed_ = false;
};

} // namespace hangbook::desk
