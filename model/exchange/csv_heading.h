// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hangbook::exchange {

/// The head of a column. A unit in it is the unit of the column's bare numbers.
struct CsvHeading {
  QString written; ///< as it stands in the file
  QString
      name; ///< small letters; spaces, underscores and hyphens alike as one "_"; without a unit in brackets
  QString unit; ///< "kg" of "mass [kg]", "mass (kg)" or "mass, kg"; as written
  /// Of "mass_kg": "mass" and "kg". A heading may really end so ("level at 1 m"): `name` goes first. The
  /// same as `name` and `unit` where it does not end in a unit.
  QString shortName;
  QString shortUnit;
  bool operator==(const CsvHeading&) const = default;
};

/// In square brackets anything is a unit; in round ones and after a comma only what is one ("name (short)").
CsvHeading readHeading(const QString& written);

/// The form in which names of columns are compared: "Low steel", "low-steel" and "LOW_STEEL" are one.
QString foldedName(const QString& name);

} // namespace hangbook::exchange
