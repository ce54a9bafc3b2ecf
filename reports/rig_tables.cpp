// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/rig_tables.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "reports/parts.h"

namespace hangbook::reports {
namespace {

/// The hoist's link of the load path at a pick; none where its worst does not follow.
const options::PathLink* hoistLink(const options::Option& option, const QString& pick) {
  const auto found = std::ranges::find_if(option.loadPath, [&pick](const options::PathLink& link) {
    return link.kind == QLatin1String("hoist") && link.at == pick + QStringLiteral(" pick");
  });
  return found != option.loadPath.end() && worstFollows(option) ? &*found : nullptr;
}

} // namespace

Table hoistsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("hoists");
  table.title = QStringLiteral("Hoists");
  table.note =
      QStringLiteral("On the hook: at rest, as set, every figure as stated. Hoist, worst: every figure at "
                     "its unfavourable end, the most that its pick carries at any step of the build and of "
                     "aiming, with the factors that the rule for hoists states and, where it climbs, with "
                     "its own body, chain and bag; its limit is what that is held against.");
  table.columns = {{QStringLiteral("Hang"), 0.7, false},
                   {QStringLiteral("Pick"), 0.7, false},
                   {QStringLiteral("Point"), 0.8, false},
                   {QStringLiteral("Hoist"), 1.8, false},
                   {QStringLiteral("On the hook"), 1.0, true},
                   {QStringLiteral("Hoist, worst"), 1.0, true},
                   {QStringLiteral("Its limit"), 1.0, true},
                   {QStringLiteral("Rigging, from the point down"), 3.2, false}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    QStringList rigging;
    for (const calendar::Hang& each : show.snapshot.show.hangs) {
      if (each.name == hang.hang) {
        rigging = each.rigging;
      }
    }
    const auto* hoist = catalogue::find(show.snapshot.catalogue.hoists, hang.now->key.hoist);
    for (const options::PickLoad& pick : hang.now->pickLoads) {
      const options::PathLink* link = hoistLink(*hang.now, pick.name);
      const std::optional<double> stated =
          hoist != nullptr && hoist->limit ? std::optional(inKilonewtons(*hoist->limit)) : std::nullopt;
      Table::Row row;
      row.cells = {hang.hang,
                   pick.name,
                   pick.points.join(QStringLiteral(", ")),
                   hang.now->key.hoist,
                   figures.force(pick.loadKn),
                   figures.force(link != nullptr ? std::optional(link->loadKn) : std::nullopt),
                   figures.force(link != nullptr ? link->limitKn : stated),
                   rigging.isEmpty() ? notKnown() : rigging.join(QStringLiteral(", "))};
      row.warn = rigging.isEmpty() || link == nullptr || !link->limitKn || !std::isfinite(link->loadKn);
      table.rows.push_back(row);
    }
  }
  return table;
}

Table bridlesTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("bridles");
  table.title = QStringLiteral("Bridles, leg by leg");
  table.note =
      QStringLiteral("Length as made up, pull and sideways at the leg's upper end, at rest, every figure as "
                     "stated; angle above the horizontal.");
  table.columns = {{QStringLiteral("Hang"), 0.8, false},   {QStringLiteral("Pick"), 0.8, false},
                   {QStringLiteral("Leg to"), 0.9, false}, {QStringLiteral("Length"), 1.1, true},
                   {QStringLiteral("Pull"), 1.1, true},    {QStringLiteral("Sideways"), 1.1, true},
                   {QStringLiteral("Angle"), 0.9, true},   {QStringLiteral("Made up from"), 2.8, false}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    for (const options::BridleResult& bridle : hang.now->bridles) {
      for (const options::BridleLegResult& leg : bridle.legs) {
        QStringList pieces;
        for (const options::HardwareCount& piece : leg.pieces) {
          pieces << QStringLiteral("%1 × %2").arg(piece.count).arg(piece.type);
        }
        Table::Row row;
        row.cells = {hang.hang,
                     bridle.pick,
                     leg.point,
                     figures.length(leg.lengthM),
                     figures.force(leg.tensionKn),
                     figures.force(leg.horizontalKn),
                     figures.slope(leg.fromHorizontalDeg),
                     pieces.join(QStringLiteral(", "))};
        table.rows.push_back(row);
      }
    }
  }
  return table;
}

