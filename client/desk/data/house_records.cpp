// SPDX-License-Identifier: GPL-3.0-or-later

#include "desk/data/figure_lines.h"
#include "desk/data/records_of.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

void addPoint(FigureLines& lines, const venue::Point& point) {
  const QString name = Words::tr("Point %1").arg(point.name);
  lines.force(Words::tr("%1, capacity (%2)").arg(name, wordOf(point.basis)), point.capacity)
      .from(point.source);
  lines.length(Words::tr("%1, height").arg(name), point.z).from(point.source);
  lines.length(Words::tr("%1, to the audience").arg(name), point.x).from(point.source);
  lines.length(Words::tr("%1, to stage left").arg(name), point.y).from(point.source);
}

} // namespace

RecordLine recordOf(const venue::Venue& venue) {
  FigureLines lines(venue);
  lines.words(Words::tr("Town"), venue.town).words(Words::tr("Time zone"), venue.timeZone);
  lines.words(Words::tr("Datum"), venue.datum).yesNo(Words::tr("Outdoors"), venue.outdoors);
  lines.length(Words::tr("Low steel"), venue.lowSteel);
  lines.length(Words::tr("Least trim"), venue.leastTrim).optional();
  lines.length(Words::tr("Most trim"), venue.mostTrim).optional();
  lines.words(Words::tr("Access"), venue.access).optional();
  for (const venue::Point& point : venue.points) {
    addPoint(lines, point);
  }
  for (const venue::Zone& zone : venue.zones) {
    lines.force(Words::tr("%1, capacity (%2)").arg(zone.name, wordOf(zone.basis)), zone.capacity);
    lines.force(Words::tr("%1, load of other departments").arg(zone.name), zone.othersLoad)
        .from({.text = zone.othersBy, .date = zone.othersOn});
  }
  for (const venue::Obstruction& each : venue.obstructions) {
    lines.length(Words::tr("%1, underside").arg(each.name), each.underside);
  }
  for (const venue::Section& section : venue.sections) {
    lines.length(Words::tr("%1, ear height").arg(section.name), section.earHeight);
    if (!section.profile.empty()) {
      const QString from =
          section.swept() ? Words::tr("%1, first row behind its front line") : Words::tr("%1, first row at");
      const QString to =
          section.swept() ? Words::tr("%1, last row behind its front line") : Words::tr("%1, last row at");
      lines.length(from.arg(section.name), section.profile.front().x);
      lines.length(to.arg(section.name), section.profile.back().x);
    }
    if (section.swept()) {
      lines.length(Words::tr("%1, front line at x").arg(section.name), section.frontX);
      lines.length(Words::tr("%1, front line at y").arg(section.name), section.frontY);
      lines.angle(Words::tr("%1, bearing to the rear").arg(section.name), section.bearing);
      lines.length(Words::tr("%1, width").arg(section.name), section.width);
      lines.length(Words::tr("%1, radius of the front line (0 = straight)").arg(section.name),
                   section.radius);
    }
  }
  return {.kind = RecordKind::venue,
          .name = venue.name,
          .belongsTo = venue.town,
          .source = venue.source,
          .figures = lines.take()};
}

RecordLine recordOf(const calendar::Show& show, const calendar::Hang& hang) {
  const catalogue::Record none;
  FigureLines lines(none);
  lines.words(Words::tr("Show"), show.name).words(Words::tr("Hang"), hang.name);
  lines.words(Words::tr("Venue"), show.venue).words(Words::tr("First day"), dateText(show.from));
  return {.kind = RecordKind::plugs,
          .name = QStringLiteral("%1, %2").arg(show.name, hang.name),
          .belongsTo = show.tour,
          .source = {},
          .figures = lines.take(),
          .hang = {show.tour, show.name, hang.name}};
}

RecordLine recordOf(const people::Person& person) {
  const catalogue::Record none;
  FigureLines lines(none);
  lines.words(Words::tr("Role"), person.role).optional();
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
    record.source = {.text = Words::tr("%1, signed by %2").arg(each.source, each.signedBy),
                     .date = each.signedOn};
    FigureLines lines(record);
    lines.number(each.unit.isEmpty() ? Words::tr("Value") : Words::tr("Value, %1").arg(each.unit),
                 each.value);
    lines.words(Words::tr("Signed by"), each.signedBy);
    all.push_back({.kind = RecordKind::house,
                   .name = each.figure,
                   .belongsTo = whose,
                   .source = record.source,
                   .figures = lines.take()});
  }
}

} // namespace hangbook::desk
