// SPDX-License-Identifier: GPL-3.0-or-later
// Of one setting of somebody's own: another tilt, trim, mark or hole, all else as it is.
#include <algorithm>

#include "options/easing_lever.h"
#include "options/stacks.h"

namespace hangbook::options {
namespace {

constexpr double tiltStep = 0.5;
constexpr int mostTiltSteps = 40; // 20°, as far as any bar is tried
constexpr double trimStep = 0.01;
constexpr int mostTrimSteps = 300;
constexpr int mostLinks = 40;

Change changeOf(const char* kind, const char* unit, double step, const QString& what, double from, double to,
                int steps, const QString& words) {
  return {QString::fromLatin1(kind), words, QString::fromUtf8(unit), step, {{what, from, to, steps}}};
}

QString signedDegrees(double angle) {
  return (angle > 0.0 ? QStringLiteral("+") : QString()) + QString::number(angle, 'f', 1) +
         QStringLiteral("°");
}

/// Both ways, the nearest first.
template <class Add>
void bothWays(int most, Add add) {
  for (int steps = 1; steps <= most; ++steps) {
    add(steps, -steps);
    add(steps, steps);
  }
}

Lever tilt(const Setting& setting) {
  Lever lever{QStringLiteral("tilt"), QStringLiteral("°"), tiltStep, {}, {}, {}, {}};
  bothWays(mostTiltSteps, [&](int steps, int by) {
    const double to = movedBy(setting.tiltDeg, by, tiltStep);
    lever.swaps.push_back({steps, [to](Trial& trial) { trial.setting->tiltDeg = to; },
                           changeOf("tilt", "°", tiltStep, QStringLiteral("tilt"), setting.tiltDeg, to, steps,
                                    QStringLiteral("Tilt %1 instead of %2")
                                        .arg(signedDegrees(to), signedDegrees(setting.tiltDeg)))});
  });
  return lever;
}

Lever trim(const Setting& setting) {
  Lever lever{QStringLiteral("trim"), QStringLiteral("m"), trimStep, {}, {}, {}, {}};
  bothWays(mostTrimSteps, [&](int steps, int by) {
    const double to = movedBy(setting.trimM, by, trimStep);
    lever.swaps.push_back(
        {steps, [to](Trial& trial) { trial.setting->trimM = to; },
         changeOf("trim", "m", trimStep, QStringLiteral("trim"), setting.trimM, to, steps,
                  QStringLiteral("Trim %1 m instead of %2 m")
                      .arg(QString::number(to, 'f', 2), QString::number(setting.trimM, 'f', 2)))});
  });
  return lever;
}

Lever mark(int from) {
  Lever lever{QStringLiteral("mark"), QStringLiteral("links"), 1.0, {}, {}, {}, {}};
  bothWays(mostLinks, [&](int steps, int by) {
    const int to = from + by;
    if (to >= 1) {
      lever.swaps.push_back({steps, [to](Trial& trial) { trial.setting->mark = to; },
                             changeOf("mark", "links", 1.0, QStringLiteral("mark"), from, to, steps,
                                      QStringLiteral("Chain at mark %1 instead of %2").arg(to).arg(from))});
    }
  });
  return lever;
}

/// Each joint with holes: the next hole, the one after that.
void addHoles(const Trial& trial, const Setting& setting, std::vector<Lever>& into) {
  const auto* table = catalogue::find(trial.snapshot.catalogue.tables, trial.key.table);
  if (table == nullptr) {
    return;
  }
  for (const Stack& stack : stacksOf(trial.snapshot.catalogue, *table)) {
    if (stack.types() != trial.key.stack) {
      continue;
    }
    Lever lever{QStringLiteral("hole"), QStringLiteral("°"), 1.0, {}, {}, {}, {}};
    std::size_t number = 0;
    for (std::size_t i = 0; i < stack.joins.size(); ++i) {
      const std::vector<Angle>& angles = stack.joins[i]->angles;
      if (angles.size() < 2 || number >= setting.holesDeg.size()) {
        continue;
      }
      const double from = setting.holesDeg[number];
      for (const Angle& angle : angles) {
        const double to = inDegrees(angle);
        const auto at = [&](double deg) {
          return std::find_if(angles.begin(), angles.end(),
                              [deg](const Angle& each) { return inDegrees(each) == deg; }) -
                 angles.begin();
        };
        const int steps = static_cast<int>(std::abs(at(to) - at(from)));
        if (steps == 0) {
          continue;
        }
        const QString what = QStringLiteral("hole of cabinet %1").arg(i + 1);
        lever.swaps.push_back({steps, [to, number](Trial& other) { other.setting->holesDeg[number] = to; },
                               changeOf("hole", "°", 1.0, what, from, to, steps,
                                        QStringLiteral("Cabinet %1 in its hole for %2 instead of %3")
                                            .arg(i + 1)
                                            .arg(signedDegrees(to), signedDegrees(from)))});
      }
      ++number;
    }
    std::stable_sort(lever.swaps.begin(), lever.swaps.end(),
                     [](const Swap& one, const Swap& other) { return one.steps < other.steps; });
    if (!lever.swaps.empty()) {
      into.push_back(std::move(lever));
    }
    return;
  }
}

} // namespace

void addSettingLevers(const Trial& trial, std::vector<Lever>& into) {
  const Setting& setting = *trial.setting;
  into.push_back(tilt(setting));
  into.push_back(trim(setting));
  if (setting.mark) {
    into.push_back(mark(*setting.mark));
  }
  addHoles(trial, setting, into);
}

} // namespace hangbook::options
