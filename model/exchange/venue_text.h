// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "exchange/field_fault.h"
#include "quantity/text.h"
#include "venue/venue.h"

/// A venue and its parts as texts that people edit, read by the rules of the venues' spreadsheet. House rules
/// are not among them and stay as they are.
namespace hangbook::exchange {

/// A field by the spreadsheet's heading; figures may be typed in any unit. `places` are pairs of lengths.
struct TextField {
  enum class Sort { words, length, force, angle, date, places };
  QString name;
  Sort sort = Sort::words;
};

enum class VenuePart { venue, point, zone, bridle, obstruction, section };

/// The fields of the venue itself, or of each row of that part.
const std::vector<TextField>& fieldsOf(VenuePart part);
/// The unit of a bare number in that field; empty where it takes none.
QString unitOfField(const TextField& field, UnitSystem system);

/// One text a field, in the fields' order; empty = not known.
struct VenueText {
  QStringList venue;
  std::vector<QStringList> points;
  std::vector<QStringList> zones;
  std::vector<QStringList> bridles;
  std::vector<QStringList> obstructions;
  std::vector<QStringList> sections;
  bool operator==(const VenueText&) const = default;
};

/// The rows of a part other than the venue itself.
const std::vector<QStringList>& rowsOf(const VenueText& text, VenuePart part);
std::vector<QStringList>& rowsOf(VenueText& text, VenuePart part);

/// As it was typed, else exact to the bit with its unit: read again, bare numbers in the unit of `system`, it
/// gives the same figures.
VenueText textOf(const venue::Venue& venue, NumberForm form = {}, UnitSystem system = UnitSystem::metric);

struct VenueFault : FieldFault {
  VenuePart part = VenuePart::venue; ///< `row` counts within it
};

struct VenueRead {
  std::optional<venue::Venue> venue; ///< none where there are faults
  std::vector<VenueFault> faults;
};

/// The venue with these texts in the place of its own figures and parts; a part without a row is gone. A bare
/// number is in the unit of `system`. Content never throws.
VenueRead readVenueText(const venue::Venue& before, const VenueText& text, UnitSystem system,
                        NumberForm form = {});

/// As much of it as can be read, for a picture: a field at fault counts as not known, a row that needs it is
/// left out. Never to be saved.
venue::Venue readableOf(const venue::Venue& before, VenueText text, UnitSystem system, NumberForm form = {});

/// What the rules of the spreadsheet have against a venue as a whole; empty: nothing.
QStringList complaintsOf(const venue::Venue& venue);

} // namespace hangbook::exchange
