// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <utility>

#include <QJsonArray>

#include "actions/readings.h"
#include "options/weigh.h"
#include "quantity/text.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/people.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

/// One of the two options that say what a cell read.
struct ReadingOption {
  const char* name;
  const char* expected;
};
constexpr ReadingOption pickOption{"--pick",
                                   "a pick and what its cell read is expected, such as left=4.12kN"};
constexpr ReadingOption legOption{
    "--leg",
    "the point that a bridle's leg goes to and what the cell in it read is expected, such as L1=2.6kN"};

/// "left=4.12kN": name and force, apart at the last sign of equality.
std::pair<QString, double> readOne(const ReadingOption& option, const QString& text) {
  const qsizetype at = text.lastIndexOf(QLatin1Char('='));
  if (at < 1) {
    throw Error(Trouble::badInput,
                option.name + (" " + text.trimmed().toStdString()) + ": " + option.expected);
  }
  try {
    const Force force = parse<Force>(text.mid(at + 1).trimmed().toStdString(), "kN");
    return {text.left(at).trimmed(), inKilonewtons(force)};
  } catch (const Error& error) {
    throw Error(Trouble::badInput, error.what(), option.name + (" " + text.trimmed().toStdString()));
  }
}

/// "L1", or "left, L1" where legs of both picks go to it.
options::CellReading legReading(const QString& name, double kn) {
  const qsizetype comma = name.indexOf(QLatin1Char(','));
  const QString before = name.left(std::max<qsizetype>(comma, 0)).trimmed();
  const QStringList picks{QStringLiteral("left"), QStringLiteral("right"), QStringLiteral("front"),
                          QStringLiteral("rear"), QStringLiteral("single")};
  return picks.contains(before) ? options::CellReading{before, kn, name.mid(comma + 1).trimmed()}
                                : options::CellReading{{}, kn, name};
}

/// As typed, one after the other.
std::vector<options::CellReading> readReadings(const Given& given) {
  std::vector<options::CellReading> readings;
  const auto each = [&given](const ReadingOption& option, const auto& take) {
    for (const std::string& text : given.all(option.name)) {
      for (const QString& part : QString::fromStdString(text).split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        const auto [name, kn] = readOne(option, part);
        take(name, kn);
      }
    }
  };
  each(pickOption, [&readings](const QString& name, double kn) { readings.push_back({name, kn, {}}); });
  each(legOption, [&readings](const QString& name, double kn) { readings.push_back(legReading(name, kn)); });
  if (readings.empty()) {
    throw Error(Trouble::badInput, std::string(pickOption.name) + ": " + pickOption.expected);
  }
  return readings;
}

options::CellAt readCellAt(const Given& given) {
  const std::string word = given.option("--cell").value_or("hook");
  if (word == "hook") {
    return options::CellAt::hook;
  }
  if (word == "point") {
    return options::CellAt::point;
  }
  throw Error(Trouble::badInput, "--cell " + word +
                                     ": hook (the cell hangs between hoist and bar) or point (between point "
                                     "and hoist, of a bridle in its legs) is expected");
}

QString readInstrument(const Given& given) {
  const QString instrument = QString::fromStdString(given.option("--instrument").value_or("")).simplified();
  if (instrument.isEmpty()) {
    throw Error(Trouble::badInput, "--instrument: which load cells they were is expected");
  }
  return instrument;
}

options::Option chosenToday(const options::Snapshot& snapshot, const calendar::Hang& hang) {
  const Chosen chosen = chosenFor(snapshot, hang.name);
  if (chosen.choice == nullptr) {
    throw Error(Trouble::notPossible, "nothing is chosen for the hang " + hang.name.toStdString() +
                                          ": there is no computed load to compare with");
  }
  if (!chosen.now) {
    throw Error(Trouble::notPossible, "the chosen option of the hang " + hang.name.toStdString() +
                                          " cannot be computed any more: " + chosen.trouble.toStdString());
  }
  return *chosen.now;
}

