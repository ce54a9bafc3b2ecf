// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "exchange/field_fault.h"
#include "exchange/import.h"

/// One record of the dictionary of columns as texts that people edit: whatever sort of line it is, its fields
/// are the sort's columns, read by the rules of its spreadsheet.
namespace hangbook::exchange {

/// Which record: "cabinet" of the types, "person" of the people.
struct RecordName {
  Kind kind = Kind::types;
  QString sort;
  QString name;
};

struct RecordField {
  QString name;     ///< the column's heading
  QString unit;     ///< of a bare number; empty where it takes none
  bool own = false; ///< the record is known by it
};

/// The columns of that sort, in order. Throws Error (badInput) where there is no such sort.
std::vector<RecordField> fieldsOf(Kind kind, const QString& sort);

/// Lines of another sort that name the record they belong to; that column is not among the fields.
struct RecordPart {
  QString sort; ///< "join"
  std::vector<RecordField> fields;
};
/// The parts of records of that sort, in the order of the dictionary; most have none.
std::vector<RecordPart> partsOf(Kind kind, const QString& sort);

/// One text a field.
struct RecordText {
  QStringList own;
  std::vector<std::vector<QStringList>> parts; ///< of each part its rows
  bool none() const { return own.isEmpty(); }
  bool operator==(const RecordText&) const = default;
};
/// As typed, else exact to the bit; `none()` where there is no such record.
RecordText recordText(const RecordName& record, const Data& data);
/// The name that the texts give the record.
QString nameIn(const RecordName& record, const RecordText& text);

struct RecordFault : FieldFault {
  std::optional<std::size_t> part; ///< none: of the record's own fields
};

struct RecordRead {
  Data after; ///< the data with the record so; as before where there are faults
  std::vector<Difference> differences;
  std::vector<RecordFault> faults;
};

/// A file of that one record and its parts. An empty text says "not known".
QByteArray recordFile(const RecordName& record, const RecordText& text);
/// The data with the record as these texts say; a part without a row is gone. A record without a name in
/// `record` is new: its name must not be taken. Content never throws.
RecordRead readRecord(const RecordName& record, const RecordText& text, const Data& before);

} // namespace hangbook::exchange
