// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>

#include "desk/fleet/fast_typing.h"

class QKeyEvent;
class QLineEdit;

namespace hangbook::desk {

/// Brings what a scanner types to the scan field, wherever the focus is in its window: keys that nothing else
/// types into go there at once; what ran into another text field at a scanner's speed is taken out of it
/// again.
class ScanKeys : public QObject {
  Q_OBJECT
public:
  explicit ScanKeys(QLineEdit& field);

Q_SIGNALS:
  /// A whole code that was typed into another field.
  void caught(const QString& code);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  bool atWork(const QObject* watched) const;
  bool inTextField(QLineEdit& other, const QKeyEvent& key);
  qint64 timeOf(const QKeyEvent& key) const;

  QLineEdit& field_;
  FastTyping typing_;
  QPointer<QLineEdit> other_;
  QString before_; ///< what stood in that other field before the run
  QElapsedTimer clock_;
};

} // namespace hangbook::desk
