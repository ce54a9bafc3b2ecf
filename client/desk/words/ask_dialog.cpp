// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/ask_dialog.h"

#include <algorithm>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"

namespace hangbook::desk {

QStringList namesOf(const std::vector<people::Person>& people) {
  QStringList names;
  for (const people::Person& each : people) {
    names << each.name;
  }
  return names;
}

AskDialog::AskDialog(const QString& prefix, const QString& title, const QString& sentence,
                     const QString& accept, QWidget* parent)
    : QDialog(parent), prefix_(prefix), form_(new QFormLayout) {
  setObjectName(prefix + QStringLiteral("Dialog"));
  setWindowTitle(title);
  auto* says = new QLabel(sentence, this);
  says->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(accept, QDialogButtonBox::AcceptRole);
  accept_->setObjectName(prefix + QStringLiteral("Accept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(says);
  all->addLayout(form_);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void AskDialog::addField(const QString& label, const QString& name, const QString& says, QWidget* field) {
  field->setObjectName(prefix_ + name);
  field->setAccessibleName(says);
  form_->addRow(label, field);
}

QLineEdit* AskDialog::addNeeded(const QString& label, const QString& name, const QString& says,
                                const QString& hint) {
  auto* field = new QLineEdit(this);
  field->setPlaceholderText(hint);
  addField(label, name, says, field);
  needed_.push_back(field);
  connect(field, &QLineEdit::textChanged, this, &AskDialog::check);
  check();
  return field;
}

void AskDialog::addBy(const QString& says, const QStringList& people, const QString& atDesk) {
  by_ = nameBox(prefix_ + QStringLiteral("By"), says, people, atDesk, this);
  form_->addRow(tr("&By"), by_);
  connect(by_, &QComboBox::editTextChanged, this, &AskDialog::check);
  check();
}

QString AskDialog::by() const {
  return by_ == nullptr ? QString() : by_->currentText().trimmed();
}

void AskDialog::setReady(bool ready) {
  ready_ = ready;
  check();
}

void AskDialog::check() {
  const bool filled =
      std::ranges::none_of(needed_, [](const QLineEdit* each) { return each->text().trimmed().isEmpty(); });
  accept_->setEnabled(ready_ && filled && (by_ == nullptr || !by().isEmpty()));
}

} // namespace hangbook::desk
