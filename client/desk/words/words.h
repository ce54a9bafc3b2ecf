// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

namespace hangbook::desk {

/// What the window says outside of a widget's own class: headings, cells, sentences of models and drawings.
/// `Words::tr("…")` is found by the translator's tools and looked up in the language that was chosen.
struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace hangbook::desk
