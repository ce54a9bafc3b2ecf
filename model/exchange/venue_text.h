// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QStringList>

#include "quantity/text.h"
#include "venue/venue.h"

/// A venue, its points and its zones as texts that people edit, read by the rules of the venues' spreadsheet.
/// Bridles, obstructions, sections and house rules are not among them and stay as they are.
namespace hangbook::exchange {

/// A field by the spreadsheet's heading; `length` and `force` figures may be typed in any unit.
struct TextField {
  enum class Sort { words, length, force, date };
  QString name;
  Sort sort = Sort::words;
};

const std::vector<TextField>& venueFields();
const std::vector<TextField>& pointFields();
const std::vector<TextField>& zoneFields();
/// The unit of a bare number in that field; empty where it takes none.
QString unitOfField(const TextField& field, UnitSystem system);

/// One text a field, in the fields' order; empty = not known.
struct VenueText {
  QStringList venue;
  std::vector<QStringList> points;
  std::vector<QStringList> zones;
  bool operator==(const VenueText&) const = default;
};

/// As it was typed, else exact to the bit with its unit: read again it gives the same figures.
VenueText textOf(const venue::Venue& venue, NumberForm form = {});

enum class VenuePart { venue, point, zone };

/// What is wrong with one field. `expected` goes on from "expected".
struct VenueFault {
  VenuePart part = VenuePart::venue;
  int row = 0;   ///< of the points or zones
  QString field; ///< empty: the row as a whole
  QString read;  ///< empty where there was nothing to read
  QString expected;
};

struct VenueRead {
  std::optional<venue::Venue> venue; ///< none where there are faults
  std::vector<VenueFault> faults;
};

/// The venue with these texts in the place of its own figures, points and zones; a point or zone without a
/// row is gone. A bare number is in the unit of `system`. Content never throws.
VenueRead readVenueText(const venue::Venue& before, const VenueText& text, UnitSystem system,
                        NumberForm form = {});

/// What the rules of the spreadsheet have against a venue as a whole; empty: nothing.
QStringList complaintsOf(const venue::Venue& venue);

} // namespace hangbook::exchange
