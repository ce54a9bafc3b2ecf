// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QByteArray>
#include <QStringList>

#include "exchange/csv.h"
#include "exchange/data.h"
#include "exchange/work.h"

/// Spreadsheets in and out; the headings stand in README.md. Nothing here writes to a store.
namespace hangbook::exchange {

enum class Kind { types, units, venues, shows, people, marks };

/// The word for `--kind`, and back. Throws Error for any other word.
QString wordFor(Kind kind);
Kind kindFrom(const QString& word);
/// All of them, in the order in which they are to be imported.
const std::vector<Kind>& allKinds();

/// What is new or other than it was. Records keep the identifier and the revision that they had.
struct Changes {
  Data added;
  Data changed; ///< facts are never in it
};

struct Import {
  Data after;                ///< the data with the file taken in; as before where there are faults
  Changes changes;           ///< empty where there are faults
  std::vector<Count> counts; ///< by sort of line, in the order of the dictionary
  std::vector<Difference>
      differences;           ///< what of known records becomes another; empty where there are faults
  QStringList headings;      ///< of the file as it is, before any mapping
  std::vector<Fault> faults; ///< in the order of lines; not empty: nothing may be written
  QString form;              ///< how the file was read: its separator and decimal mark
  /// Lines on which options are chosen, by joined({tour, show, hang}): a choice is checked by computing it.
  std::map<QString, int> linesOfChosen;

  int lineOfChosen(const Chosen& chosen) const;
};

/// Takes a file in, on paper: same data, file and importer in, same answer out. Content never throws.
Import readFile(Kind kind, const QByteArray& bytes, const Data& before, const Importer& importer,
                const CsvForm& form = {});

/// All of a kind as a file that `readFile` takes in again, exact to the bit. Throws Error where a text
/// cannot stand in a file.
QByteArray writeFile(Kind kind, const Data& data);

/// The headings of a kind as they are written, for the help.
QStringList headingsOf(Kind kind);

} // namespace hangbook::exchange