std::vector<marks::LoadReading> factsOf(const options::Snapshot& snapshot, const options::Option& option,
                                        const options::Weighed& weighed, const Given& given,
                                        const QString& instrument) {
  std::vector<marks::LoadReading> facts;
  for (const options::WeighedPick& pick : weighed.picks) {
    marks::LoadReading fact;
    fact.tour = snapshot.show.tour;
    fact.show = snapshot.show.name;
    fact.hang = option.key.hang;
    fact.option = option.id;
    fact.pick = pick.name;
    fact.cellAt = options::wordFor(weighed.at);
    fact.legTo = pick.point;
    fact.reading = kilonewtons(pick.readKn);
    fact.computed = kilonewtons(pick.computedKn);
    fact.instrument = instrument;
    fact.remark = QString::fromStdString(given.option("--remark").value_or("")).simplified();
    facts.push_back(fact);
  }
  return facts;
}

QJsonObject json(const options::Weighed& weighed, const std::vector<marks::LoadReading>& facts) {
  QJsonArray picks;
  for (const options::WeighedPick& pick : weighed.picks) {
    QJsonObject cell{{QStringLiteral("name"), pick.name},
                     {QStringLiteral("read_kn"), pick.readKn},
                     {QStringLiteral("computed_kn"), pick.computedKn},
                     {QStringLiteral("difference_percent"), pick.percent},
                     {QStringLiteral("beyond"), pick.beyond}};
    if (!pick.point.isEmpty()) {
      cell.insert(QStringLiteral("leg_to"), pick.point);
    }
    picks.append(cell);
  }
  QJsonArray assumptions;
  for (const options::Assumption& each : weighed.assumptions) {
    QJsonArray would;
    for (const double kn : each.wouldKn) {
      would.append(jsonFigure(kn));
    }
    assumptions.append(QJsonObject{{QStringLiteral("what"), each.what},
                                   {QStringLiteral("would_read_kn"), would},
                                   {QStringLiteral("miss_kn"), jsonFigure(each.missKn)},
                                   {QStringLiteral("explains"), each.explains}});
  }
  const marks::LoadReading& first = facts.front();
  return {{QStringLiteral("format"), QStringLiteral("hangbook.weigh/1")},
          {QStringLiteral("show"), first.show},
          {QStringLiteral("hang"), first.hang},
          {QStringLiteral("option"), first.option},
          {QStringLiteral("lift"), first.lift.toString(QUuid::WithoutBraces)},
          {QStringLiteral("cell"), first.cellAt},
          {QStringLiteral("instrument"), first.instrument},
          {QStringLiteral("by"), first.by},
          {QStringLiteral("recorded_at"), first.recordedAt.toUTC().toString(Qt::ISODateWithMs)},
          {QStringLiteral("tolerance_percent"), weighed.tolerancePercent},
          {QStringLiteral("tolerance_source"), weighed.toleranceSource},
          {QStringLiteral("stop"), weighed.beyond},
          {QStringLiteral("picks"), picks},
          {QStringLiteral("assumptions"), assumptions}};
}

void printPicks(const options::Weighed& weighed, std::ostream& out) {
  Table table({{QStringLiteral("pick")},
               {QStringLiteral("read kN"), Column::Kind::figure},
               {QStringLiteral("computed kN"), Column::Kind::figure},
               {QStringLiteral("difference %"), Column::Kind::figure},
               {QStringLiteral("")}});
  for (const options::WeighedPick& pick : weighed.picks) {
    table.add({options::wordsFor(pick), shown(pick.readKn, 3), shown(pick.computedKn, 3),
               shownAngle(pick.percent, 1),
               pick.beyond ? QStringLiteral("beyond %1 %").arg(weighed.tolerancePercent) : QString()});
  }
  table.print(out, QStringLiteral("  "));
}

