// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/field_words.h"

#include <map>

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString titleOf(const QString& field) {
  const std::map<QString, QString> titles{{QStringLiteral("town"), Words::tr("Town")},
                                          {QStringLiteral("time zone"), Words::tr("Time zone")},
                                          {QStringLiteral("datum"), Words::tr("Datum")},
                                          {QStringLiteral("outdoors"), Words::tr("Outdoors")},
                                          {QStringLiteral("low steel"), Words::tr("Low steel")},
                                          {QStringLiteral("least trim"), Words::tr("Least trim")},
                                          {QStringLiteral("most trim"), Words::tr("Most trim")},
                                          {QStringLiteral("access"), Words::tr("Access")},
                                          {QStringLiteral("source"), Words::tr("Source")},
                                          {QStringLiteral("source date"), Words::tr("Dated")},
                                          {QStringLiteral("name"), Words::tr("Name")},
                                          {QStringLiteral("x"), Words::tr("To audience")},
                                          {QStringLiteral("y"), Words::tr("To stage left")},
                                          {QStringLiteral("z"), Words::tr("Height")},
                                          {QStringLiteral("capacity"), Words::tr("Capacity")},
                                          {QStringLiteral("basis"), Words::tr("Basis")},
                                          {QStringLiteral("zone"), Words::tr("Bay")},
                                          {QStringLiteral("others' load"), Words::tr("Others' load")},
                                          {QStringLiteral("others' load by"), Words::tr("Said by")},
                                          {QStringLiteral("others' load on"), Words::tr("Said on")},
                                          {QStringLiteral("points"), Words::tr("Points")},
                                          {QStringLiteral("steels"), Words::tr("Steels")},
                                          {QStringLiteral("shackle"), Words::tr("Shackle")},
                                          {QStringLiteral("tolerance"), Words::tr("Tolerance")},
                                          {QStringLiteral("x from"), Words::tr("Audience from")},
                                          {QStringLiteral("x to"), Words::tr("Audience to")},
                                          {QStringLiteral("y from"), Words::tr("Left from")},
                                          {QStringLiteral("y to"), Words::tr("Left to")},
                                          {QStringLiteral("underside"), Words::tr("Underside")},
                                          {QStringLiteral("profile"), Words::tr("Floor")},
                                          {QStringLiteral("ear height"), Words::tr("Ears")},
                                          {QStringLiteral("front x"), Words::tr("Front, audience")},
                                          {QStringLiteral("front y"), Words::tr("Front, left")},
                                          {QStringLiteral("bearing"), Words::tr("Bearing")},
                                          {QStringLiteral("width"), Words::tr("Width")},
                                          {QStringLiteral("radius"), Words::tr("Radius")}};
  const auto found = titles.find(field);
  return found == titles.end() ? field : found->second;
}

QString hintOf(const QString& field) {
  const std::map<QString, QString> hints{
      {QStringLiteral("x"), Words::tr("from the datum towards the audience")},
      {QStringLiteral("y"), Words::tr("from the datum to stage left; to stage right is negative")},
      {QStringLiteral("basis"), Words::tr("at rest, dynamic or unknown")},
      {QStringLiteral("points"), Words::tr("two or three of the venue's points: L1; L2")},
      {QStringLiteral("steels"),
       Words::tr("types of hardware that a leg may be made up from, separated by ;")},
      {QStringLiteral("shackle"), Words::tr("type of hardware above each steel and at the apex")},
      {QStringLiteral("tolerance"), Words::tr("how far a leg may be from its wanted length")},
      {QStringLiteral("x from"), Words::tr("where it begins, from the datum towards the audience")},
      {QStringLiteral("x to"), Words::tr("where it ends, from the datum towards the audience")},
      {QStringLiteral("y from"), Words::tr("where it begins across; stage right is negative")},
      {QStringLiteral("y to"), Words::tr("where it ends across; stage left is positive")},
      {QStringLiteral("underside"), Words::tr("height of its lowest edge")},
      {QStringLiteral("profile"),
       Words::tr("distance and height of the floor, first row to last: 5 0; 32 1.5. The distance counts from "
                 "the datum, or from the front line where there is one")},
      {QStringLiteral("ear height"), Words::tr("of those who sit or stand there, above the floor")},
      {QStringLiteral("front x"), Words::tr("middle of the first row, from the datum towards the audience")},
      {QStringLiteral("front y"), Words::tr("middle of the first row, from the datum to stage left")},
      {QStringLiteral("bearing"),
       Words::tr("from the first row to the last: 0 straight away from the stage, positive to stage left")},
      {QStringLiteral("width"), Words::tr("of the first row")},
      {QStringLiteral("radius"), Words::tr("of the first row: 0 straight, positive curved round the stage")}};
  const auto found = hints.find(field);
  return found == hints.end() ? QString() : found->second;
}

QString withUnit(const QString& words, const QString& unit) {
  return unit.isEmpty() ? words : QStringLiteral("%1 (%2)").arg(words, unit);
}

} // namespace

std::vector<FormField> formFields(exchange::VenuePart part, UnitSystem system) {
  std::vector<FormField> fields;
  for (const exchange::TextField& each : exchange::fieldsOf(part)) {
    const QString words = titleOf(each.name);
    fields.push_back(
        {each.name, withUnit(words, exchange::unitOfField(each, system)), words, hintOf(each.name)});
  }
  return fields;
}

std::vector<FormField> formFields(const std::vector<exchange::RecordField>& fields) {
  std::vector<FormField> made;
  for (const exchange::RecordField& each : fields) {
    QString words = each.name;
    words[0] = words[0].toUpper();
    made.push_back({each.name, withUnit(words, each.unit), words});
  }
  return made;
}

QString faultWords(const exchange::FieldFault& fault) {
  if (!fault.read.isEmpty() && fault.expected.contains(fault.read)) {
    return fault.expected; // it says itself what was read
  }
  return fault.read.isEmpty() ? Words::tr("expected %1").arg(fault.expected)
                              : Words::tr("read “%1”, expected %2").arg(fault.read.left(40), fault.expected);
}

QString faultsOf(const std::vector<exchange::FieldFault>& faults, int row, const QString& field) {
  QStringList here;
  for (const exchange::FieldFault& fault : faults) {
    if (fault.row == row && fault.field == field) {
      here << faultWords(fault);
    }
  }
  return here.join(QLatin1Char('\n'));
}

} // namespace hangbook::desk
