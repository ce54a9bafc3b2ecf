// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <cmath>
#include <numbers>

#include <QTimeZone>

#include "exchange/basis.h"
#include "exchange/house_sorts.h"
#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace venue;

const std::vector<Venue>& venuesOf(const Data& data) {
  return data.venues;
}

template <class Value>
QString labelOf(const Value& value) {
  return value.name;
}

template <class Value>
Handling<Part<Value>> handlingOf(const char* word, std::vector<Value> Venue::*list,
                                 QString (*label)(const Value&) = labelOf<Value>) {
  return partHandling<Venue, Value>(word, "venue", &Work::venues, venuesOf, list, label);
}

template <class Value>
std::unique_ptr<Sort> made(const char* word, Columns<Part<Value>> columns, Handling<Part<Value>> handling) {
  return std::make_unique<SortOf<Part<Value>>>(word, std::move(columns), std::move(handling));
}

void mustNotFall(const At& at, const char* heading, std::optional<Length> from, std::optional<Length> to) {
  if (from && to && *from > *to) {
    const QString name = QString::fromLatin1(heading);
    at.fault(name, at.cell(name), "no less than where it begins");
  }
}

std::unique_ptr<Sort> venueSort() {
  using Line = Venue;
  Columns<Line> columns = {
      name<Line>("name", HANGBOOK_FIELD(name)),
      text<Line>("town", HANGBOOK_FIELD(town)),
      text<Line>("time zone", HANGBOOK_FIELD(timeZone), Need::needed),
      number<Line>("latitude", "°", HANGBOOK_FIELD(latitude), Bound::latitude),
      number<Line>("longitude", "°", HANGBOOK_FIELD(longitude), Bound::longitude),
      text<Line>("datum", HANGBOOK_FIELD(datum)),
      yesNo<Line>("outdoors", HANGBOOK_FIELD(outdoors)),
      figure<Line>("low steel", "m", HANGBOOK_FIELD(lowSteel), Bound::height),
      figure<Line>("least trim", "m", HANGBOOK_FIELD(leastTrim), Bound::height),
      figure<Line>("most trim", "m", HANGBOOK_FIELD(mostTrim), Bound::height),
      text<Line>("access", HANGBOOK_FIELD(access)),
      text<Line>("source", HANGBOOK_FIELD(source.text)),
      date<Line>("source date", HANGBOOK_FIELD(source.date)),
  };
  auto handling = recordHandling<Line>(
      &Work::venues, [](const Line& line) { return line.name; }, venuesOf);
  handling.check = [](Work&, const Line& line, const At& at) {
    if (!QTimeZone::isTimeZoneIdAvailable(line.timeZone.toUtf8())) {
      at.fault("time zone", line.timeZone, "an IANA name such as Europe/London");
    }
    mustNotFall(at, "most trim", line.leastTrim, line.mostTrim);
  };
  return std::make_unique<SortOf<Line>>("venue", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> pointSort() {
  using Line = Part<Point>;
  auto handling = handlingOf<Point>("point", &Venue::points);
  handling.check = [](Work& work, const Line& line, const At& at) {
    const Venue* venue = work.venues.find(line.parent);
    if (!line.value.zone.isEmpty() && !std::ranges::count(venue->zones, line.value.zone, &Zone::name)) {
      at.fault("zone", line.value.zone, "a zone of this venue that is in this file or in the store");
    }
  };
  return made<Point>("point",
                     {
                         name<Line>("venue", HANGBOOK_FIELD(parent)),
                         name<Line>("name", HANGBOOK_FIELD(value.name)),
                         figure<Line>("x", "m", HANGBOOK_FIELD(value.x), Bound::venuePlace, Need::needed),
                         figure<Line>("y", "m", HANGBOOK_FIELD(value.y), Bound::venuePlace, Need::needed),
                         figure<Line>("z", "m", HANGBOOK_FIELD(value.z), Bound::height, Need::needed),
                         figure<Line>("capacity", "kN", HANGBOOK_FIELD(value.capacity), Bound::force),
                         word<Line>("basis", HANGBOOK_FIELD(value.basis), bases),
                         text<Line>("zone", HANGBOOK_FIELD(value.zone)),
                         text<Line>("source", HANGBOOK_FIELD(value.source.text)),
                         date<Line>("source date", HANGBOOK_FIELD(value.source.date)),
                     },
                     std::move(handling));
}

void checkBridle(Work& work, const Part<Bridle>& line, const At& at) {
  const Venue* venue = work.venues.find(line.parent);
  const Bridle& bridle = line.value;
  QStringList seen;
  for (const QString& each : bridle.points) {
    if (!std::ranges::count(venue->points, each, &Point::name) || seen.contains(each)) {
      at.fault("points", each, "two or three points of this venue, each once");
    }
    seen.append(each);
  }
  if (bridle.points.size() < 2 || bridle.points.size() > 3) {
    at.fault("points", at.cell("points"), "two or three points of this venue, each once");
  }
  if (std::ranges::count(venue->points, bridle.name, &Point::name)) {
    at.fault("name", bridle.name, "a name that none of the venue's points has");
  }
  if (bridle.x.has_value() != bridle.y.has_value()) {
    at.fault("x", at.cell("x"), "x and y of the apex, or neither (midway between the points)");
  }
}

std::unique_ptr<Sort> bridleSort() {
  using Line = Part<Bridle>;
  auto handling = handlingOf<Bridle>("bridle", &Venue::bridles);
  handling.check = checkBridle;
  return made<Bridle>("bridle",
                      {
                          name<Line>("venue", HANGBOOK_FIELD(parent)),
                          name<Line>("name", HANGBOOK_FIELD(value.name)),
                          list<Line>("points", HANGBOOK_FIELD(value.points)),
                          figure<Line>("x", "m", HANGBOOK_FIELD(value.x), Bound::venuePlace),
                          figure<Line>("y", "m", HANGBOOK_FIELD(value.y), Bound::venuePlace),
                          figure<Line>("z", "m", HANGBOOK_FIELD(value.z), Bound::height, Need::needed),
                          list<Line>("steels", HANGBOOK_FIELD(value.steels)),
                          text<Line>("shackle", HANGBOOK_FIELD(value.shackle)),
                          figure<Line>("tolerance", "m", HANGBOOK_FIELD(value.tolerance), Bound::smallLength),
                          text<Line>("source", HANGBOOK_FIELD(value.source.text)),
                          date<Line>("source date", HANGBOOK_FIELD(value.source.date)),
                      },
                      std::move(handling));
}

std::unique_ptr<Sort> zoneSort() {
  using Line = Part<Zone>;
  return made<Zone>("zone",
                    {
                        name<Line>("venue", HANGBOOK_FIELD(parent)),
                        name<Line>("name", HANGBOOK_FIELD(value.name)),
                        figure<Line>("capacity", "kN", HANGBOOK_FIELD(value.capacity), Bound::force),
                        word<Line>("basis", HANGBOOK_FIELD(value.basis), bases),
                        figure<Line>("others' load", "kN", HANGBOOK_FIELD(value.othersLoad), Bound::force),
                        text<Line>("others' load by", HANGBOOK_FIELD(value.othersBy)),
                        date<Line>("others' load on", HANGBOOK_FIELD(value.othersOn)),
                    },
                    handlingOf<Zone>("zone", &Venue::zones));
}

std::unique_ptr<Sort> obstructionSort() {
  using Line = Part<Obstruction>;
  auto handling = handlingOf<Obstruction>("obstruction", &Venue::obstructions);
  handling.check = [](Work&, const Line& line, const At& at) {
    mustNotFall(at, "x to", line.value.xFrom, line.value.xTo);
    mustNotFall(at, "y to", line.value.yFrom, line.value.yTo);
  };
  return made<Obstruction>(
      "obstruction",
      {
          name<Line>("venue", HANGBOOK_FIELD(parent)),
          name<Line>("name", HANGBOOK_FIELD(value.name)),
          figure<Line>("x from", "m", HANGBOOK_FIELD(value.xFrom), Bound::venuePlace, Need::needed),
          figure<Line>("x to", "m", HANGBOOK_FIELD(value.xTo), Bound::venuePlace, Need::needed),
          figure<Line>("y from", "m", HANGBOOK_FIELD(value.yFrom), Bound::venuePlace, Need::needed),
          figure<Line>("y to", "m", HANGBOOK_FIELD(value.yTo), Bound::venuePlace, Need::needed),
          figure<Line>("underside", "m", HANGBOOK_FIELD(value.underside), Bound::height, Need::needed),
      },
      std::move(handling));
}

/// The floor of a section, first row to last.
Column<Part<Section>> profileColumn() {
  Column<Part<Section>> column;
  column.name = QStringLiteral("profile");
  column.unit = "m";
  column.need = Need::needed;
  column.read = [](Part<Section>& line, const Cell& cell) {
    const auto places = readPlaces(cell, Bound::venuePlace);
    std::vector<ProfilePoint> profile;
    for (const auto& place : places) {
      if (!profile.empty() && place.x <= profile.back().x) {
        throw Unreadable{cell.text, QStringLiteral("places from the first row to the last, x rising")};
      }
      profile.push_back({place.x, place.z});
    }
    if (profile.size() < 2) {
      throw Unreadable{cell.text, QStringLiteral("two places or more, x z; x z")};
    }
    line.value.profile = profile;
  };
  column.clear = [](Part<Section>& line) { line.value.profile.clear(); };
  column.write = [](const Part<Section>& line) {
    std::vector<catalogue::Position> places;
    for (const ProfilePoint& point : line.value.profile) {
      places.push_back({point.x, point.z});
    }
    return writePlaces(places);
  };
  column.checkHeading = detail::lengthUnit();
  return column;
}

/// A front line is whole or not there, and its rows must not reach through the centre of its arc.
void checkFront(const Section& section, const At& at) {
  if (!section.swept()) {
    return;
  }
  const std::array<std::pair<const char*, bool>, 5> parts{{{"front x", section.frontX.has_value()},
                                                           {"front y", section.frontY.has_value()},
                                                           {"bearing", section.bearing.has_value()},
                                                           {"width", section.width.has_value()},
                                                           {"radius", section.radius.has_value()}}};
  bool whole = true;
  for (const auto& [name, there] : parts) {
    if (!there) {
      at.fault(QString::fromUtf8(name), {},
               "a figure: a front line needs front x, front y, bearing, width and radius (0 = straight)");
      whole = false;
    }
  }
  for (const auto& [name, there] :
       {std::pair{"y from", section.yFrom.has_value()}, std::pair{"y to", section.yTo.has_value()}}) {
    if (there) {
      at.fault(QString::fromUtf8(name), at.cell(QString::fromUtf8(name)),
               "nothing, since the front line says how wide the section is");
    }
  }
  if (!whole || *section.radius == metres(0.0) || section.profile.empty()) {
    return;
  }
  const double radius = inMetres(*section.radius);
  const double nearest = radius + inMetres(section.profile.front().x);
  const double farthest = radius + inMetres(section.profile.back().x);
  if (radius > 0.0 ? nearest <= 0.0 : farthest >= 0.0) {
    at.fault("radius", at.cell("radius"), "a centre that no row reaches");
  }
  if (inMetres(*section.width) > 2.0 * std::numbers::pi * std::abs(radius)) {
    at.fault("width", at.cell("width"), "no more than once round the centre");
  }
}

std::unique_ptr<Sort> sectionSort() {
  using Line = Part<Section>;
  auto handling = handlingOf<Section>("section", &Venue::sections);
  handling.check = [](Work&, const Line& line, const At& at) {
    mustNotFall(at, "y to", line.value.yFrom, line.value.yTo);
    checkFront(line.value, at);
  };
  return made<Section>("section",
                       {
                           name<Line>("venue", HANGBOOK_FIELD(parent)),
                           name<Line>("name", HANGBOOK_FIELD(value.name)),
                           profileColumn(),
                           figure<Line>("ear height", "m", HANGBOOK_FIELD(value.earHeight), Bound::size),
                           figure<Line>("y from", "m", HANGBOOK_FIELD(value.yFrom), Bound::venuePlace),
                           figure<Line>("y to", "m", HANGBOOK_FIELD(value.yTo), Bound::venuePlace),
                           figure<Line>("front x", "m", HANGBOOK_FIELD(value.frontX), Bound::venuePlace),
                           figure<Line>("front y", "m", HANGBOOK_FIELD(value.frontY), Bound::venuePlace),
                           figure<Line>("bearing", "°", HANGBOOK_FIELD(value.bearing), Bound::angle),
                           figure<Line>("width", "m", HANGBOOK_FIELD(value.width), Bound::rowLength),
                           figure<Line>("radius", "m", HANGBOOK_FIELD(value.radius), Bound::venuePlace),
                       },
                       std::move(handling));
}

std::unique_ptr<Sort> houseSort() {
  using Line = Part<HouseFigure>;
  auto handling = handlingOf<HouseFigure>("house rule", &Venue::house, labelOfHouse);
  handling.check = [](Work&, const Line& line, const At& at) { checkHouseFigure(at, line.value); };
  return made<HouseFigure>("house rule", houseColumns<Line>({name<Line>("venue", HANGBOOK_FIELD(parent))}),
                           std::move(handling));
}

} // namespace

const Sorts& venueSorts() {
  static const Sorts sorts = [] {
    Sorts all;
    all.push_back(venueSort());
    all.push_back(pointSort());
    all.push_back(bridleSort());
    all.push_back(zoneSort());
    all.push_back(obstructionSort());
    all.push_back(sectionSort());
    all.push_back(houseSort());
    return all;
  }();
  return sorts;
}

} // namespace hangbook::exchange
