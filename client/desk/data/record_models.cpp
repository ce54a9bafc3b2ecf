// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/record_models.h"

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

Cell sourceCell(const catalogue::Source& source) {
  return {.text = source.text.isEmpty() ? Words::tr("no source") : source.text,
          .missing = source.text.isEmpty(),
          .toolTip = source.text};
}

Cell dayCell(const QDate& date) {
  Cell cell{.text = date.isValid() ? dateText(date) : QStringLiteral("–"), .missing = !date.isValid()};
  if (date.isValid()) {
    cell.number = static_cast<double>(date.toJulianDay());
  }
  return cell;
}

} // namespace

Heading RecordModel::headingOf(RecordColumn column) const {
  switch (column) {
  case RecordColumn::kind:
    return {.title = Words::tr("Kind"), .characters = 13};
  case RecordColumn::name:
    return {.title = Words::tr("Name"), .characters = 25, .wish = 32};
  case RecordColumn::belongsTo:
    return {.title = Words::tr("Maker, town"), .characters = 14, .wish = 24};
  case RecordColumn::unknown:
    return {.title = Words::tr("Not known"),
            .figure = true,
            .characters = 11,
            .toolTip = Words::tr("Figures without which a rule may stay unproven")};
  case RecordColumn::source:
    return {.title = Words::tr("Source"), .characters = 13, .wish = 40};
  case RecordColumn::date:
    return {.title = Words::tr("Dated"), .characters = 12};
  case RecordColumn::count:
    break;
  }
  return {};
}

Cell RecordModel::cellOf(const RecordLine& line, RecordColumn column) const {
  switch (column) {
  case RecordColumn::kind:
    return {.text = wordOf(line.kind), .number = static_cast<double>(line.kind)};
  case RecordColumn::name:
    return {.text = line.name, .strong = true, .endMatters = true};
  case RecordColumn::belongsTo:
    return {.text = line.belongsTo};
  case RecordColumn::unknown: {
    const int unknown = line.unknown();
    return {.text = unknown == 0 ? QStringLiteral("–") : QString::number(unknown),
            .number = static_cast<double>(unknown),
            .strong = unknown > 0};
  }
  case RecordColumn::source:
    return sourceCell(line.source);
  case RecordColumn::date:
    return dayCell(line.source.date);
  case RecordColumn::count:
    break;
  }
  return {};
}

void FigureModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading FigureModel::headingOf(FigureColumn column) const {
  switch (column) {
  case FigureColumn::what:
    return {.title = Words::tr("Figure"), .characters = 30, .wish = 40};
  case FigureColumn::value:
    return {.title = Words::tr("Value"), .figure = true, .characters = 16, .wish = 28};
  case FigureColumn::source:
    return {.title = Words::tr("Source"), .characters = 12, .wish = 40};
  case FigureColumn::date:
    return {.title = Words::tr("Dated"), .characters = 12};
  case FigureColumn::count:
    break;
  }
  return {};
}

Cell FigureModel::valueOf(const FigureLine& line) const {
  if (!line.text.isEmpty()) {
    return {.text = line.text, .toolTip = line.text};
  }
  if (!line.value) {
    Cell cell{.text = line.optional ? Words::tr("none stated") : notKnownText(), .missing = true};
    if (!line.optional) {
      cell.verdict = options::Verdict::unproven;
    }
    return cell;
  }
  Cell cell{.number = line.value};
  switch (line.measure) {
  case Measure::mass:
    cell.text = figures_.mass(line.value);
    break;
  case Measure::length:
    cell.text = figures_.length(line.value, 3);
    break;
  case Measure::force:
    cell.text = figures_.force(line.value);
    break;
  case Measure::angle:
    cell.text = figures_.angle(line.value);
    break;
  case Measure::percent:
    cell.text = figures_.percent(line.value, 1);
    break;
  case Measure::perMetre:
    cell.text = figures_.plain(line.value, 2) + QStringLiteral(" kg/m");
    break;
  case Measure::speed:
    cell.text = figures_.plain(*line.value * 60.0, 1) + QStringLiteral(" m/min");
    break;
  case Measure::count:
    cell.text = figures_.plain(line.value, 0);
    break;
  case Measure::plain:
  case Measure::text:
    cell.text = figures_.plain(line.value, 2);
    break;
  }
  return cell;
}

Cell FigureModel::cellOf(const FigureLine& line, FigureColumn column) const {
  switch (column) {
  case FigureColumn::what:
    return {.text = line.what, .toolTip = line.what};
  case FigureColumn::value:
    return valueOf(line);
  case FigureColumn::source:
    return sourceCell(line.source);
  case FigureColumn::date:
    return dayCell(line.source.date);
  case FigureColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
