// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "build/inputs.h"
#include "build/plan.h"
#include "store/cabling_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/build_json.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

/// A step's height change: up positive, with its sign.
QString movement(std::optional<double> metres) {
  return !metres ? QString() : (*metres >= 0 ? QStringLiteral("+") : QString()) + shown(metres, 2);
}

QString heightOf(std::optional<double> metres) {
  return metres ? shown(metres, 2) : QString();
}

void printSteps(const std::vector<build::Step>& steps, const QString& hang, std::ostream& out) {
  Table table({{QStringLiteral("no."), Column::Kind::figure},
               {QStringLiteral("hang")},
               {QStringLiteral("step"), Column::Kind::text},
               {QStringLiteral("move m"), Column::Kind::figure},
               {QStringLiteral("hooks m"), Column::Kind::figure},
               {QStringLiteral("lowest m"), Column::Kind::figure},
               {QStringLiteral("people"), Column::Kind::figure},
               {QStringLiteral("sign"), Column::Kind::words}});
  for (const build::Step& step : steps) {
    if (!hang.isEmpty() && step.hang != hang) {
      continue;
    }
    QStringList note;
    for (const QString& what : step.missing) {
      note << QStringLiteral("UNPROVEN: not known: ") + what;
    }
    table.add({QString::number(step.number), step.hang, step.what, movement(step.move), heightOf(step.hooks),
               heightOf(step.lowest), step.people > 1 ? QString::number(step.people) : QString(), step.gate},
              note);
  }
  table.print(out);
}

void printForPeople(const build::Plan& plan, const ToBuild& of, const QString& hang, bool loadOut,
                    std::ostream& out) {
  for (const QString& why : of.notCleared) {
    out << "NOT CLEARED TO LIFT: " << why << '\n';
  }
  for (const QString& why : plan.impossible) {
    out << "NOT POSSIBLE: " << why << '\n';
  }
  for (const QString& what : plan.missing) {
    out << "UNPROVEN: not known: " << what << '\n';
  }
  out << "Left and right as seen from the stage, looking at the audience. Heights above the floor under the "
         "hang; hooks are at the picks, lowest is all that hangs, however it swings.\n\n";
  printSteps(loadOut ? plan.loadOut : plan.steps, hang, out);
  out << '\n';
  for (const QString& caution : plan.cautions) {
    out << "- " << caution << '\n';
  }
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString hang =
      given.has("--hang") ? findHang(show, QString::fromStdString(*given.option("--hang"))).name : QString();
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const ToBuild of = toBuild(snapshot);
  if (of.options.empty()) {
    throw Error(Trouble::notPossible,
                of.notCleared.isEmpty() ? "nothing is chosen for the show " + show.name.toStdString() + " yet"
                                        : of.notCleared.front().toStdString());
  }
  const build::Plan plan =
      build::planBuild(build::jobOf(snapshot, of.options, store::loadCabling(*store, show.tour, show.name)));
  if (context.json) {
    printJson(context, buildJson(plan, of, hang));
  } else {
    printForPeople(plan, of, hang, given.has("--load-out"), context.out);
  }
  return plan.standing == build::Standing::planned && of.notCleared.isEmpty() ? Ending::done
                                                                              : Ending::failing;
}

} // namespace

Command buildCommand() {
  return {"build",
          "the steps in order, from the bar on its case to the hang at trim, and back onto the carts",
          {showOption,
           tourOption,
           {"--hang", "NAME", "only the steps of this hang"},
           {"--load-out", "", "the way down"}},
          {},
          "hangbook build --show Ostrel --hang left",
          run};
}

} // namespace hangbook::terminal
