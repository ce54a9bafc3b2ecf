// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/choose.h"

#include "options/freeze.h"
#include "quantity/error.h"

namespace hangbook::actions {

using options::Verdict;

QString becauseOf(const options::Option& option) {
  QStringList sentences;
  for (const options::Finding& finding : option.findings) {
    if (finding.applies && finding.verdict == option.verdict) {
      sentences << finding.rule + QStringLiteral(": ") + finding.text;
    }
  }
  return sentences.join(QStringLiteral("; "));
}

options::Choice choiceOf(const options::Snapshot& snapshot, const options::Option& option,
                         const QString& reason) {
  const std::string id = option.id.toStdString();
  if (option.verdict == Verdict::fails || !option.setting) {
    throw Error(Trouble::notPossible,
                "option " + id + " fails and cannot be chosen: " + becauseOf(option).toStdString());
  }
  if (option.verdict == Verdict::unproven && reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "option " + id +
                                       " is unproven; it can be pencilled in with a reason only (" +
                                       becauseOf(option).toStdString() + ")");
  }
  options::Choice choice;
  for (const options::Choice& standing : snapshot.choices) {
    if (standing.hang == option.key.hang) {
      choice.revision = standing.revision;
    }
  }
  choice.tour = snapshot.tour.name;
  choice.show = snapshot.show.name;
  choice.hang = option.key.hang;
  choice.option = option.id;
  choice.key = option.key;
  choice.verdict = option.verdict;
  choice.reason = reason.trimmed();
  choice.awayFrom = snapshot.show.awayFrom;
  choice.awayTo = snapshot.show.awayTo;
  choice.points = option.points;
  choice.setting = *option.setting;
  const options::Frozen frozen = options::freeze(snapshot, option);
  choice.frozen = frozen.json;
  choice.sha256 = frozen.sha256;
  choice.program = frozen.program;
  return choice;
}

} // namespace hangbook::actions
