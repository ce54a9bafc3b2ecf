// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "reports/parts.h"

namespace hangbook::reports {
namespace {

using Size = Text::Size;

const venue::Point* pointNamed(const ShowAsIs& show, const QString& name) {
  const auto found = std::ranges::find(show.snapshot.venue.points, name, &venue::Point::name);
  return found == show.snapshot.venue.points.end() ? nullptr : &*found;
}

QString capacityText(const venue::Point* point, const Figures& figures) {
  if (point == nullptr || !point->capacity) {
    return notKnown();
  }
  const QString basis = point->basis == venue::Basis::atRest    ? QStringLiteral("at rest")
                        : point->basis == venue::Basis::dynamic ? QStringLiteral("dynamic")
                                                                : QStringLiteral("basis not known");
  return QStringLiteral("%1 %2").arg(figures.force(inKilonewtons(*point->capacity)), basis);
}

/// Where rules say that something does not follow (the doubts may take the hang out of a joint's travel, or a
/// step of the build is not known), what stands as its worst is only part of it: no figure, then.
bool worstFollows(const options::Option& option) {
  return std::ranges::none_of(option.findings, [](const options::Finding& finding) {
    return finding.applies && !finding.worstFollows;
  });
}

/// Loads of a point or added up; at the unfavourable end not known as soon as one of them is not.
struct Loads {
  double atRest = 0;
  double dynamic = 0;
  std::optional<double> worstAtRest = 0.0;
  std::optional<double> worstDynamic = 0.0;

  void add(const Loads& more) {
    const auto sum = [](std::optional<double> one, std::optional<double> other) {
      return one && other ? std::optional(*one + *other) : std::nullopt;
    };
    atRest += more.atRest;
    dynamic += more.dynamic;
    worstAtRest = sum(worstAtRest, more.worstAtRest);
    worstDynamic = sum(worstDynamic, more.worstDynamic);
  }
  QStringList cells(const Figures& figures) const {
    return {figures.force(atRest), figures.force(worstAtRest), figures.force(dynamic),
            figures.force(worstDynamic)};
  }
};

Table::Row totalRow(const QString& of, const Loads& loads, const Figures& figures) {
  Table::Row row;
  row.cells = QStringList{QStringLiteral("total"), of} + loads.cells(figures) + QStringList{{}, {}};
  row.strong = true;
  return row;
}

Table pointsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("points");
  table.columns = {{QStringLiteral("Point"), 0.9, false},   {QStringLiteral("Hang"), 0.9, false},
                   {QStringLiteral("At rest"), 1.1, true},  {QStringLiteral("At rest, worst"), 1.1, true},
                   {QStringLiteral("Dynamic"), 1.1, true},  {QStringLiteral("Dynamic, worst"), 1.15, true},
                   {QStringLiteral("Sideways"), 1.2, true}, {QStringLiteral("Capacity"), 2.0, true}};
  Loads total;
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    Loads sum;
    const bool follows = worstFollows(*hang.now);
    for (const options::PointResult& result : hang.now->points) {
      const venue::Point* point = pointNamed(show, result.point);
      const Loads loads{result.staticKn, result.dynamicKn, follows ? result.worstStaticKn : std::nullopt,
                        follows ? result.worstDynamicKn : std::nullopt};
      Table::Row row;
      row.cells = QStringList{result.point, hang.hang} + loads.cells(figures) +
                  QStringList{figures.force(result.horizontalKn), capacityText(point, figures)};
      row.warn = point == nullptr || !point->capacity || !loads.worstAtRest || !loads.worstDynamic;
      table.rows.push_back(row);
      sum.add(loads);
    }
    table.rows.push_back(totalRow(hang.hang, sum, figures));
    total.add(sum);
  }
  table.rows.push_back(totalRow(QStringLiteral("all"), total, figures));
  return table;
}

Table placesTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("places");
  table.columns = {{QStringLiteral("Point"), 0.9, false},
                   {QStringLiteral("Hang"), 0.9, false},
                   {QStringLiteral("x, to the audience"), 1.6, true},
                   {QStringLiteral("y, to stage left"), 1.6, true},
                   {QStringLiteral("Height"), 1.6, true}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    for (const options::PointResult& result : hang.now->points) {
      const venue::Point* point = pointNamed(show, result.point);
      const auto metres = [&](Length venue::Point::*of) {
        return figures.length(point != nullptr ? std::optional(inMetres(point->*of)) : std::nullopt);
      };
      Table::Row row;
      row.cells = {result.point, hang.hang, metres(&venue::Point::x), metres(&venue::Point::y),
                   metres(&venue::Point::z)};
      row.warn = point == nullptr;
      table.rows.push_back(row);
    }
  }
  return table;
}

/// The hoist's link of the load path at a pick; none where its worst does not follow.
const options::PathLink* hoistLink(const options::Option& option, const QString& pick) {
  const auto found = std::ranges::find_if(option.loadPath, [&pick](const options::PathLink& link) {
    return link.kind == QLatin1String("hoist") && link.at == pick + QStringLiteral(" pick");
  });
  return found != option.loadPath.end() && worstFollows(option) ? &*found : nullptr;
}

