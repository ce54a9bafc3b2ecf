// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/record_text.h"

#include <algorithm>

#include "exchange/csv_write.h"
#include "exchange/kind_sorts.h"
#include "quantity/error.h"

namespace hangbook::exchange {
namespace {

const Sort& sortNamed(Kind kind, const QString& word) {
  const Sorts& all = sortsOf(kind);
  const auto found = std::ranges::find_if(all, [&](const auto& each) { return each->word() == word; });
  if (found == all.end()) {
    throw Error(Trouble::badInput, "is no sort of line of a file of " + wordFor(kind).toStdString(),
                word.toStdString());
  }
  return **found;
}

struct Belongs {
  const char* record;
  const char* part;
};
/// Parts name the record that they belong to in their first column.
constexpr Belongs belongings[] = {
    {"cabinet", "socket"}, {"bar", "picks"}, {"hardware", "loom end"}, {"table", "join"}, {"table", "count"}};

std::vector<const Sort*> partSorts(Kind kind, const QString& sort) {
  std::vector<const Sort*> sorts;
  for (const Belongs& each : belongings) {
    if (kind == Kind::types && sort == QLatin1String(each.record)) {
      sorts.push_back(&sortNamed(kind, QString::fromLatin1(each.part)));
    }
  }
  return sorts;
}

RecordField fieldOf(const Heading& heading) {
  return {heading.name, QString::fromUtf8(heading.unit), isKey(heading.need)};
}

std::size_t nameColumn(const Sort& sort) {
  const std::vector<Heading> headings = sort.headings();
  const auto name = std::ranges::find_if(headings, [](const Heading& each) { return isKey(each.need); });
  return static_cast<std::size_t>(name - headings.begin());
}

void forgetTyped(Typed& typed, const char* part) {
  std::erase_if(typed, [&](const auto& each) {
    return each.first.startsWith(QString::fromLatin1(part) + QLatin1Char(' '));
  });
}

template <class Type>
Type* named(std::vector<Type>& list, const QString& name) {
  const auto found = std::ranges::find(list, name, &Type::name);
  return found == list.end() ? nullptr : &*found;
}

/// So that a row which is not there any more is gone.
Data withoutParts(Data data, const RecordName& record) {
  if (record.sort == QLatin1String("table")) {
    if (auto* table = named(data.catalogue.tables, record.name)) {
      table->joins.clear();
      table->counts.clear();
      forgetTyped(table->typed, "join");
      forgetTyped(table->typed, "count");
    }
  } else if (record.sort == QLatin1String("bar")) {
    if (auto* bar = named(data.catalogue.bars, record.name)) {
      bar->arrangements.clear();
      forgetTyped(bar->typed, "picks");
    }
  } else if (record.sort == QLatin1String("cabinet")) {
    std::erase_if(data.cabling.sockets, [&](const auto& each) { return each.cabinet == record.name; });
  } else if (record.sort == QLatin1String("hardware")) {
    std::erase_if(data.cabling.ends, [&](const auto& each) { return each.loom == record.name; });
  }
  return data;
}

/// Records of their own that were taken out and came back stay what they were in the store.
template <class Part>
void knowAgain(std::vector<Part>& after, const std::vector<Part>& before, QString Part::*owner) {
  for (Part& each : after) {
    const auto found = std::ranges::find_if(
        before, [&](const Part& other) { return other.*owner == each.*owner && other.name == each.name; });
    if (each.id.isNull() && found != before.end()) {
      each.id = found->id;
      each.revision = found->revision;
    }
  }
}

/// One line of the file: of which part, and which row of it.
struct LineOf {
  std::optional<std::size_t> part{};
  int row = 0;
};

std::vector<LineOf> linesOf(const RecordText& text) {
  std::vector<LineOf> lines{{}};
  for (std::size_t part = 0; part < text.parts.size(); ++part) {
    for (std::size_t row = 0; row < text.parts[part].size(); ++row) {
      lines.push_back({part, static_cast<int>(row)});
    }
  }
  return lines;
}

/// None: another fault says it already.
std::optional<RecordFault> forFields(const Fault& fault, const LineOf& line, const RecordName& record,
                                     bool ownIsFaulty) {
  const qsizetype unit = fault.column.indexOf(QStringLiteral(" ["));
  RecordFault made{{line.row, unit < 0 ? fault.column : fault.column.left(unit), fault.read, fault.expected},
                   line.part};
  if (!line.part) {
    return made;
  }
  const std::vector<const Sort*> sorts = partSorts(record.kind, record.sort);
  if (made.field == sorts[*line.part]->headings().front().name) { // which the rows do not show
    if (ownIsFaulty) {
      return std::nullopt;
    }
    made.field.clear();
    made.expected = made.expected.section(QLatin1Char(';'), 0, 0); // a line of the file means nothing here
  }
  return made;
}

} // namespace

std::vector<RecordField> fieldsOf(Kind kind, const QString& sort) {
  std::vector<RecordField> fields;
  for (const Heading& each : sortNamed(kind, sort).headings()) {
    fields.push_back(fieldOf(each));
  }
  return fields;
}

std::vector<RecordPart> partsOf(Kind kind, const QString& sort) {
  std::vector<RecordPart> parts;
  for (const Sort* each : partSorts(kind, sort)) {
    RecordPart& part = parts.emplace_back();
    part.sort = each->word();
    for (const Heading& heading : each->headings()) {
      part.fields.push_back(fieldOf(heading));
    }
    part.fields.erase(part.fields.begin()); // names the record
  }
  return parts;
}

RecordText recordText(const RecordName& record, const Data& data) {
  const Sort& sort = sortNamed(record.kind, record.sort);
  const std::size_t column = nameColumn(sort);
  RecordText text;
  for (const std::vector<QString>& line : sort.write(data)) {
    if (column < line.size() && line[column] == record.name) {
      text.own = {line.begin(), line.end()};
    }
  }
  if (text.none()) {
    return text;
  }
  for (const Sort* each : partSorts(record.kind, record.sort)) {
    std::vector<QStringList>& rows = text.parts.emplace_back();
    for (const std::vector<QString>& line : each->write(data)) {
      if (line.front() == record.name) {
        rows.emplace_back(line.begin() + 1, line.end());
      }
    }
  }
  return text;
}

QString nameIn(const RecordName& record, const RecordText& text) {
  return text.own.value(static_cast<qsizetype>(nameColumn(sortNamed(record.kind, record.sort)))).simplified();
}

QByteArray recordFile(const RecordName& record, const RecordText& text) {
  QStringList headings{recordHeading()};
  std::vector<QStringList> lines;
  const auto add = [&](const Sort& sort, const QStringList& texts) {
    QStringList& line = lines.emplace_back(sort.word());
    const std::vector<Heading> columns = sort.headings();
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const QString heading = writtenHeading(columns[i]);
      if (!headings.contains(heading)) {
        headings << heading;
      }
      const qsizetype at = headings.indexOf(heading);
      line.resize(std::max(line.size(), at + 1));
      line[at] = texts.value(static_cast<qsizetype>(i)).remove(QChar::Null).simplified();
    }
  };
  add(sortNamed(record.kind, record.sort), text.own);
  const std::vector<const Sort*> sorts = partSorts(record.kind, record.sort);
  for (std::size_t part = 0; part < std::min(sorts.size(), text.parts.size()); ++part) {
    for (const QStringList& row : text.parts[part]) {
      add(*sorts[part], QStringList(nameIn(record, text)) + row);
    }
  }
  std::vector<QStringList> all{headings};
  for (QStringList& line : lines) {
    line.resize(headings.size());
    all.push_back(std::move(line));
  }
  return writeCsv(all);
}