void printAssumptions(const options::Weighed& weighed, std::ostream& out) {
  out << "\nWhat would explain it, each computed as the only thing that is not as it was taken to be, the\n"
         "best fit first. A checklist for looking and counting, not a finding:\n\n";
  std::vector<Column> columns{{QStringLiteral("to be checked"), Column::Kind::text}};
  for (const options::WeighedPick& pick : weighed.picks) {
    columns.push_back({pick.point.isEmpty() ? QStringLiteral("%1 would read kN").arg(pick.name)
                                            : QStringLiteral("%1, %2 kN").arg(pick.name, pick.point),
                       Column::Kind::figure});
  }
  columns.push_back({QStringLiteral("off by kN"), Column::Kind::figure});
  columns.push_back({QStringLiteral("explains")});
  Table table(columns);
  for (const options::Assumption& each : weighed.assumptions) {
    QStringList cells{each.what};
    for (const double kn : each.wouldKn) {
      cells << shown(kn, 3);
    }
    cells << shown(each.missKn, 3) << (each.explains ? QStringLiteral("yes") : QStringLiteral("not alone"));
    table.add(cells);
  }
  table.print(out, QStringLiteral("  "));
}

Ending run(const Given& given, Context& context) {
  const std::vector<options::CellReading> readings = readReadings(given);
  const options::CellAt at = readCellAt(given);
  const QString instrument = readInstrument(given);
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const calendar::Hang& hang = findHang(show, QString::fromStdString(*given.option("--hang")));
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const options::Option option = chosenToday(snapshot, hang);
  const options::Weighed weighed = options::weigh(snapshot, option, at, readings);
  const std::vector<marks::LoadReading> facts = actions::recordReadings(
      *store, factsOf(snapshot, option, weighed, given, instrument), person(*store, context));
  if (context.json) {
    printJson(context, json(weighed, facts));
    return weighed.beyond ? Ending::failing : Ending::done;
  }
  const marks::LoadReading& first = facts.front();
  context.out << show.name << ", hang " << hang.name << ", option " << option.id.left(8) << ": cells at the "
              << first.cellAt << ", " << first.instrument << ", read by " << first.by << ", recorded "
              << first.recordedAt.toUTC().toString(Qt::ISODate) << '\n';
  printPicks(weighed, context.out);
  if (weighed.beyond) {
    context.out << "\nSTOP, HOLD, COUNT AND INSPECT: a reading is more than "
                << QString::number(weighed.tolerancePercent) << " % from what was computed ("
                << weighed.toleranceSource << ").\n";
    printAssumptions(weighed, context.out);
  } else {
    context.out << "\nEvery reading is within " << QString::number(weighed.tolerancePercent)
                << " % of what was computed (" << weighed.toleranceSource
                << "). That shows no more than this: it does not\nreplace counting, looking and a competent "
                   "person's judgement.\n";
  }
  return weighed.beyond ? Ending::failing : Ending::done;
}

} // namespace

Command weighCommand() {
  return {
      "weigh",
      "compare what the load cells read after lifting with the chosen option, and record it",
      {showOption,
       {"--hang", "NAME", "the hang", true},
       {"--pick", "NAME=FORCE", "what the cell at one pick read, such as left=4.12kN; once for each pick",
        false, true},
       {"--leg", "POINT=FORCE",
        "with --cell point: what the cell at the top of a bridle's leg read, named by the point that it goes "
        "to "
        "(\"left, L1\" where legs of both picks go there); once for each leg",
        false, true},
       {"--instrument", "TEXT", "which load cells", true},
       {"--cell", "WORD",
        "where they hang: hook (between hoist and bar, the usual) or point (above the hoist; of a bridle in "
        "its legs)"},
       {"--remark", "TEXT", "in words"},
       tourOption},
      {},
      "hangbook weigh --show Ostrel --hang left --pick left=4.12kN --pick right=4.2kN --instrument \"cells 3 "
      "and 4\" --by \"Orla Tench\"",
      run};
}

} // namespace hangbook::terminal
