// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/field_fault.h"
#include "exchange/record_text.h"

/// The plugs of one hang as texts that people edit, read by the rules of the shows' spreadsheet.
namespace hangbook::exchange {

/// Names a hang.
struct HangName {
  QString tour;
  QString show;
  QString hang;
  bool operator==(const HangName&) const = default;
};

/// The columns of a plug but those that name the hang.
std::vector<RecordField> plugFields();
/// A row for each plug of that hang.
std::vector<QStringList> plugTexts(const HangName& hang, const Data& data);

struct PlugsRead {
  std::vector<calendar::Plug> plugs; ///< of the hang; none where there are faults
  std::vector<FieldFault> faults;
};
/// The hang's plugs as these rows say, against the show, its other plugs and makers' data in `before`. A plug
/// that was there keeps its identifier and revision. Content never throws.
PlugsRead readPlugs(const HangName& hang, const std::vector<QStringList>& rows, const Data& before);

} // namespace hangbook::exchange
