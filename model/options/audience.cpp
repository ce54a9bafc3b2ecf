// SPDX-License-Identifier: GPL-3.0-or-later
// Where the audience's ears are: rows along each section's profile, and seats along each row of a section
// that has a front line.
#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

#include "options/hang_once.h"
#include "options/seating.h"

namespace hangbook::options {
namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double squareCentimetres = 1e4; // in a square metre

/// A sampled row: its place on the profile and how far along the sloping floor it is from the first row.
struct Row {
  double x{};
  double z{};
  double along{};
};

std::vector<Row> rowsOf(const std::vector<venue::ProfilePoint>& profile) {
  std::vector<Row> rows;
  double next = 0.0; // along the profile from the last corner to the next position
  double before = 0.0;
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const double x = inMetres(profile[i - 1].x);
    const double z = inMetres(profile[i - 1].z);
    const double dx = inMetres(profile[i].x) - x;
    const double dz = inMetres(profile[i].z) - z;
    const double length = std::hypot(dx, dz);
    while (next < length) {
      rows.push_back({x + dx * next / length, z + dz * next / length, before + next});
      next += audienceStepM;
    }
    next -= length;
    before += length;
  }
  rows.push_back({inMetres(profile.back().x), inMetres(profile.back().z), before});
  return rows;
}

/// Floor area, m², from the first row to `along`: a row's length changes evenly with x, and x evenly along
/// each straight piece of the profile, so the mean of a piece's ends is exact.
template <class RowLength>
double areaTo(const std::vector<venue::ProfilePoint>& profile, double along, RowLength rowLength) {
  double area = 0.0;
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const double x = inMetres(profile[i - 1].x);
    const double dx = inMetres(profile[i].x) - x;
    const double length = std::hypot(dx, inMetres(profile[i].z) - inMetres(profile[i - 1].z));
    const double part = std::clamp(along, 0.0, length); // nothing of what lies beyond
    area += part * 0.5 * (rowLength(x) + rowLength(x + dx * part / length));
    along -= length;
  }
  return area;
}

/// Each row stands for the floor as far as half way to the rows beside it.
template <class RowLength>
std::vector<double> rowAreas(const std::vector<venue::ProfilePoint>& profile, const std::vector<Row>& rows,
                             RowLength rowLength) {
  std::vector<double> areas;
  double before = 0.0;
  for (auto row = rows.begin(); row != rows.end(); ++row) {
    const Row& next = std::next(row) == rows.end() ? *row : *std::next(row);
    const double area = areaTo(profile, std::midpoint(row->along, next.along), rowLength);
    areas.push_back(area - before);
    before = area;
  }
  return areas;
}

double wholeWeight(double area) {
  return std::max(1.0, std::round(area * squareCentimetres));
}

void addFlat(Audience& into, const venue::Section& section, double ear, bool weighed) {
  const int number = static_cast<int>(into.sections.size()) - 1;
  const double yFrom = section.yFrom ? inMetres(*section.yFrom) : -infinite;
  const double yTo = section.yTo ? inMetres(*section.yTo) : infinite;
  const std::vector<Row> rows = rowsOf(section.profile);
  std::vector<double> areas;
  if (weighed) {
    areas = rowAreas(section.profile, rows, [&](double) { return std::max(0.0, yTo - yFrom); });
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    into.positions.push_back(
        {rows[i].x, yFrom, yTo, rows[i].z + ear, number, {}, {}, weighed ? wholeWeight(areas[i]) : 1.0});
  }
}

void addSwept(Audience& into, const venue::Section& section, const SweptSection& swept, double ear) {
  const int number = static_cast<int>(into.sections.size()) - 1;
  const std::vector<Row> rows = rowsOf(section.profile);
  const auto rowLength = [&](double behind) { return swept.rowLength(behind); };
  const std::vector<double> areas = rowAreas(section.profile, rows, rowLength);
  const double longest = std::max(rowLength(rows.front().x), rowLength(rows.back().x));
  const int gaps = std::max(1, static_cast<int>(std::ceil(longest / audienceStepAcrossM - 1e-9)));
  into.blocks.back().seats = static_cast<std::size_t>(gaps) + 1;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    for (int seat = 0; seat <= gaps; ++seat) {
      const double part = static_cast<double>(seat) / gaps - 0.5;
      const Plan at = swept.placeOf(rows[i].x, part);
      const bool atEnd = seat == 0 || seat == gaps;
      into.positions.push_back({at.x, at.y, at.y, rows[i].z + ear, number, rows[i].x,
                                part * rowLength(rows[i].x),
                                wholeWeight(areas[i] / gaps * (atEnd ? 0.5 : 1.0))});
    }
  }
}

