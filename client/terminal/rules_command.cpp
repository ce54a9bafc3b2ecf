// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/import_file.h"
#include "options/gear_needs.h"
#include "rules/rules.h"
#include "store/fleet_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString whenInWords(const fleet::ExaminationRule& rule) {
  QStringList when;
  if (rule.months) {
    when << QStringLiteral("%1 months").arg(*rule.months);
  }
  if (rule.uses) {
    when << QStringLiteral("%1 uses").arg(*rule.uses);
  }
  if (rule.hours) {
    when << QStringLiteral("%1 h of use").arg(*rule.hours);
  }
  if (rule.idleMonths) {
    when << QStringLiteral("idle for %1 months").arg(*rule.idleMonths);
  }
  if (rule.afterExceptional) {
    when << QStringLiteral("after exceptional circumstances");
  }
  if (rule.atNewSite) {
    when << QStringLiteral("after assembly at a new site");
  }
  return when.join(QStringLiteral(", "));
}

Ending adopt(const rules::Set& set, Context& context) {
  const auto store = openOrMakeStore(context);
  const exchange::Import import =
      actions::importFile(*store, exchange::Kind::units, set.bytes,
                          {person(*store, context), QDateTime::currentDateTimeUtc()}, {}, false);
  for (const exchange::Fault& fault : import.faults) {
    context.err << exchange::text(fault) << '\n';
  }
  for (const exchange::Count& count : import.counts) {
    context.out << set.name << ": " << QString::number(count.added) << " new, "
                << QString::number(count.changed) << " changed, " << QString::number(count.same)
                << " the same already\n";
  }
  return import.faults.empty() ? Ending::done : Ending::badInput;
}

Ending run(const Given& given, Context& context) {
  if (given.has("--adopt")) {
    return adopt(rules::set(textOf(given, "--adopt")), context);
  }
  const auto store = openStore(context);
  QJsonArray list;
  Table table({{QStringLiteral("rule"), Column::Kind::text},
               {QStringLiteral("kind")},
               {QStringLiteral("type"), Column::Kind::text},
               {QStringLiteral("when"), Column::Kind::text},
               {QStringLiteral("source"), Column::Kind::text}});
  for (const fleet::ExaminationRule& rule : store::loadExaminationRules(*store)) {
    table.add({rule.name, options::wordFor(rule.kind), rule.type, whenInWords(rule), rule.source.text});
    list.append(QJsonObject{{QStringLiteral("name"), rule.name},
                            {QStringLiteral("kind"), options::wordFor(rule.kind)},
                            {QStringLiteral("type"), rule.type},
                            {QStringLiteral("jurisdiction"), rule.jurisdiction},
                            {QStringLiteral("when"), whenInWords(rule)},
                            {QStringLiteral("source"), rule.source.text}});
  }
  QJsonArray offered;
  for (const rules::Set& set : rules::sets()) {
    offered.append(QJsonObject{{QStringLiteral("name"), set.name}, {QStringLiteral("title"), set.title}});
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.rules/1")},
                        {QStringLiteral("rules"), list},
                        {QStringLiteral("offered"), offered}});
    return Ending::done;
  }
  table.print(context.out);
  for (const rules::Set& set : rules::sets()) {
    context.out << "--adopt " << set.name << ": " << set.title << '\n';
  }
  return Ending::done;
}

} // namespace

Command rulesCommand() {
  return {"rules",
          "the rules for examination that count in this store, and sets of them to adopt",
          {{"--adopt", "SET", "take a set in: loler, dguv or asme"}},
          {},
          "hangbook rules --adopt loler",
          run};
}

} // namespace hangbook::terminal
