// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>

#include "exchange/record_text.h"
#include "exchange/venue_text.h"

namespace hangbook::desk {

/// One field of a form or column of a table of rows.
struct FormField {
  QString name{};     ///< as the spreadsheet heads it
  QString title{};    ///< as it is shown, with the unit of a bare number: "Low steel (m)"
  QString words{};    ///< the same without the unit
  QString hint{};     ///< what may stand in it, where the title does not say it; may be empty
  bool fixed = false; ///< is shown and not typed
};

std::vector<FormField> formFields(exchange::VenuePart part, UnitSystem system);
std::vector<FormField> formFields(const std::vector<exchange::RecordField>& fields);

/// "read “1 ton”, expected a force such as 12.5 kN".
QString faultWords(const exchange::FieldFault& fault);
/// All faults of a field of a row, a line each; empty: there is none.
QString faultsOf(const std::vector<exchange::FieldFault>& faults, int row, const QString& field);

} // namespace hangbook::desk
