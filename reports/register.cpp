// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/gear_needs.h"
#include "reports/parts.h"

namespace hangbook::reports {

Sheet examinationRegister(const Register& units, const Figures& figures) {
  Q_UNUSED(figures)
  using Size = Text::Size;
  Sheet sheet;
  sheet.kind = QStringLiteral("examination-register");
  sheet.title = QStringLiteral("Examination register");
  sheet.show = units.title;
  sheet.about = {QStringLiteral("As of %1, what falls due up to %2")
                     .arg(units.asOf.toString(Qt::ISODate), units.until.toString(Qt::ISODate))};
  sheet.revision = QStringLiteral("as of %1").arg(units.asOf.toString(Qt::ISODate));
  sheet.sides = QStringLiteral("A day named as due is the last day on which the rule is met.");
  int overdue = 0;
  Table table;
  table.name = QStringLiteral("examinations");
  table.title = QStringLiteral("Examinations");
  table.columns = {{QStringLiteral("Unit"), 1.0, false}, {QStringLiteral("Type"), 1.9, false},
                   {QStringLiteral("Rule"), 2.0, false}, {QStringLiteral("Last"), 1.5, false},
                   {QStringLiteral("Due"), 1.7, false},  {QStringLiteral("Where"), 1.8, false}};
  for (const fleet::Due& each : units.due) {
    overdue += each.overdue ? 1 : 0;
    const QString due = each.due.isValid() ? each.due.toString(Qt::ISODate) : each.note;
    table.rows.push_back({{each.serial, each.type, each.rule,
                           each.last.isValid() ? each.last.toString(Qt::ISODate) : QStringLiteral("none"),
                           each.overdue ? QStringLiteral("OVERDUE: %1").arg(due) : due, each.place},
                          each.overdue,
                          false,
                          each.overdue});
  }
  sheet.blocks.emplace_back(
      Text{Size::strong, QStringLiteral("%1 due, %2 of them overdue: what is overdue must not lift.")
                             .arg(units.due.size())
                             .arg(overdue)});
  sheet.blocks.emplace_back(table);
  if (!units.kept.empty()) {
    Table kept;
    kept.name = QStringLiteral("kept back");
    kept.title = QStringLiteral("Kept back");
    kept.columns = {{QStringLiteral("Unit"), 1.0, false},
                    {QStringLiteral("Type"), 2.0, false},
                    {QStringLiteral("State"), 1.4, false},
                    {QStringLiteral("Where"), 2.0, false}};
    for (const fleet::Unit& unit : units.kept) {
      kept.rows.push_back({{unit.serial, unit.type,
                            unit.state == fleet::UnitState::quarantined ? QStringLiteral("quarantined")
                                                                        : QStringLiteral("in repair"),
                            unit.place},
                           true,
                           false,
                           false});
    }
    sheet.blocks.emplace_back(kept);
  }
  return sheet;
}

} // namespace hangbook::reports
