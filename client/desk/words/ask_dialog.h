// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include <QDialog>

#include "desk/style/scale.h"
#include "people/person.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace hangbook::desk {

QStringList namesOf(const std::vector<people::Person>& people);

/// A few fields, under a sentence or more, some of which must be filled in before it can be accepted. Its
/// widgets are named after `prefix`: "splitDialog", "splitBy", "splitAccept". It is as high as its sentences
/// need in its width, and grows when they do.
class AskDialog : public QDialog {
  Q_OBJECT
public:
  /// Who does it.
  QString by() const;
  /// Who names the file of `addFile`; by default the person in front of the screen.
  void setFileAsker(std::function<QString()> asker) { fileAsker_ = std::move(asker); }

protected:
  /// `sentence` may be empty.
  AskDialog(const QString& prefix, const QString& title, const QString& sentence, const QString& accept,
            QWidget* parent);

  /// Over the fields, under what is there already.
  void addAbove(QWidget* widget);
  QLabel* addWords(const QString& words, TextSize size = TextSize::body);
  /// Between the fields and the buttons.
  QLabel* addWordsBelow(const QString& words, TextSize size = TextSize::body);

  /// `says` names the field for screen readers.
  void addField(const QString& label, const QString& name, const QString& says, QWidget* field);
  QLineEdit* addText(const QString& label, const QString& name, const QString& says, const QString& hint);
  /// A text that must not be empty.
  QLineEdit* addNeeded(const QString& label, const QString& name, const QString& says, const QString& hint);
  /// Whether that text may be empty.
  void setNeeded(QLineEdit* field, bool needed);
  /// The name of a file, typed or asked for by a button that `browse` names for screen readers.
  QLineEdit* addFile(const QString& label, const QString& says, const QString& hint, const QString& browse);
  /// The name of whoever does it, which must not be empty either.
  void addBy(const QString& says, const QStringList& people, const QString& atDesk,
             const QString& label = {}); ///< an empty label: “By”

  /// Whether all else is as it must be for it to be accepted.
  void setReady(bool ready);

  bool event(QEvent* event) override;

private:
  QLabel* wrapped(const QString& words, TextSize size);
  void addRow(const QString& label, QWidget* buddy, QWidget* row);
  void check();
  void fitWords();

  QString prefix_;
  QVBoxLayout* above_;
  QFormLayout* form_;
  QVBoxLayout* below_;
  QPushButton* accept_;
  std::vector<QLineEdit*> needed_;
  QComboBox* by_ = nullptr;
  std::function<QString()> fileAsker_;
  bool ready_ = true;
};

} // namespace hangbook::desk
