// SPDX-License-Identifier: GPL-3.0-or-later
#include <charconv>
#include <cmath>

#include "actions/facts.h"
#include "marks/observed.h"
#include "quantity/text.h"
#include "store/mark_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/people.h"
#include "terminal/spans.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

int readMark(const std::string& text, std::optional<int> links) {
  int mark = 0;
  const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), mark);
  if (trouble != std::errc() || end != text.data() + text.size() || mark < 1) {
    throw Error(Trouble::badInput, "--mark " + text + ": a whole number of links from 1 is expected");
  }
  if (links && mark > *links) {
    throw Error(Trouble::badInput,
                "--mark " + text + ": this type of chain has " + std::to_string(*links) + " links");
  }
  return mark;
}

std::optional<Angle> readMeasured(const Given& given) {
  const auto text = given.option("--measured");
  if (!text) {
    return std::nullopt;
  }
  try {
    const Angle angle = parse<Angle>(*text, "°");
    if (std::abs(inDegrees(angle)) <= 180.0) {
      return angle;
    }
  } catch (const Error& error) {
    throw Error(Trouble::badInput, error.what(), "--measured");
  }
  throw Error(Trouble::badInput, "--measured " + *text + ": an angle within 180° either way is expected");
}

QDate readDate(const Given& given, const QDate& today) {
  const auto text = given.option("--date");
  const QDate date = text ? readDay("--date", *text) : today;
  if (date > today) {
    throw Error(Trouble::badInput,
                "--date " + text.value_or("") + ": a mark is recorded when it was used, not before");
  }
  return date;
}

QString placeOf(const venue::Venue& venue) {
  return venue.town.isEmpty() ? venue.name : venue.name + QStringLiteral(", ") + venue.town;
}

/// A serial of ours that is no chain of this type would put the record under the wrong chain. One that is not
/// in the fleet may be a hired chain's.
void checkSerial(const options::Snapshot& snapshot, const marks::MarkUsed& used, std::ostream& err) {
  if (used.chainSerial.isEmpty()) {
    return;
  }
  for (const fleet::Unit& unit : snapshot.units) {
    if (unit.serial == used.chainSerial) {
      if (unit.kind != fleet::UnitKind::chain || unit.type != used.chain) {
        throw Error(Trouble::badInput, "--chain-serial " + used.chainSerial.toStdString() + " is a " +
                                           unit.type.toStdString() + ", not a chain of the type " +
                                           used.chain.toStdString());
      }
      return;
    }
  }
  err << "hangbook: the fleet has no unit " << used.chainSerial << "; recorded as given\n";
}

marks::MarkUsed fromChosen(const options::Snapshot& snapshot, const calendar::Hang& hang, const Given& given,
                           const QDate& today) {
  const Chosen chosen = chosenFor(snapshot, hang.name);
  if (chosen.choice == nullptr) {
    throw Error(Trouble::notPossible,
                "nothing is chosen for the hang " + hang.name.toStdString() +
                    ": choose its option first, so that the mark is kept for the right stack");
  }
  const options::OptionKey& key = chosen.choice->key;
  const auto* table = catalogue::find(snapshot.catalogue.tables, key.table);
  if (table == nullptr || table->chain.isEmpty() || !chosen.choice->setting.mark) {
    throw Error(Trouble::notPossible,
                "the chosen option of the hang " + hang.name.toStdString() + " has no chain");
  }
  const auto* chain = catalogue::find(snapshot.catalogue.chains, table->chain);
  marks::MarkUsed used;
  used.stack = key.stack;
  used.bar = key.bar;
  used.chain = table->chain;
  used.chainSerial = QString::fromStdString(given.option("--chain-serial").value_or("")).simplified();
  used.tilt = degrees(chosen.choice->setting.tiltDeg);
  for (const double hole : chosen.choice->setting.holesDeg) {
    used.holes.push_back(degrees(hole));
  }
  used.mark = readMark(*given.option("--mark"), chain != nullptr ? chain->links : std::nullopt);
  used.measured = readMeasured(given);
  used.tour = snapshot.show.tour;
  used.show = snapshot.show.name;
  used.hang = hang.name;
  used.place = placeOf(snapshot.venue);
  used.weather = QString::fromStdString(given.option("--weather").value_or("")).simplified();
  used.date = readDate(given, today);
  return used;
}

/// Warns where the record just made does not fit its geometry by what this chain's other records say.
void warnOfMisfit(store::Store& store, const options::Snapshot& snapshot, const marks::MarkUsed& used,
                  std::ostream& err) {
  if (used.chainSerial.isEmpty() || !used.measured) {
    return;
  }
  std::vector<marks::MarkUsed> same = store::recallMarksOf(store, used.chain, used.chainSerial);
  for (const marks::ChainBook& book : marks::chainBooks(snapshot.catalogue, same)) {
    for (std::size_t i = 0; book.learned && i < book.records.size(); ++i) {
      const marks::Fit& fit = book.learned->fits[i];
      if (book.records[i].id == used.id && !fit.fits) {
        err << "hangbook: this record does not fit its geometry: "
            << (fit.slips.empty() ? std::string("no single slip explains it") : fit.slips.front()) << '\n';
      }
    }
    if (book.learned && book.learned->advice == marks::Advice::quarantine) {
      err << "hangbook: quarantine " << used.chainSerial
          << ": its records say that it is near its discard figure\n";
    }
  }
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const calendar::Hang& hang = findHang(show, QString::fromStdString(*given.option("--hang")));
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  marks::MarkUsed used = fromChosen(snapshot, hang, given, today(context));
  checkSerial(snapshot, used, context.err);
  used.by = person(*store, context);
  used = actions::recordMark(*store, used);
  warnOfMisfit(*store, snapshot, used, context.err);
  const auto computed = chosenFor(snapshot, hang.name).choice->setting.mark;
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.mark-recorded/1")},
                        {QStringLiteral("entry"), used.id.toString(QUuid::WithoutBraces)},
                        {QStringLiteral("show"), used.show},
                        {QStringLiteral("hang"), used.hang},
                        {QStringLiteral("mark"), used.mark},
                        {QStringLiteral("computed_mark"), *computed},
                        {QStringLiteral("date"), used.date.toString(Qt::ISODate)},
                        {QStringLiteral("by"), used.by}});
  } else {
    context.out << "Recorded: " << used.show << ", " << used.hang << ", mark " << QString::number(used.mark)
                << (used.measured ? QStringLiteral(" at %1°").arg(shownAngle(inDegrees(*used.measured), 2))
                                  : QString())
                << ", " << used.date.toString(Qt::ISODate) << ", by " << used.by << '\n';
    if (*computed != used.mark) {
      context.out << "The chosen option has mark " << QString::number(*computed)
                  << ": aim, loads and cover of it hold for that mark only.\n";
    }
  }
  return Ending::done;
}

} // namespace

Command markRecordCommand() {
  return {"mark record",
          "record the mark that was really used, for the stack that is chosen",
          {showOption,
           {"--hang", "NAME", "the hang", true},
           {"--mark", "N", "the link, counted from the bar", true},
           {"--measured", "ANGLE", "angle of the held cabinet's joint, as measured"},
           {"--chain-serial", "SERIAL", "which chain it was"},
           {"--weather", "TEXT", "in words"},
           {"--date", "DATE", "when it was used; today where left out"},
           tourOption},
          {},
          "hangbook mark record --show Ostrel --hang left --mark 37 --measured -7.5 --by \"Orla Tench\"",
          run};
}

} // namespace hangbook::terminal
