// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/plug_text.h"

#include <algorithm>

#include "exchange/csv_write.h"
#include "exchange/kind_sorts.h"

namespace hangbook::exchange {
namespace {

constexpr std::size_t named = 3; ///< columns that name the hang: tour, show, hang

const Sort& plugSort() {
  const Sorts& all = sortsOf(Kind::shows);
  return **std::ranges::find(all, QStringLiteral("plug"), [](const auto& each) { return each->word(); });
}

QStringList keysOf(const HangName& hang) {
  return {hang.tour, hang.show, hang.hang};
}

bool isOf(const calendar::Plug& plug, const HangName& hang) {
  return HangName{plug.tour, plug.show, plug.hang} == hang;
}

QByteArray fileOf(const HangName& hang, const std::vector<QStringList>& rows) {
  QStringList headings{recordHeading()};
  for (const Heading& each : plugSort().headings()) {
    headings << writtenHeading(each);
  }
  std::vector<QStringList> lines{headings};
  for (const QStringList& row : rows) {
    QStringList& line = lines.emplace_back(QStringList(plugSort().word()) + keysOf(hang));
    for (const QString& text : row) {
      line << QString(text).remove(QChar::Null).simplified();
    }
    line.resize(headings.size());
  }
  return writeCsv(lines);
}

} // namespace

std::vector<RecordField> plugFields() {
  std::vector<RecordField> fields = fieldsOf(Kind::shows, plugSort().word());
  fields.erase(fields.begin(), fields.begin() + named);
  return fields;
}

std::vector<QStringList> plugTexts(const HangName& hang, const Data& data) {
  std::vector<QStringList> rows;
  const QStringList keys = keysOf(hang);
  for (const std::vector<QString>& line : plugSort().write(data)) {
    if (std::equal(keys.begin(), keys.end(), line.begin())) {
      rows.emplace_back(line.begin() + named, line.end());
    }
  }
  return rows;
}

PlugsRead readPlugs(const HangName& hang, const std::vector<QStringList>& rows, const Data& before) {
  Data bare = before;
  std::erase_if(bare.cabling.plugs, [&](const calendar::Plug& each) { return isOf(each, hang); });
  const Import import = readFile(Kind::shows, fileOf(hang, rows), bare, {{}, {}});
  PlugsRead read;
  const std::vector<Heading> headings = plugSort().headings();
  for (const Fault& fault : import.faults) {
    const qsizetype unit = fault.column.indexOf(QStringLiteral(" ["));
    FieldFault made{std::clamp(fault.line - 2, 0, std::max(0, static_cast<int>(rows.size()) - 1)),
                    unit < 0 ? fault.column : fault.column.left(unit), fault.read, fault.expected};
    for (std::size_t i = 0; i < named; ++i) {
      if (made.field == headings[i].name) { // which the rows do not show
        made.field.clear();
        made.expected = made.expected.section(QLatin1Char(';'), 0, 0);
      }
    }
    read.faults.push_back(std::move(made));
  }
  if (!import.faults.empty()) {
    return read;
  }
  for (calendar::Plug plug : import.after.cabling.plugs) {
    if (!isOf(plug, hang)) {
      continue;
    }
    const auto was = std::ranges::find_if(before.cabling.plugs, [&](const calendar::Plug& each) {
      return isOf(each, hang) && each.element == plug.element && each.socket == plug.socket;
    });
    if (was != before.cabling.plugs.end()) {
      plug.id = was->id;
      plug.revision = was->revision;
    }
    read.plugs.push_back(std::move(plug));
  }
  return read;
}

} // namespace hangbook::exchange
