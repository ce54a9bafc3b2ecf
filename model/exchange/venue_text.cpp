// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/venue_text.h"

#include <algorithm>

#include "exchange/basis.h"
#include "exchange/cell.h"
#include "exchange/csv_write.h"
#include "exchange/import.h"

namespace hangbook::exchange {
namespace {

using Sort = TextField::Sort;
using catalogue::Basis;

QString headingOf(const TextField& field, UnitSystem system) {
  const QString unit = unitOfField(field, system);
  return unit.isEmpty() ? field.name : field.name + QStringLiteral(" [%1]").arg(unit);
}

/// What was typed stands in a record under the part's prefix and the heading.
class Texts {
public:
  Texts(const std::map<QString, QString>& typed, QString prefix, NumberForm form)
      : typed_(typed), prefix_(std::move(prefix)), form_(form) {}

  template <class Quantity>
  QString figure(const char* heading, std::optional<Quantity> value) const {
    if (!value) {
      return {};
    }
    const auto found = typed_.find(prefix_ + QString::fromLatin1(heading));
    if (found == typed_.end()) {
      return QString::fromStdString(print(*value, UnitSystem::metric, form_));
    }
    QString text = found->second;
    return form_.decimalMark == '.' ? text : text.replace(QLatin1Char('.'), QLatin1Char(form_.decimalMark));
  }

private:
  const std::map<QString, QString>& typed_;
  QString prefix_;
  NumberForm form_;
};

/// One cell of the file: no break, no separator, nothing that a text cannot hold.
QString plain(QString cell) {
  return cell.remove(QChar::Null).simplified();
}

/// Where a line of the file comes from.
struct Origin {
  VenuePart part = VenuePart::venue;
  int row = 0;
};

class File {
public:
  explicit File(UnitSystem system) : system_(system) {
    headings_ = {QStringLiteral("record"), QStringLiteral("venue"), QStringLiteral("name")};
    for (const auto* fields : {&venueFields(), &pointFields(), &zoneFields()}) {
      for (const TextField& field : *fields) {
        if (const QString heading = headingOf(field, system); !headings_.contains(heading)) {
          headings_ << heading;
        }
      }
    }
    records_ = {headings_};
  }

  void add(const Origin& origin, const QString& venue, const std::vector<TextField>& fields,
           const QStringList& texts) {
    QStringList record(headings_.size());
    record[0] = origin.part == VenuePart::venue   ? QStringLiteral("venue")
                : origin.part == VenuePart::point ? QStringLiteral("point")
                                                  : QStringLiteral("zone");
    record[origin.part == VenuePart::venue ? 2 : 1] = venue;
    for (std::size_t i = 0; i < fields.size(); ++i) {
      record[headings_.indexOf(headingOf(fields[i], system_))] =
          plain(texts.value(static_cast<qsizetype>(i)));
    }
    records_.push_back(std::move(record));
    origins_.push_back(origin);
  }

