// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/choose.h"
#include "actions/facts.h"
#include "options/freeze.h"
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

Ending run(const Given& given, Context& context) {
  const QString reason = QString::fromStdString(given.option("--reason").value_or("")).simplified();
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString hang = findHang(show, QString::fromStdString(*given.option("--hang"))).name;
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const QString idStart = QString::fromStdString(*given.option("--option"));
  const options::ShowOptions all = optionsBeginning(snapshot, idStart, hang);
  const options::Option& option = findOption(all, idStart);
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
  return {"choose",
          "choose one option for a hang: it is frozen with all that it was computed from",
          {showOption,
           {"--hang", "NAME", "the hang", true},
           {"--option", "ID", "the option, by the beginning of its identifier", true},
           {"--reason", "TEXT", "why; needed where a rule is unproven"},
           tourOption},
          {},
          "hangbook choose --show \"Pollan Cross\" --hang left --option 1f4e92ab --by \"Casimir Wold\"",
          run};
}

} // namespace hangbook::terminal
