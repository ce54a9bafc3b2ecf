// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "options/search.h"
#include "show_fixture.h"

namespace hangbook::testing {

/// The same show on a coarse grid of tilts: there are fewer settings to run over.
inline options::Snapshot withTiltStep(options::Snapshot snapshot, double deg) {
  for (catalogue::BarType& bar : snapshot.catalogue.bars) {
    bar.tiltStep = degrees(deg);
  }
  return snapshot;
}

/// A coarse grid of tilts, since each answer takes a hundred runs over all settings.
inline options::Snapshot fewSettings() {
  return withTiltStep(smallHarbourShow(), 4);
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