Table hoistsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("hoists");
  table.columns = {{QStringLiteral("Hang"), 0.8, false},
                   {QStringLiteral("Pick"), 0.8, false},
                   {QStringLiteral("Point"), 0.9, false},
                   {QStringLiteral("Hoist"), 1.6, false},
                   {QStringLiteral("On the hook"), 1.2, true},
                   {QStringLiteral("Hoist, worst"), 1.2, true},
                   {QStringLiteral("Its limit"), 1.2, true},
                   {QStringLiteral("Rigging, from the point down"), 2.6, false}};
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

Table weightsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("weights");
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

Table approvalTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("approval");
  table.columns = {
      {QStringLiteral("Point"), 1.0, false},    {QStringLiteral("Asked for: dynamic, worst"), 1.3, true},
      {QStringLiteral("On file"), 3.0, false},  {QStringLiteral("Approved"), 1.3, false},
      {QStringLiteral("Revision"), 1.0, false}, {QStringLiteral("Name, date"), 1.6, false}};
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      continue;
    }
    for (const options::PointResult& result : hang.now->points) {
      const venue::Point* point = pointNamed(show, result.point);
      const QString source = point == nullptr || point->source.text.isEmpty()
                                 ? notKnown()
                                 : QStringLiteral("%1 (%2, %3)")
                                       .arg(capacityText(point, figures), point->source.text,
                                            point->source.date.toString(Qt::ISODate));
      table.rows.push_back(
          {{result.point, figures.force(worstFollows(*hang.now) ? result.worstDynamicKn : std::nullopt),
            source, QStringLiteral("................"), QStringLiteral(".........."),
            QStringLiteral("....................")},
           false,
           false,
           false});
    }
  }
  return table;
}

} // namespace

Sheet loadSheet(const ShowAsIs& show, const Figures& figures) {
  Sheet sheet = begun(QStringLiteral("load-sheet"), QStringLiteral("Load sheet"), show);
  const venue::Venue& venue = show.snapshot.venue;
  sheet.blocks.emplace_back(
      Text{Size::body,
           QStringLiteral("Datum: %1. x towards the audience, y to stage left, heights above the datum.")
               .arg(venue.datum.isEmpty() ? notKnown() : venue.datum)});
  for (const HangAsIs& hang : show.hangs) {
    if (hang.outdated) {
      sheet.blocks.emplace_back(
          Text{Size::body,
               QStringLiteral("Hang %1: what it was chosen from has changed since (the other hangs' choices "
                              "are part of that); the figures here are computed from today's.")
                   .arg(hang.hang)});
    }
    if (hang.now) {
      sheet.blocks.emplace_back(
          Text{Size::body, QStringLiteral("Hang %1: %2 on %3, %4.")
                               .arg(hang.hang, stackText(hang.now->key.stack), hang.now->key.bar,
                                    options::wordFor(hang.now->key.picks))});
    }
  }
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("Loads on the points")});
  sheet.blocks.emplace_back(
      Text{Size::body,
           QStringLiteral("At rest and dynamic: every figure as stated. Worst: every figure at its "
                          "unfavourable end (masses, centres of gravity, lengths and the like as far off as "
                          "their makers, the crew's scales or the house say they may be); the rules judge "
                          "by it, so plan with it. Totals add up each point's own worst, which need not "
                          "all come at once.")});
  sheet.blocks.emplace_back(pointsTable(show, figures));
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("Where the points are")});
  sheet.blocks.emplace_back(placesTable(show, figures));
  sheet.blocks.emplace_back(planOf(show));
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("Hoists")});
  sheet.blocks.emplace_back(
      Text{Size::body,
           QStringLiteral(
               "On the hook: at rest, as set, every figure as stated. Hoist, worst: every figure at its "
               "unfavourable end, the most that its pick carries at any step of the build and of "
               "aiming, with the factors that the rule for hoists states and, where it climbs, with "
               "its own body, chain and bag; its limit is what that is held against.")});
  sheet.blocks.emplace_back(hoistsTable(show, figures));
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("Weights")});
  sheet.blocks.emplace_back(weightsTable(show, figures));
  for (const HangAsIs& hang : show.hangs) {
    if (hang.now && hang.now->setting) {
      sheet.blocks.emplace_back(elevationOf(show, *hang.now, figures));
    }
  }
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("The venue's approval, point by point")});
  sheet.blocks.emplace_back(approvalTable(show, figures));
  sheet.blocks.emplace_back(Text{Size::heading, QStringLiteral("Cautions")});
  for (const char* caution : {"Loads at rest: pick, hoist, its whole chain and bag, rigging, secondary "
                              "steel. Dynamic: with the factor for "
                              "starting and stopping.",
                              "Building, truss and dynamic response of the structure are not in these "
                              "figures; they belong to the engineer who "
                              "owns them.",
                              "“Holds” means within the limits entered here. It is no permission to lift.",
                              "A figure marked “not known” was stated by nobody: it is not zero."}) {
    sheet.blocks.emplace_back(Text{Size::body, QStringLiteral("– %1").arg(QString::fromUtf8(caution))});
  }
  return sheet;
}

} // namespace hangbook::reports
