// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPalette>

#include "options/option.h"

namespace hangbook::desk {

/// The window's colours by what they are for. Two sets, light and dark; every text colour stands at a
/// contrast of at least 4.5 : 1 on each ground that it is drawn on (a test says so).
struct Colours {
  bool dark = false;
  QColor ground;   ///< of the window
  QColor sheet;    ///< of lists and fields
  QColor raised;   ///< of the places list and of headings
  QColor text;     ///< on all three
  QColor quiet;    ///< secondary text on all three
  QColor line;     ///< hairlines
  QColor frame;    ///< edges of fields and buttons: 3 : 1 against the ground
  QColor accent;   ///< the one accent: selection, focus, the place one is in
  QColor onAccent; ///< text on the accent
  QColor chosen;   ///< ground of a selected row; `text` and the verdicts stand on it too
  QColor holds;
  QColor tight;
  QColor unproven;
  QColor fails;
  QColor steel;   ///< elevation: structure
  QColor cabinet; ///< elevation: fill of a cabinet
  QColor cover;   ///< elevation: fill of the vertical cover
};

const Colours& lightColours();
const Colours& darkColours();

/// The set that goes with a palette, told by its own lightness: a widget follows its palette, whoever set it.
const Colours& coloursOf(const QPalette& palette);

QColor colourOf(options::Verdict verdict, const Colours& colours);

/// Every role of a Qt palette from one set of colours.
QPalette paletteFrom(const Colours& colours);

/// Contrast of two opaque colours, 1 to 21, by relative luminance (WCAG 2.1, definition of contrast ratio).
double contrast(const QColor& one, const QColor& other);

} // namespace hangbook::desk
