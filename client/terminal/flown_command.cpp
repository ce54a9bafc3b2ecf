// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/flown.h"
#include "actions/gates.h"
#include "build/flown.h"
#include "build/gates.h"
#include "build/inputs.h"
#include "quantity/text.h"
#include "store/cabling_store.h"
#include "store/choice_store.h"
#include "store/gate_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/build_json.h"
#include "terminal/changes.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

/// `unit` is that of a bare number; empty: one must be given.
template <class Quantity>
std::optional<Quantity> quantityFrom(const Given& given, const char* word, const char* unit) {
  const auto text = given.option(word);
  try {
    return text ? std::optional(parse<Quantity>(*text, unit)) : std::nullopt;
  } catch (const Error& error) {
    throw Error(Trouble::badInput, error.what(), word);
  }
}

build::FlownWish wishFrom(const Given& given, store::Store& store, const options::Choice& standing) {
  build::FlownWish wish;
  if (given.has("--back")) {
    for (const options::Choice& each :
         store::loadChoiceHistory(store, standing.tour, standing.show, standing.hang)) {
      if (standing.movedFrom != 0 && each.revision == standing.movedFrom) {
        return build::wishBack(standing, each);
      }
    }
    throw Error(Trouble::notPossible,
                "hang " + standing.hang.toStdString() +
                    " was not moved since it was built: there is nothing to go back to");
  }
  if (const auto tilt = quantityFrom<Angle>(given, "--tilt", "°")) {
    wish.tiltDeg = inDegrees(*tilt);
  }
  if (const auto pan = quantityFrom<Angle>(given, "--pan", "°")) {
    wish.panDeg = inDegrees(*pan);
  }
  if (const auto trim = quantityFrom<Length>(given, "--trim", "m")) {
    wish.trimM = inMetres(*trim);
  }
  if (const auto wind = quantityFrom<Speed>(given, "--wind", "")) {
    wish.windMps = inMetresPerSecond(*wind);
  }
  return wish;
}

QJsonArray historyJson(const std::vector<options::Choice>& history) {
  QJsonArray list;
  for (const options::Choice& each : history) {
    list.append(QJsonObject{{QStringLiteral("revision"), each.revision},
                            {QStringLiteral("moved_from"),
                             each.movedFrom != 0 ? QJsonValue(each.movedFrom) : QJsonValue(QJsonValue::Null)},
                            {QStringLiteral("by"), each.by},
                            {QStringLiteral("at"), each.at.toUTC().toString(Qt::ISODate)},
                            {QStringLiteral("reason"), each.reason},
                            {QStringLiteral("tilt_deg"), each.setting.tiltDeg},
                            {QStringLiteral("pan_deg"), each.setting.panDeg},
                            {QStringLiteral("trim_m"), each.setting.trimM}});
  }
  return list;
}

