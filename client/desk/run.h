// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QDate>
#include <QSize>
#include <QString>

#include "desk/source/source.h"

namespace hangbook::desk {

/// What the window may be told on the command line.
struct WindowWords {
  std::optional<QString> store{}; ///< file or address; the usual place where left out
  bool demo = false;              ///< fill an empty store with the demo tour
  QString picture{};              ///< make a picture into this PNG file and end
  QString place{};                ///< object name of a place
  QString show{};
  QString hang{};
  bool dark = false;
  bool us = false;
  QSize size{1440, 900};
  bool sized = false; ///< the size was told, not left out
  QString language{}; ///< "en", "de"; empty: what the person's settings ask for
  QDate asOf{};       ///< the day that counts as today; null: today
};

/// Whether these words are for the window: none at all, or the first is one of the window's own options.
bool wantsWindow(const std::vector<std::string>& words);

/// Reads the words. Throws Error (badInput) with what was expected.
WindowWords readWindowWords(const std::vector<std::string>& words);

/// Makes the source that the words ask for. The window does not know which kind it is.
using SourceMaker = std::shared_ptr<Source> (*)(const WindowWords& words);

/// Opens the window (or makes one picture) and answers the exit status.
int runWindow(int& argc, char** argv, SourceMaker makeSource);

} // namespace hangbook::desk
