// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/bridle_pick.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "hang/make_up.h"
#include "options/sentence.h"
#include "quantity/error.h"

namespace hangbook::options {
namespace {

constexpr double unknownFigure = std::numeric_limits<double>::quiet_NaN();
/// As many as one leg may take where hardware is counted by hand.
constexpr int enough = 12;

hang::Vec3 placeOf(const venue::Point& point) {
  return {inMetres(point.x), inMetres(point.y), inMetres(point.z)};
}

/// The house's steels and shackle, as the search for a make-up takes them.
struct Stock {
  std::vector<const catalogue::HardwareType*> types;
  std::vector<hang::SteelLength> steels;
  const catalogue::HardwareType* shackle = nullptr;
  hang::MakeUpWish wish;
  bool known = true;
};

class Builder {
public:
  Builder(const Snapshot& snapshot, const House& house, const venue::Bridle& bridle)
      : snapshot_(snapshot), house_(house), bridle_(bridle) {
    pick_.bridle = &bridle;
  }

  std::shared_ptr<const BridledPick> build() {
    findPoints();
    placeApex();
    if (pick_.fault.isEmpty()) {
      const Stock stock = lookUpStock();
      for (BridleLeg& leg : pick_.legs) {
        makeUp(stock, leg);
      }
      settle();
    }
    pick_.legWeight = 0.0;
    for (const BridleLeg& leg : pick_.legs) {
      pick_.legWeight += leg.weight;
    }
    return std::make_shared<const BridledPick>(std::move(pick_));
  }

private:
  void missing(const QString& what) {
    if (!pick_.missing.contains(what)) {
      pick_.missing.append(what);
    }
  }

  void findPoints() {
    for (const QString& name : bridle_.points) {
      const auto* point = catalogue::find(snapshot_.venue.points, name);
      if (point == nullptr) {
        pick_.fault = QStringLiteral("point %1 is not in the venue's sheet").arg(name);
        continue;
      }
      BridleLeg leg;
      leg.point = point;
      leg.weight = leg.stretch = unknownFigure;
      pick_.legs.push_back(leg);
    }
    if (pick_.fault.isEmpty() && (pick_.legs.size() < 2 || pick_.legs.size() > 3)) {
      pick_.fault = QStringLiteral("a bridle takes two or three points");
    }
  }

  void placeApex() {
    double x = 0.0;
    double y = 0.0;
    for (const BridleLeg& leg : pick_.legs) {
      x += inMetres(leg.point->x) / static_cast<double>(pick_.legs.size());
      y += inMetres(leg.point->y) / static_cast<double>(pick_.legs.size());
    }
    pick_.wanted = {bridle_.x ? inMetres(*bridle_.x) : x, bridle_.y ? inMetres(*bridle_.y) : y,
                    inMetres(bridle_.z)};
    pick_.apex.name = bridle_.name;
    pick_.apex.source = bridle_.source;
    putApex(pick_.wanted);
    for (BridleLeg& leg : pick_.legs) {
      leg.wanted = leg.length = hang::legLengths(std::array{placeOf(*leg.point)}, pick_.wanted)[0];
    }
  }

  void putApex(hang::Vec3 at) {
    pick_.apex.x = metres(at.x);
    pick_.apex.y = metres(at.y);
    pick_.apex.z = metres(at.z);
  }

  int available(const catalogue::HardwareType& type) const {
    if (house_.figure(QStringLiteral("hardware-by-serial")).value.value_or(0.0) == 0.0) {
      return enough;
    }
    const auto number =
        std::count_if(snapshot_.units.begin(), snapshot_.units.end(), [&](const fleet::Unit& unit) {
          return unit.kind == fleet::UnitKind::hardware && unit.type == type.name &&
                 unit.state == fleet::UnitState::ready;
        });
    return static_cast<int>(std::min<std::ptrdiff_t>(number, enough));
  }

