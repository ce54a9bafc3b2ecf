// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/scan_log.h"

#include <algorithm>

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

constexpr std::size_t kept = 1000; // lines that anybody would look back at

} // namespace

int ScanLog::add(const QString& code) {
  std::vector<ScanLine> lines = all();
  lines.insert(lines.begin(), ScanLine{++count_, code, {}, Words::tr("being booked"), {}});
  lines.resize(std::min(lines.size(), kept));
  setRows(std::move(lines));
  return count_;
}

void ScanLog::answer(int number, const QString& word, const QString& text, options::Verdict sign) {
  std::vector<ScanLine> lines = all();
  const auto line = std::ranges::find(lines, number, &ScanLine::number);
  if (line != lines.end()) {
    line->word = word;
    line->text = text;
    line->sign = sign;
    setRows(std::move(lines));
  }
}

Heading ScanLog::headingOf(ScanColumn column) const {
  switch (column) {
  case ScanColumn::word:
    return {.title = Words::tr("Answer"), .characters = 15, .wish = 15};
  case ScanColumn::code:
    return {.title = Words::tr("Code"), .characters = 8, .wish = 11};
  case ScanColumn::text:
    return {.title = Words::tr("In words"), .characters = 12, .wish = 40};
  case ScanColumn::count:
    break;
  }
  return {};
}

Cell ScanLog::cellOf(const ScanLine& line, ScanColumn column) const {
  switch (column) {
  case ScanColumn::word:
    if (line.word.isEmpty()) {
      return {.text = QStringLiteral("…"), .missing = true};
    }
    return {.text = line.word, .verdict = line.sign, .toolTip = line.text};
  case ScanColumn::code:
    return {.text = line.code, .toolTip = line.code, .strong = true};
  case ScanColumn::text:
    return {.text = line.text, .missing = line.word.isEmpty(), .toolTip = line.text};
  case ScanColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
