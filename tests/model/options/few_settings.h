// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/search.h"
#include "show_fixture.h"

namespace hangbook::testing {

/// A coarse grid of tilts, since each answer takes a hundred runs over all settings.
inline options::Snapshot fewSettings() {
  options::Snapshot snapshot = smallHarbourShow();
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    bar.tiltStep = degrees(4);
  }
  return snapshot;
}

inline options::Option bestOf(const options::Snapshot& snapshot) {
  return options::decide(snapshot, QStringLiteral("left")).hangs.front().options.front();
}

/// Signed, in the show's own list.
inline void houseSays(options::Snapshot& snapshot, const char* figure, double value) {
  snapshot.show.house.push_back(
      {QString::fromUtf8(figure), value, {}, {}, QStringLiteral("Edda"), snapshot.today});
}

} // namespace hangbook::testing
