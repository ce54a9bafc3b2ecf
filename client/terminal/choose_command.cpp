// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/choose.h"
#include "actions/facts.h"
#include "actions/likings.h"
#include "options/freeze.h"
#include "options/same_again.h"
#include "options/search.h"
#include "quantity/error.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/options_table.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using options::Verdict;

/// Computed outside, written inside one transaction: what it was computed from must still stand.
options::Choice write(store::Store& store, const options::Snapshot& snapshot, const options::Option& option,
                      const options::Choice& choice, const QString& by) {
  return actions::run(store, [&] {
    const options::Snapshot now =
        store::loadSnapshot(store, snapshot.tour.name, snapshot.show.name, snapshot.today);
    if (options::freeze(now, option).sha256 != choice.sha256) {
      throw Error(Trouble::notPossible,
                  "what this option was computed from was changed meanwhile; nothing was "
                  "chosen: look at the options again");
    }
    return actions::chooseOption(store, choice, by);
  });
}

void tell(const options::Choice& choice, Context& context) {
  const bool cleared = choice.verdict != Verdict::unproven;
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.choice/1")},
                        {QStringLiteral("show"), choice.show},
                        {QStringLiteral("hang"), choice.hang},
                        {QStringLiteral("chosen"), choice.option},
                        {QStringLiteral("verdict"), options::wordFor(choice.verdict)},
                        {QStringLiteral("cleared_to_lift"), cleared},
                        {QStringLiteral("reason"), choice.reason},
                        {QStringLiteral("by"), choice.by},
                        {QStringLiteral("revision"), choice.revision},
                        {QStringLiteral("sha256"), choice.sha256}});
    return;
  }
  context.out << choice.show << ", " << choice.hang << ": chosen " << choice.option << " ("
              << options::wordFor(choice.verdict) << "), " << shownStack(choice.key.stack) << " on "
              << shownBar(choice.key) << "\ntilt " << shownAngle(choice.setting.tiltDeg) << "°, trim "
              << shown(choice.setting.trimM, 2) << " m"
              << (choice.setting.mark ? QStringLiteral(", mark %1").arg(*choice.setting.mark) : QString())
              << "; by " << choice.by << ", frozen as " << choice.sha256.left(12) << '\n';
  if (!cleared) {
    context.out << "NOT CLEARED TO LIFT: a rule is unproven. Reason given: " << choice.reason << '\n';
  }
}

/// The option that hung at the show before this one, or the last time here, by today's rules.
options::Option sameAs(store::Store& store, const options::Snapshot& snapshot, const QString& hang,
                       const std::string& when, Context& context) {
  if (when != "yesterday" && when != "here") {
    throw Error(Trouble::badInput, "--same-as " + when + ": yesterday or here is expected");
  }
  const auto before = when == "yesterday"
                          ? actions::chosenYesterday(store, snapshot.tour.name, snapshot.show.name, hang)
                          : actions::chosenHereBefore(store, snapshot.tour.name, snapshot.show.name, hang);
  if (!before) {
    throw Error(Trouble::badInput, when == "yesterday"
                                       ? "nothing was chosen for this hang at an earlier show of the tour"
                                       : "nothing was chosen for this hang at an earlier show in this venue");
  }
  const auto found = options::sameAgain(snapshot, before->key);
  if (!found) {
    throw Error(Trouble::notPossible,
                "what hung at " + before->show.toStdString() + " (" +
                    shownStack(before->key.stack).toStdString() +
                    ") cannot hang here: no way of reaching this venue's points fits, or the "
                    "makers' data no longer have it");
  }
  if (!context.json) {
    context.out << "As at " << before->show << " on " << before->at.date().toString(Qt::ISODate) << " by "
                << before->by << ", then " << wordFor(before->verdict) << "; by today's rules here "
                << wordFor(found->verdict) << ".\n";
  }
  return *found;
}

Ending run(const Given& given, Context& context) {
  const QString reason = QString::fromStdString(given.option("--reason").value_or("")).simplified();
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString hang = findHang(show, QString::fromStdString(*given.option("--hang"))).name;
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const auto when = given.option("--same-as");
  if (when.has_value() == given.has("--option")) {
    throw Error(Trouble::badInput, "either --option ID or --same-as yesterday or here is expected");
  }
  const QString idStart = QString::fromStdString(given.option("--option").value_or(""));
  const options::Option option = when ? sameAs(*store, snapshot, hang, *when, context)
                                      : findOption(optionsBeginning(snapshot, idStart, hang), idStart);
  const options::Choice offered =
      actions::choiceOf(snapshot, option, reason); // refuses before asking for a name
  const QString by = offered.verdict == Verdict::unproven
                         ? namedPerson(*store, context, "to pencil in what is unproven")
                         : person(*store, context);
  tell(write(*store, snapshot, option, offered, by), context);
  return option.verdict == Verdict::unproven ? Ending::failing : Ending::done;
}

} // namespace

Command chooseCommand() {
  return {
      "choose",
      "choose one option for a hang: it is frozen with all that it was computed from",
      {showOption,
       {"--hang", "NAME", "the hang", true},
       {"--option", "ID", "the option, by the beginning of its identifier"},
       {"--same-as", "WHEN",
        "instead: yesterday (the show before this one on the tour) or here (the last time in this venue), by "
        "today's rules"},
       {"--reason", "TEXT", "why; needed where a rule is unproven"},
       tourOption},
      {},
      "hangbook choose --show \"Pollan Cross\" --hang left --option 1f4e92ab --by \"Casimir Wold\"",
      run};
}

} // namespace hangbook::terminal
