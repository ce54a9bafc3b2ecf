// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/code.h"

namespace hangbook::desk {

/// Printed sheets of what is stored. A source that prints is one of these too; it may take long and refuses
/// to run on the window's thread.
class SheetSource {
public:
  SheetSource() = default;
  SheetSource(const SheetSource&) = delete;
  SheetSource& operator=(const SheetSource&) = delete;
  virtual ~SheetSource() = default;

  /// What the code names, its checksum left out of account. Throws Error with words for people.
  virtual reports::Sheet sheet(const reports::SheetCode& code) = 0;
};

} // namespace hangbook::desk
