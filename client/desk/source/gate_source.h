// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QStringList>

#include "calendar/cabling.h"
#include "desk/source/overview.h"
#include "marks/gate.h"

namespace hangbook::desk {

/// What a show's build takes beside its snapshot: its cabling, and its hold points, read and signed. A source
/// that keeps them is one of these too; everything here may take long and refuses to run on the window's
/// thread.
class GateSource {
public:
  GateSource() = default;
  GateSource(const GateSource&) = delete;
  GateSource& operator=(const GateSource&) = delete;
  virtual ~GateSource() = default;

  /// Newest first, without the corrected ones.
  virtual std::vector<marks::GateSigned> gatesOf(const ShowKey& show) = 0;
  /// What is stated of the show's cabling.
  virtual calendar::Cabling cablingOf(const ShowKey& show) = 0;
  /// Signs or skips one; `gates` are the hang's in the order of its build. Throws Error with words for
  /// people.
  virtual void signGate(const marks::GateSigned& gate, const QStringList& gates,
                        const marks::GatesSince& since) = 0;
};

} // namespace hangbook::desk
