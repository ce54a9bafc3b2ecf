// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/state_dialog.h"

#include <QComboBox>
#include <QLineEdit>

#include "desk/words/plain_words.h"

namespace hangbook::desk {

using fleet::UnitState;

StateDialog::StateDialog(const fleet::Unit& unit, const QStringList& people, const QString& atDesk,
                         QWidget* parent)
    : AskDialog(QStringLiteral("state"), tr("State of %1").arg(unit.serial),
                tr("%1, %2, is %3 at %4. What it is set to stands until somebody changes it again; a "
                   "released unit still owes every examination that is due.")
                    .arg(unit.serial, unit.type, wordOf(unit.state), unit.place),
                tr("Change it"), parent),
      serial_(unit.serial), state_(new QComboBox(this)) {
  for (const UnitState each :
       {UnitState::ready, UnitState::quarantined, UnitState::inRepair, UnitState::writtenOff}) {
    if (each != unit.state) {
      state_->addItem(wordOf(each), static_cast<int>(each));
    }
  }
  addField(tr("&New state"), QStringLiteral("State"), tr("New state"), state_);
  reason_ =
      addNeeded(tr("&Reason"), QStringLiteral("Reason"), tr("Reason"), tr("Needed: what was found or done"));
  addBy(tr("Who changes it"), people, atDesk);
}

StateChange StateDialog::change() const {
  return {serial_, static_cast<UnitState>(state_->currentData().toInt()), reason_->text().trimmed(), by()};
}

} // namespace hangbook::desk
