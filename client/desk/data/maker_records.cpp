// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "desk/data/figure_lines.h"
#include "desk/data/records_of.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

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
      Words::tr("%1 under %2, %3")
          .arg(join.below, join.above.isEmpty() ? Words::tr("the bar") : join.above, wordOf(join.kind));
  if (join.angles.size() > 1) {
    text += Words::tr(", %1 holes").arg(join.angles.size());
  }
  return text;
}

} // namespace

RecordLine recordOf(const catalogue::CabinetType& type) {
  FigureLines lines(type);
  lines.words(Words::tr("Family"), type.family).optional();
  lines.mass(Words::tr("Mass"), type.mass);
  lines.position(Words::tr("Centre of gravity"), type.centreOfGravity);
  lines.position(Words::tr("Pin of the cabinet below"), type.nextPin, type.downfill);
  lines.count(Words::tr("Corners of the outline"),
              type.outline.empty() ? std::nullopt : std::optional(static_cast<int>(type.outline.size())));
  lines.length(Words::tr("Width"), type.width);
  lines.position(Words::tr("Chain eye"), type.chainEye, true);
  lines.position(Words::tr("Rear contact"), type.rearContact, true);
  lines.yesNo(Words::tr("Covers the audience"), type.coversAudience);
  if (type.coversAudience) {
    lines.angle(Words::tr("Cover, lower edge"), type.coverLowest)
        .angle(Words::tr("Cover, upper edge"), type.coverHighest)
        .angle(Words::tr("Cover, across"), type.coverAcross);
    lines.length(Words::tr("Throw"), type.throwDistance);
  }
  lines.number(Words::tr("Level at 1 m, dB"), type.levelAtOneMetre).optional();
  lines.number(Words::tr("Face, m²"), type.faceArea)
      .number(Words::tr("Force coefficient"), type.forceCoefficient);
  return maker(RecordKind::cabinet, type, lines);
}

RecordLine recordOf(const catalogue::BarType& type) {
  FigureLines lines(type);
  lines.mass(Words::tr("Frame mass"), type.frameMass)
      .position(Words::tr("Frame centre of gravity"), type.frameCentreOfGravity);
  lines.position(Words::tr("Stack pin"), type.stackPin).position(Words::tr("Chain anchor"), type.chainAnchor);
  // Only a bar that is picked up side by side has a head that it can tilt and pan against.
  const bool hasHead = std::any_of(
      type.arrangements.begin(), type.arrangements.end(),
      [](const catalogue::PickArrangement& each) { return each.picks == catalogue::Picks::sidePair; });
  if (hasHead) {
    lines.mass(Words::tr("Head mass"), type.headMass)
        .position(Words::tr("Head centre of gravity"), type.headCentreOfGravity);
    lines.position(Words::tr("Tilt axis"), type.tiltAxis).travel(Words::tr("Tilt travel"), type.tiltTravel);
    lines.travel(Words::tr("Pan travel"), type.panTravel).angle(Words::tr("Most swing"), type.swingLimit);
  }
  lines.angle(Words::tr("Tilt step"), type.tiltStep).optional();
  lines.position(Words::tr("Datum for the tape"), type.datum).length(Words::tr("Width"), type.width);
  for (const catalogue::PickArrangement& each : type.arrangements) {
    const QString name = wordOf(each.picks);
    if (each.spacing) {
      lines.length(Words::tr("%1, spacing").arg(name), each.spacing);
    }
    lines.force(Words::tr("%1, limit below the picks").arg(name), each.limit);
    lines.count(Words::tr("%1, most cabinets").arg(name), each.mostCabinets);
  }
  return maker(RecordKind::bar, type, lines);
}

RecordLine recordOf(const catalogue::HoistType& type) {
  FigureLines lines(type);
  lines.force(Words::tr("Working load limit"), type.limit).mass(Words::tr("Body mass"), type.bodyMass);
  lines.yesNo(Words::tr("Body climbs"), type.bodyClimbs);
  lines.number(Words::tr("Chain, per metre"),
               type.chainMass ? std::optional(inKilogramsPerMetre(*type.chainMass)) : std::nullopt,
               Measure::perMetre);
  lines.mass(Words::tr("Chain bag"), type.chainBagMass).length(Words::tr("Chain length"), type.chainLength);
  lines.length(Words::tr("Closed length"), type.closedLength);
  lines.number(Words::tr("Speed"), type.speed ? std::optional(inMetresPerSecond(*type.speed)) : std::nullopt,
               Measure::speed);
  lines.words(Words::tr("Hoisting class"),
              type.hoistingClass ? QStringLiteral("HC%1").arg(static_cast<int>(*type.hoistingClass) + 1)
                                 : QString());
  lines.yesNo(Words::tr("Holds over people without secondary"), type.holdsWithoutSecondary);
  return maker(RecordKind::hoist, type, lines);
}

RecordLine recordOf(const catalogue::ChainType& type) {
  FigureLines lines(type);
  lines.length(Words::tr("Pitch"), type.pitch).length(Words::tr("Fixed length"), type.fixedLength);
  lines.count(Words::tr("Links"), type.links).force(Words::tr("Working load limit"), type.limit);
  lines.number(Words::tr("Mass per metre"),
               type.mass ? std::optional(inKilogramsPerMetre(*type.mass)) : std::nullopt, Measure::perMetre);
  lines.number(Words::tr("Discarded at a stretch of"), type.discardStretchPercent, Measure::percent);
  return maker(RecordKind::chain, type, lines);
}

RecordLine recordOf(const catalogue::HardwareType& type) {
  FigureLines lines(type);
  lines.words(Words::tr("Kind"), wordOf(type.kind)).force(Words::tr("Working load limit"), type.limit);
  lines.mass(Words::tr("Mass"), type.mass).length(Words::tr("Length"), type.length);
  return maker(RecordKind::hardware, type, lines);
}

RecordLine recordOf(const catalogue::CartType& type) {
  FigureLines lines(type);
  lines.words(Words::tr("Carries"), type.carries).count(Words::tr("Most cabinets"), type.most);
  lines.mass(Words::tr("Mass, empty"), type.mass).length(Words::tr("Length"), type.length);
  lines.length(Words::tr("Width"), type.width).length(Words::tr("Height, loaded"), type.height);
  return maker(RecordKind::cart, type, lines);
}

RecordLine recordOf(const catalogue::ConnectorType& type) {
  FigureLines lines(type);
  lines.words(Words::tr("Carries"), type.carries ? wordOf(*type.carries) : QString()).optional();
  return maker(RecordKind::connector, type, lines);
}

RecordLine recordOf(const catalogue::StackingTable& table) {
  FigureLines lines(table);
  lines.words(Words::tr("Bars"),
              QStringList(table.bars.begin(), table.bars.end()).join(QStringLiteral(", ")));
  lines.words(Words::tr("Chain"), table.chain).optional();
  for (const catalogue::Count& each : table.counts) {
    lines.words(Words::tr("How many"),
                Words::tr("%1: %2 to %3").arg(each.type).arg(each.least).arg(each.most));
  }
  for (const catalogue::Join& each : table.joins) {
    lines.force(joinText(each), each.pinLimit);
  }
  return maker(RecordKind::table, table, lines);
}

} // namespace hangbook::desk
