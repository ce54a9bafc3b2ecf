// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/due_model.h"

#include <QCoreApplication>

#include "desk/style/figures.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

constexpr int soonDays = 30;

QString words(const char* text) {
  return QCoreApplication::translate("DueModel", text);
}

Cell dayCell(const QDate& date) {
  Cell cell{.text = dateText(date)};
  cell.missing = !date.isValid();
  if (date.isValid()) {
    cell.number = static_cast<double>(date.toJulianDay());
  }
  return cell;
}

} // namespace

void DueModel::setLines(std::vector<DueLine> lines, QDate today) {
  today_ = today;
  setRows(std::move(lines));
}

Heading DueModel::headingOf(DueColumn column) const {
  switch (column) {
  case DueColumn::state:
    return {.title = words("State"), .characters = 16, .wish = 17};
  case DueColumn::due:
    return {.title = words("Stands until"),
            .characters = 15,
            .wish = 15,
            .toolTip = words("The last day on which the last examination stands")};
  case DueColumn::days:
    return {.title = words("Days"), .figure = true, .characters = 7};
  case DueColumn::serial:
    return {.title = words("Serial"), .characters = 13};
  case DueColumn::type:
    return {.title = words("Type"), .characters = 18, .wish = 24};
  case DueColumn::rule:
    return {.title = words("Examination"), .characters = 20, .wish = 28};
  case DueColumn::last:
    return {.title = words("Last done"), .characters = 13, .wish = 13};
  case DueColumn::place:
    return {.title = words("Is at"), .characters = 16, .wish = 24};
  case DueColumn::stop:
    return {.title = words("Last stop before"),
            .characters = 18,
            .wish = 26,
            .toolTip = words("The last stop of the route at which it can still be done in time")};
  case DueColumn::count:
    break;
  }
  return {};
}

Cell DueModel::stateOf(const DueLine& line) const {
  if (!line.due.due.isValid()) {
    const bool never = !line.due.last.isValid();
    return {.text = never ? words("none recorded") : words("not met"),
            .number = 0,
            .verdict = never ? options::Verdict::unproven : options::Verdict::fails,
            .toolTip = line.due.note};
  }
  if (line.due.overdue) {
    return {.text = words("overdue"),
            .number = 1,
            .verdict = options::Verdict::fails,
            .toolTip = words("The last examination no longer stands.")};
  }
  if (today_.daysTo(line.due.due) <= soonDays) {
    return {.text = words("due soon"),
            .number = 2,
            .verdict = options::Verdict::tight,
            .toolTip = words("Thirty days or less are left.")};
  }
  return {.text = words("in order"),
          .number = 3,
          .verdict = options::Verdict::holds,
          .toolTip = words("The last examination stands.")};
}

Cell DueModel::cellOf(const DueLine& line, DueColumn column) const {
  switch (column) {
  case DueColumn::state:
    return stateOf(line);
  case DueColumn::due:
    return dayCell(line.due.due);
  case DueColumn::days: {
    if (!line.due.due.isValid()) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    const auto days = today_.daysTo(line.due.due);
    return {.text = QString::number(days), .number = static_cast<double>(days)};
  }
  case DueColumn::serial:
    return {.text = line.due.serial, .strong = true};
  case DueColumn::type:
    return {.text = line.due.type};
  case DueColumn::rule:
    return {.text = line.due.rule, .toolTip = line.due.rule};
  case DueColumn::last:
    return dayCell(line.due.last);
  case DueColumn::place:
    return {.text = line.due.place};
  case DueColumn::stop:
    return {.text = line.stop.isEmpty() ? QStringLiteral("–") : line.stop};
  case DueColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
