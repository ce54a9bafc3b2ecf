// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/choose_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/frame/cautions.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_label.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  return label;
}

QString openRules(const options::Option& option, options::Verdict verdict) {
  QStringList rules;
  for (const options::Finding& each : option.findings) {
    if (each.applies && each.verdict == verdict) {
      rules << ruleWords(each.rule);
    }
  }
  return rules.join(QStringLiteral(", "));
}

} // namespace

ChooseDialog::ChooseDialog(const options::Option& option, const QString& what, const QStringList& people,
                           QWidget* parent)
    : QDialog(parent), verdict_(option.verdict), by_(new QComboBox(this)), reason_(new QLineEdit(this)) {
  setObjectName(QStringLiteral("chooseDialog"));
  setWindowTitle(tr("Choose an option"));
  by_->setObjectName(QStringLiteral("chooseBy"));
  by_->setAccessibleName(tr("Who chooses"));
  by_->setEditable(true);
  by_->lineEdit()->setAccessibleName(tr("Who chooses"));
  by_->addItems(people);
  by_->setCurrentIndex(-1);
  by_->lineEdit()->setPlaceholderText(tr("Name"));
  reason_->setObjectName(QStringLiteral("chooseReason"));
  reason_->setAccessibleName(tr("Reason"));
  const bool unproven = verdict_ == options::Verdict::unproven;
  reason_->setPlaceholderText(unproven ? tr("Needed: why it is pencilled in all the same")
                                       : tr("May be left out"));

  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  auto* head = wrapped(what, this);
  head->setFont(fontFor(TextSize::heading, font()));
  auto* verdict = new VerdictLabel(this);
  verdict->setVerdict(verdict_);
  all->addWidget(head);
  all->addWidget(verdict);
  if (verdict_ != options::Verdict::holds) {
    all->addWidget(wrapped(tr("Because of: %1.").arg(openRules(option, verdict_)), this));
  }
  if (unproven) {
    auto* notCleared = wrapped(tr("NOT CLEARED TO LIFT"), this);
    notCleared->setObjectName(QStringLiteral("chooseNotCleared"));
    notCleared->setFont(fontFor(TextSize::title, font()));
    all->addWidget(notCleared);
    all->addWidget(wrapped(
        tr("It can be pencilled in with a name and a reason. Every sheet of it says NOT CLEARED TO LIFT "
           "until the missing figures are entered and it is chosen again."),
        this));
  }
  auto* form = new QFormLayout;
  form->addRow(tr("&Chosen by"), by_);
  form->addRow(tr("&Reason"), reason_);
  all->addLayout(form);
  auto* caution = wrapped(cautionText(), this);
  caution->setFont(fontFor(TextSize::note, font()));
  all->addWidget(caution);
  auto* buttons = new QDialogButtonBox(this);
  choose_ = buttons->addButton(unproven ? tr("Pencil it in") : tr("Choose it"), QDialogButtonBox::AcceptRole);
  choose_->setObjectName(QStringLiteral("chooseAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 72);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(by_, &QComboBox::editTextChanged, this, &ChooseDialog::check);
  connect(reason_, &QLineEdit::textChanged, this, &ChooseDialog::check);
  check();
}

QString ChooseDialog::by() const {
  return by_->currentText().trimmed();
}

QString ChooseDialog::reason() const {
  return reason_->text().trimmed();
}

void ChooseDialog::check() {
  const bool reasonNeeded = verdict_ == options::Verdict::unproven;
  choose_->setEnabled(verdict_ != options::Verdict::fails && !by().isEmpty() &&
                      (!reasonNeeded || !reason().isEmpty()));
}

} // namespace hangbook::desk
