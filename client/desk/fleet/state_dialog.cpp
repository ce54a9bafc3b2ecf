// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/state_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "desk/style/scale.h"
#include "desk/words/name_box.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {

using fleet::UnitState;

StateDialog::StateDialog(const fleet::Unit& unit, const QStringList& people, const QString& atDesk,
                         QWidget* parent)
    : QDialog(parent), serial_(unit.serial), state_(new QComboBox(this)), reason_(new QLineEdit(this)),
      by_(nameBox(QStringLiteral("stateBy"), tr("Who changes it"), people, atDesk, this)) {
  setObjectName(QStringLiteral("stateDialog"));
  setWindowTitle(tr("State of %1").arg(unit.serial));
  state_->setObjectName(QStringLiteral("stateState"));
  state_->setAccessibleName(tr("New state"));
  for (const UnitState each :
       {UnitState::ready, UnitState::quarantined, UnitState::inRepair, UnitState::writtenOff}) {
    if (each != unit.state) {
      state_->addItem(wordOf(each), static_cast<int>(each));
    }
  }
  reason_->setObjectName(QStringLiteral("stateReason"));
  reason_->setAccessibleName(tr("Reason"));
  reason_->setPlaceholderText(tr("Needed: what was found or done"));
  auto* says =
      new QLabel(tr("%1, %2, is %3 at %4. What it is set to stands until somebody changes it again; a "
                    "released unit still owes every examination that is due.")
                     .arg(unit.serial, unit.type, wordOf(unit.state), unit.place),
                 this);
  says->setWordWrap(true);
  auto* form = new QFormLayout;
  form->addRow(tr("&New state"), state_);
  form->addRow(tr("&Reason"), reason_);
  form->addRow(tr("&By"), by_);
  auto* buttons = new QDialogButtonBox(this);
  accept_ = buttons->addButton(tr("Change it"), QDialogButtonBox::AcceptRole);
  accept_->setObjectName(QStringLiteral("stateAccept"));
  buttons->addButton(QDialogButtonBox::Cancel);
  auto* all = new QVBoxLayout(this);
  all->setSpacing(space::step);
  all->addWidget(says);
  all->addLayout(form);
  all->addWidget(buttons);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 60);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(reason_, &QLineEdit::textChanged, this, &StateDialog::check);
  connect(by_, &QComboBox::editTextChanged, this, &StateDialog::check);
  check();
}

StateChange StateDialog::change() const {
  return {serial_, static_cast<UnitState>(state_->currentData().toInt()), reason_->text().trimmed(),
          by_->currentText().trimmed()};
}

void StateDialog::check() {
  accept_->setEnabled(!reason_->text().trimmed().isEmpty() && !by_->currentText().trimmed().isEmpty());
}

} // namespace hangbook::desk