  QByteArray bytes() const { return writeCsv(records_, {.separator = '\t'}); }
  Origin origin(int line) const {
    const int at = line - 2; // below the headings, one line a record
    return at < 0 || at >= static_cast<int>(origins_.size()) ? Origin{}
                                                             : origins_[static_cast<std::size_t>(at)];
  }

private:
  UnitSystem system_;
  QStringList headings_;
  std::vector<QStringList> records_;
  std::vector<Origin> origins_;
};

bool hasRow(const std::vector<QStringList>& rows, const QString& name) {
  return std::ranges::any_of(rows, [&](const QStringList& row) { return plain(row.value(0)) == name; });
}

/// In the words of somebody who sees fields, not lines of a file; none: another fault says it already.
std::optional<VenueFault> forFields(const Fault& fault, const Origin& origin, const VenueText& text) {
  const qsizetype unit = fault.column.indexOf(QStringLiteral(" ["));
  VenueFault made{origin.part, origin.row, unit < 0 ? fault.column : fault.column.left(unit), fault.read,
                  fault.expected};
  if (made.part != VenuePart::venue && made.field == QStringLiteral("venue")) {
    made.field = QStringLiteral("name");
    made.read = plain(
        (made.part == VenuePart::point ? text.points : text.zones)[static_cast<std::size_t>(made.row)].value(
            0));
    made.expected = QStringLiteral("a name that no other row has");
  }
  if (made.part == VenuePart::point && made.field == QStringLiteral("zone")) {
    if (hasRow(text.zones, made.read)) {
      return std::nullopt; // that row has a fault of its own
    }
    made.expected = QStringLiteral("the name of one of the venue's bays");
  }
  return made;
}

} // namespace

const std::vector<TextField>& venueFields() {
  static const std::vector<TextField> fields{
      {QStringLiteral("town")},
      {QStringLiteral("time zone")},
      {QStringLiteral("datum")},
      {QStringLiteral("outdoors")},
      {QStringLiteral("low steel"), Sort::length},
      {QStringLiteral("least trim"), Sort::length},
      {QStringLiteral("most trim"), Sort::length},
      {QStringLiteral("access")},
      {QStringLiteral("source")},
      {QStringLiteral("source date"), Sort::date},
  };
  return fields;
}

const std::vector<TextField>& pointFields() {
  static const std::vector<TextField> fields{
      {QStringLiteral("name")},
      {QStringLiteral("x"), Sort::length},
      {QStringLiteral("y"), Sort::length},
      {QStringLiteral("z"), Sort::length},
      {QStringLiteral("capacity"), Sort::force},
      {QStringLiteral("basis")},
      {QStringLiteral("zone")},
      {QStringLiteral("source")},
      {QStringLiteral("source date"), Sort::date},
  };
  return fields;
}

const std::vector<TextField>& zoneFields() {
  static const std::vector<TextField> fields{
      {QStringLiteral("name")},
      {QStringLiteral("capacity"), Sort::force},
      {QStringLiteral("basis")},
      {QStringLiteral("others' load"), Sort::force},
      {QStringLiteral("others' load by")},
      {QStringLiteral("others' load on"), Sort::date},
  };
  return fields;
}

QString unitOfField(const TextField& field, UnitSystem system) {
  switch (field.sort) {
  case Sort::length: {
    const std::string_view unit = unitOf<Length>(system);
    return QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
  }
  case Sort::force: {
    const std::string_view unit = unitOf<Force>(system);
    return QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
  }
  case Sort::words:
  case Sort::date:
    break;
  }
  return {};
}

VenueText textOf(const venue::Venue& venue, NumberForm form) {
  const Texts own(venue.typed, {}, form);
  VenueText text;
  text.venue = {venue.town,
                venue.timeZone,
                venue.datum,
                venue.outdoors ? writeYesNo(*venue.outdoors) : QString(),
                own.figure("low steel", venue.lowSteel),
                own.figure("least trim", venue.leastTrim),
                own.figure("most trim", venue.mostTrim),
                venue.access,
                venue.source.text,
                writeDate(venue.source.date)};
  for (const venue::Point& point : venue.points) {
    const Texts of(venue.typed, QStringLiteral("point %1: ").arg(point.name), form);
    text.points.push_back({point.name, of.figure("x", std::optional(point.x)),
                           of.figure("y", std::optional(point.y)), of.figure("z", std::optional(point.z)),
                           of.figure("capacity", point.capacity), writeWord<Basis>(point.basis, bases),
                           point.zone, point.source.text, writeDate(point.source.date)});
  }
  for (const venue::Zone& zone : venue.zones) {
    const Texts of(venue.typed, QStringLiteral("zone %1: ").arg(zone.name), form);
    text.zones.push_back({zone.name, of.figure("capacity", zone.capacity),
                          writeWord<Basis>(zone.basis, bases), of.figure("others' load", zone.othersLoad),
                          zone.othersBy, writeDate(zone.othersOn)});
  }
  return text;
}

VenueRead readVenueText(const venue::Venue& before, const VenueText& text, UnitSystem system,
                        NumberForm form) {
  Data data;
  data.venues = {before};
  venue::Venue& bare = data.venues.front();
  bare.points.clear(); // so that a row which is not there any more is gone
  bare.zones.clear();
  std::erase_if(bare.typed, [](const auto& each) {
    return each.first.startsWith(QStringLiteral("point ")) || each.first.startsWith(QStringLiteral("zone "));
  });
  File file(system);
  file.add({}, before.name, venueFields(), text.venue);
  for (std::size_t i = 0; i < text.zones.size(); ++i) {
    file.add({VenuePart::zone, static_cast<int>(i)}, before.name, zoneFields(), text.zones[i]);
  }
  for (std::size_t i = 0; i < text.points.size(); ++i) {
    file.add({VenuePart::point, static_cast<int>(i)}, before.name, pointFields(), text.points[i]);
  }
  CsvForm how;
  how.separator = '\t';
  how.decimalMark = form.decimalMark;
  const Import import = readFile(Kind::venues, file.bytes(), data, {{}, {}}, how);
  VenueRead read;
  for (const Fault& fault : import.faults) {
    if (auto made = forFields(fault, file.origin(fault.line), text)) {
      read.faults.push_back(std::move(*made));
    }
  }
  if (import.faults.empty()) {
    read.venue = import.after.venues.front();
  }
  return read;
}

QStringList complaintsOf(const venue::Venue& venue) {
  Data whole;
  whole.venues = {venue};
  QStringList all;
  for (const Fault& fault : readFile(Kind::venues, writeFile(Kind::venues, whole), {}, {{}, {}}).faults) {
    all << text(fault);
  }
  return all;
}

} // namespace hangbook::exchange
