// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/withdraw_dialog.h"

#include <QLineEdit>

#include "desk/words/plain_words.h"

namespace hangbook::desk {

WithdrawDialog::WithdrawDialog(const options::Choice& choice, const QString& stack,
                               const std::vector<people::Person>& people, const QString& atDesk,
                               QWidget* parent)
    : AskDialog(QStringLiteral("withdraw"), tr("Take back what is chosen"),
                tr("Chosen for %1 at %2: %3, by %4 on %5. Taken back, its gear is free again and its "
                   "sheets are no longer made; it stays in the history and can be undone.")
                    .arg(choice.hang, choice.show, stack, choice.by, dateText(choice.at.date())),
                tr("Take it back"), parent),
      reason_(addNeeded(tr("&Reason"), QStringLiteral("Reason"), tr("Reason"), tr("Needed: why"))) {
  addBy(tr("Who takes it back"), namesOf(people), atDesk);
}

QString WithdrawDialog::reason() const {
  return reason_->text().trimmed();
}

} // namespace hangbook::desk
