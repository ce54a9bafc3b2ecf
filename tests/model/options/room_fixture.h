// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "options/gear_needs.h"
#include "options/room_limits.h"

namespace hangbook::testing {

/// One invented hang in one invented room, all figures known, every rule of room and gear holding; a test
/// changes what it is about and calls `refresh`. Two hangs a show: "left" (this one) and "right".
/// Bar: picks 1 m apart in the room's y, tilt axis 0.3 m below. Stack: a bass and a full-range cabinet,
/// level.
struct Room {
  options::Snapshot snapshot;
  std::unique_ptr<options::House> house;
  options::Case option;
  hang::Hang input; ///< as solved
  options::Settled settled;
  double tiltDeg = 0.0;
  double panDeg = 0.0;

  Room();
  Room(const Room&) = delete;
  Room& operator=(const Room&) = delete;

  /// Looks everything up again and solves the hang again.
  void refresh();

  catalogue::CabinetType& bass() { return snapshot.catalogue.cabinets[0]; }
  catalogue::CabinetType& full() { return snapshot.catalogue.cabinets[1]; }
  catalogue::BarType& bar() { return snapshot.catalogue.bars[0]; }
  catalogue::HoistType& hoist() { return snapshot.catalogue.hoists[0]; }
  calendar::Hang& hang() { return snapshot.show.hangs[0]; }
  venue::Venue& venue() { return snapshot.venue; }
  void houseSays(const char* figure, double value);

  options::Use use(const options::Rule& rule, double trimM = 8.0) const;
  options::Finding finding(const options::Rule& rule, double trimM = 8.0) const;
};

catalogue::Position at(double x, double z);
fleet::Unit unitOf(const QString& serial, fleet::UnitKind kind, const QString& type);

} // namespace hangbook::testing
