// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "terminal/answers.h"
#include "terminal/both_units.h"
#include "terminal/build_sheet.h"
#include "terminal/figures.h"
#include "terminal/options_table.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

void printSetting(const options::Option& option, std::ostream& out) {
  if (!option.setting) {
    out << "No setting of it is possible; the findings are those of the nearest one.\n";
    return;
  }
  const options::Setting& setting = *option.setting;
  out << "Tilt " << shownAngle(setting.tiltDeg) << "°, pan " << shownAngle(setting.panDeg) << "°, trim "
      << shown(setting.trimM, 2) << " m, ";
  if (setting.mark) {
    out << "chain at mark " << QString::number(*setting.mark);
    for (const options::MarkAngle& mark : option.marks) {
      out << (mark.mark == *setting.mark ? " (" : ", ") << QString::number(mark.mark) << ": "
          << shownAngle(mark.angleDeg, 2) << "°";
    }
    out << (option.marks.empty() ? "" : ")") << '\n';
  } else {
    out << "no chain\n";
  }
  if (option.trimWindow) {
    out << "Trim may lie from " << shown(option.trimWindow->lowM, 2) << " m (" << option.trimWindow->lowSetBy
        << ") to " << shown(option.trimWindow->highM, 2) << " m (" << option.trimWindow->highSetBy << ")\n";
  } else {
    out << "There is no trim at which every rule holds.\n";
  }
  out << "Mass below the hooks " << shown(option.massKg, 1) << " kg, cover "
      << shown(option.coveredPercent, 1) << " %, bar's datum at " << shown(option.datumHeightM, 2) << " m\n";
}

