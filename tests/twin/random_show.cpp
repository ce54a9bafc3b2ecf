// SPDX-License-Identifier: GPL-3.0-or-later
#include "twin/random_show.h"

#include <algorithm>
#include <cmath>
#include <random>

#include "model/options/show_fixture.h"

namespace hangbook::testing {
namespace {

using catalogue::CabinetType;
using catalogue::Join;
using catalogue::JointKind;
using catalogue::Picks;

class Maker {
public:
  explicit Maker(std::uint64_t seed) : engine_(seed) {}

  options::Snapshot show() {
    options::Snapshot made = harbourShow();
    cabinets(made.catalogue.cabinets);
    bars(made.catalogue);
    hoists(made.catalogue.hoists);
    tables(made.catalogue);
    venue(made.venue);
    rest(made);
    return made;
  }

private:
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1.0p-53);
  }
  int oneOf(int count) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(count)); }
  bool oneIn(int count) { return oneOf(count) == 0; }
  /// In quarters of a metre, so that two points may stand exactly alike.
  double quarters(int from, int to) { return 0.25 * (from + oneOf(to - from + 1)); }

  void cabinets(std::vector<CabinetType>& types) {
    for (CabinetType& type : types) {
      type.mass = kilograms(between(0.6, 1.4) * inKilograms(*type.mass));
      type.centreOfGravity->x = metres(between(-0.45, -0.2));
      if (type.coversAudience) {
        type.coverLowest = degrees(between(-50, -12));
        type.coverHighest = degrees(between(3, 20));
        type.throwDistance = metres(between(18, 60));
      }
      if (!oneIn(12)) {
        type.chainEye = catalogue::Position{metres(-0.74), metres(between(-0.4, -0.2))};
      }
    }
    if (oneIn(25)) {
      types[static_cast<std::size_t>(oneOf(4))].mass.reset();
    }
  }

  void bars(catalogue::Catalogue& all) {
    catalogue::BarType& bar = all.bars.front();
    const double travel = 4.0 * (2 + oneOf(3));
    bar.tiltTravel = std::array{degrees(-travel - oneOf(3)), degrees(travel)};
    bar.tiltStep = degrees(oneIn(12) ? 0.5 : 2 + 0.5 * oneOf(4));
    bar.hoistOffsetLimit = metres(between(0.05, 0.2));
    catalogue::PickArrangement pair = bar.arrangements[0];
    catalogue::PickArrangement single = bar.arrangements[1];
    pair.spacing = metres(quarters(3, 5));
    pair.limit = kilonewtons(between(5, 16));
    pair.mostCabinets = 3 + oneOf(4);
    single.only = catalogue::Position{metres(between(-0.2, 0.2)), metres(0.0)};
    catalogue::PickArrangement foreAft = pair;
    foreAft.picks = Picks::foreAftPair;
    foreAft.spacing.reset();
    foreAft.front = catalogue::Position{metres(0.4), metres(0.0)};
    foreAft.rear = catalogue::Position{metres(-0.6), metres(0.0)};
    const std::array all3{pair, foreAft, single};
    bar.arrangements = {all3[static_cast<std::size_t>(oneOf(3))]};
    if (oneIn(3)) {
      bar.arrangements.push_back(all3[static_cast<std::size_t>(oneOf(3))]);
    }
    if (oneIn(4)) {
      catalogue::BarType other = bar;
      other.name = QStringLiteral("other bar");
      other.frameMass = kilograms(between(30, 90));
      other.arrangements = {single};
      all.bars.push_back(other);
    }
    all.chains.front().pitch = metres(between(0.06, 0.12));
    all.chains.front().links = 20 + oneOf(14);
  }

  void hoists(std::vector<catalogue::HoistType>& types) {
    while (types.size() > 1 && !oneIn(6)) {
      types.erase(types.begin() + oneOf(static_cast<int>(types.size())));
    }
    for (catalogue::HoistType& type : types) {
      if (oneIn(25)) {
        type.limit.reset();
      }
      if (oneIn(8)) {
        type.chainLength = metres(between(8, 14));
      }
    }
  }

  Join joinOf(const QString& above, const QString& below) {
    Join made;
    made.above = above;
    made.below = below;
    made.pinLimit = kilonewtons(between(6, 25));
    made.contactLimit = kilonewtons(between(3, 20));
    made.sideShare = 0.6;
    if (below == QStringLiteral("down") && !above.isEmpty()) {
      made.kind = JointKind::pivot;
      made.travel = std::array{degrees(-25), degrees(0)};
      return made;
    }
    made.kind = oneIn(3) ? JointKind::seated : JointKind::pinned;
    made.angles.push_back(degrees(-oneOf(4)));
    if (oneIn(3)) {
      made.angles.push_back(degrees(-4 - oneOf(3)));
    }
    if (made.kind == JointKind::seated && !oneIn(6)) {
      made.opensTo = degrees(oneOf(2));
      made.stopLimit = kilonewtons(10);
    }
    return made;
  }

  catalogue::StackingTable table(const catalogue::Catalogue& all, const char* name) {
    catalogue::StackingTable made;
    made.name = QString::fromLatin1(name);
    made.source = all.bars.front().source;
    for (const catalogue::BarType& bar : all.bars) {
      if (made.bars.empty() || !oneIn(3)) {
        made.bars.push_back(bar.name);
      }
    }
    made.chain = oneIn(12) ? QString() : QStringLiteral("chain");
    int left = mostInRandomStack;
    const int leaveOut = oneOf(4);
    for (std::size_t i = 0; i < all.cabinets.size(); ++i) {
      const QString& type = all.cabinets[i].name;
      const int most = std::min(type == QStringLiteral("down") ? 1 : 1 + oneOf(2), left);
      if (static_cast<int>(i) != leaveOut && most > 0) {
        made.counts.push_back({type, oneIn(4) ? 1 : 0, most});
        left -= most;
      }
      if (!oneIn(3)) {
        made.lowest.push_back(type);
      }
      if (type == QStringLiteral("down") || oneIn(2)) {
        made.held.push_back(type);
      }
    }
    for (const CabinetType& above : all.cabinets) {
      if (oneIn(2)) {
        made.joins.push_back(joinOf({}, above.name));
      }
      if (above.name != QStringLiteral("down")) { // nothing hangs from it
        for (const CabinetType& below : all.cabinets) {
          if (oneIn(2)) {
            made.joins.push_back(joinOf(above.name, below.name));
          }
        }
      }
    }
    return made;
  }

  void tables(catalogue::Catalogue& all) {
    all.tables = {table(all, "one")};
    if (oneIn(6)) {
      all.tables.push_back(table(all, "two"));
    }
  }

  void venue(venue::Venue& hall) {
    hall.points.resize(2);
    hall.points.push_back(hall.points[0]);
    hall.points.resize(oneIn(6) ? 1U : oneIn(5) ? 3U : 2U);
    const double height = between(9, 16);
    const double capacity = between(3, 16);
    for (std::size_t i = 0; i < hall.points.size(); ++i) {
      venue::Point& point = hall.points[i];
      point.name = QStringLiteral("P%1").arg(i + 1);
      point.x = metres(quarters(0, 3));
      point.y = metres(quarters(36, 40));
      point.z = metres(height);
      point.capacity = kilonewtons(capacity);
      point.basis = oneIn(4) ? catalogue::Basis::dynamic : catalogue::Basis::atRest;
      point.zone = QStringLiteral("left truss");
      if (oneIn(30)) {
        point.capacity.reset();
      }
    }
    hall.zones.front().capacity = kilonewtons(between(8, 40));
    hall.lowSteel = metres(height - between(0.2, 2.5));
    if (oneIn(3)) {
      hall.obstructions.push_back({QStringLiteral("screen"), metres(-2), metres(between(0, 2)), metres(8),
                                   metres(11), metres(height - between(2, 6))});
    }
    if (oneIn(6)) {
      hall.mostTrim = metres(between(5, 9));
    }
    hall.sections.resize(1);
    hall.sections.front().profile = {{metres(between(4, 9)), metres(0)},
                                     {metres(between(12, 22)), metres(between(0, 3))}};
    hall.outdoors = oneIn(5);
    if (oneIn(5) && hall.points.size() >= 2) {
      bridle(hall);
    }
    if (oneIn(3)) {
      hall.house.push_back({QStringLiteral("cover-share"),
                            between(96, 100),
                            QStringLiteral("%"),
                            {},
                            QStringLiteral("Edda"),
                            QDate(2027, 1, 1)});
    }
  }

  /// Only a side pair pans.
  bool pans(const options::Snapshot& made) {
    const auto& arrangements = made.catalogue.bars.front().arrangements;
    return oneIn(2) && std::all_of(arrangements.begin(), arrangements.end(),
                                   [](const auto& each) { return each.picks == Picks::sidePair; });
  }

  static void bridle(venue::Venue& hall) {
    venue::Bridle made;
    made.name = QStringLiteral("B1");
    made.points = {hall.points[0].name, hall.points[1].name};
    made.z = hall.points[0].z - metres(1.5);
    made.steels = {QStringLiteral("leg")};
    made.shackle = QStringLiteral("shackle");
    made.tolerance = metres(1.0);
    made.source = hall.source;
    hall.bridles.push_back(made);
  }

  void rest(options::Snapshot& made) {
    catalogue::HardwareType leg = made.catalogue.hardware[2];
    leg.name = QStringLiteral("leg");
    leg.length = metres(1.0);
    made.catalogue.hardware.push_back(leg);
    for (catalogue::CartType& cart : made.catalogue.carts) {
      cart.most = oneIn(3) ? 2 : 1;
    }
    calendar::Show& show = made.show;
    show.hangs.resize(1);
    calendar::Hang& hang = show.hangs.front();
    hang.points.clear();
    for (const venue::Point& point : made.venue.points) {
      hang.points.append(point.name);
    }
    for (const venue::Bridle& each : made.venue.bridles) {
      hang.points.append(each.name);
    }
    hang.leastTrim = metres(between(3, 6));
    hang.pan = degrees(pans(made) || oneIn(20) ? between(-15, 15) : 0.0);
    show.peopleBeneath = !oneIn(4);
    if (*made.venue.outdoors) {
      show.wind = metresPerSecond(between(3, 12));
      windFigures(made);
    }
    for (const fleet::Unit& unit : made.units) {
      if (unit.kind == fleet::UnitKind::bar) {
        fleet::Unit other = unit;
        other.type = QStringLiteral("other bar");
        other.serial = QStringLiteral("o") + unit.serial;
        others_.push_back(other);
        fleet::Examination done = made.examinations.front();
        done.serial = other.serial;
        done.rule = QStringLiteral("yearly %1").arg(static_cast<int>(unit.kind));
        made.examinations.push_back(done);
      }
    }
    made.units.insert(made.units.end(), others_.begin(), others_.end());
  }

  static void windFigures(options::Snapshot& made) {
    made.show.windBasis = calendar::WindBasis::gust;
    made.show.windAveraging = 3;
    made.show.windHeight = metres(20);
    made.show.hangs.front().wetMass = kilograms(10);
  }

  std::mt19937_64 engine_;
  std::vector<fleet::Unit> others_;
};

} // namespace

options::Snapshot randomShow(std::uint64_t seed) {
  return Maker(seed).show();
}

} // namespace hangbook::testing
