// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/build_json.h"

#include <QJsonArray>

#include "terminal/chosen.h"
#include "terminal/figures.h"
#include "terminal/options_table.h"

namespace hangbook::terminal {
namespace {

QJsonValue wordOrNull(const QString& text) {
  return text.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(text);
}

QJsonArray plugsOf(const build::Step& step) {
  QJsonArray list;
  for (const build::Plugged& plug : step.plugs) {
    list.append(QJsonObject{{QStringLiteral("socket"), wordOrNull(plug.socket)},
                            {QStringLiteral("loom"), wordOrNull(plug.loom)},
                            {QStringLiteral("label"), wordOrNull(plug.label)},
                            {QStringLiteral("end"), wordOrNull(plug.end)},
                            {QStringLiteral("connector"), wordOrNull(plug.connector)},
                            {QStringLiteral("colour"), wordOrNull(plug.colour)},
                            {QStringLiteral("reach_m"), jsonFigure(plug.reach)},
                            {QStringLiteral("rack"), wordOrNull(plug.rack)},
                            {QStringLiteral("channel"), wordOrNull(plug.channel)}});
  }
  return list;
}

QJsonObject inJson(const build::Step& step) {
  return {
      {QStringLiteral("number"), step.number},
      {QStringLiteral("hang"), step.hang},
      {QStringLiteral("kind"), build::wordFor(step.kind)},
      {QStringLiteral("what"), step.what},
      {QStringLiteral("people"), step.people},
      {QStringLiteral("nobody_beneath"), step.nobodyBeneath},
      {QStringLiteral("element"), step.element > 0 ? QJsonValue(step.element) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("cabinet"), wordOrNull(step.cabinet)},
      {QStringLiteral("cart"), wordOrNull(step.cart)},
      {QStringLiteral("across_to"), wordOrNull(step.across)},
      {QStringLiteral("hole"), wordOrNull(step.hole)},
      {QStringLiteral("pins_a_side"), step.pinsASide},
      {QStringLiteral("gate"), wordOrNull(step.gate)},
      {QStringLiteral("plugs"), plugsOf(step)},
      {QStringLiteral("mark"), step.mark ? QJsonValue(*step.mark) : QJsonValue(QJsonValue::Null)},
      {QStringLiteral("move_m"), jsonFigure(step.move)},
      {QStringLiteral("hooks_m"), jsonFigure(step.hooks)},
      {QStringLiteral("lowest_m"), jsonFigure(step.lowest)},
      {QStringLiteral("clears_m"), jsonFigure(step.clears)},
      {QStringLiteral("missing"), QJsonArray::fromStringList(step.missing)}};
}

QJsonArray stepsOf(const std::vector<build::Step>& steps, const QString& hang) {
  QJsonArray list;
  for (const build::Step& step : steps) {
    if (hang.isEmpty() || step.hang == hang) {
      list.append(inJson(step));
    }
  }
  return list;
}

QJsonArray cartsOf(const build::Plan& plan) {
  QJsonArray list;
  for (const build::CartRide& ride : plan.carts) {
    QJsonArray columns;
    for (const auto& column : ride.columns) {
      QJsonArray places;
      for (const build::CartRide::Place& place : column) {
        places.append(QJsonObject{{QStringLiteral("hang"), plan.hangs[place.hang]},
                                  {QStringLiteral("element"), place.element + 1}});
      }
      columns.append(places);
    }
    list.append(QJsonObject{{QStringLiteral("name"), ride.name},
                            {QStringLiteral("type"), wordOrNull(ride.type)},
                            {QStringLiteral("cabinet"), ride.cabinet},
                            {QStringLiteral("hangs"), QJsonArray::fromStringList(ride.hangs)},
                            {QStringLiteral("columns"), columns}});
  }
  return list;
}

} // namespace

ToBuild toBuild(const options::Snapshot& snapshot) {
  ToBuild made;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    const Chosen chosen = chosenFor(snapshot, hang.name);
    if (chosen.choice == nullptr) {
      made.notCleared << QStringLiteral("hang %1: nothing is chosen").arg(hang.name);
      continue;
    }
    if (!chosen.now) {
      made.notCleared << QStringLiteral("hang %1: %2").arg(hang.name, chosen.trouble);
      continue;
    }
    if (chosen.now->verdict == options::Verdict::fails || chosen.now->verdict == options::Verdict::unproven) {
      made.notCleared << QStringLiteral("hang %1 %2 today (%3)")
                             .arg(hang.name, options::wordFor(chosen.now->verdict),
                                  decidingRules(*chosen.now).join(QStringLiteral(", ")));
    }
    made.options.push_back(*chosen.now);
  }
  return made;
}

QJsonObject buildJson(const build::Plan& plan, const ToBuild& of, const QString& hang) {
  return {{QStringLiteral("format"), QStringLiteral("hangbook.build/1")},
          {QStringLiteral("show"), plan.show},
          {QStringLiteral("standing"), build::wordFor(plan.standing)},
          {QStringLiteral("not_cleared"), QJsonArray::fromStringList(of.notCleared)},
          {QStringLiteral("not_possible"), QJsonArray::fromStringList(plan.impossible)},
          {QStringLiteral("missing"), QJsonArray::fromStringList(plan.missing)},
          {QStringLiteral("cautions"), QJsonArray::fromStringList(plan.cautions)},
          {QStringLiteral("carts"), cartsOf(plan)},
          {QStringLiteral("steps"), stepsOf(plan.steps, hang)},
          {QStringLiteral("load_out"), stepsOf(plan.loadOut, hang)}};
}

} // namespace hangbook::terminal
