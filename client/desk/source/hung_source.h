// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "actions/hung.h"
#include "options/hung_places.h"

namespace hangbook::desk {

class Source;

/// One hang's units by serial, as they stand or as they would.
struct HungLook {
  actions::HungFor hang;
  options::HungHang places;
  QStringList unproven; ///< what nobody can say of units that would be recorded
};

/// Which unit hangs where. A source that records it is one of these too; everything here may take long and
/// refuses to run on the window's thread.
class HungSource {
public:
  HungSource() = default;
  HungSource(const HungSource&) = delete;
  HungSource& operator=(const HungSource&) = delete;
  virtual ~HungSource() = default;

  /// What is recorded of that hang (its serials are not looked at).
  virtual HungLook hungNow(const actions::HungFor& hang) = 0;
  /// What it would come to; nothing is written. Throws Error with words for people where one may not hang
  /// there.
  virtual HungLook tryHung(const actions::HungFor& hang) = 0;
  /// Does it; it can be undone. Throws Error with words for people.
  virtual void recordHung(const actions::HungFor& hang, const QString& by) = 0;
};

/// The source's side that records it. Throws Error (notPossible) where it has none.
HungSource& hungOf(Source& source);

} // namespace hangbook::desk
