// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/build_table.h"

#include <cmath>

#include <QJsonObject>

#include "options/build_force.h"
#include "options/option.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

QString stageWord(hang::BuildStage stage) {
  switch (stage) {
  case hang::BuildStage::stacked:
    return QStringLiteral("stacked");
  case hang::BuildStage::chained:
    return QStringLiteral("chained");
  case hang::BuildStage::aiming:
    return QStringLiteral("aiming");
  case hang::BuildStage::set:
    break;
  }
  return QStringLiteral("set");
}

QString stepWords(const hang::BuildStep& step, const Case& option) {
  if (step.stage == hang::BuildStage::aiming) {
    return QStringLiteral("level to set, tilting and panning");
  }
  if (step.stage == hang::BuildStage::set) {
    return QStringLiteral("as set");
  }
  if (step.cabinets == 0) {
    return QStringLiteral("bar alone");
  }
  const QString count =
      step.cabinets == 1 ? QStringLiteral("1 cabinet") : QStringLiteral("%1 cabinets").arg(step.cabinets);
  if (step.stage == hang::BuildStage::chained) {
    return count + QStringLiteral(", chain on");
  }
  return option.held != 0 && step.cabinets >= option.held ? count + QStringLiteral(", chain not yet on")
                                                          : count;
}

/// The same hang, carrying at its most what it carries at one step.
Settled carrying(Settled then, std::size_t pick, double most) {
  then.build.most[pick] = most;
  then.statics.pickLoads[pick].load = most;
  return then;
}

/// Each step at the unfavourable end of what is in doubt; empty where nothing is bounded.
std::vector<hang::BuildStep> worstSteps(const Settled& worst, const Settled& settled, const Option& option,
                                        const std::vector<hang::BuildStep>& steps) {
  if (worst.doubt == nullptr) {
    return steps;
  }
  return hang::Doubting(*option.hangInput, worst.doubt->figures).steps(settled.statics, settled.build, steps);
}

QJsonValue known(double value) {
  return std::isfinite(value) ? QJsonValue(value) : QJsonValue(QJsonValue::Null);
}
double orNot(const QJsonValue& value) {
  return value.isDouble() ? value.toDouble() : notKnown;
}

} // namespace

std::vector<StepLoads> stepLoads(const Case& of, const Settled& worst, const Settled& settled, double trimM,
                                 const Option& option) {
  std::vector<StepLoads> table;
  if (!option.hangInput) {
    return table;
  }
  std::vector<hang::BuildStep> steps;
  try {
    steps = hang::buildSteps(*option.hangInput, settled.statics);
  } catch (const Error&) {
    return table; // the rules say so: the loads of the build are then not known
  }
  const std::vector<hang::BuildStep> inDoubt = worstSteps(worst, settled, option, steps);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const hang::BuildStep& step = steps[i];
    StepLoads row{stepWords(step, of), stageWord(step.stage), step.cabinets, step.mass, {}};
    for (std::size_t pick = 0; pick < settled.statics.pickCount; ++pick) {
      const Settled then = carrying(settled, pick, step.most[pick]);
      const double least = inDoubt.empty() ? notKnown : inDoubt[i].least[pick];
      const double most = inDoubt.empty() ? notKnown : inDoubt[i].most[pick];
      const Settled atWorst = carrying(worst, pick, most);
      const bool known = !std::isnan(most); // the greater of two would lose it
      row.picks.push_back({pickName(settled, pick), step.least[pick] / 1000.0, step.most[pick] / 1000.0,
                           highestLifted(of, then, trimM, pick) / 1000.0,
                           highestAtRest(of, then, trimM, pick) / 1000.0, least / 1000.0, most / 1000.0,
                           known ? highestLifted(of, atWorst, trimM, pick) / 1000.0 : notKnown,
                           known ? highestAtRest(of, atWorst, trimM, pick) / 1000.0 : notKnown});
    }
    table.push_back(std::move(row));
  }
  return table;
}

QJsonArray toJson(const std::vector<StepLoads>& table) {
  QJsonArray rows;
  for (const StepLoads& row : table) {
    QJsonArray picks;
    for (const StepPick& pick : row.picks) {
      picks.append(QJsonObject{{QStringLiteral("name"), pick.name},
                               {QStringLiteral("least_kn"), known(pick.leastKn)},
                               {QStringLiteral("most_kn"), known(pick.mostKn)},
                               {QStringLiteral("hoist_kn"), known(pick.hoistKn)},
                               {QStringLiteral("point_kn"), known(pick.pointKn)},
                               {QStringLiteral("worst_least_kn"), known(pick.worstLeastKn)},
                               {QStringLiteral("worst_most_kn"), known(pick.worstMostKn)},
                               {QStringLiteral("worst_hoist_kn"), known(pick.worstHoistKn)},
                               {QStringLiteral("worst_point_kn"), known(pick.worstPointKn)}});
    }
    rows.append(QJsonObject{{QStringLiteral("step"), row.step},
                            {QStringLiteral("stage"), row.stage},
                            {QStringLiteral("cabinets"), row.cabinets},
                            {QStringLiteral("mass_kg"), known(row.massKg)},
                            {QStringLiteral("picks"), picks}});
  }
  return rows;
}

std::vector<StepLoads> stepLoadsFromJson(const QJsonArray& rows) {
  std::vector<StepLoads> table;
  for (const auto& value : rows) {
    const QJsonObject object = value.toObject();
    StepLoads row{object.value(QLatin1String("step")).toString(),
                  object.value(QLatin1String("stage")).toString(),
                  object.value(QLatin1String("cabinets")).toInt(),
                  orNot(object.value(QLatin1String("mass_kg"))),
                  {}};
    for (const auto& each : object.value(QLatin1String("picks")).toArray()) {
      const QJsonObject pick = each.toObject();
      row.picks.push_back(
          {pick.value(QLatin1String("name")).toString(), orNot(pick.value(QLatin1String("least_kn"))),
           orNot(pick.value(QLatin1String("most_kn"))), orNot(pick.value(QLatin1String("hoist_kn"))),
           orNot(pick.value(QLatin1String("point_kn"))), orNot(pick.value(QLatin1String("worst_least_kn"))),
           orNot(pick.value(QLatin1String("worst_most_kn"))),
           orNot(pick.value(QLatin1String("worst_hoist_kn"))),
           orNot(pick.value(QLatin1String("worst_point_kn")))});
    }
    table.push_back(std::move(row));
  }
  return table;
}

} // namespace hangbook::options