void addCabinets(Audience& audience, const Case& option) {
  for (std::size_t i = 0; i < option.cabinets.size(); ++i) {
    const catalogue::CabinetType& type = *option.cabinets[i];
    if (!type.coversAudience) {
      continue;
    }
    const auto lacks = [&](const QString& what) {
      if (!audience.missing.contains(what)) {
        audience.missing.append(what);
      }
    };
    if (!type.coverLowest || !type.coverHighest || !type.throwDistance) {
      lacks(QStringLiteral("edges of cover and throw of %1").arg(type.name));
    }
    if (!type.coverAcross && audience.anySwept()) {
      lacks(QStringLiteral("cover across of %1").arg(type.name));
    }
    if (type.outline.empty()) {
      audience.missing.append(QStringLiteral("the outline of %1").arg(type.name));
    }
    audience.cabinets.push_back({i, type.coverLowest ? inDegrees(*type.coverLowest) : notKnown,
                                 type.coverHighest ? inDegrees(*type.coverHighest) : notKnown,
                                 type.throwDistance ? inMetres(*type.throwDistance) : notKnown,
                                 type.coverAcross ? inDegrees(*type.coverAcross) : notKnown});
  }
}

} // namespace

bool Audience::anySwept() const {
  return std::any_of(blocks.begin(), blocks.end(), [](const AudienceBlock& each) { return each.swept; });
}

void addSection(Audience& audience, const venue::Section& section, bool weighed) {
  if (section.profile.size() < 2) {
    audience.missing.append(QStringLiteral("the profile of section %1").arg(section.name));
    return;
  }
  if (!section.earHeight) {
    audience.missing.append(QStringLiteral("the ear height in section %1").arg(section.name));
    return;
  }
  const std::optional<SweptSection> swept = sweptSection(section);
  if (section.swept() && !swept) {
    audience.missing.append(
        QStringLiteral("a whole and possible front line of section %1 (place, bearing, width, radius)")
            .arg(section.name));
    return;
  }
  if (weighed && !swept && (!section.yFrom || !section.yTo)) {
    audience.missing.append(
        QStringLiteral("how wide section %1 is, to weigh it against the others").arg(section.name));
    return;
  }
  audience.sections.append(section.name);
  audience.blocks.push_back({audience.positions.size(), {}, 1, swept.has_value()});
  const double ear = inMetres(*section.earHeight);
  if (swept) {
    addSwept(audience, section, *swept, ear);
  } else {
    addFlat(audience, section, ear, weighed);
  }
  AudienceBlock& block = audience.blocks.back();
  block.count = audience.positions.size() - block.first;
  for (std::size_t i = block.first; i < audience.positions.size(); ++i) {
    audience.weight += audience.positions[i].weight;
  }
}

Audience audienceOf(const Case& option) {
  return audienceOf(option, seatsOf(*option.snapshot, *option.hang));
}

Audience audienceOf(const Case& option, const Audience& seats) {
  Audience audience = seats;
  addCabinets(audience, option);
  return audience;
}

Audience seatsOf(const Snapshot& snapshot, const calendar::Hang& hang) {
  Audience audience;
  const venue::Venue& venue = snapshot.venue;
  for (const QString& wanted : hang.sections) {
    if (std::none_of(venue.sections.begin(), venue.sections.end(),
                     [&](const venue::Section& each) { return each.name == wanted; })) {
      audience.missing.append(QStringLiteral("the venue has no audience section “%1”").arg(wanted));
    }
  }
  std::vector<const venue::Section*> asked;
  for (const venue::Section& section : venue.sections) {
    if (hang.sections.isEmpty() || hang.sections.contains(section.name)) {
      asked.push_back(&section);
    }
  }
  const bool weighed =
      std::any_of(asked.begin(), asked.end(), [](const venue::Section* each) { return each->swept(); });
  for (const venue::Section* section : asked) {
    addSection(audience, *section, weighed);
  }
  if (audience.positions.empty() && audience.missing.isEmpty()) {
    audience.missing.append(QStringLiteral("audience sections of the venue"));
  }
  return audience;
}

} // namespace hangbook::options
