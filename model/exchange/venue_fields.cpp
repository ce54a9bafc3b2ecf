// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/venue_text.h"

namespace hangbook::exchange {
namespace {

using Sort = TextField::Sort;

std::vector<TextField> withSource(std::vector<TextField> fields) {
  fields.push_back({QStringLiteral("source")});
  fields.push_back({QStringLiteral("source date"), Sort::date});
  return fields;
}

const std::vector<TextField>& sectionFields() {
  static const std::vector<TextField> fields{
      {QStringLiteral("name")},
      {QStringLiteral("profile"), Sort::places},
      {QStringLiteral("ear height"), Sort::length},
      {QStringLiteral("y from"), Sort::length},
      {QStringLiteral("y to"), Sort::length},
      {QStringLiteral("front x"), Sort::length},
      {QStringLiteral("front y"), Sort::length},
      {QStringLiteral("bearing"), Sort::angle},
      {QStringLiteral("width"), Sort::length},
      {QStringLiteral("radius"), Sort::length},
  };
  return fields;
}

const std::vector<TextField>& obstructionFields() {
  static const std::vector<TextField> fields{
      {QStringLiteral("name")},
      {QStringLiteral("x from"), Sort::length},
      {QStringLiteral("x to"), Sort::length},
      {QStringLiteral("y from"), Sort::length},
      {QStringLiteral("y to"), Sort::length},
      {QStringLiteral("underside"), Sort::length},
  };
  return fields;
}

const std::vector<TextField>& bridleFields() {
  static const std::vector<TextField> fields = withSource({
      {QStringLiteral("name")},
      {QStringLiteral("points")},
      {QStringLiteral("x"), Sort::length},
      {QStringLiteral("y"), Sort::length},
      {QStringLiteral("z"), Sort::length},
      {QStringLiteral("steels")},
      {QStringLiteral("shackle")},
      {QStringLiteral("tolerance"), Sort::length},
  });
  return fields;
}

const std::vector<TextField>& venueFields() {
  static const std::vector<TextField> fields = withSource({
      {QStringLiteral("town")},
      {QStringLiteral("time zone")},
      {QStringLiteral("datum")},
      {QStringLiteral("outdoors")},
      {QStringLiteral("low steel"), Sort::length},
      {QStringLiteral("least trim"), Sort::length},
      {QStringLiteral("most trim"), Sort::length},
      {QStringLiteral("access")},
  });
  return fields;
}

const std::vector<TextField>& pointFields() {
  static const std::vector<TextField> fields = withSource({
      {QStringLiteral("name")},
      {QStringLiteral("x"), Sort::length},
      {QStringLiteral("y"), Sort::length},
      {QStringLiteral("z"), Sort::length},
      {QStringLiteral("capacity"), Sort::force},
      {QStringLiteral("basis")},
      {QStringLiteral("zone")},
  });
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

template <class Quantity>
QString unitFor(UnitSystem system) {
  const std::string_view unit = unitOf<Quantity>(system);
  return QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
}

} // namespace

const std::vector<TextField>& fieldsOf(VenuePart part) {
  switch (part) {
  case VenuePart::point:
    return pointFields();
  case VenuePart::zone:
    return zoneFields();
  case VenuePart::bridle:
    return bridleFields();
  case VenuePart::obstruction:
    return obstructionFields();
  case VenuePart::section:
    return sectionFields();
  case VenuePart::venue:
    break;
  }
  return venueFields();
}

std::vector<QStringList>& rowsOf(VenueText& text, VenuePart part) {
  switch (part) {
  case VenuePart::zone:
    return text.zones;
  case VenuePart::bridle:
    return text.bridles;
  case VenuePart::obstruction:
    return text.obstructions;
  case VenuePart::section:
    return text.sections;
  case VenuePart::point:
  case VenuePart::venue:
    break;
  }
  return text.points;
}

const std::vector<QStringList>& rowsOf(const VenueText& text, VenuePart part) {
  return rowsOf(const_cast<VenueText&>(text), part); // only looked at
}

QString unitOfField(const TextField& field, UnitSystem system) {
  switch (field.sort) {
  case Sort::length:
  case Sort::places:
    return unitFor<Length>(system);
  case Sort::force:
    return unitFor<Force>(system);
  case Sort::angle:
    return unitFor<Angle>(system);
  case Sort::words:
  case Sort::date:
    break;
  }
  return {};
}

} // namespace hangbook::exchange
