// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/move_dialog.h"

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
#include "desk/words/name_box.h"

namespace hangbook::desk {
namespace {

QLabel* wrapped(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setWordWrap(true);
  return label;
}

} // namespace

MoveDialog::MoveDialog(const build::Flown& flown, const QStringList& people, const QStringList& openGates,
                       QWidget* parent)
    : QDialog(parent), by_(nameBox(QStringLiteral("moveBy"), tr("Who signs"), people, {}, this)),
      reason_(new QLineEdit(this)) {
  setObjectName(QStringLiteral("moveDialog"));
  setWindowTitle(tr("Sign the new setting"));
  reason_->setObjectName(QStringLiteral("moveReason"));
  reason_->setAccessibleName(tr("Why it is moved"));
  reason_->setPlaceholderText(tr("Needed: why it is moved"));
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  auto* head = wrapped(flown.moves ? tr("Sign only what hangs as it says here. In this order:")
                                   : tr("Nothing moves; the wind that it is to stand in is another one."),
                       this);
  head->setFont(fontFor(TextSize::heading, font()));
  all->addWidget(head);
  auto* verdict = new VerdictLabel(this);
  verdict->setVerdict(flown.after.verdict);
  all->addWidget(verdict);
  if (flown.after.verdict == options::Verdict::unproven) {
    auto* notCleared = wrapped(tr("NOT CLEARED TO LIFT"), this);
    notCleared->setFont(fontFor(TextSize::title, font()));
    all->addWidget(notCleared);
  }
  for (qsizetype i = 0; i < flown.steps.size(); ++i) {
    all->addWidget(wrapped(QStringLiteral("%1. %2").arg(i + 1).arg(flown.steps[i]), this));
  }
  if (!openGates.isEmpty()) {
    auto* up = wrapped(tr("Is it up? Nobody signed: %1.").arg(openGates.join(QStringLiteral(", "))), this);
    up->setObjectName(QStringLiteral("moveOpenGates"));
    up->setFont(fontFor(TextSize::heading, font()));
    all->addWidget(up);
  }
  auto* form = new QFormLayout;
  form->addRow(tr("Signed &by"), by_);
  form->addRow(tr("&Reason"), reason_);
  all->addLayout(form);
  auto* caution = wrapped(cautionText(), this);
  caution->setFont(fontFor(TextSize::note, font()));
  all->addWidget(caution);
  auto* buttons = new QDialogButtonBox(this);
  sign_ = buttons->addButton(tr("&Sign it"), QDialogButtonBox::AcceptRole);
  sign_->setObjectName(QStringLiteral("moveAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 72);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(by_, &QComboBox::editTextChanged, this, &MoveDialog::check);
  connect(reason_, &QLineEdit::textChanged, this, &MoveDialog::check);
  check();
}

QString MoveDialog::by() const {
  return by_->currentText().simplified();
}

QString MoveDialog::reason() const {
  return reason_->text().simplified();
}

void MoveDialog::check() {
  sign_->setEnabled(!by().isEmpty() && !reason().isEmpty());
}

} // namespace hangbook::desk
