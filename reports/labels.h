// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QString>

#include "fleet/unit.h"

/// Labels to stick on gear: a QR code that a scanner reads, and the same in letters.
namespace hangbook::reports {

struct Label {
  QString code;  ///< what the scanner types: the serial
  QString title; ///< "Marram bass"
  QString line;  ///< "Saltmarsh Audio Hire"; empty = none
};

/// The label of a unit; a batch's says how many pieces it has.
Label labelOf(const fleet::Unit& unit);

/// A sheet of labels; all lengths in mm, from the upper left corner of the page.
struct LabelSheet {
  QString name; ///< as people ask for it: "a4", "letter", "roll"
  double pageWidth = 0;
  double pageHeight = 0;
  int columns = 1;
  int rows = 1;
  double labelWidth = 0;
  double labelHeight = 0;
  double left = 0;  ///< of the first label
  double top = 0;   ///< of the first label
  double stepX = 0; ///< from one label's left edge to the next one's
  double stepY = 0;
};

const std::vector<LabelSheet>& labelSheets();
/// Throws Error (badInput) with the names that there are.
const LabelSheet& labelSheet(const QString& name);

/// Writes the labels row by row, the first `skip` places of the first sheet left free for a sheet that is
/// used already. Throws Error: a code that is empty or that no QR code holds, a `skip` that is not on the
/// sheet, a file that cannot be written. Needs a QGuiApplication.
void writeLabels(const QString& file, const std::vector<Label>& labels, const LabelSheet& sheet,
                 int skip = 0);

} // namespace hangbook::reports
