// SPDX-License-Identifier: GPL-3.0-or-later
// Every house figure as stated by tours, venues and shows, signed and not, and the plan of swept sections,
// against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "kept/kept.h"
#include "kept/unlike_show.h"
#include "options/house_figures.h"
#include "options/seating.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::House;
using options::HouseFigureKind;
using options::HouseValue;

namespace {

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

venue::HouseFigure statement(const HouseFigureKind& kind, Chance& by) {
  const double usual = kind.usual.value_or(1.4);
  venue::HouseFigure made{
      kind.id, usual * by.between(0.5, 1.5) + (by.oneIn(3) ? 0.2 : 0.0), kind.unit, {}, {}, {}};
  made.source = by.oneIn(2) ? QStringLiteral("crew's sheet") : QString();
  made.unit = by.oneIn(8) ? QStringLiteral("furlong") : by.oneIn(2) ? QString() : made.unit;
  made.value = by.oneIn(12)   ? usual
               : by.oneIn(12) ? 0.0
               : by.oneIn(12) ? -made.value
               : by.oneIn(12) ? std::nan("")
                              : made.value;
  made.signedBy = by.oneIn(3) ? QString() : QStringLiteral("Edda");
  made.signedOn = by.oneIn(5) ? QDate() : QDate(2026, 1 + by.oneOf(3), 1 + by.oneOf(2));
  return made;
}

std::vector<venue::HouseFigure> statements(const HouseFigureKind& kind, Chance& by) {
  std::vector<venue::HouseFigure> made;
  for (int i = by.oneOf(4); i > 0; --i) {
    made.push_back(statement(kind, by));
  }
  return made;
}

void housed(std::vector<Line>& lines, const HouseFigureKind& kind, Chance& by) {
  Line line("house " + kind.id.toStdString());
  word(line, kind.what + kind.unit + kind.source);
  line.number(kind.usual);
  line.number(static_cast<int>(kind.stricter));
  line.number(static_cast<int>(kind.tighter));
  for (int i = 0; i < 40; ++i) {
    const auto tour = statements(kind, by);
    const auto venue = statements(kind, by);
    const auto show = statements(kind, by);
    const HouseValue value = House(tour, venue, show).figure(kind.id);
    line.number(value.value);
    word(line, value.source);
    line.number(value.unsignedAlone ? 1 : 0);
    for (const venue::HouseFigure& each : show) {
      word(line, options::houseFault(each));
    }
    for (const char* rule :
         {"point-load", "hoist", "wind", "cover", "headroom", "travel", "joint", "stock"}) {
      word(line,
           House(tour, venue, show).sourcesOf(QLatin1String(rule), i % 2 == 0 ? QString() : value.source));
    }
  }
  lines.push_back(line);
}

void swept(std::vector<Line>& lines, Chance& by, int number) {
  options::SweptSection section;
  section.front = {by.between(5, 30), by.between(-10, 10)};
  const double bearing = by.between(-0.8, 0.8);
  section.rear = {std::cos(bearing), std::sin(bearing)};
  section.width = by.between(5, 30);
  section.radius = number % 3 == 0 ? 0.0 : by.between(number % 3 == 1 ? 6 : -60, number % 3 == 1 ? 40 : -20);
  Line line("swept " + std::to_string(number));
  line.number(section.possible(0.0, by.between(2, 25)) ? 1 : 0);
  for (int i = 0; i < 12; ++i) {
    const double behind = by.between(0, 12);
    line.number(section.rowLength(behind));
    const options::Plan place = section.placeOf(behind, by.between(-0.5, 0.5));
    line.number(place.x);
    line.number(place.y);
    const options::Plan around{place.x + by.between(-4, 4), place.y + by.between(-4, 4)};
    const auto seat = section.seatAt(around);
    line.number(seat ? std::optional(seat->behind) : std::nullopt);
    line.number(seat ? std::optional(seat->part) : std::nullopt);
    const double way = by.between(-0.6, 0.6);
    line.number(section.partNearest(behind, {by.between(-2, 2), by.between(-10, 10)},
                                    {std::cos(way), std::sin(way)}));
  }
  lines.push_back(line);
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(house_figures_and_sections_come_out_as_kept) {
  std::vector<Line> lines;
  Chance by(77);
  for (const HouseFigureKind& kind : options::houseFigureKinds()) {
    housed(lines, kind, by);
  }
  for (int number = 0; number < 30; ++number) {
    swept(lines, by, number);
  }
  compareWithKept(lines, "house.txt");
}

BOOST_AUTO_TEST_SUITE_END()
