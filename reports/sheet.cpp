// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/sheet.h"

namespace hangbook::reports {
namespace {

void add(std::vector<QStringList>& records, const Text& text) {
  if (!text.text.isEmpty()) {
    records.push_back({QStringLiteral("text"), text.text});
  }
}

void add(std::vector<QStringList>& records, const Table& table) {
  add(records, Text{Text::Size::heading, table.title});
  add(records, Text{Text::Size::body, table.note});
  QStringList head{table.name};
  for (const Table::Column& column : table.columns) {
    head << column.heading;
  }
  records.push_back(head);
  for (const Table::Row& row : table.rows) {
    records.push_back(QStringList{table.name} + row.cells);
  }
}

void add(std::vector<QStringList>& records, const Big& big) {
  records.push_back(QStringList{QStringLiteral("figure"), big.caption, big.text} + big.beside);
}

void add(std::vector<QStringList>& records, const Drawing& drawing) {
  for (const Drawing::Note& note : drawing.notes) {
    records.push_back({QStringLiteral("drawing"), drawing.caption, note.text});
  }
}

void add(std::vector<QStringList>& records, const Chart& chart) {
  for (const Chart::Bar& bar : chart.bars) {
    records.push_back({QStringLiteral("chart"), chart.caption, bar.label, bar.text});
  }
}

void add(std::vector<QStringList>&, const NewPage&) {}

} // namespace

std::vector<QStringList> recordsOf(const Sheet& sheet, const Stamp& stamp) {
  std::vector<QStringList> records{{QStringLiteral("sheet"), sheet.title},
                                   {QStringLiteral("show"), sheet.show},
                                   {QStringLiteral("revision"), sheet.revision}};
  for (const QString& line : sheet.about) {
    records.push_back({QStringLiteral("about"), line});
  }
  if (!stamp.code.isEmpty()) {
    records.push_back({QStringLiteral("program"), stamp.program});
    records.push_back({QStringLiteral("printed"), stamp.printed.toUTC().toString(Qt::ISODate)});
    records.push_back({QStringLiteral("checksum"), stamp.checksum});
    records.push_back({QStringLiteral("code"), stamp.code});
  }
  for (const QString& why : sheet.notCleared) {
    records.push_back({QStringLiteral("NOT CLEARED TO LIFT"), why});
  }
  if (!sheet.sides.isEmpty()) {
    records.push_back({QStringLiteral("sides"), sheet.sides});
  }
  for (const Block& block : sheet.blocks) {
    std::visit([&](const auto& each) { add(records, each); }, block);
  }
  return records;
}

} // namespace hangbook::reports
