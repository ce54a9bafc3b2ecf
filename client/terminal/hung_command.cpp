// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "actions/hung.h"
#include "options/hung_places.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

int firstPlace(const Given& given) {
  const QString text = given.has("--from") ? textOf(given, "--from") : QStringLiteral("1");
  bool isNumber = false;
  const int place = text.toInt(&isNumber);
  if (!isNumber || place < 1) {
    throw Error(Trouble::badInput,
                "--from " + text.toStdString() + ": a cabinet is expected, counted from 1 at the bar");
  }
  return place;
}

/// What stands, with what was said put over it.
actions::HungFor wantedOf(actions::HungFor hang, const Given& given) {
  if (given.has("--clear")) {
    hang.serials.clear();
  }
  if (given.has("--bar")) {
    hang.serials[0] = textOf(given, "--bar");
  }
  int place = firstPlace(given);
  for (const std::string& serial : given.all("--unit")) {
    hang.serials[place++] = QString::fromStdString(serial).trimmed();
  }
  return hang;
}

QJsonObject inJson(const QString& name, const options::HungHang& hang) {
  const QJsonValue none(QJsonValue::Null);
  QJsonArray places;
  for (const options::HungPlace& each : hang.places) {
    places.append(
        QJsonObject{{QStringLiteral("place"), each.element},
                    {QStringLiteral("type"), each.type.isEmpty() ? none : QJsonValue(each.type)},
                    {QStringLiteral("unit"), each.serial.isEmpty() ? none : QJsonValue(each.serial)},
                    {QStringLiteral("mass_kg"), jsonFigure(each.massKg)},
                    {QStringLiteral("mass_from"), each.basis.isEmpty() ? none : QJsonValue(each.basis)},
                    {QStringLiteral("trouble"), each.trouble.isEmpty() ? none : QJsonValue(each.trouble)}});
  }
  return {{QStringLiteral("hang"), name},
          {QStringLiteral("places"), places},
          {QStringLiteral("recorded"), hang.recorded},
          {QStringLiteral("mass_kg"), jsonFigure(hang.massKg)},
          {QStringLiteral("counted_kg"), jsonFigure(hang.countedKg)}};
}

void print(const QString& name, const options::HungHang& hang, Table& table) {
  for (const options::HungPlace& each : hang.places) {
    table.add({name, options::placeOf(each), each.type,
               each.serial.isEmpty() ? QStringLiteral("not recorded by serial") : each.serial,
               each.serial.isEmpty() ? QString() : shown(each.massKg, 1), each.basis, each.trouble});
  }
  table.add({name,
             QStringLiteral("all"),
             {},
             {},
             shown(hang.massKg, 1),
             QStringLiteral("the loads count %1 kg").arg(shown(hang.countedKg, 1)),
             {}});
}

/// Whether every place of every chosen hang is recorded by a unit that may hang there.
Ending show(store::Store& store, const calendar::Show& show, const QString& only, Context& context) {
  const options::Snapshot snapshot = store::loadSnapshot(store, show.tour, show.name, today(context));
  const auto elsewhere = actions::hungElsewhere(store, show);
  QJsonArray hangs;
  bool whole = true;
  Table table({{QStringLiteral("hang")},
               {QStringLiteral("place"), Column::Kind::figure},
               {QStringLiteral("type")},
               {QStringLiteral("unit")},
               {QStringLiteral("mass [kg]"), Column::Kind::figure},
               {QStringLiteral("from"), Column::Kind::text},
               {QStringLiteral("trouble"), Column::Kind::text}});
  for (const calendar::Hang& each : show.hangs) {
    const Chosen chosen = chosenFor(snapshot, each.name);
    if (chosen.choice == nullptr || (!only.isEmpty() && each.name != only)) {
      continue;
    }
    const options::HungHang hang =
        options::hungOf(snapshot, chosen.choice->key,
                        actions::hungNow(store, {show.tour, show.name, each.name}).serials, elsewhere);
    whole = whole && std::ranges::all_of(hang.places, [](const options::HungPlace& place) {
              return !place.serial.isEmpty() && place.trouble.isEmpty();
            });
    hangs.append(inJson(each.name, hang));
    print(each.name, hang, table);
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.hung/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("hangs"), hangs}});
  } else if (table.empty()) {
    context.out << "Nothing is chosen, so nobody can say what hangs where.\n";
  } else {
    table.print(context.out);
  }
  return whole ? Ending::done : Ending::failing;
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show of = findShow(*store, given);
  const QString only = given.has("--hang") ? findHang(of, textOf(given, "--hang")).name : QString();
  const bool record = given.has("--unit") || given.has("--bar") || given.has("--clear");
  if (record && only.isEmpty()) {
    throw Error(Trouble::badInput, "--hang NAME is expected: in which hang they hang");
  }
  if (!record && given.has("--from")) {
    throw Error(Trouble::badInput, "--from needs --unit SERIAL");
  }
  if (!record) {
    return show(*store, of, only, context);
  }
  const actions::HungRecorded made = actions::run(*store, [&] {
    return actions::recordHung(*store, wantedOf(actions::hungNow(*store, {of.tour, of.name, only}), given),
                               person(*store, context));
  });
  for (const QString& each : made.unproven) {
    context.err << "hangbook: " << each << '\n';
  }
  show(*store, of, only, context);
  return made.unproven.isEmpty() ? Ending::done : Ending::failing;
}

} // namespace

Command hungCommand() {
  return {"hung",
          "which units hang where, by serial, with what each weighs; record them from the bar down",
          {showOption,
           tourOption,
           {"--hang", "NAME", "one hang"},
           {"--bar", "SERIAL", "record its bar"},
           {"--unit", "SERIAL", "record cabinets, one after another from the bar down", false, true},
           {"--from", "CABINET", "the first of them, where it is not the one below the bar"},
           {"--clear", "", "take back what is recorded of the hang first"}},
          {},
          "hangbook hung --show Ostrel --hang left --bar MR02 --unit MB001 --unit MB002",
          run};
}

} // namespace hangbook::terminal
