// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/made_up_tour.h"

#include <array>
#include <functional>
#include <random>

#include "model/options/show_fixture.h"

namespace hangbook::bench {
namespace {

using Between = std::function<double(double, double)>;

/// Points along a truss, so close that any two of them may hold a pair, no two gaps alike.
void addPoints(venue::Venue& hall, venue::Point like, bool left, double from, int number, double height,
               const Between& between) {
  double y = from;
  for (int i = 0; i < number; ++i) {
    like.name = QStringLiteral("%1%2").arg(left ? QLatin1Char('L') : QLatin1Char('R')).arg(i + 1);
    like.y = metres(left ? y : -y);
    like.z = metres(height);
    like.capacity = kilonewtons(between(10, 25));
    like.zone = hall.zones[left ? 0 : 1].name;
    hall.points.push_back(like);
    y += number <= 2 ? 1.0 : between(0.2, 0.26); // two: plumb over the bar's picks
  }
}

void addAudience(venue::Venue& hall, const Between& between) {
  const double first = between(6, 12);
  const double rear = between(28, 60);
  hall.sections[0].profile = {{metres(first), metres(0)}, {metres(rear), metres(between(0, 1.5))}};
  const double tier = rear + between(1, 4);
  hall.sections[1].profile = {{metres(tier), metres(between(1, 3))},
                              {metres(tier + between(6, 18)), metres(between(4, 9))}};
}

/// As many again: a cart takes one cabinet here, and with too few of them most options would fail by that
/// alone.
void addCarts(options::Snapshot& made) {
  std::vector<fleet::Unit> more;
  for (fleet::Unit unit : made.units) {
    if (unit.kind == fleet::UnitKind::cart) {
      unit.serial += QStringLiteral(" again");
      more.push_back(unit);
    }
  }
  made.units.insert(made.units.end(), more.begin(), more.end());
}

} // namespace

options::Snapshot showOfTour(std::uint64_t seed, int show, int pointsASide) {
  std::seed_seq both{seed, static_cast<std::uint64_t>(show)};
  std::mt19937_64 engine(both);
  const Between between = [&engine](double low, double high) {
    return low + (high - low) * (static_cast<double>(engine() >> 11) * 0x1.0p-53);
  };
  options::Snapshot made = testing::harbourShow();
  venue::Venue& hall = made.venue;
  hall.name = QStringLiteral("Hall %1").arg(show + 1);
  made.show.name = QStringLiteral("show %1").arg(show + 1);
  made.show.venue = hall.name;
  const double height = between(14, 21);
  hall.lowSteel = metres(height - between(0.1, 0.8));
  for (venue::Zone& zone : hall.zones) {
    zone.capacity = kilonewtons(between(35, 80));
    zone.othersLoad = kilonewtons(between(0, 6));
  }
  const venue::Point like = hall.points.front();
  hall.points.clear();
  const double from = between(7, 11);
  addPoints(hall, like, true, from, pointsASide, height, between);
  addPoints(hall, like, false, from, pointsASide, height, between);
  for (calendar::Hang& hang : made.show.hangs) {
    hang.points.clear();
    for (const venue::Point& point : hall.points) {
      if (point.name.startsWith(hang.name == QStringLiteral("left") ? QLatin1Char('L') : QLatin1Char('R'))) {
        hang.points.append(point.name);
      }
    }
  }
  made.show.hangs.front().leastTrim = metres(between(4, 7));
  addAudience(hall, between);
  hall.house.push_back({QStringLiteral("cover-share"), between(45, 80), QStringLiteral("%"),
                        QStringLiteral("bench"), QStringLiteral("Edda"), QDate(2026, 1, 1)});
  // Hoists that most stacks do not ask too much of; over people half of their limit counts.
  const std::array tonnes{1.5, 2.0, 3.0};
  for (std::size_t i = 0; i < made.catalogue.hoists.size(); ++i) {
    made.catalogue.hoists[i].limit = weightOf(kilograms(1000.0 * tonnes.at(i)));
  }
  for (catalogue::CartType& cart : made.catalogue.carts) {
    cart.most = 1; // else most options come out tight by a cart with a place left over
  }
  if (pointsASide <=
      4) { // of larger ones so many points are good for something that enough options hold as it is
    addCarts(made);
  }
  return made;
}

} // namespace hangbook::bench
