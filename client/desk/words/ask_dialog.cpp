// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/ask_dialog.h"

#include <algorithm>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QEvent>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

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
    : QDialog(parent), prefix_(prefix), above_(new QVBoxLayout), form_(new QFormLayout),
      below_(new QVBoxLayout),
      fileAsker_([this] { return QFileDialog::getOpenFileName(this, windowTitle()); }) {
  setObjectName(prefix + QStringLiteral("Dialog"));
  setWindowTitle(title);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(accept, QDialogButtonBox::AcceptRole);
  accept_->setObjectName(prefix + QStringLiteral("Accept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  for (QVBoxLayout* each : {all, above_, below_}) {
    each->setSpacing(space::step);
  }
  all->addLayout(above_);
  all->addLayout(form_);
  all->addLayout(below_);
  all->addWidget(buttons);
  if (!sentence.isEmpty()) {
    addWords(sentence);
  }
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void AskDialog::addAbove(QWidget* widget) {
  above_->addWidget(widget);
}

QLabel* AskDialog::wrapped(const QString& words, TextSize size) {
  auto* label = new QLabel(words, this);
  label->setWordWrap(true);
  label->setFont(fontFor(size, font()));
  return label;
}

QLabel* AskDialog::addWords(const QString& words, TextSize size) {
  QLabel* label = wrapped(words, size);
  above_->addWidget(label);
  return label;
}

QLabel* AskDialog::addWordsBelow(const QString& words, TextSize size) {
  QLabel* label = wrapped(words, size);
  below_->addWidget(label);
  return label;
}

void AskDialog::addRow(const QString& label, QWidget* buddy, QWidget* row) {
  auto* says = new QLabel(label, this);
  says->setBuddy(buddy);
  form_->addRow(says, row);
}

void AskDialog::addField(const QString& label, const QString& name, const QString& says, QWidget* field) {
  field->setObjectName(prefix_ + name);
  field->setAccessibleName(says);
  addRow(label, field, field);
}

QLineEdit* AskDialog::addText(const QString& label, const QString& name, const QString& says,
                              const QString& hint) {
  auto* field = new QLineEdit(this);
  field->setPlaceholderText(hint);
  addField(label, name, says, field);
  connect(field, &QLineEdit::textChanged, this, &AskDialog::check);
  return field;
}

QLineEdit* AskDialog::addNeeded(const QString& label, const QString& name, const QString& says,
                                const QString& hint) {
  auto* field = addText(label, name, says, hint);
  setNeeded(field, true);
  return field;
}

void AskDialog::setNeeded(QLineEdit* field, bool needed) {
  std::erase(needed_, field);
  if (needed) {
    needed_.push_back(field);
  }
  check();
}

QLineEdit* AskDialog::addFile(const QString& label, const QString& says, const QString& hint,
                              const QString& browse) {
  auto* row = new QWidget(this);
  auto* field = new QLineEdit(row);
  field->setObjectName(prefix_ + QStringLiteral("File"));
  field->setAccessibleName(says);
  field->setPlaceholderText(hint);
  connect(field, &QLineEdit::textChanged, this, &AskDialog::check);
  auto* button = new QPushButton(tr("…"), row);
  button->setObjectName(prefix_ + QStringLiteral("Browse"));
  button->setAccessibleName(browse);
  button->setAutoDefault(false);
  button->setFixedWidth(button->fontMetrics().height() * 2);
  connect(button, &QPushButton::clicked, this, [this, field] {
    if (const QString name = fileAsker_(); !name.isEmpty()) {
      field->setText(name);
    }
  });
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(space::small);
  line->addWidget(field, 1);
  line->addWidget(button);
  addRow(label, field, row);
  return field;
}

void AskDialog::addBy(const QString& says, const QStringList& people, const QString& atDesk,
                      const QString& label) {
  by_ = nameBox(prefix_ + QStringLiteral("By"), says, people, atDesk, this);
  addRow(label.isEmpty() ? tr("&By") : label, by_, by_);
  connect(by_, &QComboBox::editTextChanged, this, &AskDialog::check);
  check();
}

QString AskDialog::by() const {
  return by_ == nullptr ? QString() : by_->currentText().simplified();
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

/// A layout asks a sentence that wraps for its height in a width of its own choice, and takes from it where
/// room is short: so each is told how high it must be in the width that it has.
void AskDialog::fitWords() {
  for (QLabel* each : findChildren<QLabel*>()) {
    if (each->wordWrap()) {
      each->setFixedHeight(std::max(0, each->heightForWidth(each->width())));
    }
  }
  layout()->activate(); // now, or for a moment they lie under what follows
}

bool AskDialog::event(QEvent* event) {
  const bool done = QDialog::event(event);
  switch (event->type()) {
  case QEvent::Show:
    layout()->activate();
    fitWords();
    resize(width(), layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width())
                                                  : layout()->totalSizeHint().height());
    break;
  case QEvent::Resize:
  case QEvent::LayoutRequest:
    if (isVisible()) { // before that nothing has its width yet
      fitWords();
    }
    break;
  default:
    break;
  }
  return done;
}

} // namespace hangbook::desk
