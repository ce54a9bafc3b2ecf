// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QDialog>

#include "people/person.h"

class QComboBox;
class QFormLayout;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

QStringList namesOf(const std::vector<people::Person>& people);

/// A few fields under a sentence, some of which must be filled in before it can be accepted. Its widgets are
/// named after `prefix`: "splitDialog", "splitBy", "splitAccept".
class AskDialog : public QDialog {
  Q_OBJECT
public:
  /// Who does it.
  QString by() const;

protected:
  AskDialog(const QString& prefix, const QString& title, const QString& sentence, const QString& accept,
            QWidget* parent);

  /// `says` names the field for screen readers.
  void addField(const QString& label, const QString& name, const QString& says, QWidget* field);
  /// A text that must not be empty.
  QLineEdit* addNeeded(const QString& label, const QString& name, const QString& says, const QString& hint);
  /// The name of whoever does it, which must not be empty either.
  void addBy(const QString& says, const QStringList& people, const QString& atDesk);

  /// Whether all else is as it must be for it to be accepted.
  void setReady(bool ready);

private:
  void check();

  QString prefix_;
  QFormLayout* form_;
  QPushButton* accept_;
  std::vector<QLineEdit*> needed_;
  QComboBox* by_ = nullptr;
  bool ready_ = true;
};

} // namespace hangbook::desk