  Stock lookUpStock() {
    Stock stock;
    const auto& hardware = snapshot_.catalogue.hardware;
    for (const QString& name : bridle_.steels) {
      const auto* type = catalogue::find(hardware, name);
      if (type == nullptr || !type->length || !(inMetres(*type->length) > 0.0)) {
        missing(QStringLiteral("the length of %1").arg(name));
        stock.known = false;
        continue;
      }
      stock.types.push_back(type);
      stock.steels.push_back({inMetres(*type->length), available(*type)});
    }
    if (bridle_.steels.isEmpty()) {
      missing(QStringLiteral("the steels that its legs are made up from"));
      stock.known = false;
    }
    stock.shackle = catalogue::find(hardware, bridle_.shackle);
    if (stock.shackle == nullptr || !stock.shackle->length) {
      missing(bridle_.shackle.isEmpty() ? QStringLiteral("the shackle of its legs")
                                        : QStringLiteral("the length of %1").arg(bridle_.shackle));
      stock.known = false;
    } else {
      stock.wish.shackle = inMetres(*stock.shackle->length);
    }
    const auto tolerance = bridle_.tolerance ? std::optional(inMetres(*bridle_.tolerance))
                                             : house_.figure(QStringLiteral("bridle-tolerance")).value;
    if (tolerance) {
      stock.wish.tolerance = *tolerance;
    } else {
      missing(QStringLiteral("how near a leg must come to its length"));
      stock.known = false;
    }
    return stock;
  }

  void makeUp(const Stock& stock, BridleLeg& leg) {
    if (!stock.known) {
      return;
    }
    hang::MakeUpWish wish = stock.wish;
    wish.length = leg.wanted;
    try {
      const auto made = hang::shortestMakeUp(stock.steels, wish);
      if (!made) {
        pick_.fault =
            QStringLiteral("no make-up of its steels comes within %1 of the %2 that the leg to %3 asks")
                .arg(inM(wish.tolerance), inM(leg.wanted), leg.point->name);
        return;
      }
      leg.length = made->length;
      leg.shackles = made->shackles;
      leg.weight = leg.stretch = 0.0;
      for (std::size_t i = 0; i < made->steels.size(); ++i) {
        if (made->steels[i] > 0) {
          add(leg, *stock.types[i], made->steels[i]);
          stretches(leg, *stock.types[i], made->steels[i]);
        }
      }
      add(leg, *stock.shackle, made->shackles); // taken as stiff beside a steel
    } catch (const Error& error) {
      pick_.fault = QString::fromUtf8(error.what());
    }
  }

  void add(BridleLeg& leg, const catalogue::HardwareType& type, int count) {
    leg.pieces.push_back({&type, count});
    if (!type.mass) {
      missing(QStringLiteral("the mass of %1").arg(type.name));
    }
    if (!type.limit) {
      missing(QStringLiteral("the limit of %1").arg(type.name));
    }
    leg.weight += type.mass ? count * inNewtons(weightOf(*type.mass)) : unknownFigure;
  }

  static void stretches(BridleLeg& leg, const catalogue::HardwareType& type, int count) {
    leg.stretch +=
        type.stiffness ? count * inMetres(*type.length) / inNewtons(*type.stiffness) : unknownFigure;
  }

  void settle() {
    std::vector<hang::Vec3> points;
    std::vector<hang::BridleLeg> legs;
    for (const BridleLeg& leg : pick_.legs) {
      points.push_back(placeOf(*leg.point));
      legs.push_back({points.back(), leg.length});
    }
    constexpr hang::Vec3 down{0.0, 0.0, -1.0};
    try {
      // As wanted first: it says best why an apex cannot stand there.
      hang::bridleAt(points, pick_.wanted, down);
      const hang::Bridle settled = hang::settleBridle(legs, down);
      const std::vector<double> two = hang::worstOfTwo(legs, down);
      for (std::size_t i = 0; i < legs.size(); ++i) {
        pick_.legs[i].plumb = settled.legs[i];
        pick_.legs[i].worstOfTwo = two[i];
      }
      putApex(settled.apex);
      push(legs, pick_.asMade);
      takeLengths(legs, settled);
    } catch (const Error& error) {
      pick_.fault = QString::fromUtf8(error.what());
    }
  }

