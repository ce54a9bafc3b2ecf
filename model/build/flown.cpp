// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/flown.h"

#include <algorithm>
#include <cmath>

#include <QJsonDocument>
#include <QJsonObject>

#include "build/words.h"
#include "options/freeze.h"
#include "options/scene.h"
#include "options/search.h"
#include "quantity/error.h"

namespace hangbook::build {
namespace {

/// Less than this is no move: no actuator or hoist is set so finely.
constexpr double least = 0.0005;

/// Below it nothing is called a change: half of the last place that is shown.
double leastShown(const QString& unit) {
  return unit == QStringLiteral("°") || unit == QStringLiteral("%") ? 0.05 : 0.005;
}

std::optional<double> hooksOf(const options::Snapshot& snapshot, const options::Option& option) {
  const options::Scene scene = options::sceneOf(snapshot, option);
  if (scene.hoists.empty()) {
    return std::nullopt;
  }
  double sum = 0;
  for (const options::SceneHoist& hoist : scene.hoists) {
    sum += hoist.hook.height;
  }
  return sum / static_cast<double>(scene.hoists.size());
}

class Changes {
public:
  void figure(const QString& what, std::optional<double> was, std::optional<double> becomes,
              const char* unit) {
    if (was.has_value() == becomes.has_value() &&
        (!was || std::abs(*was - *becomes) < leastShown(QString::fromUtf8(unit)))) {
      return;
    }
    FlownChange change{what, was, becomes, QString::fromUtf8(unit), {}, {}};
    all.push_back(change);
  }
  void verdict(const QString& what, options::Verdict was, options::Verdict becomes) {
    if (was != becomes) {
      all.push_back({what, {}, {}, {}, wordFor(was), wordFor(becomes), becomes > was});
    }
  }
  std::vector<FlownChange> all;
};

template <class List, class Match>
const auto* findIn(const List& list, Match match) {
  const auto found = std::find_if(list.begin(), list.end(), match);
  return found == list.end() ? nullptr : &*found;
}

QString degreesText(double value) {
  return QStringLiteral("%1%2°").arg(value > 0 ? QStringLiteral("+") : QString()).arg(value, 0, 'f', 1);
}

QStringList stepsOf(const Flown& flown, const calendar::Hang& hang, std::optional<double> hooksBy,
                    UnitSystem units) {
  const options::Setting& was = *flown.before.setting;
  const options::Setting& now = *flown.after.setting;
  if (!flown.moves) {
    return {
        QStringLiteral("Nothing moves. Look at what changes above, then sign it with a name and a reason.")};
  }
  QStringList steps{QStringLiteral("Clear below: nobody stands beneath until the last step is signed.")};
  steps << (hang.secondary.isEmpty()
                ? QStringLiteral("No secondary steel is named for this hang: see for yourself that nothing "
                                 "holds it besides its hoists.")
                : QStringLiteral("Release or re-slack the secondary steel at every pick (%1).")
                      .arg(hang.secondary.join(QStringLiteral(", "))));
  if (std::abs(now.tiltDeg - was.tiltDeg) >= least) {
    const bool pair = flown.after.key.picks == catalogue::Picks::sidePair;
    steps << QStringLiteral("Tilt %1 from %2 to %3.")
                 .arg(pair ? QStringLiteral("by the bar's actuator") : QStringLiteral("by the two hoists"),
                      degreesText(was.tiltDeg), degreesText(now.tiltDeg));
  }
  if (std::abs(now.panDeg - was.panDeg) >= least) {
    steps << QStringLiteral("Pan from %1 to %2 (to the left, seen from above, is +).")
                 .arg(degreesText(was.panDeg), degreesText(now.panDeg));
  }
  if (!hooksBy) {
    steps << QStringLiteral("How far the hooks move is not known: go by the tape below.");
  } else if (std::abs(*hooksBy) >= 0.005) {
    steps << QStringLiteral("%1 all hooks by %2, all hoists together.")
                 .arg(*hooksBy > 0 ? QStringLiteral("Raise") : QStringLiteral("Lower"),
                      lengthText(std::abs(*hooksBy), units));
  } else {
    steps << QStringLiteral("The hooks stay where they are.");
  }
  if (now.mark) {
    steps << QStringLiteral("The chain stays at mark %1: a mark is never changed in the air.").arg(*now.mark);
  }
  steps << QStringLiteral(
               "Read back: tape from the datum to the lowest edge %1; inclinometer on each cabinet as "
               "listed.")
               .arg(lengthText(now.trimM, units));
  steps << (hang.secondarySlack
                ? QStringLiteral("Refit the secondary steel to structure that can take it and measure its "
                                 "slack: no pick may drop more than %1.")
                      .arg(lengthText(inMetres(*hang.secondarySlack), units))
                : QStringLiteral("Refit the secondary steel to structure that can take it and measure its "
                                 "slack; how much there may be is not stated."));
  steps << QStringLiteral(
      "Sign the new setting, then the hold points that it opens again: secondary steel and "
      "final check. Sheets printed before are outdated: print them again.");
  return steps;
}

options::Snapshot inWind(const options::Snapshot& snapshot, const FlownWish& wish) {
  options::Snapshot now = snapshot;
  if (!wish.windMps) {
    return now;
  }
  if (!std::isfinite(*wish.windMps) || *wish.windMps < 0) {
    throw Error(Trouble::badInput, "a speed of 0 m/s or more is expected", "wind");
  }
  if (!snapshot.venue.outdoors.value_or(false)) {
    throw Error(Trouble::badInput,
                "wind counts outdoors, and the venue " + snapshot.venue.name.toStdString() +
                    (snapshot.venue.outdoors ? " is indoors" : " does not say whether it is"),
                "wind");
  }
  now.show.wind = metresPerSecond(*wish.windMps);
  return now;
}

} // namespace

std::vector<FlownChange> changesBetween(const options::Option& before, const options::Option& after) {
  Changes out;
  out.verdict(QStringLiteral("verdict"), before.verdict, after.verdict);
  if (!before.setting || !after.setting) {
    return out.all;
  }
  out.figure(QStringLiteral("mass below the hooks"), before.massKg, after.massKg, "kg");
  out.figure(QStringLiteral("tilt"), before.setting->tiltDeg, after.setting->tiltDeg, "°");
  out.figure(QStringLiteral("pan"), before.setting->panDeg, after.setting->panDeg, "°");
  out.figure(QStringLiteral("trim, lowest edge"), before.setting->trimM, after.setting->trimM, "m");
  out.figure(QStringLiteral("tape to the bar's datum"), before.datumHeightM, after.datumHeightM, "m");
  for (const options::PickLoad& pick : after.pickLoads) {
    const auto* was = findIn(before.pickLoads, [&](const auto& each) { return each.name == pick.name; });
    out.figure(QStringLiteral("%1 pick").arg(pick.name), was ? std::optional(was->loadKn) : std::nullopt,
               pick.loadKn, "kN");
  }
  for (const options::PointResult& point : after.points) {
    const auto* was = findIn(before.points, [&](const auto& each) { return each.point == point.point; });
    out.figure(QStringLiteral("point %1 at rest").arg(point.point),
               was ? std::optional(was->staticKn) : std::nullopt, point.staticKn, "kN");
    out.figure(QStringLiteral("point %1 dynamic").arg(point.point),
               was ? std::optional(was->dynamicKn) : std::nullopt, point.dynamicKn, "kN");
    out.figure(QStringLiteral("point %1 dynamic at worst").arg(point.point),
               was ? was->worstDynamicKn : std::nullopt, point.worstDynamicKn, "kN");
  }
  if (!after.marks.empty()) {
    out.figure(QStringLiteral("joint at mark %1").arg(after.marks[0].mark),
               before.marks.empty() ? std::nullopt : before.marks[0].angleDeg, after.marks[0].angleDeg, "°");
  }
  for (const options::Aim& aim : after.aims) {
    const auto* was = findIn(before.aims, [&](const auto& each) { return each.element == aim.element; });
    out.figure(QStringLiteral("inclinometer, cabinet %1").arg(aim.element),
               was ? std::optional(was->aimDeg) : std::nullopt, aim.aimDeg, "°");
  }
  out.figure(QStringLiteral("covered"), before.coveredPercent, after.coveredPercent, "%");
  for (const options::Finding& finding : after.findings) {
    const auto* was = findIn(before.findings, [&](const auto& each) { return each.rule == finding.rule; });
    out.verdict(QStringLiteral("rule %1").arg(finding.rule), was ? was->verdict : options::Verdict::unproven,
                finding.verdict);
  }
  return out.all;
}

Flown flownTo(const options::Snapshot& snapshot, const options::Choice& standing, const FlownWish& wish,
              UnitSystem units) {
  const bool single = standing.key.picks == catalogue::Picks::single;
  if (single && wish.tiltDeg && std::abs(*wish.tiltDeg - standing.setting.tiltDeg) >= least) {
    throw Error(Trouble::badInput,
                "a bar that hangs by one pick has no actuator: its tilt is what it balances at", "tilt");
  }
  Flown flown{inWind(snapshot, wish), options::thaw(standing.frozen), {}, false, {}, {}};
  flown.before.setting = standing.setting;
  options::Setting setting = standing.setting;
  setting.tiltDeg = wish.tiltDeg.value_or(setting.tiltDeg);
  setting.panDeg = wish.panDeg.value_or(setting.panDeg);
  const options::Option stands = options::judge(snapshot, standing.key, standing.setting);
  const auto hooksWere = hooksOf(snapshot, stands);
  flown.after = options::judge(flown.snapshot, standing.key, setting);
  auto hooksAre = hooksOf(flown.snapshot, flown.after);
  if (wish.trimM) {
    hooksAre = hooksAre ? std::optional(*hooksAre + *wish.trimM - setting.trimM) : std::nullopt;
    setting.trimM = *wish.trimM;
    flown.after = options::judge(flown.snapshot, standing.key, setting);
  } else if (hooksWere && hooksAre && std::abs(*hooksAre - *hooksWere) > 1e-9) {
    setting.trimM += *hooksWere - *hooksAre;
    hooksAre = hooksWere;
    flown.after = options::judge(flown.snapshot, standing.key, setting);
  }
  if (!flown.after.setting) {
    const auto* why = findIn(flown.after.findings, [](const options::Finding& each) {
      return each.applies && each.verdict >= options::Verdict::unproven;
    });
    throw Error(Trouble::notPossible,
                "no such setting is possible" + (why ? ": " + why->text.toStdString() : std::string()));
  }
  flown.moves = std::abs(setting.tiltDeg - standing.setting.tiltDeg) >= least ||
                std::abs(setting.panDeg - standing.setting.panDeg) >= least ||
                std::abs(setting.trimM - standing.setting.trimM) >= least;
  Changes wind;
  const auto speedOf = [](const options::Snapshot& of) {
    return of.show.wind ? std::optional(inMetresPerSecond(*of.show.wind)) : std::nullopt;
  };
  wind.figure(QStringLiteral("wind that it is to stand in"), speedOf(snapshot), speedOf(flown.snapshot),
              "m/s");
  flown.changes = changesBetween(flown.before, flown.after);
  flown.changes.insert(flown.changes.begin(), wind.all.begin(), wind.all.end());
  const auto* hang =
      findIn(snapshot.show.hangs, [&](const calendar::Hang& each) { return each.name == standing.hang; });
  flown.steps = stepsOf(flown, hang != nullptr ? *hang : calendar::Hang{},
                        hooksWere && hooksAre ? std::optional(*hooksAre - *hooksWere) : std::nullopt, units);
  return flown;
}

FlownWish wishBack(const options::Choice& standing, const options::Choice& earlier) {
  if (earlier.option != standing.option || earlier.setting.mark != standing.setting.mark ||
      earlier.setting.holesDeg != standing.setting.holesDeg) {
    throw Error(Trouble::notPossible,
                "the setting before was built otherwise: it is reached on the ground alone, by choosing it");
  }
  FlownWish wish{earlier.setting.tiltDeg, earlier.setting.panDeg, earlier.setting.trimM, {}};
  const QJsonValue wind = QJsonDocument::fromJson(earlier.frozen)
                              .object()
                              .value(QLatin1String("inputs"))
                              .toObject()
                              .value(QLatin1String("show"))
                              .toObject()
                              .value(QLatin1String("wind_m_per_s"));
  if (wind.isDouble()) {
    wish.windMps = wind.toDouble();
  }
  return wish;
}

} // namespace hangbook::build
