// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "reports/cabling_tables.h"
#include "reports/hung_table.h"
#include "reports/parts.h"

namespace hangbook::reports {
namespace {

using Size = Text::Size;

Big markOf(const ShowAsIs& show, const options::Option& option, const Figures& figures) {
  Big big;
  big.caption = QStringLiteral("CHAIN MARK\nhang %1").arg(option.key.hang);
  big.text = option.setting && option.setting->mark ? QString::number(*option.setting->mark)
                                                    : QStringLiteral("none");
  const auto* table = catalogue::find(show.snapshot.catalogue.tables, option.key.table);
  if (option.setting && option.setting->mark) {
    big.beside << QStringLiteral("Chain: %1. Count twice: link 1 is the one at the bar.")
                      .arg(table != nullptr ? table->chain : notKnown());
    for (const options::MarkAngle& mark : option.marks) {
      big.beside << QStringLiteral("mark %1: %2")
                        .arg(mark.mark)
                        .arg(mark.angleDeg ? QStringLiteral("joint at ") + figures.angle(mark.angleDeg, 2)
                                           : QStringLiteral("out of the joint's travel"));
    }
  } else {
    big.beside << QStringLiteral("No chain in this stack.");
  }
  return big;
}

Table targetsOf(const options::Option& option, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("targets %1").arg(option.key.hang);
  table.large = true;
  table.columns = {{QStringLiteral("At trim"), 3.0, false}, {QStringLiteral("Must read"), 2.2, true}};
  if (option.setting) {
    table.rows.push_back({{QStringLiteral("Tape, datum to lowest edge"), figures.tape(option.setting->trimM)},
                          true,
                          false,
                          false});
    table.rows.push_back(
        {{QStringLiteral("Tape, datum to the bar's own datum"), figures.tape(option.datumHeightM)},
         true,
         false,
         !option.datumHeightM});
    table.rows.push_back({{QStringLiteral("Bar tilt (nose up is +)"), figures.angle(option.setting->tiltDeg)},
                          false,
                          false,
                          false});
    table.rows.push_back(
        {{QStringLiteral("Pan (to the left, seen from above, is +)"), figures.angle(option.setting->panDeg)},
         false,
         false,
         false});
  }
  for (const options::Aim& aim : option.aims) {
    const QString type = aim.element >= 1 && aim.element <= option.key.stack.size()
                             ? option.key.stack[aim.element - 1]
                             : QString();
    table.rows.push_back({{QStringLiteral("Inclinometer, cabinet %1, %2").arg(aim.element).arg(type),
                           figures.angle(aim.aimDeg)},
                          false,
                          false,
                          false});
  }
  return table;
}

QString wordsOf(const build::Step& step) {
  QString what = step.what;
  if (step.people > 1) {
    what += QStringLiteral(" (%1 people)").arg(step.people);
  }
  if (step.nobodyBeneath) {
    what += QStringLiteral(" — NOBODY BENEATH");
  }
  for (const QString& missing : step.missing) {
    what += QStringLiteral("\nUNPROVEN, not known: %1").arg(missing);
  }
  if (!step.gate.isEmpty()) {
    what += QStringLiteral("\nHOLD POINT: %1").arg(step.gate);
  }
  return what;
}

/// Steps are numbered over all hangs: where the numbers jump, whose they are. A page is held alone.
Table::Row elsewhere(const std::vector<build::Step>& steps, std::size_t from, std::size_t to) {
  QStringList whose;
  for (std::size_t i = from; i < to; ++i) {
    if (!whose.contains(steps[i].hang)) {
      whose << steps[i].hang;
    }
  }
  Table::Row row;
  row.cells << QString()
            << (to - from == 1 ? QStringLiteral("Step %1: hang %2").arg(steps[from].number).arg(whose.front())
                               : QStringLiteral("Steps %1 to %2: hang %3")
                                     .arg(steps[from].number)
                                     .arg(steps[to - 1].number)
                                     .arg(whose.join(QStringLiteral(" and "))));
  row.aside = true;
  return row;
}

Table stepsOf(const build::Plan& plan, const QString& hang, bool down, const Figures& figures) {
  const std::vector<build::Step>& steps = down ? plan.loadOut : plan.steps;
  Table table;
  table.name = QStringLiteral("%1 %2").arg(down ? QStringLiteral("load-out") : QStringLiteral("steps"), hang);
  table.title =
      QStringLiteral("Hang %1, %2").arg(hang.toUpper(), down ? QStringLiteral("down") : QStringLiteral("up"));
  table.note =
      QStringLiteral("Hooks and lowest: above the floor under the hang, after the step. Steps are numbered "
                     "over all hangs.");
  for (const QString& caution : down ? QStringList() : plan.cautions) {
    table.note += QStringLiteral("\n– ") + caution;
  }
  table.large = !down;
  table.ticked = true;
  table.columns = {{QStringLiteral("No."), 0.6, true},
                   {QStringLiteral("Step"), down ? 9.0 : 6.2, false},
                   {QStringLiteral("Hooks by"), 1.35, true},
                   {QStringLiteral("Hooks at"), 1.3, true},
                   {QStringLiteral("Lowest at"), 1.3, true}};
  std::size_t shown = 0; // behind the last of this hang's
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const build::Step& step = steps[i];
    if (step.hang != hang) {
      continue;
    }
    if (i > shown) {
      table.rows.push_back(elsewhere(steps, shown, i));
    }
    shown = i + 1;
    Table::Row row;
    row.cells = {QString::number(step.number), wordsOf(step), step.move ? figures.move(step.move) : QString(),
                 step.hooks ? figures.length(step.hooks) : QString(),
                 step.lowest ? figures.length(step.lowest) : QString()};
    row.strong = step.kind == build::StepKind::raise || step.kind == build::StepKind::setDown;
    row.toSign = !step.gate.isEmpty();
    row.warn = !step.missing.isEmpty();
    table.rows.push_back(row);
  }
  return table;
}

} // namespace

