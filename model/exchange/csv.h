// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QByteArray>
#include <QString>

#include "exchange/csv_heading.h"
#include "exchange/csv_records.h"
#include "exchange/fault.h"
#include "exchange/mapping.h"
#include "quantity/text.h"

/// Spreadsheets as comma-separated text, in the forms in which programs really write them.
namespace hangbook::exchange {

/// What the user has said about a file; what is left out is found in it.
struct CsvForm {
  std::optional<char> separator;   ///< ',' ';' or '\t'
  std::optional<char> decimalMark; ///< '.' or ','
  /// As QDate reads it: "dd.MM.yyyy"; several separated by ";"; empty = 2027-04-02.
  QString dateFormat = {};
  Mapping mapping = {}; ///< of the file's headings to ours
};

/// A file as a table. Where there are faults nothing of it may be taken over.
struct CsvTable {
  int headingLine = 0;
  QStringList written; ///< the headings as the file has them, before any mapping
  std::vector<CsvHeading> headings;
  std::vector<CsvRecord> rows; ///< each with one cell per heading, spaces around it away; none is all empty
  char separator = ',';
  NumberForm numbers;
  QString dateFormat = {}; ///< as it was said
  std::vector<Fault> faults;

  /// The column of that name in any spelling, or of that name with a unit ("mass" finds "mass_kg").
  std::optional<int> column(const QString& name) const;
  /// The unit in the heading under which `column(name)` found it; empty where there is none.
  QString unit(const QString& name) const;
};

/// Reads a file. Separator: as said, or by a first line "sep=;", or the one that the headings hold outside
/// quotes; where they hold several, the only one that gives every line as many cells, else a fault. Decimal
/// mark: as said; "." where commas separate; else the one that the figures show, "." where they show none;
/// both, or only such as "1,234" which may be grouped, are a fault. A date format must tell every day by its
/// text alone: with a year of four digits, and none that two days share ("dMyyyy"). Where several are said, a
/// text that two of them read as unlike days is refused. A mapping is put to the headings before they are
/// judged. A row with fewer cells
/// than headings has empty ones; filled cells beyond the headings, and two headings of one name, are faults.
/// Content never throws; a form with other marks or such a date format throws Error.
CsvTable readCsv(const QByteArray& bytes, const CsvForm& form = {});

/// The first lines of a file as they stand, for looking at what it holds: cells without spaces around them,
/// without the empty ones at the end; separated as the form says, else by what gives the widest line. Nothing
/// is judged.
std::vector<CsvRecord> firstRecords(const QByteArray& bytes, const CsvForm& form, int most);

/// "separated by “;”, decimal mark “,”": what was taken, for the report.
QString formText(const CsvTable& table);

} // namespace hangbook::exchange
