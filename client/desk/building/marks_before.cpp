// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/marks_before.h"

#include <algorithm>

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

Cell angleCell(const std::optional<Angle>& angle) {
  if (!angle) {
    return {.text = QStringLiteral("–"), .missing = true, .toolTip = Words::tr("Not measured")};
  }
  return {.text = Figures().angle(inDegrees(*angle)), .number = inDegrees(*angle)};
}

} // namespace

std::vector<marks::MarkUsed> marksBefore(const Overview& overview, const options::OptionKey& key) {
  const catalogue::StackingTable* table = catalogue::find(overview.catalogue.tables, key.table);
  std::vector<marks::MarkUsed> before;
  std::copy_if(overview.marks.begin(), overview.marks.end(), std::back_inserter(before),
               [&](const marks::MarkUsed& each) {
                 const bool sameChain =
                     table == nullptr || each.chain.isEmpty() || each.chain == table->chain;
                 return each.stack == key.stack && each.bar == key.bar && sameChain;
               });
  std::stable_sort(before.begin(), before.end(),
                   [](const marks::MarkUsed& a, const marks::MarkUsed& b) { return a.date > b.date; });
  return before;
}

Heading MarkModel::headingOf(MarkColumn column) const {
  switch (column) {
  case MarkColumn::date:
    return {.title = Words::tr("Date"), .characters = 12};
  case MarkColumn::mark:
    return {.title = Words::tr("Mark"), .figure = true, .characters = 6};
  case MarkColumn::measured:
    return {.title = Words::tr("Measured"),
            .figure = true,
            .characters = 11,
            .toolTip = Words::tr("Angle of the held cabinet's joint, as measured")};
  case MarkColumn::tilt:
    return {.title = Words::tr("Tilt"), .figure = true, .characters = 7};
  case MarkColumn::place:
    return {.title = Words::tr("Where"), .characters = 12, .wish = 34};
  case MarkColumn::chain:
    return {.title = Words::tr("Chain"), .characters = 9, .toolTip = Words::tr("Serial of the chain")};
  case MarkColumn::by:
    return {.title = Words::tr("By"), .characters = 11, .wish = 16};
  case MarkColumn::count:
    break;
  }
  return {};
}

Cell MarkModel::cellOf(const marks::MarkUsed& used, MarkColumn column) const {
  switch (column) {
  case MarkColumn::date:
    return {.text = dateText(used.date),
            .number = static_cast<double>(used.date.toJulianDay()),
            .toolTip = used.weather};
  case MarkColumn::mark:
    return {.text = QString::number(used.mark), .number = static_cast<double>(used.mark), .strong = true};
  case MarkColumn::measured:
    return angleCell(used.measured);
  case MarkColumn::tilt:
    return angleCell(used.tilt);
  case MarkColumn::place:
    return {.text = used.place, .toolTip = used.place};
  case MarkColumn::chain:
    return {.text = used.chainSerial.isEmpty() ? QStringLiteral("–") : used.chainSerial,
            .missing = used.chainSerial.isEmpty()};
  case MarkColumn::by:
    return {.text = used.by};
  case MarkColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
