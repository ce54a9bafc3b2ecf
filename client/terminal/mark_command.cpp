// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <set>

#include <QJsonArray>

#include "marks/observed.h"
#include "store/mark_store.h"
#include "store/snapshot_store.h"
#include "terminal/answers.h"
#include "terminal/chosen.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/options_table.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

std::optional<double> degreesOf(const std::optional<Angle>& angle) {
  return angle ? std::optional(inDegrees(*angle)) : std::nullopt;
}

/// The type of chain that the chosen option's stacking table names.
QString chainOf(const options::Snapshot& snapshot, const options::OptionKey& key) {
  const auto* table = catalogue::find(snapshot.catalogue.tables, key.table);
  return table != nullptr ? table->chain : QString();
}

/// Recorded for the same stack, bar, chain and aim. Aims are set on a grid: what differs by less than a
/// thousandth of a degree was typed in another way.
bool isFor(const marks::MarkUsed& used, const options::Choice& choice, const QString& chain) {
  return used.stack == choice.key.stack && used.bar == choice.key.bar && used.chain == chain && used.tilt &&
         std::abs(inDegrees(*used.tilt) - choice.setting.tiltDeg) < 0.001;
}

struct HangMark {
  QString hang;
  Chosen chosen;
  std::optional<int> mark;
  std::optional<double> angleDeg;
  std::vector<options::MarkAngle> neighbours;
  std::vector<marks::MarkUsed> recorded;
  QString chainSerial;                        ///< that was asked about
  std::optional<marks::Predicted> predicted;  ///< at the mark, by what that chain's records say
  marks::Advice advice = marks::Advice::none; ///< about that chain
};

/// What the records of one chain say of the angle at the mark that is chosen.
void predict(const options::Snapshot& snapshot, const std::vector<marks::MarkUsed>& used,
             const QString& serial, HangMark& found) {
  if (serial.isEmpty() || !found.mark || found.chosen.choice == nullptr) {
    return;
  }
  const options::OptionKey& key = found.chosen.choice->key;
  const QString chain = chainOf(snapshot, key);
  const auto figures = marks::chainFigures(snapshot.catalogue, chain);
  const auto triangle =
      marks::triangleOf(snapshot.catalogue, key.stack, key.bar, chain, found.chosen.choice->setting.holesDeg);
  if (!figures || !triangle) {
    return;
  }
  std::set<QUuid> corrected;
  for (const marks::MarkUsed& each : used) {
    corrected.insert(each.corrects);
  }
  std::vector<marks::MarkUsed> standing;
  std::copy_if(used.begin(), used.end(), std::back_inserter(standing), [&](const marks::MarkUsed& each) {
    return each.chainSerial == serial && each.chain == chain && !corrected.contains(each.id);
  });
  found.chainSerial = serial;
  for (const marks::ChainBook& book : marks::chainBooks(snapshot.catalogue, standing)) {
    if (book.learned) {
      found.predicted = marks::predict(*book.learned, *triangle, *found.mark, *figures);
      found.advice = book.learned->advice;
    }
  }
}

HangMark markOf(const options::Snapshot& snapshot, const QString& hang,
                const std::vector<marks::MarkUsed>& used) {
  HangMark found{hang, chosenFor(snapshot, hang), {}, {}, {}, {}, {}, {}};
  if (found.chosen.choice == nullptr) {
    return found;
  }
  const options::Choice& choice = *found.chosen.choice;
  found.mark = choice.setting.mark;
  if (found.chosen.now && found.mark) {
    for (const options::MarkAngle& each : found.chosen.now->marks) {
      if (each.mark == *found.mark) {
        found.angleDeg = each.angleDeg;
      } else {
        found.neighbours.push_back(each);
      }
    }
  }
  const QString chain = chainOf(snapshot, choice.key);
  std::copy_if(used.begin(), used.end(), std::back_inserter(found.recorded),
               [&](const marks::MarkUsed& each) { return isFor(each, choice, chain); });
  std::stable_sort(found.recorded.begin(), found.recorded.end(), [](const auto& one, const auto& other) {
    return one.date != other.date ? one.date > other.date : one.recordedAt > other.recordedAt;
  });
  return found;
}

