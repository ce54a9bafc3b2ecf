// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "calendar/where_best.h"
#include "fleet/unit.h"
#include "people/person.h"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

/// The record of one examination: of what, by which rule, result, who, when, certificate. The button stays
/// off until everything that is needed is there.
class ExamineForm : public QWidget {
  Q_OBJECT
public:
  explicit ExamineForm(QWidget* parent = nullptr);

  void setPeople(const std::vector<people::Person>& people, const QString& atDesk, QDate today);
  /// What is examined; none: nothing is selected.
  void setSubject(const std::optional<fleet::Due>& due);
  fleet::Examination typed() const;
  /// The certificate's file, where one was named.
  QStringList files() const;
  void setFile(const QString& name);
  void clearTyped();
  /// What followed from the last record, in words.
  void tell(const QString& words);

Q_SIGNALS:
  void recordAsked();
  void fileAsked();

private:
  void check();
  fleet::ExaminationResult result() const;

  std::optional<fleet::Due> due_;
  QLabel* subject_;
  QDateEdit* date_;
  QComboBox* result_;
  QLineEdit* examiner_;
  QLineEdit* certificate_;
  QLineEdit* file_;
  QPushButton* browse_;
  QLineEdit* remark_;
  QComboBox* by_;
  QLabel* follows_;
  QPushButton* record_;
  QLabel* told_;
};

} // namespace hangbook::desk