RecordRead readRecord(const RecordName& record, const RecordText& text, const Data& before) {
  RecordName meant = record;
  meant.name = nameIn(record, text);
  RecordRead read{before, {}, {}};
  if (record.name.isEmpty() && !meant.name.isEmpty() && !recordText(meant, before).none()) {
    const auto own = fieldsOf(record.kind, record.sort);
    const auto name = std::ranges::find_if(own, &RecordField::own);
    read.faults.push_back(
        {{0, name->name, meant.name, QStringLiteral("a name that no other %1 has").arg(record.sort)}, {}});
    return read;
  }
  Import import = readFile(record.kind, recordFile(record, text), withoutParts(before, meant), {{}, {}});
  const std::vector<LineOf> lines = linesOf(text);
  const bool ownIsFaulty =
      std::ranges::any_of(import.faults, [](const Fault& each) { return each.line <= 2; });
  for (const Fault& fault : import.faults) {
    const int at = std::clamp(fault.line - 2, 0, static_cast<int>(lines.size()) - 1); // below the headings
    if (auto made = forFields(fault, lines[static_cast<std::size_t>(at)], record, ownIsFaulty)) {
      read.faults.push_back(std::move(*made));
    }
  }
  if (import.faults.empty()) {
    read.after = std::move(import.after);
    read.differences = std::move(import.differences);
    knowAgain(read.after.cabling.sockets, before.cabling.sockets, &catalogue::Socket::cabinet);
    knowAgain(read.after.cabling.ends, before.cabling.ends, &catalogue::LoomEnd::loom);
  }
  return read;
}

} // namespace hangbook::exchange
