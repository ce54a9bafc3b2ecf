// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/edit_dialog.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/name_box.h"

namespace hangbook::desk {

EditDialog::EditDialog(Session& session, const QString& prefix, QWidget* parent)
    : QDialog(parent), session_(session), prefix_(prefix) {}

void EditDialog::layOut(QWidget* content, const QString& note, QPushButton* more) {
  auto* says = new QLabel(note, this);
  says->setWordWrap(true);
  says->setFont(fontFor(TextSize::note, font()));
  says_ = new QLabel(this);
  says_->setObjectName(prefix_ + QStringLiteral("Says"));
  says_->setAccessibleName(tr("What is wrong, or what it changes"));
  says_->setWordWrap(true);
  says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(content, 1);
  all->addWidget(says);
  all->addWidget(says_);
  all->addLayout(buttons(more));
}

QLayout* EditDialog::buttons(QPushButton* more) {
  by_ = nameBox(prefix_ + QStringLiteral("By"), tr("Who saves it"), namesOf(session_.overview().people),
                session_.overview().atDesk, this);
  connect(by_, &QComboBox::editTextChanged, this, [this] { check(); });
  auto* who = new QLabel(tr("Sa&ved by"), this);
  who->setBuddy(by_);
  save_ = new QPushButton(tr("&Save"), this);
  save_->setObjectName(prefix_ + QStringLiteral("Save"));
  save_->setAutoDefault(false); // Enter in a field must not save
  connect(save_, &QPushButton::clicked, this, [this] { save(); });
  auto* cancel = new QPushButton(tr("&Cancel"), this);
  cancel->setObjectName(prefix_ + QStringLiteral("Cancel"));
  cancel->setAutoDefault(false);
  connect(cancel, &QPushButton::clicked, this, [this] { reject(); });
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  line->addWidget(who);
  line->addWidget(by_);
  line->addStretch(1);
  if (more != nullptr) {
    more->setAutoDefault(false);
    line->addWidget(more);
  }
  line->addWidget(save_);
  line->addWidget(cancel);
  return line;
}

QString EditDialog::by() const {
  return by_->currentText().simplified();
}

void EditDialog::judge(const QString& wrong) {
  warned_ = false;
  const bool other = differs();
  save_->setEnabled(wrong.isEmpty() && other && !by().isEmpty() && !sending_);
  says_->setText(!wrong.isEmpty() ? tr("Cannot be saved yet. %1").arg(wrong)
                 : !other         ? tr("Nothing is changed yet.")
                 : by().isEmpty() ? tr("To save it, say who does.")
                                  : tr("Not saved yet."));
}

void EditDialog::say(const QString& words) {
  says_->setText(words);
}

void EditDialog::begin(const QString& meanwhile) {
  sending_ = true;
  focus_ = focusWidget();
  setEnabled(false);
  says_->setText(meanwhile);
}

void EditDialog::end() {
  sending_ = false;
  setEnabled(true);
  check();
  if (focus_ != nullptr) {
    focus_->setFocus();
  }
}

void EditDialog::sayTrouble(const std::exception_ptr& what) {
  says_->setText(wordsFor(what, tr("Nothing was saved; what you typed still stands here.")));
}

void EditDialog::reject() {
  if (!warned_ && differs()) {
    warned_ = true;
    says_->setText(tr("What you changed is not saved. Cancel once more leaves it behind."));
    return;
  }
  QDialog::reject();
}

} // namespace hangbook::desk