void printPoints(const options::Option& option, std::ostream& out) {
  if (option.points.empty()) {
    return;
  }
  QStringList parts;
  std::vector<Column> columns{{QStringLiteral("point")},
                              {QStringLiteral("at rest kN"), Column::Kind::figure},
                              {QStringLiteral("dynamic kN"), Column::Kind::figure},
                              {QStringLiteral("capacity kN"), Column::Kind::figure},
                              {QStringLiteral("sideways kN"), Column::Kind::figure}};
  for (const options::LoadPart& part : option.points.front().parts) {
    parts << part.what;
    columns.push_back({part.what + QStringLiteral(" kN"), Column::Kind::figure});
  }
  Table table(columns);
  for (const options::PointResult& point : option.points) {
    QStringList cells{point.point, shown(point.staticKn, 3), shown(point.dynamicKn, 3),
                      shown(point.capacityKn, 3), shown(point.horizontalKn, 3)};
    for (const QString& what : parts) {
      double sum = 0.0;
      for (const options::LoadPart& part : point.parts) {
        sum += part.what == what ? part.kn : 0.0;
      }
      cells << shown(sum, 3);
    }
    table.add(cells);
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
}

QString piecesOf(const options::BridleLegResult& leg) {
  QStringList words;
  for (const options::HardwareCount& piece : leg.pieces) {
    words << QStringLiteral("%1 × %2").arg(piece.count).arg(piece.type);
  }
  return words.join(QStringLiteral(" + "));
}

/// The make-up of each leg, and what it pulls.
void printBridles(const options::Option& option, std::ostream& out) {
  if (option.bridles.empty()) {
    return;
  }
  Table table({{QStringLiteral("bridle")},
               {QStringLiteral("pick")},
               {QStringLiteral("leg to")},
               {QStringLiteral("length m"), Column::Kind::figure},
               {QStringLiteral("pull kN"), Column::Kind::figure},
               {QStringLiteral("sideways kN"), Column::Kind::figure},
               {QStringLiteral("angle °"), Column::Kind::figure},
               {QStringLiteral("made up from")}});
  for (const options::BridleResult& bridle : option.bridles) {
    for (const options::BridleLegResult& leg : bridle.legs) {
      table.add({bridle.bridle, bridle.pick, leg.point, shown(leg.lengthM, 2), shown(leg.tensionKn, 3),
                 shown(leg.horizontalKn, 3), shown(leg.fromHorizontalDeg, 1), piecesOf(leg)});
    }
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
  for (const options::BridleResult& bridle : option.bridles) {
    out << "  Apex of " << bridle.bridle << " at " << shown(bridle.apexM[0], 2) << ", "
        << shown(bridle.apexM[1], 2) << ", " << shown(bridle.apexM[2], 2) << " m (wanted at "
        << shown(bridle.wantedM[0], 2) << ", " << shown(bridle.wantedM[1], 2) << ", "
        << shown(bridle.wantedM[2], 2) << " m); the load moves it "
        << (bridle.shiftM ? shown(*bridle.shiftM * 1000.0, 0) + QStringLiteral(" mm")
                          : QStringLiteral("by what is not known"))
        << ".\n";
  }
}

/// Every link from the points down.
void printLoadPath(const options::Option& option, std::ostream& out) {
  if (option.loadPath.empty()) {
    return;
  }
  Table table({{QStringLiteral("load path")},
               {QStringLiteral("at")},
               {QStringLiteral("load kN"), Column::Kind::figure},
               {QStringLiteral("limit kN"), Column::Kind::figure},
               {QStringLiteral("use %"), Column::Kind::figure},
               {QStringLiteral("verdict")}});
  for (const options::PathLink& link : option.loadPath) {
    table.add({link.link, link.at, shown(link.loadKn, 3), shown(link.limitKn, 3),
               link.usePercent ? shown(link.usePercent, 0) : QString(), wordFor(link.verdict)});
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
}

void printAims(const options::Option& option, std::ostream& out) {
  if (option.aims.empty()) {
    return;
  }
  Table table({{QStringLiteral("cabinet"), Column::Kind::figure},
               {QStringLiteral("type")},
               {QStringLiteral("aim °"), Column::Kind::figure}});
  for (const options::Aim& aim : option.aims) {
    const bool named = aim.element >= 1 && aim.element <= option.key.stack.size();
    table.add({QString::number(aim.element), named ? option.key.stack[aim.element - 1] : QString(),
               shownAngle(aim.aimDeg, 2)});
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
}

QString airInWords(const std::optional<options::LevelAir>& air) {
  if (!air) {
    return QStringLiteral("spreading alone: the day's temperature or humidity is not stated");
  }
  return QStringLiteral("spreading and air at %1 °C, %2 %, %3 kPa%4")
      .arg(shown(air->temperature, 0), shown(air->humidity, 0), shown(air->pressure, 1),
           air->pressureStated ? QString() : QStringLiteral(" (standard pressure: the day's is not stated)"));
}

/// Advice: what is lost from 1 m before the cabinet to each section's first and last row.
void printLevel(const options::Option& option, std::ostream& out) {
  if (!option.level) {
    return;
  }
  std::vector<Column> columns{{QStringLiteral("section")},
                              {QStringLiteral("row")},
                              {QStringLiteral("cabinet")},
                              {QStringLiteral("way m"), Column::Kind::figure},
                              {QStringLiteral("throw m"), Column::Kind::figure}};
  for (const int band : options::octaveBands) {
    columns.push_back(
        {band < 1000 ? QString::number(band) : QStringLiteral("%1k").arg(band / 1000), Column::Kind::figure});
  }
  Table table(columns);
  for (const options::LevelRow& row : option.level->rows) {
    QStringList cells{row.section, row.last ? QStringLiteral("last") : QStringLiteral("first"),
                      QString::number(row.element) +
                          (row.covered ? QString() : QStringLiteral(", not covered")),
                      shown(row.distanceM, 1), shown(row.throwM, 0)};
    for (std::size_t i = 0; i < options::octaveBands.size(); ++i) {
      cells << shown(row.lossDb(i), 1);
    }
    table.add(cells);
  }
  if (option.level->frontToBackDb) {
    QStringList cells{QStringLiteral("front to back"), {}, {}, {}, {}};
    for (const double drop : *option.level->frontToBackDb) {
      cells << shown(drop, 1);
    }
    table.add(cells);
  }
  out << '\n';
  const QString says =
      QStringLiteral("Level, advice that no verdict reads: dB lost from 1 m before the cabinet, by "
                     "octave band in Hz; %1. One cabinet alone, on its axis, without the room.")
          .arg(airInWords(option.level->air));
  for (const QString& line : brokenInto(forReaders(out, says), 108)) {
    asIs(out) << line << '\n';
  }
  table.print(out, QStringLiteral("  "));
}

void printRules(const options::Option& option, std::ostream& out) {
  Table table({{QStringLiteral("rule")},
               {QStringLiteral("verdict")},
               {QStringLiteral("nominal"), Column::Kind::figure},
               {QStringLiteral("worst"), Column::Kind::figure},
               {QStringLiteral("limit"), Column::Kind::figure},
               {QStringLiteral("unit")},
               {QStringLiteral("use %"), Column::Kind::figure}});
  for (const options::Finding& finding : option.findings) {
    table.add({finding.rule, finding.applies ? wordFor(finding.verdict) : QStringLiteral("does not apply"),
               shown(finding.nominal, 3), shown(finding.value, 3), shown(finding.limit, 3), finding.unit,
               finding.usePercent ? shown(finding.usePercent, 0) : QString()},
              finding.source.isEmpty()
                  ? QStringList{finding.text}
                  : QStringList{finding.text, QStringLiteral("Limit from: ") + finding.source});
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
}

/// What the worst figures were judged with.
void printDoubts(const options::Option& option, std::ostream& out) {
  if (option.doubts.empty()) {
    return;
  }
  Table table({{QStringLiteral("in doubt")}, {QStringLiteral("by")}, {QStringLiteral("source")}});
  for (const options::DoubtFigure& doubt : option.doubts) {
    table.add({doubt.what, doubt.figure, doubt.source});
  }
  out << "\nVerdicts follow the worst figures, with each of these at the end that hurts:\n";
  table.print(out, QStringLiteral("  "));
  for (const QString& weighed : option.weighed) {
    out << "  " << weighed << ".\n";
  }
}

} // namespace

void printRuleSheet(const options::Option& option, std::ostream& out) {
  out << "Option " << option.id << " of hang " << option.key.hang << ": " << wordFor(option.verdict);
  const QStringList because = decidingRules(option);
  out << (because.isEmpty() ? QString() : QStringLiteral(" because of ") + because.join(QStringLiteral(", ")))
      << '\n';
  if (option.verdict == options::Verdict::unproven || option.verdict == options::Verdict::fails) {
    out << "NOT CLEARED TO LIFT\n";
  }
  out << shownStack(option.key.stack) << (option.downfill ? " (with downfill)" : "") << '\n'
      << "on " << shownBar(option.key) << ", " << option.key.hoist << ", points "
      << option.key.points.join(QStringLiteral(", ")) << "; by the table " << option.key.table << '\n';
  printSetting(option, out);
  printPoints(option, out);
  printBridles(option, out);
  printLoadPath(option, out);
  printBuild(option, out);
  printStops(option, out);
  printWind(option, out);
  printAims(option, out);
  printRules(option, out);
  printDoubts(option, out);
  printLevel(option, out);
  out << "\nThese figures support the maker's manual, local rules and a competent person's judgement; they "
         "do not\nreplace them.\n";
}

} // namespace hangbook::terminal
