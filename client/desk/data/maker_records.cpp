// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QCoreApplication>

#include "desk/data/figure_lines.h"
#include "desk/data/records_of.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

QString words(const char* text) {
  return QCoreApplication::translate("Record", text);
}

template <class Type>
RecordLine maker(RecordKind kind, const Type& type, FigureLines& lines) {
  return {.kind = kind,
          .name = type.name,
          .belongsTo = type.maker,
          .source = type.source,
          .figures = lines.take()};
}

QString joinText(const catalogue::Join& join) {
  QString text =
      words("%1 under %2, %3")
          .arg(join.below, join.above.isEmpty() ? words("the bar") : join.above, wordOf(join.kind));
  if (join.angles.size() > 1) {
    text += words(", %1 holes").arg(join.angles.size());
  }
  return text;
}

} // namespace

RecordLine recordOf(const catalogue::CabinetType& type) {
  FigureLines lines(type);
  lines.words(words("Family"), type.family).optional();
  lines.mass(words("Mass"), type.mass);
  lines.position(words("Centre of gravity"), type.centreOfGravity);
  lines.position(words("Pin of the cabinet below"), type.nextPin, type.downfill);
  lines.count(words("Corners of the outline"),
              type.outline.empty() ? std::nullopt : std::optional(static_cast<int>(type.outline.size())));
  lines.length(words("Width"), type.width);
  lines.position(words("Chain eye"), type.chainEye, true);
  lines.position(words("Rear contact"), type.rearContact, true);
  lines.yesNo(words("Covers the audience"), type.coversAudience);
  if (type.coversAudience) {
    lines.angle(words("Cover, lower edge"), type.coverLowest)
        .angle(words("Cover, upper edge"), type.coverHighest)
        .angle(words("Cover, across"), type.coverAcross);
    lines.length(words("Throw"), type.throwDistance);
  }
  lines.number(words("Level at 1 m, dB"), type.levelAtOneMetre).optional();
  lines.number(words("Face, m²"), type.faceArea).number(words("Force coefficient"), type.forceCoefficient);
  return maker(RecordKind::cabinet, type, lines);
}

RecordLine recordOf(const catalogue::BarType& type) {
  FigureLines lines(type);
  lines.mass(words("Frame mass"), type.frameMass)
      .position(words("Frame centre of gravity"), type.frameCentreOfGravity);
  lines.position(words("Stack pin"), type.stackPin).position(words("Chain anchor"), type.chainAnchor);
  // Only a bar that is picked up side by side has a head that it can tilt and pan against.
  const bool hasHead = std::any_of(
      type.arrangements.begin(), type.arrangements.end(),
      [](const catalogue::PickArrangement& each) { return each.picks == catalogue::Picks::sidePair; });
  if (hasHead) {
    lines.mass(words("Head mass"), type.headMass)
        .position(words("Head centre of gravity"), type.headCentreOfGravity);
    lines.position(words("Tilt axis"), type.tiltAxis).travel(words("Tilt travel"), type.tiltTravel);
    lines.travel(words("Pan travel"), type.panTravel).angle(words("Most swing"), type.swingLimit);
  }
  lines.angle(words("Tilt step"), type.tiltStep).optional();
  lines.position(words("Datum for the tape"), type.datum).length(words("Width"), type.width);
  for (const catalogue::PickArrangement& each : type.arrangements) {
    const QString name = wordOf(each.picks);
    if (each.spacing) {
      lines.length(words("%1, spacing").arg(name), each.spacing);
    }
    lines.force(words("%1, limit below the picks").arg(name), each.limit);
    lines.count(words("%1, most cabinets").arg(name), each.mostCabinets);
  }
  return maker(RecordKind::bar, type, lines);
}

RecordLine recordOf(const catalogue::HoistType& type) {
  FigureLines lines(type);
  lines.force(words("Working load limit"), type.limit).mass(words("Body mass"), type.bodyMass);
  lines.yesNo(words("Body climbs"), type.bodyClimbs);
  lines.number(words("Chain, per metre"),
               type.chainMass ? std::optional(inKilogramsPerMetre(*type.chainMass)) : std::nullopt,
               Measure::perMetre);
  lines.mass(words("Chain bag"), type.chainBagMass).length(words("Chain length"), type.chainLength);
  lines.length(words("Closed length"), type.closedLength);
  lines.number(words("Speed"), type.speed ? std::optional(inMetresPerSecond(*type.speed)) : std::nullopt,
               Measure::speed);
  lines.words(words("Hoisting class"),
              type.hoistingClass ? QStringLiteral("HC%1").arg(static_cast<int>(*type.hoistingClass) + 1)
                                 : QString());
  lines.yesNo(words("Holds over people without secondary"), type.holdsWithoutSecondary);
  return maker(RecordKind::hoist, type, lines);
}

RecordLine recordOf(const catalogue::ChainType& type) {
  FigureLines lines(type);
  lines.length(words("Pitch"), type.pitch).length(words("Fixed length"), type.fixedLength);
  lines.count(words("Links"), type.links).force(words("Working load limit"), type.limit);
  lines.number(words("Mass per metre"),
               type.mass ? std::optional(inKilogramsPerMetre(*type.mass)) : std::nullopt, Measure::perMetre);
  lines.number(words("Discarded at a stretch of"), type.discardStretchPercent, Measure::percent);
  return maker(RecordKind::chain, type, lines);
}

RecordLine recordOf(const catalogue::HardwareType& type) {
  FigureLines lines(type);
  lines.words(words("Kind"), wordOf(type.kind)).force(words("Working load limit"), type.limit);
  lines.mass(words("Mass"), type.mass).length(words("Length"), type.length);
  return maker(RecordKind::hardware, type, lines);
}

RecordLine recordOf(const catalogue::CartType& type) {
  FigureLines lines(type);
  lines.words(words("Carries"), type.carries).count(words("Most cabinets"), type.most);
  lines.mass(words("Mass, empty"), type.mass).length(words("Length"), type.length);
  lines.length(words("Width"), type.width).length(words("Height, loaded"), type.height);
  return maker(RecordKind::cart, type, lines);
}

RecordLine recordOf(const catalogue::StackingTable& table) {
  FigureLines lines(table);
  lines.words(words("Bars"), QStringList(table.bars.begin(), table.bars.end()).join(QStringLiteral(", ")));
  lines.words(words("Chain"), table.chain).optional();
  for (const catalogue::Count& each : table.counts) {
    lines.words(words("How many"), words("%1: %2 to %3").arg(each.type).arg(each.least).arg(each.most));
  }
  for (const catalogue::Join& each : table.joins) {
    lines.force(joinText(each), each.pinLimit);
  }
  return maker(RecordKind::table, table, lines);
}

} // namespace hangbook::desk