  /// Every corner of the legs' lengths. Between corners nothing is looked at: each figure goes one way with
  /// each length as long as no leg goes slack, and then a corner has it slack already.
  void takeLengths(const std::vector<hang::BridleLeg>& stated, const hang::Bridle& settled) {
    const double piece = house_.figure(QStringLiteral("length-doubt")).value.value_or(unknownFigure);
    for (unsigned corner = 0; corner < 1U << stated.size(); ++corner) {
      std::vector<hang::BridleLeg> legs = stated;
      for (std::size_t i = 0; i < legs.size(); ++i) {
        int pieces = 0;
        for (const LegPiece& each : pick_.legs[i].pieces) {
          pieces += each.count;
        }
        const double off = piece * pieces;
        legs[i].length = (corner >> i & 1U) != 0 ? stated[i].length + off : stated[i].length - off;
      }
      takeCorner(legs, settled);
    }
    if (pick_.atEnds.size() != 1U << stated.size()) {
      pick_.atEnds.clear();
    }
  }

  /// Legs that hold a load straight down may still have no answer to one from the side.
  static void push(const std::vector<hang::BridleLeg>& legs, std::vector<hang::PushedBridle>& into) {
    try {
      into.emplace_back(legs);
    } catch (const Error&) {
      return; // what is missing there says so
    }
  }

  void takeCorner(const std::vector<hang::BridleLeg>& legs, const hang::Bridle& settled) {
    constexpr hang::Vec3 down{0.0, 0.0, -1.0};
    hang::Bridle there;
    std::vector<double> two;
    try {
      there = hang::settleBridle(legs, down);
      two = hang::worstOfTwo(legs, down);
      push(legs, pick_.atEnds);
    } catch (const Error&) { // no figure follows for legs so long
      pick_.apexLower = unknownFigure;
      for (BridleLeg& leg : pick_.legs) {
        leg.pullMore = leg.downMore = leg.twoMore = leg.flatterDeg = unknownFigure;
      }
      return;
    }
    pick_.apexLower = std::max(pick_.apexLower, settled.apex.z - there.apex.z);
    for (std::size_t i = 0; i < legs.size(); ++i) {
      BridleLeg& leg = pick_.legs[i];
      const hang::LegForce& was = settled.legs[i];
      const auto more = [](double& known, double now, double before) {
        known = std::isnan(known) || now <= known * before ? known : now / before; // unknown once stays so
      };
      more(leg.pullMore, there.legs[i].tension, was.tension);
      more(leg.downMore, there.legs[i].vertical(), was.vertical());
      more(leg.twoMore, two[i], leg.worstOfTwo);
      leg.flatterDeg = std::max(leg.flatterDeg, was.fromHorizontalDeg - there.legs[i].fromHorizontalDeg);
      leg.mayHangSlack |= there.legs[i].slack;
    }
  }

  const Snapshot& snapshot_;
  const House& house_;
  const venue::Bridle& bridle_;
  BridledPick pick_;
};

} // namespace

std::vector<hang::LegForce> BridledPick::forces(hang::Vec3 load) const {
  if (!fault.isEmpty()) {
    return {};
  }
  std::vector<hang::LegForce> result;
  if (load.x == 0.0 && load.y == 0.0) {
    for (const BridleLeg& leg : legs) {
      hang::LegForce force = leg.plumb;
      force.tension *= -load.z;
      force.onPoint = -load.z * force.onPoint;
      result.push_back(force);
    }
    return result;
  }
  std::vector<hang::BridleLeg> settled;
  for (const BridleLeg& leg : legs) {
    settled.push_back({placeOf(*leg.point), leg.length});
  }
  try {
    return hang::settleBridle(settled, load).legs;
  } catch (const Error&) {
    return {};
  }
}

double BridledPick::shiftUnder(double plumbN) const {
  if (!fault.isEmpty()) {
    return unknownFigure;
  }
  std::vector<hang::BridleLeg> elastic;
  for (const BridleLeg& leg : legs) {
    if (!(leg.stretch > 0.0)) {
      return unknownFigure;
    }
    elastic.push_back({placeOf(*leg.point), leg.length, 1.0 / leg.stretch});
  }
  try {
    const hang::Vec3 shift = hang::apexShift(hang::settleBridle(elastic, {0.0, 0.0, -plumbN}), placeOf(apex));
    return std::sqrt(shift.x * shift.x + shift.y * shift.y + shift.z * shift.z);
  } catch (const Error&) {
    return unknownFigure;
  }
}

std::shared_ptr<const BridledPick> bridledPick(const Snapshot& snapshot, const House& house,
                                               const venue::Bridle& bridle) {
  return Builder(snapshot, house, bridle).build();
}

} // namespace hangbook::options
