// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/build_sheet.h"

#include <cmath>

#include "terminal/answers.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

/// "1.234", or "1.100 to 1.234" where a step has several poses.
QString span(double least, double most) {
  const QString high = shown(most, 3);
  const QString low = shown(least, 3);
  return low == high ? high : low + QStringLiteral(" to ") + high;
}

} // namespace

void printBuild(const options::Option& option, std::ostream& out) {
  if (option.build.empty()) {
    return;
  }
  std::vector<Column> columns{{QStringLiteral("while it is built")},
                              {QStringLiteral("mass kg"), Column::Kind::figure}};
  const auto& picks = option.build.front().picks;
  for (std::size_t i = 0; i < picks.size(); ++i) {
    columns.push_back({QStringLiteral("pick %1 kN").arg(picks[i].name), Column::Kind::figure});
    columns.push_back({QStringLiteral("at most"), Column::Kind::figure});
    columns.push_back({QStringLiteral("its hoist kN"), Column::Kind::figure});
    const QString point = i < option.points.size() ? option.points[i].point : QString();
    columns.push_back({QStringLiteral("point %1 kN").arg(point), Column::Kind::figure});
  }
  Table table(columns);
  for (const options::StepLoads& step : option.build) {
    QStringList cells{step.step, shown(step.massKg, 1)};
    for (const options::StepPick& pick : step.picks) {
      cells << span(pick.leastKn, pick.mostKn) << shown(pick.worstMostKn, 3) << shown(pick.hoistKn, 3)
            << shown(pick.pointKn, 3);
    }
    table.add(cells);
  }
  out << '\n';
  table.print(out, QStringLiteral("  "));
}

} // namespace hangbook::terminal
