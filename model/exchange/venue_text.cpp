// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/venue_text.h"

#include <algorithm>
#include <array>
#include <set>

#include "exchange/basis.h"
#include "exchange/cell.h"
#include "exchange/csv_write.h"
#include "exchange/import.h"

namespace hangbook::exchange {
namespace {

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
    return marked(found->second);
  }

  /// With the unit at each number where a bare one would be read in another.
  QString profile(const std::vector<venue::ProfilePoint>& profile, UnitSystem system) const {
    const QString unit = system == UnitSystem::metric ? QString() : QStringLiteral("m");
    QStringList places;
    for (const venue::ProfilePoint& each : profile) {
      places << QStringLiteral("%1%3 %2%3").arg(writeQuantity(each.x), writeQuantity(each.z), unit);
    }
    return marked(writeList(places));
  }

private:
  QString marked(QString text) const {
    return form_.decimalMark == '.' ? text : text.replace(QLatin1Char('.'), QLatin1Char(form_.decimalMark));
  }

  const std::map<QString, QString>& typed_;
  QString prefix_;
  NumberForm form_;
};

/// One cell of the file: no break, no separator, nothing that a text cannot hold.
QString plain(QString cell) {
  return cell.remove(QChar::Null).simplified();
}

constexpr std::array parts{VenuePart::point, VenuePart::zone, VenuePart::bridle, VenuePart::obstruction,
                           VenuePart::section};

/// Its word in the record column, and before what was typed for it.
QString wordFor(VenuePart part) {
  static const std::array words{QStringLiteral("venue"),       QStringLiteral("point"),
                                QStringLiteral("zone"),        QStringLiteral("bridle"),
                                QStringLiteral("obstruction"), QStringLiteral("section")};
  return words.at(static_cast<std::size_t>(part));
}

/// Where a line of the file comes from.
struct Origin {
  VenuePart part = VenuePart::venue;
  int row = 0;
  auto operator<=>(const Origin&) const = default;
};

class File {
public:
  explicit File(UnitSystem system) : system_(system) {
    headings_ = {QStringLiteral("record"), QStringLiteral("venue"), QStringLiteral("name")};
    take(VenuePart::venue);
    std::ranges::for_each(parts, [this](VenuePart part) { take(part); });
    records_ = {headings_};
  }

  void add(const Origin& origin, const QString& venue, const QStringList& texts) {
    const std::vector<TextField>& fields = fieldsOf(origin.part);
    QStringList record(headings_.size());
    record[0] = wordFor(origin.part);
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
  void take(VenuePart part) {
    for (const TextField& field : fieldsOf(part)) {
      if (const QString heading = headingOf(field, system_); !headings_.contains(heading)) {
        headings_ << heading;
      }
    }
  }

  UnitSystem system_;
  QStringList headings_;
  std::vector<QStringList> records_;
  std::vector<Origin> origins_;
};

bool isCalled(const QStringList& row, const QString& name) {
  return plain(row.value(0)) == name;
}

bool hasRow(const std::vector<QStringList>& rows, const QString& name) {
  return std::ranges::any_of(rows, [&](const QStringList& row) { return isCalled(row, name); });
}

/// Whether a row of that name has a fault of its own.
bool isFaulty(const std::vector<QStringList>& rows, VenuePart part, const QString& name,
              const std::set<Origin>& faulty) {
  return std::ranges::any_of(faulty, [&](const Origin& each) {
    return each.part == part && isCalled(rows[static_cast<std::size_t>(each.row)], name);
  });
}

/// In the words of somebody who sees fields, not lines of a file; none: another fault says it already.
std::optional<VenueFault> forFields(const Fault& fault, const Origin& origin, const VenueText& text,
                                    const std::set<Origin>& faulty) {
  const qsizetype unit = fault.column.indexOf(QStringLiteral(" ["));
  VenueFault made{{origin.row, unit < 0 ? fault.column : fault.column.left(unit), fault.read, fault.expected},
                  origin.part};
  if (made.part != VenuePart::venue && made.field == QStringLiteral("venue")) {
    made.field = QStringLiteral("name");
    made.read = plain(rowsOf(text, made.part)[static_cast<std::size_t>(made.row)].value(0));
    made.expected = QStringLiteral("a name that no other row has");
  }
  if (made.part == VenuePart::point && made.field == QStringLiteral("zone")) {
    if (hasRow(text.zones, made.read)) {
      return std::nullopt; // that row has a fault of its own
    }
    made.expected = QStringLiteral("the name of one of the venue's bays");
  }
  if (made.part == VenuePart::bridle && made.field == QStringLiteral("points") &&
      isFaulty(text.points, VenuePart::point, made.read, faulty)) {
    return std::nullopt;
  }
  return made;
}

void addParts(const venue::Venue& venue, VenueText& text, NumberForm form, UnitSystem system) {
  for (const venue::Bridle& each : venue.bridles) {
    const Texts of(venue.typed, QStringLiteral("bridle %1: ").arg(each.name), form);
    text.bridles.push_back({each.name, writeList(each.points), of.figure("x", each.x), of.figure("y", each.y),
                            of.figure("z", std::optional(each.z)), writeList(each.steels), each.shackle,
                            of.figure("tolerance", each.tolerance), each.source.text,
                            writeDate(each.source.date)});
  }
  for (const venue::Obstruction& each : venue.obstructions) {
    const Texts of(venue.typed, QStringLiteral("obstruction %1: ").arg(each.name), form);
    text.obstructions.push_back(
        {each.name, of.figure("x from", std::optional(each.xFrom)),
         of.figure("x to", std::optional(each.xTo)), of.figure("y from", std::optional(each.yFrom)),
         of.figure("y to", std::optional(each.yTo)), of.figure("underside", std::optional(each.underside))});
  }
  for (const venue::Section& each : venue.sections) {
    const Texts of(venue.typed, QStringLiteral("section %1: ").arg(each.name), form);
    text.sections.push_back({each.name, of.profile(each.profile, system),
                             of.figure("ear height", each.earHeight), of.figure("y from", each.yFrom),
                             of.figure("y to", each.yTo), of.figure("front x", each.frontX),
                             of.figure("front y", each.frontY), of.figure("bearing", each.bearing),
                             of.figure("width", each.width), of.figure("radius", each.radius)});
  }
}

} // namespace

