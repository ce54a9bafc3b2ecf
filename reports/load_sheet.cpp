// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "reports/hung_table.h"
#include "reports/parts.h"
#include "reports/rig_tables.h"

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

/// A sum that leaves out a hang for which nothing is chosen would be read as the whole.
Table::Row unknownRow(const QString& of, const QString& hang) {
  Table::Row row;
  row.cells = QStringList{of, hang, notKnown(), notKnown(), notKnown(), notKnown(), {}, {}};
  row.strong = row.warn = true;
  return row;
}

Table pointsTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("points");
  table.title = QStringLiteral("Loads on the points");
  table.note =
      QStringLiteral("At rest and dynamic: every figure as stated. Worst: every figure at its unfavourable "
                     "end (masses, centres of gravity, lengths and the like as far off as their makers, the "
                     "crew's scales or the house say they may be); the rules judge by it, so plan with it. "
                     "Totals add up each point's own worst, which need not all come at once.");
  table.columns = {{QStringLiteral("Point"), 0.9, false},   {QStringLiteral("Hang"), 0.9, false},
                   {QStringLiteral("At rest"), 1.1, true},  {QStringLiteral("At rest, worst"), 1.1, true},
                   {QStringLiteral("Dynamic"), 1.1, true},  {QStringLiteral("Dynamic, worst"), 1.15, true},
                   {QStringLiteral("Sideways"), 1.2, true}, {QStringLiteral("Capacity"), 2.0, true}};
  Loads total;
  bool whole = true; // else nobody knows what hangs in all
  for (const HangAsIs& hang : show.hangs) {
    if (!hang.now) {
      whole = false;
      table.rows.push_back(unknownRow(notKnown(), hang.hang));
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
  table.rows.push_back(whole ? totalRow(QStringLiteral("all"), total, figures)
                             : unknownRow(QStringLiteral("total"), QStringLiteral("all")));
  return table;
}

Table placesTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("places");
  table.title = QStringLiteral("Where the points are");
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

Table approvalTable(const ShowAsIs& show, const Figures& figures) {
  Table table;
  table.name = QStringLiteral("approval");
  table.title = QStringLiteral("The venue's approval, point by point");
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
  sheet.blocks.emplace_back(datumText(show));
  if (const auto wind = windText(show, figures)) {
    sheet.blocks.emplace_back(*wind);
  }
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
  const auto addFilled = [&sheet](const Table& table) {
    if (!table.rows.empty()) { // a heading over nothing looks like a page that went missing
      sheet.blocks.emplace_back(table);
    }
  };
  sheet.blocks.emplace_back(pointsTable(show, figures));
  addFilled(placesTable(show, figures));
  if (std::ranges::any_of(show.hangs, [](const HangAsIs& hang) { return hang.now.has_value(); })) {
    sheet.blocks.emplace_back(planOf(show));
  }
  addFilled(hoistsTable(show, figures));
  addFilled(bridlesTable(show, figures));
  addFilled(windTable(show, figures));
  addFilled(windLegsTable(show, figures));
  addFilled(weightsTable(show, figures));
  addFilled(hungTable(show, figures));
  for (const HangAsIs& hang : show.hangs) {
    if (hang.now && hang.now->setting) {
      sheet.blocks.emplace_back(elevationOf(show, *hang.now, figures));
    }
  }
  addFilled(approvalTable(show, figures));
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
