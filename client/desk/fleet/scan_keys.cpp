// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/scan_keys.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextEdit>

namespace hangbook::desk {
namespace {

bool isEnter(const QKeyEvent& key) {
  return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
}

/// A character that a scanner may type. A code never begins with a space, which works buttons and lists.
bool isTyped(const QKeyEvent& key) {
  return (key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0 && key.text().size() == 1 &&
         key.text().front().isPrint() && !key.text().front().isSpace();
}

/// The line that takes what is typed. A box that can be edited has the keyboard itself and hands it on.
QLineEdit* lineEditOf(QObject* widget) {
  const auto* box = qobject_cast<QComboBox*>(widget);
  return box != nullptr ? box->lineEdit() : qobject_cast<QLineEdit*>(widget);
}

bool takesText(const QObject* widget) {
  return qobject_cast<const QAbstractSpinBox*>(widget) != nullptr ||
         qobject_cast<const QTextEdit*>(widget) != nullptr ||
         qobject_cast<const QPlainTextEdit*>(widget) != nullptr;
}

} // namespace

ScanKeys::ScanKeys(QLineEdit& field) : QObject(&field), field_(field) {
  clock_.start();
  qApp->installEventFilter(this);
}

bool ScanKeys::atWork(const QObject* watched) const {
  const auto* widget = qobject_cast<const QWidget*>(watched);
  return widget != nullptr && field_.isVisible() && field_.isEnabled() &&
         widget->window() == field_.window() && QApplication::activeModalWidget() == nullptr &&
         QApplication::activePopupWidget() == nullptr;
}

qint64 ScanKeys::timeOf(const QKeyEvent& key) const {
  return key.timestamp() != 0 ? static_cast<qint64>(key.timestamp()) : clock_.elapsed();
}

bool ScanKeys::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress || watched == &field_ || !atWork(watched)) {
    return QObject::eventFilter(watched, event);
  }
  const auto& key = static_cast<const QKeyEvent&>(*event);
  if (QLineEdit* other = lineEditOf(watched)) {
    return inTextField(*other, key) || QObject::eventFilter(watched, event);
  }
  // Only where the key would end: a widget that does not take it hands it on to the widgets around it.
  if (isTyped(key) && !takesText(watched) && watched == QApplication::focusWidget()) {
    field_.setFocus(Qt::ShortcutFocusReason);
    field_.clear();
    QKeyEvent again(QEvent::KeyPress, key.key(), key.modifiers(), key.text());
    QApplication::sendEvent(&field_, &again);
    return true;
  }
  return QObject::eventFilter(watched, event);
}

bool ScanKeys::inTextField(QLineEdit& other, const QKeyEvent& key) {
  if (isEnter(key)) {
    const QString code = other_ == &other ? typing_.endedAt(timeOf(key)) : QString();
    if (code.isEmpty()) {
      return false;
    }
    other.setText(before_);
    Q_EMIT caught(code);
    return true;
  }
  if (!isTyped(key)) {
    typing_.forget();
  } else if (other_ != &other || typing_.add(key.text(), timeOf(key))) {
    if (other_ != &other) {
      typing_.forget();
      typing_.add(key.text(), timeOf(key));
    }
    other_ = &other;
    before_ = other.text();
  }
  return false;
}

} // namespace hangbook::desk