Table windTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("wind");
  table.title = QStringLiteral("Wind");
  table.note = QStringLiteral(
      "Most force: on the whole hang in the gust that the show states, from the direction that "
      "gives most; a limit is passed: the least gust, at the height of the picks, at which one of "
      "the limits entered is.");
  table.columns = {{QStringLiteral("Hang"), 0.8, false},       {QStringLiteral("Gust"), 1.0, true},
                   {QStringLiteral("Picks at"), 1.0, true},    {QStringLiteral("Most force"), 1.1, true},
                   {QStringLiteral("Chains lean"), 1.0, true}, {QStringLiteral("Limit passed at"), 1.2, true},
                   {QStringLiteral("Which limit"), 2.6, false}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now || !hang.now->wind) {
      continue;
    }
    const options::WindAnswer& wind = *hang.now->wind;
    const QStringList open = wind.missing;
    Table::Row row;
    row.cells = {hang.hang,
                 figures.speed(wind.gust),
                 figures.length(wind.heightM),
                 figures.force(wind.mostKn),
                 figures.slope(wind.leanDeg),
                 std::isinf(wind.failsAt) ? QStringLiteral("none") : figures.speed(wind.failsAt),
                 open.isEmpty() ? wind.failsBy
                                : QStringLiteral("not known: ") + open.join(QStringLiteral(", "))};
    row.warn = !open.isEmpty() || std::isnan(wind.failsAt);
    table.rows.push_back(row);
  }
  return table;
}

Table windLegsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("wind-legs");
  table.title = QStringLiteral("Legs of bridles in the gust");
  table.note =
      QStringLiteral("In the gust that the show states, each figure from the direction that is worst "
                     "for it and at the unfavourable end: most pull at the leg's upper end, where "
                     "of three legs two alone carry everything; least pull; the flattest angle above "
                     "the horizontal; what the leg's point then carries downwards, by all that hangs "
                     "from it.");
  table.columns = {{QStringLiteral("Hang"), 0.8, false},        {QStringLiteral("Bridle"), 1.0, false},
                   {QStringLiteral("Leg to"), 0.9, false},      {QStringLiteral("Most pull"), 1.1, true},
                   {QStringLiteral("Least pull"), 1.1, true},   {QStringLiteral("Angle"), 0.9, true},
                   {QStringLiteral("Point carries"), 1.2, true}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now || !hang.now->wind || !std::isfinite(hang.now->wind->gust)) {
      continue;
    }
    const options::WindAnswer& wind = *hang.now->wind;
    for (const options::WindLeg& leg : wind.legs) {
      const auto point = std::ranges::find(wind.points, leg.point, &options::WindPoint::name);
      Table::Row row;
      row.cells = {hang.hang,
                   leg.bridle,
                   leg.point,
                   figures.force(leg.mostKn),
                   figures.force(leg.leastKn),
                   figures.slope(leg.fromHorizontalDeg),
                   figures.force(point == wind.points.end() ? std::nullopt : std::optional(point->downKn))};
      row.warn = !(leg.leastKn > 0.0) || !std::isfinite(leg.mostKn);
      table.rows.push_back(row);
    }
  }
  return table;
}

Table weightsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("weights");
  table.title = QStringLiteral("Weights");
  table.columns = {{QStringLiteral("Hang"), 0.8, false},
                   {QStringLiteral("What"), 3.0, false},
                   {QStringLiteral("Number"), 0.8, true},
                   {QStringLiteral("Each"), 1.2, true},
                   {QStringLiteral("Together"), 1.2, true}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    const auto add = [&](const QString& what, int number, std::optional<double> each) {
      table.rows.push_back({{hang.hang, what, QString::number(number), figures.mass(each),
                             figures.mass(each ? std::optional(*each * number) : std::nullopt)},
                            false,
                            false,
                            !each});
    };
    std::map<QString, int> numbers;
    for (const QString& type : hang.now->key.stack) {
      ++numbers[type];
    }
    for (const auto& [type, number] : numbers) {
      const auto* cabinet = catalogue::find(show.snapshot.catalogue.cabinets, type);
      add(type, number,
          cabinet != nullptr && cabinet->mass ? std::optional(inKilograms(*cabinet->mass)) : std::nullopt);
    }
    const auto* bar = catalogue::find(show.snapshot.catalogue.bars, hang.now->key.bar);
    add(hang.now->key.bar, 1,
        bar != nullptr && bar->frameMass ? std::optional(inKilograms(*bar->frameMass) +
                                                         (bar->headMass ? inKilograms(*bar->headMass) : 0.0))
                                         : std::nullopt);
    for (const calendar::Hang& each : show.snapshot.show.hangs) {
      if (each.name == hang.hang) {
        add(QStringLiteral("cable and its clamp"), 1,
            each.cableMass ? std::optional(inKilograms(*each.cableMass)) : std::nullopt);
      }
    }
    table.rows.push_back({{hang.hang,
                           QStringLiteral("all below the hooks, chain to the bar included"),
                           {},
                           {},
                           figures.mass(hang.now->massKg)},
                          true,
                          false,
                          false});
  }
  return table;
}

} // namespace hangbook::reports
