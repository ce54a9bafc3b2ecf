// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/stock_models.h"

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// Nothing is said by a dash, so that what is there stands out.
Cell number(int value, const QString& toolTip = {}) {
  return {.text = value == 0 ? QStringLiteral("–") : QString::number(value),
          .number = static_cast<double>(value),
          .toolTip = toolTip};
}

Cell freeCell(const options::TypeOnDay& line) {
  Cell cell{.text = QString::number(line.free()), .number = static_cast<double>(line.free())};
  if (line.free() < 0) {
    cell.text = Words::tr("short of %1").arg(-line.free());
    cell.verdict = options::Verdict::fails;
    cell.toolTip = Words::tr("The shows that are away on this day want more than are fit.");
  } else if (line.unruled > 0) {
    cell.toolTip = Words::tr("No rule says how often %1 of these must be examined.").arg(line.unruled);
  }
  return cell;
}

QString takersOf(const options::TypeOnDay& line) {
  QStringList all;
  for (const options::Taker& each : line.takers) {
    all << Words::tr("%1 × %2").arg(each.number).arg(each.show);
  }
  return all.isEmpty() ? QStringLiteral("–") : all.join(QStringLiteral(", "));
}

} // namespace

Heading StockModel::headingOf(StockColumn column) const {
  switch (column) {
  case StockColumn::type:
    return {.title = Words::tr("Type"), .characters = 20, .wish = 24};
  case StockColumn::kind:
    return {.title = Words::tr("Kind"), .characters = 12};
  case StockColumn::owned:
    return {.title = Words::tr("Owned"), .figure = true, .characters = 8};
  case StockColumn::hired:
    return {.title = Words::tr("Hired"),
            .figure = true,
            .characters = 8,
            .toolTip = Words::tr("Of others, and not due back before this day")};
  case StockColumn::away:
    return {.title = Words::tr("Away now"),
            .figure = true,
            .characters = 12,
            .toolTip = Words::tr("Recorded as away today, whichever day is looked at")};
  case StockColumn::keptBack:
    return {.title = Words::tr("Kept back"),
            .figure = true,
            .characters = 11,
            .toolTip = Words::tr("Quarantined or in repair")};
  case StockColumn::due:
    return {.title = Words::tr("Due"),
            .figure = true,
            .characters = 6,
            .toolTip = Words::tr("An examination does not stand on this day")};
  case StockColumn::wanted:
    return {.title = Words::tr("Wanted"),
            .figure = true,
            .characters = 8,
            .toolTip = Words::tr("By what is chosen for the shows that are away on this day")};
  case StockColumn::free:
    return {.title = Words::tr("Free"),
            .figure = true,
            .characters = 12,
            .toolTip = Words::tr("Owned and hired, without what is kept back, due or wanted")};
  case StockColumn::takers:
    return {.title = Words::tr("Wanted by"), .characters = 14, .wish = 40};
  case StockColumn::count:
    break;
  }
  return {};
}

Cell StockModel::cellOf(const options::TypeOnDay& line, StockColumn column) const {
  switch (column) {
  case StockColumn::type:
    return {.text = line.type, .toolTip = line.type, .strong = true, .endMatters = true};
  case StockColumn::kind:
    return {.text = wordOf(line.kind)};
  case StockColumn::owned:
    return number(line.owned);
  case StockColumn::hired:
    return number(line.hired);
  case StockColumn::away:
    return number(line.away);
  case StockColumn::keptBack:
    return number(line.quarantined);
  case StockColumn::due:
    return number(line.due);
  case StockColumn::wanted:
    return number(line.wanted);
  case StockColumn::free:
    return freeCell(line);
  case StockColumn::takers:
    return {.text = takersOf(line), .toolTip = takersOf(line)};
  case StockColumn::count:
    break;
  }
  return {};
}

Heading ShortageModel::headingOf(ShortageColumn column) const {
  switch (column) {
  case ShortageColumn::show:
    return {.title = Words::tr("Show"), .characters = 16, .wish = 26};
  case ShortageColumn::type:
    return {.title = Words::tr("Lacks"), .characters = 16, .wish = 24};
  case ShortageColumn::lacking:
    return {.title = Words::tr("Short of"), .figure = true, .characters = 10};
  case ShortageColumn::day:
    return {.title = Words::tr("On"),
            .characters = 12,
            .toolTip = Words::tr(
                "The first of its worst days; all shows that are away then take from the same stock")};
  case ShortageColumn::fill:
    return {.title = Words::tr("What would fill it"), .characters = 20, .wish = 40};
  case ShortageColumn::count:
    break;
  }
  return {};
}

Cell ShortageModel::cellOf(const options::Shortage& line, ShortageColumn column) const {
  switch (column) {
  case ShortageColumn::show:
    return {.text = line.show, .toolTip = Words::tr("Of the tour %1").arg(line.tour), .strong = true};
  case ShortageColumn::type:
    return {.text = line.type};
  case ShortageColumn::lacking:
    return {.text = QString::number(line.lacking),
            .number = static_cast<double>(line.lacking),
            .verdict = options::Verdict::fails};
  case ShortageColumn::day:
    return {.text = dateText(line.day), .number = static_cast<double>(line.day.toJulianDay())};
  case ShortageColumn::fill:
    return {.text = fillsIt(line), .toolTip = fillsIt(line)};
  case ShortageColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
