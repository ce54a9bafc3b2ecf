// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/choose.h"
#include "actions/swap.h"
#include "build/flown.h"
#include "store/fleet_store.h"
#include "store/warehouse_store.h"
#include "terminal/answers.h"
#include "terminal/changes.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString massText(const fleet::Unit& unit) {
  return unit.weighed ? QStringLiteral("%1, weighed").arg(QString::number(inKilograms(*unit.weighed), 'f', 1))
                      : QStringLiteral("maker's");
}

QString examinedText(const std::optional<fleet::Examination>& newest) {
  return newest ? QStringLiteral("%1, %2").arg(newest->date.toString(Qt::ISODate), wordOf(newest->result))
                : QStringLiteral("none recorded");
}

Ending list(store::Store& store, const calendar::Show& show, const fleet::Unit& dead, Context& context) {
  QJsonArray units;
  bool any = false;
  Table table({{QStringLiteral("unit")},
               {QStringLiteral("place")},
               {QStringLiteral("mass [kg]"), Column::Kind::figure},
               {QStringLiteral("last examination")},
               {QStringLiteral("may go")},
               {QStringLiteral("because"), Column::Kind::text}});
  for (const actions::StandIn& each : actions::standInsFor(store, show, dead)) {
    any = any || each.usable.yes;
    const QString examined = examinedText(each.examined);
    table.add({each.unit.serial, each.unit.place, massText(each.unit), examined,
               !each.usable.yes            ? QStringLiteral("no")
               : each.usable.why.isEmpty() ? QStringLiteral("yes")
                                           : QStringLiteral("unproven"),
               each.usable.why});
    units.append(QJsonObject{{QStringLiteral("unit"), each.unit.serial},
                             {QStringLiteral("place"), each.unit.place},
                             {QStringLiteral("weighed_kg"), each.unit.weighed
                                                                ? QJsonValue(inKilograms(*each.unit.weighed))
                                                                : QJsonValue(QJsonValue::Null)},
                             {QStringLiteral("last_examination"), examined},
                             {QStringLiteral("may_go"), each.usable.yes},
                             {QStringLiteral("because"), each.usable.why}});
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.swap/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("unit"), dead.serial},
                        {QStringLiteral("type"), dead.type},
                        {QStringLiteral("stand_ins"), units}});
  } else if (table.empty()) {
    context.out << "No other " << dead.type << " is ready.\n";
  } else {
    context.out << "Ready units of the type " << dead.type << ", for " << dead.serial << ":\n";
    table.print(context.out);
  }
  return any ? Ending::done : Ending::failing;
}

void print(const actions::Swap& swap, bool kept, std::ostream& out) {
  out << swap.dead.serial << " (" << massText(swap.dead) << ") out, " << swap.stand.serial << " ("
      << massText(swap.stand) << ") in, both " << swap.dead.type << '\n';
  if (!swap.unproven.isEmpty()) {
    out << "UNPROVEN: " << swap.unproven << '\n';
  }
  if (swap.place) {
    out << swap.dead.serial << " is recorded in hang " << swap.place->hang << " as "
        << (swap.place->element == 0 ? QStringLiteral("its bar")
                                     : QStringLiteral("cabinet %1").arg(swap.place->element))
        << (kept ? "; " : "; once it is signed ") << swap.stand.serial << " stands there\n";
  }
  if (swap.hangs.empty()) {
    out << "No chosen hang's figures take a unit of this type.\n";
  }
  for (const actions::SwappedHang& hang : swap.hangs) {
    out << "\nHang " << hang.standing.hang << ", revision " << hang.standing.revision << ":\n";
    printChanges(build::changesBetween(hang.before, hang.after), out);
    if (hang.after.verdict >= options::Verdict::unproven) {
      out << wordFor(hang.after.verdict) << ": " << actions::becauseOf(hang.after) << '\n';
    }
    if (hang.after.setting && hang.after.setting->mark) {
      out << "The mark stays " << *hang.after.setting->mark << ".\n";
    }
  }
  out << '\n'
      << (kept ? "Swapped; the dead one is quarantined. Its hangs are chosen anew: print their sheets again, "
                 "and "
                 "sign the pins again.\n"
               : "Nothing was changed. Once it is so: the same with --sign, --reason and --by.\n");
}

QJsonObject json(const actions::Swap& swap, const QString& show, bool kept) {
  QJsonArray hangs;
  for (const actions::SwappedHang& hang : swap.hangs) {
    hangs.append(QJsonObject{
        {QStringLiteral("hang"), hang.standing.hang},
        {QStringLiteral("signed_revision"), hang.standing.revision},
        {QStringLiteral("verdict"), wordFor(hang.after.verdict)},
        {QStringLiteral("mark"), hang.after.setting && hang.after.setting->mark
                                     ? QJsonValue(*hang.after.setting->mark)
                                     : QJsonValue(QJsonValue::Null)},
        {QStringLiteral("mass_before_kg"), hang.before.massKg},
        {QStringLiteral("mass_kg"), hang.after.massKg},
        {QStringLiteral("changes"), changesJson(build::changesBetween(hang.before, hang.after))}});
  }
  return {
      {QStringLiteral("format"), QStringLiteral("hangbook.swap/1")},
      {QStringLiteral("show"), show},
      {QStringLiteral("unit"), swap.dead.serial},
      {QStringLiteral("for"), swap.stand.serial},
      {QStringLiteral("unproven"), swap.unproven},
      {QStringLiteral("hang"), swap.place ? QJsonValue(swap.place->hang) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("place"), swap.place ? QJsonValue(swap.place->element) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("hangs"), hangs},
      {QStringLiteral("kept"), kept}};
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const QString serial = QString::fromStdString(*given.option("--unit"));
  const auto dead = store::loadUnit(*store, serial);
  if (!dead) {
    throw Error(Trouble::badInput, "there is no unit \"" + serial.toStdString() + "\"", "--unit");
  }
  if (!given.has("--for")) {
    return list(*store, show, *dead, context);
  }
  const actions::SwapWish wish{show.tour, show.name, dead->serial,
                               QString::fromStdString(*given.option("--for")), today(context)};
  const bool sign = given.has("--sign");
  const actions::Swap swap =
      sign ? actions::swapUnit(*store, wish,
                               QString::fromStdString(given.option("--reason").value_or("")).simplified(),
                               namedPerson(*store, context, "to sign a swap"))
           : actions::trySwap(*store, wish);
  if (context.json) {
    printJson(context, json(swap, show.name, sign));
  } else {
    print(swap, sign, context.out);
  }
  const bool doubt =
      !swap.unproven.isEmpty() || std::ranges::any_of(swap.hangs, [](const actions::SwappedHang& hang) {
        return hang.after.verdict >= options::Verdict::unproven;
      });
  return doubt ? Ending::failing : Ending::done;
}

} // namespace

Command swapCommand() {
  return {"swap",
          "a unit that is dead at load-in: which may stand in for it, what that changes, and sign it",
          {{"--show", "NAME", "the show", true},
           tourOption,
           {"--unit", "SERIAL", "the dead one", true},
           {"--for", "SERIAL", "what takes its place; left out: list what may"},
           {"--sign", "", "do it: quarantine the one, move the other in, choose its hangs anew"},
           {"--reason", "TEXT", "what is wrong with it"}},
          {},
          "hangbook swap --show Ostrel --unit MB008",
          run};
}

} // namespace hangbook::terminal
