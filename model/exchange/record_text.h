// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

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
/// One text a field, as typed, else exact to the bit; empty where there is no such record.
QStringList recordText(const RecordName& record, const Data& data);

struct RecordFault {
  QString field; ///< empty: the record as a whole
  QString read;
  QString expected; ///< goes on from "expected"
};

struct RecordRead {
  Data after; ///< the data with the record so; as before where there are faults
  std::vector<Difference> differences;
  std::vector<RecordFault> faults;
};

/// A file of that one record. An empty text says "not known".
QByteArray recordFile(Kind kind, const QString& sort, const QStringList& texts);
/// Content never throws.
RecordRead readRecord(Kind kind, const QString& sort, const QStringList& texts, const Data& before);

} // namespace hangbook::exchange
