// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/importing/import_lines.h"

#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString known(const QString& text) {
  return text.isEmpty() ? Words::tr("not known") : text;
}

} // namespace

void ImportLines::setLook(const ImportLook& look) {
  std::vector<ImportLine> lines;
  for (const exchange::Fault& each : look.faults) {
    lines.push_back({each.line, Words::tr("cannot be read"), each.column, each.read, each.expected, true});
  }
  for (const exchange::Difference& each : look.differences) {
    lines.push_back({each.line, Words::tr("%1 %2").arg(each.sort, each.key), each.heading, known(each.was),
                     known(each.becomes), false});
  }
  setRows(std::move(lines));
}

Heading ImportLines::headingOf(ImportColumn column) const {
  switch (column) {
  case ImportColumn::line:
    return {.title = Words::tr("Line"), .figure = true, .characters = 6};
  case ImportColumn::what:
    return {.title = Words::tr("Record"), .characters = 18, .wish = 24};
  case ImportColumn::column:
    return {.title = Words::tr("Column"), .characters = 12, .wish = 18};
  case ImportColumn::stands:
    return {.title = Words::tr("Stands / was read"), .characters = 16, .wish = 20};
  case ImportColumn::then:
    return {.title = Words::tr("Becomes / is expected"), .characters = 20, .wish = 78};
  case ImportColumn::count:
    break;
  }
  return {};
}

Cell ImportLines::cellOf(const ImportLine& line, ImportColumn column) const {
  switch (column) {
  case ImportColumn::line:
    return {.text = QString::number(line.line), .number = line.line};
  case ImportColumn::what: {
    Cell cell{.text = line.what};
    if (line.fault) {
      cell.verdict = options::Verdict::fails;
    }
    return cell;
  }
  case ImportColumn::column:
    return {.text = line.column};
  case ImportColumn::stands:
    return {.text = line.stands, .toolTip = line.stands};
  case ImportColumn::then:
    return {.text = line.then, .toolTip = line.then, .strong = !line.fault};
  case ImportColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