Sheet buildSheet(const ShowAsIs& show, const Figures& figures) {
  Sheet sheet = begun(QStringLiteral("build-sheet"), QStringLiteral("Build sheet"), show);
  for (const QString& why : show.plan.impossible) {
    sheet.notCleared << QStringLiteral("Build not possible: %1").arg(why);
  }
  for (const QString& what : show.plan.missing) {
    sheet.notCleared << QStringLiteral("Build unproven, not known: %1").arg(what);
  }
  sheet.blocks.emplace_back(datumText(show));
  if (const auto wind = windText(show, figures)) {
    sheet.blocks.emplace_back(*wind);
  }
  bool first = sheet.notCleared.isEmpty(); // else the reasons stand on a page of their own

  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    if (!first) {
      sheet.blocks.emplace_back(NewPage{});
    }
    first = false;
    const options::Option& option = *hang.now;
    sheet.blocks.emplace_back(
        Text{Size::heading, QStringLiteral("Hang %1: %2 on %3; %4 on %5")
                                .arg(hang.hang.toUpper(), stackText(option.key.stack), option.key.bar,
                                     option.key.hoist, option.key.points.join(QStringLiteral(", ")))});
    sheet.blocks.emplace_back(markOf(show, option, figures));
    sheet.blocks.emplace_back(targetsOf(option, figures));
    if (option.setting) {
      Drawing elevation = elevationOf(show, option, figures);
      elevation.height = 140; // stands below mark and angles on the same page
      sheet.blocks.emplace_back(std::move(elevation));
    }
    sheet.blocks.emplace_back(NewPage{});
    sheet.blocks.emplace_back(stepsOf(show.plan, hang.hang, false, figures));
    sheet.blocks.emplace_back(cablingTable(show, hang.hang));
    sheet.blocks.emplace_back(hungTable(show, figures, hang.hang));
  }
  for (const HangAsIs& hang : show.hangs) {
    if (hang.now) {
      sheet.blocks.emplace_back(NewPage{});
      sheet.blocks.emplace_back(stepsOf(show.plan, hang.hang, true, figures));
    }
  }
  return sheet;
}

} // namespace hangbook::reports
