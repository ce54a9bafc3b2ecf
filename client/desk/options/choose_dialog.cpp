// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/choose_dialog.h"

#include <QLabel>
#include <QLineEdit>

#include "desk/frame/cautions.h"
#include "desk/style/verdict_label.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

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
    : AskDialog(QStringLiteral("choose"), tr("Choose an option"), {},
                option.verdict == options::Verdict::unproven ? tr("Pencil it in") : tr("Choose it"), parent) {
  const bool unproven = option.verdict == options::Verdict::unproven;
  addWords(what, TextSize::heading);
  auto* verdict = new VerdictLabel(this);
  verdict->setVerdict(option.verdict);
  addAbove(verdict);
  if (option.verdict != options::Verdict::holds) {
    addWords(tr("Because of: %1.").arg(openRules(option, option.verdict)));
  }
  if (unproven) {
    addWords(tr("NOT CLEARED TO LIFT"), TextSize::title)->setObjectName(QStringLiteral("chooseNotCleared"));
    addWords(tr("It can be pencilled in with a name and a reason. Every sheet of it says NOT CLEARED TO LIFT "
                "until the missing figures are entered and it is chosen again."));
  }
  addBy(tr("Who chooses"), people, {}, tr("&Chosen by"));
  reason_ = addText(tr("&Reason"), QStringLiteral("Reason"), tr("Reason"),
                    unproven ? tr("Needed: why it is pencilled in all the same") : tr("May be left out"));
  setNeeded(reason_, unproven);
  addWordsBelow(cautionText(), TextSize::note);
  setReady(option.verdict != options::Verdict::fails);
  setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 72);
}

QString ChooseDialog::reason() const {
  return reason_->text().simplified();
}

} // namespace hangbook::desk
