// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>

#include "desk/data/figure_lines.h"
#include "desk/data/records_of.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("Record", text);
}

void addPoint(FigureLines& lines, const venue::Point& point) {
  const QString name = words("Point %1").arg(point.name);
  lines.force(words("%1, capacity (%2)").arg(name, wordOf(point.basis)), point.capacity).from(point.source);
  lines.length(words("%1, height").arg(name), point.z).from(point.source);
  lines.length(words("%1, from datum to audience").arg(name), point.x).from(point.source);
  lines.length(words("%1, to stage left").arg(name), point.y).from(point.source);
}

} // namespace

RecordLine recordOf(const venue::Venue& venue) {
  FigureLines lines(venue);
  lines.words(words("Town"), venue.town).words(words("Time zone"), venue.timeZone);
  lines.words(words("Datum"), venue.datum).yesNo(words("Outdoors"), venue.outdoors);
  lines.length(words("Low steel"), venue.lowSteel);
  lines.length(words("Least trim"), venue.leastTrim).optional();
  lines.length(words("Most trim"), venue.mostTrim).optional();
  lines.words(words("Access"), venue.access).optional();
  for (const venue::Point& point : venue.points) {
    addPoint(lines, point);
  }
  for (const venue::Zone& zone : venue.zones) {
    lines.force(words("%1, capacity (%2)").arg(zone.name, wordOf(zone.basis)), zone.capacity);
    lines.force(words("%1, load of other departments").arg(zone.name), zone.othersLoad)
        .from({.text = zone.othersBy, .date = zone.othersOn});
  }
  for (const venue::Obstruction& each : venue.obstructions) {
    lines.length(words("%1, underside").arg(each.name), each.underside);
  }
  for (const venue::Section& section : venue.sections) {
    lines.length(words("%1, ear height").arg(section.name), section.earHeight);
    if (!section.profile.empty()) {
      const QString from =
          section.swept() ? words("%1, first row behind its front line") : words("%1, first row at");
      const QString to =
          section.swept() ? words("%1, last row behind its front line") : words("%1, last row at");
      lines.length(from.arg(section.name), section.profile.front().x);
      lines.length(to.arg(section.name), section.profile.back().x);
    }
    if (section.swept()) {
      lines.length(words("%1, front line at x").arg(section.name), section.frontX);
      lines.length(words("%1, front line at y").arg(section.name), section.frontY);
      lines.angle(words("%1, bearing to the rear").arg(section.name), section.bearing);
      lines.length(words("%1, width").arg(section.name), section.width);
      lines.length(words("%1, radius of the front line (0 = straight)").arg(section.name), section.radius);
    }
  }
  return {.kind = RecordKind::venue,
          .name = venue.name,
          .belongsTo = venue.town,
          .source = venue.source,
          .figures = lines.take()};
}

RecordLine recordOf(const people::Person& person) {
  const catalogue::Record none;
  FigureLines lines(none);
  lines.words(words("Role"), person.role).optional();
  return {.kind = RecordKind::person,
          .name = person.name,
          .belongsTo = person.role,
          .source = {},
          .figures = lines.take()};
}

void addHouse(std::vector<RecordLine>& all, const std::vector<venue::HouseFigure>& house,
              const QString& whose) {
  for (const venue::HouseFigure& each : house) {
    catalogue::Record record;
    record.source = {.text = words("%1, signed by %2").arg(each.source, each.signedBy),
                     .date = each.signedOn};
    FigureLines lines(record);
    lines.number(each.unit.isEmpty() ? words("Value") : words("Value, %1").arg(each.unit), each.value);
    lines.words(words("Signed by"), each.signedBy);
    all.push_back({.kind = RecordKind::house,
                   .name = each.figure,
                   .belongsTo = whose,
                   .source = record.source,
                   .figures = lines.take()});
  }
}

} // namespace hangbook::desk
