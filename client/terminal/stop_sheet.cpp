// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "terminal/answers.h"
#include "terminal/build_sheet.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString gustFigure(double metresPerSecond) {
  return std::isinf(metresPerSecond) ? QStringLiteral("no gust up to 100 m/s")
                                     : shown(metresPerSecond, 1) + QStringLiteral(" m/s");
}

} // namespace

void printStops(const options::Option& option, std::ostream& out) {
  for (const options::OneStops& stop : option.stops) {
    out << "\nIf the " << stop.stopped << " hoist stops while the " << stop.runs << " one runs on up (or the "
        << stop.runs << " one stops while the " << stop.stopped << " one runs on down):\n";
    Table table({{QStringLiteral("difference m"), Column::Kind::figure},
                 {option.stops.size() == 2 && option.key.picks == catalogue::Picks::sidePair
                      ? QStringLiteral("roll °")
                      : QStringLiteral("tilt °"),
                  Column::Kind::figure},
                 {stop.runs + QStringLiteral(" kN"), Column::Kind::figure},
                 {QStringLiteral("at most"), Column::Kind::figure},
                 {stop.stopped + QStringLiteral(" kN"), Column::Kind::figure},
                 {QStringLiteral("at least"), Column::Kind::figure}});
    for (const options::StopStep& step : stop.steps) {
      table.add({shown(step.differenceM, 2), shownAngle(step.turnDeg, 1), shown(step.runsKn, 2),
                 shown(step.worstRunsKn, 2), shown(step.stoppedKn, 2), shown(step.worstStoppedKn, 2)});
    }
    table.print(out, QStringLiteral("  "));
    if (!stop.holdBy.isEmpty()) {
      out << "  Hold at a difference of " << shown(stop.holdAtM, 3) << " m: beyond it " << stop.holdBy
          << " is passed.\n";
    }
    if (!stop.missing.isEmpty()) {
      out << "  Not known, so perhaps sooner: " << stop.missing << ".\n";
    }
  }
}

void printWind(const options::Option& option, std::ostream& out) {
  if (!option.wind) {
    return;
  }
  const options::WindAnswer& wind = *option.wind;
  out << "\nWind, as a gust (mean over at most 3 s) at the picks' height of " << shown(wind.heightM, 2)
      << " m:\n";
  if (std::isfinite(wind.gust)) {
    out << "  stated " << shown(wind.gust, 1) << " m/s = " << shown(wind.pressure, 0) << " N/m²; pushes "
        << shown(wind.mostKn, 3) << " kN from the worst direction (" << shown(wind.mostFromDeg, 0)
        << "° from its front to its left), " << shown(wind.frontKn, 3) << " kN from in front, "
        << shown(wind.sideKn, 3) << " kN from the side, " << shown(wind.belowM, 2) << " m below the picks\n"
        << "  chains lean " << shown(wind.leanDeg, 1) << "°, the hang itself swings by "
        << shown(wind.swingDeg, 1) << "° about its picks, wet cloth and ice " << shown(wind.wetKg, 0)
        << " kg\n";
    for (const options::WindPick& pick : wind.picks) {
      out << "  pick " << pick.name << ": " << shown(pick.leastKn, 3) << " to " << shown(pick.mostKn, 3)
          << (wind.legs.empty() ? " kN, its point " : " kN, its point or apex ") << shown(pick.pointKn, 3)
          << " kN\n";
    }
    for (const options::WindLeg& leg : wind.legs) {
      out << "  bridle " << leg.bridle << ", leg to " << leg.point << ": " << shown(leg.leastKn, 3) << " to "
          << shown(leg.mostKn, 3) << " kN, at the flattest " << shown(leg.fromHorizontalDeg, 1)
          << "° from the horizontal\n";
    }
    for (const options::WindPoint& point : wind.points) {
      out << "  point " << point.name << ": at most " << shown(point.downKn, 3) << " kN down\n";
    }
  }
  out << "  first limit passed: " << gustFigure(wind.failsAt)
      << (wind.failsBy.isEmpty() ? QString() : QStringLiteral(" (") + wind.failsBy + QLatin1Char(')'))
      << '\n';
  if (std::isfinite(wind.failsAt)) {
    out << "  for the crew's own plan: " << shown(wind.firstShare, 0) << " % of it is "
        << shown(wind.failsAt * wind.firstShare / 100.0, 1) << " m/s, " << shown(wind.secondShare, 0)
        << " % is " << shown(wind.failsAt * wind.secondShare / 100.0, 1) << " m/s (" << wind.sharesSource
        << ")\n";
  }
  if (!wind.missing.isEmpty()) {
    out << "  UNPROVEN, not stated: " << wind.missing.join(QStringLiteral("; ")) << '\n';
  }
}

} // namespace hangbook::terminal
