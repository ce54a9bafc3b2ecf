// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/due_model.h"

#include <algorithm>
#include <limits>
#include <utility>

#include "desk/style/figures.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

constexpr int soonDays = 30;

Cell dayCell(const QDate& date) {
  Cell cell{.text = dateText(date)};
  cell.missing = !date.isValid();
  if (date.isValid()) {
    cell.number = static_cast<double>(date.toJulianDay());
  }
  return cell;
}

/// The day that it stands until needs no second telling beside it: only another day does.
QString bestBesideDue(const calendar::Planned& line) {
  return !isOverdue(line.due) && !line.ahead && line.slot.to == line.due.due
             ? Words::tr("%1 by then").arg(line.slot.place)
             : bestInWords(line);
}

QString bestToolTip(const calendar::Planned& line) {
  const QString days = Words::tr("At %1 from %2 to %3.")
                           .arg(line.slot.place, dateText(line.slot.from), dateText(line.slot.to));
  return line.ahead ? days + Words::tr(" It falls due while the gear is away: examine it before it leaves.")
                    : days;
}

} // namespace

bool isOverdue(const fleet::Due& due) {
  return due.overdue || !due.due.isValid();
}

QString bestInWords(const calendar::Planned& line) {
  if (isOverdue(line.due)) {
    return Words::tr("now, at %1").arg(line.slot.place);
  }
  const QString where = Words::tr("%1 by %2").arg(line.slot.place, dateText(line.slot.to));
  return line.ahead ? Words::tr("%1, ahead").arg(where) : where;
}

void DueModel::setFacts(std::shared_ptr<const Overview> facts) {
  const auto before = std::exchange(facts_, std::move(facts)); // until no row points into it
  std::vector<const calendar::Planned*> lines(facts_->due.size());
  std::transform(facts_->due.begin(), facts_->due.end(), lines.begin(),
                 [](const calendar::Planned& line) { return &line; });
  setRows(std::move(lines));
}

Heading DueModel::headingOf(DueColumn column) const {
  switch (column) {
  case DueColumn::state:
    return {.title = Words::tr("State"), .characters = 16, .wish = 17};
  case DueColumn::due:
    return {.title = Words::tr("Stands until"),
            .characters = 14,
            .wish = 15,
            .toolTip = Words::tr("The last day on which the last examination stands")};
  case DueColumn::days:
    return {.title = Words::tr("Days"), .figure = true, .characters = 5, .wish = 7};
  case DueColumn::serial:
    return {.title = Words::tr("Serial"), .characters = 13};
  case DueColumn::type:
    return {.title = Words::tr("Type"), .characters = 15, .wish = 24};
  case DueColumn::rule:
    return {.title = Words::tr("Examination"), .characters = 17, .wish = 28};
  case DueColumn::best:
    return {.title = Words::tr("Best examined"),
            .characters = 20,
            .wish = 32,
            .toolTip =
                Words::tr("Where the fewest units are away and the interval is used up: the last days at the "
                          "warehouse before it falls due, else the last stop before")};
  case DueColumn::last:
    return {.title = Words::tr("Last done"), .characters = 12, .wish = 13};
  case DueColumn::place:
    return {.title = Words::tr("Is at"), .characters = 14, .wish = 24};
  case DueColumn::count:
    break;
  }
  return {};
}

Cell DueModel::stateOf(const calendar::Planned& line) const {
  if (!line.due.due.isValid()) {
    const bool never = !line.due.last.isValid();
    return {.text = never ? Words::tr("none recorded") : Words::tr("not met"),
            .number = 0,
            .verdict = never ? options::Verdict::unproven : options::Verdict::fails,
            .toolTip = line.due.note};
  }
  if (line.due.overdue) {
    return {.text = Words::tr("overdue"),
            .number = 1,
            .verdict = options::Verdict::fails,
            .toolTip = Words::tr("The last examination no longer stands.")};
  }
  if (facts_->today.daysTo(line.due.due) <= soonDays) {
    return {.text = Words::tr("due soon"),
            .number = 2,
            .verdict = options::Verdict::tight,
            .toolTip = Words::tr("Thirty days or less are left.")};
  }
  return {.text = Words::tr("in order"),
          .number = 3,
          .verdict = options::Verdict::holds,
          .toolTip = Words::tr("The last examination stands.")};
}

Cell DueModel::shown(const calendar::Planned& line, DueColumn column) const {
  switch (column) {
  case DueColumn::state:
    return stateOf(line);
  case DueColumn::due: {
    Cell cell = dayCell(line.due.due);
    // What is not met has no day: it is the most pressing of all, not a figure that nobody knows.
    if (!line.due.due.isValid()) {
      cell = {.text = QStringLiteral("–"), .number = 0.0};
    }
    return cell;
  }
  case DueColumn::days: {
    if (!line.due.due.isValid()) {
      return {.text = QStringLiteral("–"), .number = std::numeric_limits<double>::lowest()};
    }
    const auto days = facts_->today.daysTo(line.due.due);
    return {.text = QString::number(days), .number = static_cast<double>(days)};
  }
  case DueColumn::serial:
    return {.text = line.due.serial, .strong = true, .endMatters = true};
  case DueColumn::type:
    return {.text = line.due.type, .toolTip = line.due.type, .endMatters = true};
  case DueColumn::rule:
    return {.text = line.due.rule, .toolTip = line.due.rule};
  case DueColumn::last:
    return dayCell(line.due.last);
  case DueColumn::place:
    return {.text = line.due.place, .toolTip = line.due.place, .endMatters = true};
  case DueColumn::best:
    return {.text = bestBesideDue(line),
            .number = static_cast<double>(line.slot.to.toJulianDay()),
            .toolTip = bestToolTip(line)};
  case DueColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
