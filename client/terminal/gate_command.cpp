// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/gates.h"
#include "build/gates.h"
#include "build/inputs.h"
#include "store/cabling_store.h"
#include "store/gate_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/build_json.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString text(const Given& given, const std::string& word) {
  return QString::fromStdString(given.option(word).value_or("")).simplified();
}

QString wordOf(const marks::GateSigned& gate) {
  return gate.id.isNull() ? QStringLiteral("open")
         : gate.skipped   ? QStringLiteral("skipped")
                          : QStringLiteral("signed");
}

QJsonObject inJson(const marks::GateSigned& gate) {
  const QJsonValue none(QJsonValue::Null);
  return {{QStringLiteral("gate"), gate.gate},
          {QStringLiteral("standing"), wordOf(gate)},
          {QStringLiteral("by"), gate.id.isNull() ? none : QJsonValue(gate.by)},
          {QStringLiteral("at"),
           gate.id.isNull() ? none : QJsonValue(gate.recordedAt.toUTC().toString(Qt::ISODate))},
          {QStringLiteral("reason"), gate.reason.isEmpty() ? none : QJsonValue(gate.reason)}};
}

Ending run(const Given& given, Context& context) {
  if (!given.has("--gate") && (given.has("--skip"))) {
    throw Error(Trouble::badInput, "--skip needs --gate NAME");
  }
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString only =
      given.has("--hang") ? findHang(show, QString::fromStdString(*given.option("--hang"))).name : QString();
  if (given.has("--gate") && only.isEmpty()) {
    throw Error(Trouble::badInput, "--gate needs --hang NAME: each hang has its own hold points");
  }
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const ToBuild of = toBuild(snapshot);
  const build::Plan plan =
      build::planBuild(build::jobOf(snapshot, of.options, store::loadCabling(*store, show.tour, show.name)));
  if (given.has("--gate")) {
    const Chosen chosen = chosenFor(snapshot, only);
    if (chosen.choice == nullptr) {
      throw Error(Trouble::notPossible, "nothing is chosen for the hang " + only.toStdString());
    }
    marks::GateSigned gate;
    gate.tour = show.tour;
    gate.show = show.name;
    gate.hang = only;
    gate.option = chosen.choice->option;
    gate.gate = text(given, "--gate");
    gate.skipped = given.has("--skip");
    gate.reason = gate.skipped ? text(given, "--skip") : text(given, "--remark");
    gate.by = namedPerson(*store, context, "to sign a hold point");
    actions::signGate(*store, gate, build::gatesOf(plan, only), {chosen.choice->at, chosen.choice->builtAt});
  }
  const auto all = store::loadGatesOf(*store, show.tour, show.name);
  QJsonArray hangs;
  bool open = false;
  Table table({{QStringLiteral("hang")},
               {QStringLiteral("hold point")},
               {QStringLiteral("stands")},
               {QStringLiteral("by"), Column::Kind::text},
               {QStringLiteral("when")},
               {QStringLiteral("because"), Column::Kind::text}});
  for (const calendar::Hang& hang : show.hangs) {
    const Chosen chosen = chosenFor(snapshot, hang.name);
    if (chosen.choice == nullptr || (!only.isEmpty() && hang.name != only)) {
      continue;
    }
    QJsonArray gates;
    for (const marks::GateSigned& gate : actions::gatesAsTheyStand(
             all, hang.name, chosen.choice->option, {chosen.choice->at, chosen.choice->builtAt},
             build::gatesOf(plan, hang.name))) {
      gates.append(inJson(gate));
      open = open || gate.id.isNull();
      table.add({hang.name, gate.gate, wordOf(gate), gate.by,
                 gate.id.isNull()
                     ? QString()
                     : gate.recordedAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")),
                 gate.reason});
    }
    hangs.append(QJsonObject{{QStringLiteral("hang"), hang.name}, {QStringLiteral("gates"), gates}});
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.gates/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("hangs"), hangs}});
  } else {
    table.print(context.out);
  }
  // Asked how they stand, an open one is no pass; having signed one, that was what was asked.
  return open && !given.has("--gate") ? Ending::failing : Ending::done;
}

} // namespace

Command gateCommand() {
  return {
      "gate",
      "the hold points of a build: who signed which, and when; sign one, or skip it with a reason",
      {showOption,
       tourOption,
       {"--hang", "NAME", "one hang"},
       {"--gate", "NAME", "sign this one, such as \"pins 3\", chain, \"secondary steel\", \"final check\""},
       {"--skip", "REASON", "skip it, because"},
       {"--remark", "TEXT", "in words"}},
      {},
      "hangbook gate --show Ostrel --hang left --gate chain --by \"Orla Tench\"",
      run};
}

} // namespace hangbook::terminal