void print(const std::vector<options::Choice>& history, std::ostream& out) {
  Table table({{QStringLiteral("signed")},
               {QStringLiteral("from")},
               {QStringLiteral("tilt [°]"), Column::Kind::figure},
               {QStringLiteral("trim [m]"), Column::Kind::figure},
               {QStringLiteral("by")},
               {QStringLiteral("when")},
               {QStringLiteral("because"), Column::Kind::text}});
  for (const options::Choice& each : history) {
    table.add({QStringLiteral("r%1").arg(each.revision),
               each.movedFrom != 0 ? QStringLiteral("r%1").arg(each.movedFrom) : QStringLiteral("chosen"),
               shownAngle(each.setting.tiltDeg), shown(each.setting.trimM, 2), each.by,
               each.at.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")), each.reason});
  }
  out << '\n';
  table.print(out);
}

/// What nobody signed yet of the hang's build, or since it was moved.
QStringList openGates(store::Store& store, const options::Snapshot& snapshot,
                      const options::Choice& standing) {
  const build::Plan plan = build::planBuild(build::jobOf(
      snapshot, toBuild(snapshot).options, store::loadCabling(store, standing.tour, standing.show)));
  return actions::openAmong(actions::gatesAsTheyStand(
      store::loadGatesOf(store, standing.tour, standing.show), standing.hang, standing.option,
      {standing.at, standing.builtAt}, build::gatesOf(plan, standing.hang)));
}

void print(const build::Flown& flown, const options::Choice& standing, const QStringList& open,
           const std::optional<options::Choice>& kept, std::ostream& out) {
  out << standing.show << ", hang " << standing.hang << ": against the setting signed by " << standing.by
      << " (revision " << standing.revision << ")\n";
  if (!open.isEmpty()) {
    out << "NOT KNOWN TO BE UP: hold points that nobody signed"
        << (standing.movedFrom != 0 ? " since it was last moved: " : ": ") << open.join(QStringLiteral(", "))
        << '\n';
  }
  out << '\n';
  printChanges(flown.changes, out);
  out << "\nIn this order:\n";
  for (qsizetype i = 0; i < flown.steps.size(); ++i) {
    out << i + 1 << ". " << flown.steps[i] << '\n';
  }
  for (const options::Finding& each : flown.after.findings) {
    if (each.applies && each.verdict >= options::Verdict::unproven) {
      out << wordFor(each.verdict) << ": " << each.rule << ": " << each.text << '\n';
    }
  }
  out << '\n'
      << (kept
              ? QStringLiteral("Kept as revision %1, signed by %2; sheets of earlier revisions are outdated.")
                    .arg(kept->revision)
                    .arg(kept->by)
          : flown.after.verdict == options::Verdict::fails
              ? QStringLiteral("It fails, so it cannot be signed.")
              : QStringLiteral("Nothing was kept. Once it is so: the same with --sign, --reason and --by."))
      << '\n';
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString hang = findHang(show, QString::fromStdString(*given.option("--hang"))).name;
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const Chosen chosen = chosenFor(snapshot, hang);
  if (chosen.choice == nullptr) {
    throw Error(Trouble::notPossible, "nothing is chosen for the hang " + hang.toStdString());
  }
  const options::Choice& standing = *chosen.choice;
  const build::Flown flown = build::flownTo(snapshot, standing, wishFrom(given, *store, standing));
  const QStringList open = openGates(*store, snapshot, standing);
  std::optional<options::Choice> kept;
  if (given.has("--sign")) {
    kept = actions::keepMoved(*store,
                              {flown.snapshot, standing, flown.after,
                               QString::fromStdString(given.option("--reason").value_or("")).simplified()},
                              namedPerson(*store, context, "to sign a setting"));
  }
  const auto history = store::loadChoiceHistory(*store, show.tour, show.name, hang);
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.flown/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("hang"), hang},
                        {QStringLiteral("signed_revision"), standing.revision},
                        {QStringLiteral("verdict"), wordFor(flown.after.verdict)},
                        {QStringLiteral("open_hold_points"), QJsonArray::fromStringList(open)},
                        {QStringLiteral("moves"), flown.moves},
                        {QStringLiteral("trim_m"), flown.after.setting->trimM},
                        {QStringLiteral("changes"), changesJson(flown.changes)},
                        {QStringLiteral("steps"), QJsonArray::fromStringList(flown.steps)},
                        {QStringLiteral("history"), historyJson(history)},
                        {QStringLiteral("revision"),
                         kept ? QJsonValue(kept->revision) : QJsonValue(QJsonValue::Null)}});
  } else {
    print(flown, standing, open, kept, context.out);
    print(history, context.out);
  }
  return flown.after.verdict >= options::Verdict::unproven ? Ending::failing : Ending::done;
}

} // namespace

Command flownCommand() {
  return {
      "flown",
      "a hang that is up, at another aim or in another wind: what changes, in which order, and sign it",
      {showOption,
       {"--hang", "NAME", "the hang", true},
       tourOption,
       {"--tilt", "ANGLE", "tilt of the bar; the hooks stay where they are unless --trim is given"},
       {"--pan", "ANGLE", "to the left, seen from above, is positive"},
       {"--trim", "LENGTH", "lowest edge above the datum"},
       {"--wind", "SPEED", "the most that the show's hangs are to stand in, with its unit; outdoors only"},
       {"--back", "", "instead: back to the setting that it was moved from"},
       {"--sign", "", "keep it as the new signed setting; takes --reason and a name"},
       {"--reason", "TEXT", "why it was moved"}},
      {},
      "hangbook flown --show Ostrel --hang left --tilt -2",
      run};
}

} // namespace hangbook::terminal
