// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "exchange/import.h"

namespace hangbook::desk {

/// A spreadsheet that somebody wants to take in, and how it is to be read.
struct ImportWish {
  exchange::Kind kind = exchange::Kind::units;
  QString file{};
  exchange::CsvForm form{};
  QString by{};
  bool recall = false; ///< read its columns as the last time, where they are known
  bool write = false;  ///< take it in; else only look
};

/// What a look at it says.
struct ImportLook {
  exchange::CsvForm form{}; ///< with the columns as they were read the last time, where `recall` found them
  QString remembered{};     ///< who read such a list before, and when; empty = nobody
  QStringList headings{};   ///< as they stand in the file
  std::vector<QStringList> firstRows{}; ///< a few of the lines below
  std::vector<exchange::Count> counts{};
  std::vector<exchange::Difference> differences{};
  std::vector<exchange::Fault> faults{}; ///< not empty: nothing of it can be taken in
  QString readAs{};                      ///< separator and decimal mark
  bool written = false;
};

} // namespace hangbook::desk
