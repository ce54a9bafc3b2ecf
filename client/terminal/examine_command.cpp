// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include <QJsonArray>

#include "fleet/due.h"
#include "store/fleet_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/names.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using fleet::ExaminationResult;

ExaminationResult resultFrom(const Given& given) {
  const QString text = textOf(given, "--result");
  for (const ExaminationResult each :
       {ExaminationResult::pass, ExaminationResult::passWithRemark, ExaminationResult::fail}) {
    if (text.compare(wordOf(each), Qt::CaseInsensitive) == 0) {
      return each;
    }
  }
  throw Error(Trouble::badInput,
              "--result " + text.toStdString() + ": pass, \"pass with remark\" or fail is expected");
}

/// The rule that --rule names, or the only one that applies.
const fleet::ExaminationRule& ruleFor(const std::vector<fleet::ExaminationRule>& rules,
                                      const fleet::Unit& unit, const Given& given) {
  QStringList names;
  const fleet::ExaminationRule* found = nullptr;
  const QString wanted = textOf(given, "--rule");
  for (const fleet::ExaminationRule& rule : rules) {
    if (fleet::appliesTo(rule, unit)) {
      names << rule.name;
      if (wanted.isEmpty() || sameName(rule.name, wanted)) {
        found = &rule;
      }
    }
  }
  if (names.isEmpty()) {
    throw Error(Trouble::notPossible, "no examination rule is for " + unit.serial.toStdString() +
                                          ": enter one first, so that it is known when it is due again");
  }
  if (found == nullptr) {
    throw unknownName(wanted, QStringLiteral("an examination rule for %1").arg(unit.serial), names);
  }
  if (wanted.isEmpty() && names.size() > 1) {
    throw Error(Trouble::badInput, "several rules are for " + unit.serial.toStdString() +
                                       "; say with --rule which was examined: " +
                                       names.join(QStringLiteral(", ")).toStdString());
  }
  return *found;
}

Ending run(const Given& given, Context& context) {
  const ExaminationResult result = resultFrom(given);
  const auto store = openStore(context);
  const fleet::Unit unit = findUnit(*store, QString::fromStdString(*given.operand("SERIAL")).trimmed());
  const auto rules = store::loadExaminationRules(*store);
  const fleet::ExaminationRule& rule = ruleFor(rules, unit, given);
  fleet::Examination fact;
  fact.serial = unit.serial;
  fact.rule = rule.name;
  fact.date = pastDay(given, context);
  fact.result = result;
  fact.by = person(*store, context);
  fact.examiner = given.has("--examiner") ? textOf(given, "--examiner") : fact.by;
  fact.certificate = textOf(given, "--certificate");
  fact.remark = textOf(given, "--remark");
  if (result == ExaminationResult::passWithRemark && fact.remark.isEmpty()) {
    throw Error(Trouble::badInput, "--remark TEXT is needed with the result \"pass with remark\"");
  }
  if (given.has("--corrects")) {
    fact.corrects = QUuid::fromString(textOf(given, "--corrects"));
    if (fact.corrects.isNull()) {
      throw Error(Trouble::badInput,
                  "--corrects: the entry's identifier is expected, as “hangbook unit” shows it");
    }
  }
  const actions::Recorded done = actions::examine(
      *store, fact, filesFrom(given, fleet::DocumentKind::certificate), today(context), fact.by);
  const auto examinations = store::loadExaminations(*store, unit.serial);
  const fleet::LastExaminations last(examinations);
  const fleet::Standing standing = fleet::standingOf(rule, last.of(unit.serial, rule.name), {});
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.examined/1")},
                        {QStringLiteral("entry"), done.examination.id.toString(QUuid::WithoutBraces)},
                        {QStringLiteral("unit"), unit.serial},
                        {QStringLiteral("rule"), rule.name},
                        {QStringLiteral("date"), fact.date.toString(Qt::ISODate)},
                        {QStringLiteral("result"), wordOf(result)},
                        {QStringLiteral("due"), standing.until.isValid()
                                                    ? QJsonValue(standing.until.toString(Qt::ISODate))
                                                    : QJsonValue(QJsonValue::Null)},
                        {QStringLiteral("quarantined"), done.quarantined},
                        {QStringLiteral("shows"), showsInJson(done.shows)}});
  } else {
    context.out << unit.serial << ": " << rule.name << ", " << wordOf(result) << " on "
                << fact.date.toString(Qt::ISODate) << " by " << fact.examiner << '\n';
    if (standing.until.isValid()) {
      context.out << "stands until " << standing.until.toString(Qt::ISODate) << '\n';
    }
    if (done.quarantined) {
      context.out << unit.serial << " is quarantined\n";
    }
    printShows(done.shows, context.out);
  }
  return result == ExaminationResult::fail ? Ending::failing : Ending::done;
}

} // namespace

Command examineCommand() {
  return {"examine",
          "record an examination; one that is not passed quarantines the unit and names the shows that "
          "counted on it",
          {{"--result", "RESULT", "pass, \"pass with remark\" or fail", true},
           {"--rule", "NAME", "which examination it was, where several rules are for the unit"},
           {"--date", "DATE", "when it was made; today where left out"},
           {"--examiner", "NAME", "who examined it; whoever records it where left out"},
           {"--certificate", "TEXT", "number of the certificate"},
           {"--file", "FILE", "the certificate; it is kept in the store with its SHA-256"},
           {"--remark", "TEXT", "in words"},
           {"--corrects", "ENTRY", "the earlier entry that this one corrects"}},
          {{"SERIAL", "the unit"}},
          "hangbook examine H03 --result pass --examiner \"R. Sedge\" --certificate C-118 --file c118.pdf",
          run};
}

} // namespace hangbook::terminal