VenueText textOf(const venue::Venue& venue, NumberForm form, UnitSystem system) {
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
  addParts(venue, text, form, system);
  return text;
}

VenueRead readVenueText(const venue::Venue& before, const VenueText& text, UnitSystem system,
                        NumberForm form) {
  Data data;
  data.venues = {before};
  venue::Venue& bare = data.venues.front();
  bare.points.clear(); // so that a row which is not there any more is gone
  bare.zones.clear();
  bare.bridles.clear();
  bare.obstructions.clear();
  bare.sections.clear();
  std::erase_if(bare.typed, [](const auto& each) {
    return std::ranges::any_of(
        parts, [&](VenuePart part) { return each.first.startsWith(wordFor(part) + QLatin1Char(' ')); });
  });
  File file(system);
  file.add({}, before.name, text.venue);
  for (const VenuePart part : parts) {
    const std::vector<QStringList>& rows = rowsOf(text, part);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      file.add({part, static_cast<int>(i)}, before.name, rows[i]);
    }
  }
  CsvForm how;
  how.separator = '\t';
  how.decimalMark = form.decimalMark;
  const Import import = readFile(Kind::venues, file.bytes(), data, {{}, {}}, how);
  VenueRead read;
  std::set<Origin> faulty;
  for (const Fault& fault : import.faults) {
    faulty.insert(file.origin(fault.line));
  }
  for (const Fault& fault : import.faults) {
    if (auto made = forFields(fault, file.origin(fault.line), text, faulty)) {
      read.faults.push_back(std::move(*made));
    }
  }
  if (import.faults.empty()) {
    read.venue = import.after.venues.front();
  }
  return read;
}

venue::Venue readableOf(const venue::Venue& before, VenueText text, UnitSystem system, NumberForm form) {
  const QStringList stood = textOf(before, form, system).venue;
  constexpr int passes = 8; // what is taken out of a row may leave another row without what it names
  for (int pass = 0; pass < passes; ++pass) {
    const VenueRead read = readVenueText(before, text, system, form);
    if (read.venue) {
      return *read.venue;
    }
    std::set<Origin> dropped;
    for (const VenueFault& fault : read.faults) {
      const std::vector<TextField>& fields = fieldsOf(fault.part);
      const auto at = std::ranges::find(fields, fault.field, &TextField::name) - fields.begin();
      if (fault.part == VenuePart::venue) {
        text.venue = stood; // none of its fields moves a part
        continue;
      }
      QStringList& texts = rowsOf(text, fault.part)[static_cast<std::size_t>(fault.row)];
      if (at < texts.size() && !texts[at].isEmpty()) {
        texts[at].clear();
      } else {
        dropped.insert({fault.part, fault.row});
      }
    }
    for (auto each = dropped.rbegin(); each != dropped.rend(); ++each) { // the last row first
      std::vector<QStringList>& rows = rowsOf(text, each->part);
      rows.erase(rows.begin() + each->row);
    }
  }
  return before;
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