QJsonObject inJson(const HangMark& found) {
  QJsonArray neighbours;
  for (const options::MarkAngle& each : found.neighbours) {
    neighbours.append(QJsonObject{{QStringLiteral("mark"), each.mark},
                                  {QStringLiteral("angle_deg"), jsonFigure(each.angleDeg)}});
  }
  QJsonArray recorded;
  for (const marks::MarkUsed& each : found.recorded) {
    recorded.append(QJsonObject{{QStringLiteral("mark"), each.mark},
                                {QStringLiteral("angle_deg"), jsonFigure(degreesOf(each.measured))},
                                {QStringLiteral("place"), each.place},
                                {QStringLiteral("date"), each.date.toString(Qt::ISODate)},
                                {QStringLiteral("by"), each.by},
                                {QStringLiteral("chain_serial"), each.chainSerial},
                                {QStringLiteral("weather"), each.weather}});
  }
  const auto verdict = found.chosen.verdict();
  return {{QStringLiteral("hang"), found.hang},
          {QStringLiteral("mark"), found.mark ? QJsonValue(*found.mark) : QJsonValue(QJsonValue::Null)},
          {QStringLiteral("angle_deg"), jsonFigure(found.angleDeg)},
          {QStringLiteral("neighbours"), neighbours},
          {QStringLiteral("recorded"), recorded},
          {QStringLiteral("learned_deg"),
           jsonFigure(found.predicted ? found.predicted->learnedDeg : std::nullopt)},
          {QStringLiteral("learned_doubt_deg"), jsonFigure(found.predicted && found.predicted->learnedDeg
                                                               ? std::optional(found.predicted->doubtDeg)
                                                               : std::nullopt)},
          {QStringLiteral("verdict"),
           verdict ? QJsonValue(options::wordFor(*verdict)) : QJsonValue(QJsonValue::Null)}};
}

void printForPeople(const HangMark& found, std::ostream& out) {
  out << "Hang " << found.hang << ": ";
  if (found.chosen.choice == nullptr) {
    out << "nothing is chosen yet\n";
    return;
  }
  const options::Choice& choice = *found.chosen.choice;
  out << shownStack(choice.key.stack) << " on " << shownBar(choice.key) << ", tilt "
      << shownAngle(choice.setting.tiltDeg) << "°\n";
  if (const auto verdict = found.chosen.verdict();
      verdict == options::Verdict::fails || verdict == options::Verdict::unproven) {
    out << "NOT CLEARED TO LIFT: " << options::wordFor(*verdict) << " today ("
        << (found.chosen.now ? decidingRules(*found.chosen.now).join(QStringLiteral(", "))
                             : found.chosen.trouble)
        << ")\n";
  }
  if (!found.mark) {
    out << "no chain\n";
    return;
  }
  out << "MARK " << QString::number(*found.mark) << ", joint at " << shownAngle(found.angleDeg, 2) << "°";
  for (const options::MarkAngle& each : found.neighbours) {
    out << "; mark " << QString::number(each.mark)
        << (each.angleDeg ? QStringLiteral(" would give %1°").arg(shownAngle(each.angleDeg, 2))
                          : QStringLiteral(" is out of the joint's travel"));
  }
  out << '\n';
  if (found.predicted && found.predicted->learnedDeg) {
    out << "By the records of " << found.chainSerial << ": " << shownAngle(found.predicted->learnedDeg, 2)
        << " ± " << shown(found.predicted->doubtDeg, 2) << "°, not "
        << shownAngle(found.predicted->statedDeg, 2) << "°\n";
  } else if (found.advice == marks::Advice::quarantine) {
    out << "QUARANTINE " << found.chainSerial << ": its records say that it is near its discard figure\n";
  } else if (!found.chainSerial.isEmpty()) {
    out << "The records of " << found.chainSerial << " say nothing of this angle.\n";
  }
  if (found.recorded.empty()) {
    out << "Nothing is recorded for this stack, bar, chain and aim.\n";
    return;
  }
  Table table({{QStringLiteral("mark"), Column::Kind::figure},
               {QStringLiteral("measured °"), Column::Kind::figure},
               {QStringLiteral("date")},
               {QStringLiteral("place"), Column::Kind::text},
               {QStringLiteral("by"), Column::Kind::text},
               {QStringLiteral("chain")},
               {QStringLiteral("weather"), Column::Kind::text}});
  for (const marks::MarkUsed& each : found.recorded) {
    table.add({QString::number(each.mark), shownAngle(degreesOf(each.measured), 2),
               each.date.toString(Qt::ISODate), each.place, each.by, each.chainSerial, each.weather});
  }
  out << "Recorded (a record, not a verdict):\n";
  table.print(out, QStringLiteral("  "));
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const options::Snapshot snapshot = store::loadSnapshot(*store, show.tour, show.name, today(context));
  const std::vector<marks::MarkUsed> used = store::loadMarks(*store);
  QJsonArray hangs;
  bool trouble = false;
  for (const calendar::Hang& hang : show.hangs) {
    HangMark found = markOf(snapshot, hang.name, used);
    predict(snapshot, used, QString::fromStdString(given.option("--chain-serial").value_or("")), found);
    const auto verdict = found.chosen.verdict();
    trouble = trouble || verdict == options::Verdict::fails || verdict == options::Verdict::unproven;
    if (context.json) {
      hangs.append(inJson(found));
    } else {
      printForPeople(found, context.out);
    }
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.marks/1")},
                        {QStringLiteral("show"), show.name},
                        {QStringLiteral("hangs"), hangs}});
  }
  return trouble ? Ending::failing : Ending::done;
}

} // namespace

Command markCommand() {
  return {"mark",
          "at which link the chain goes, the links beside it, and what was used before",
          {showOption,
           tourOption,
           {"--chain-serial", "SERIAL", "the angle by what this chain's own records say, too"}},
          {},
          "hangbook mark --show Ostrel",
          run};
}

} // namespace hangbook::terminal
