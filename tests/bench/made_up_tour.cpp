// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/made_up_tour.h"

#include <random>

#include "model/options/show_fixture.h"

namespace hangbook::bench {

options::Snapshot showOfTour(std::uint64_t seed, int show) {
  std::seed_seq both{seed, static_cast<std::uint64_t>(show)};
  std::mt19937_64 engine(both);
  const auto between = [&engine](double low, double high) {
    return low + (high - low) * (static_cast<double>(engine() >> 11) * 0x1.0p-53);
  };
  options::Snapshot made = testing::harbourShow();
  // The front of the largest families: what a day's work looks at.
  venue::Venue& hall = made.venue;
  hall.name = QStringLiteral("Hall %1").arg(show + 1);
  made.show.venue = hall.name;
  const double height = between(15, 24);
  const double capacity = between(5, 14);
  for (venue::Point& point : hall.points) {
    point.z = metres(height);
    point.capacity = kilonewtons(capacity);
  }
  hall.lowSteel = metres(height - between(0.2, 1.5));
  for (venue::Zone& zone : hall.zones) {
    zone.capacity = kilonewtons(between(12, 40));
    zone.othersLoad = kilonewtons(between(0, 4));
  }
  const double rear = between(35, 70);
  hall.sections[0].profile = {{metres(between(6, 10)), metres(0)}, {metres(rear), metres(0)}};
  hall.sections[1].profile = {{metres(rear + 2), metres(between(1, 3))},
                              {metres(rear + between(8, 20)), metres(between(5, 9))}};
  hall.house.push_back(
      {QStringLiteral("cover-share"), between(80, 98), QStringLiteral("%"), QStringLiteral("bench"), {}, {}});
  for (catalogue::CartType& cart : made.catalogue.carts) {
    cart.most = 1; // else most options come out tight by a cart with a place left over
  }
  return made;
}

} // namespace hangbook::bench
