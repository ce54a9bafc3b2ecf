// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/move_dialog.h"

#include <QLabel>
#include <QLineEdit>

#include "desk/frame/cautions.h"
#include "desk/style/verdict_label.h"

namespace hangbook::desk {

MoveDialog::MoveDialog(const build::Flown& flown, const QStringList& people, const QStringList& openGates,
                       QWidget* parent)
    : AskDialog(QStringLiteral("move"), tr("Sign the new setting"), {}, tr("&Sign it"), parent) {
  addWords(flown.moves ? tr("Sign only what hangs as it says here. In this order:")
                       : tr("Nothing moves; the wind that it is to stand in is another one."),
           TextSize::heading);
  auto* verdict = new VerdictLabel(this);
  verdict->setVerdict(flown.after.verdict);
  addAbove(verdict);
  if (flown.after.verdict == options::Verdict::unproven) {
    addWords(tr("NOT CLEARED TO LIFT"), TextSize::title);
  }
  for (qsizetype i = 0; i < flown.steps.size(); ++i) {
    addWords(QStringLiteral("%1. %2").arg(i + 1).arg(flown.steps[i]));
  }
  if (!openGates.isEmpty()) {
    addWords(tr("Is it up? Nobody signed: %1.").arg(openGates.join(QStringLiteral(", "))), TextSize::heading)
        ->setObjectName(QStringLiteral("moveOpenGates"));
  }
  addBy(tr("Who signs"), people, {}, tr("Signed &by"));
  reason_ = addNeeded(tr("&Reason"), QStringLiteral("Reason"), tr("Why it is moved"),
                      tr("Needed: why it is moved"));
  addWordsBelow(cautionText(), TextSize::note);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 72);
}

QString MoveDialog::reason() const {
  return reason_->text().simplified();
}

} // namespace hangbook::desk
