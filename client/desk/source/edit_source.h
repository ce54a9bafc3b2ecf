// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/source/overview.h"

namespace hangbook::desk {

class Source;

/// Undoing and doing again what was edited through this very source, and taking a choice back. The same
/// object is a Source too, and the same holds: it runs on Work's thread alone and throws Error with words for
/// people.
class EditSource {
public:
  EditSource() = default;
  EditSource(const EditSource&) = delete;
  EditSource& operator=(const EditSource&) = delete;
  virtual ~EditSource() = default;

  virtual void undo() = 0;
  virtual void redo() = 0;
  /// What stands chosen for the hang is chosen no longer.
  virtual void withdraw(const ShowKey& show, const QString& hang, const QString& reason,
                        const QString& by) = 0;
};

/// The source's editing side. Throws Error (badInput) where it has none.
EditSource& editsOf(Source& source);

} // namespace hangbook::desk
