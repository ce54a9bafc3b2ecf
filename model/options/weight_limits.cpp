// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/weight_limits.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "options/working_limit.h"
#include "options/zones.h"

namespace hangbook::options {
namespace {

/// A mass or limit below 0 is a slip, and a slip is not a figure.
double weightIn(const std::optional<Mass>& mass) {
  return mass && inKilograms(*mass) >= 0.0 ? inNewtons(weightOf(*mass)) : notKnown;
}

Factor houseFactor(const House& house, const char* id) {
  const HouseValue found = house.figure(QString::fromLatin1(id));
  if (found.unsignedAlone) {
    return {notKnown, found.source + QStringLiteral(", which proves nothing by itself")};
  }
  return {found.value.value_or(notKnown), found.source};
}

/// A factor that can only make a load greater.
Factor notBelowOne(Factor factor) {
  if (factor.value < 1.0) {
    return {notKnown, factor.source + QStringLiteral(" is below 1")};
  }
  return factor;
}

/// The house states the figure, in whatever way.
bool stated(const Snapshot& snapshot, const QString& id) {
  const auto in = [&id](const std::vector<venue::HouseFigure>& list) {
    return std::any_of(list.begin(), list.end(),
                       [&id](const venue::HouseFigure& each) { return each.figure == id; });
  };
  return in(snapshot.tour.house) || in(snapshot.venue.house) || in(snapshot.show.house);
}

/// From the hoist's class and speed; a house may state more, never less. Where the hoist gives none, the
/// house's figure stands alone.
Factor dynamicFor(const Case& option) {
  Factor factor{notKnown, QStringLiteral("neither the house nor the hoist's class and speed give one")};
  const catalogue::HoistType& hoist = *option.hoist;
  if (hoist.hoistingClass && hoist.speed && inMetresPerSecond(*hoist.speed) >= 0.0) {
    factor = {dynamicFactorOf(*hoist.hoistingClass, inMetresPerSecond(*hoist.speed)),
              QStringLiteral("EN 1991-3, from the hoist's class and speed")};
  }
  if (stated(*option.snapshot, QStringLiteral("dynamic-factor"))) {
    const HouseValue found = option.house->figure(QStringLiteral("dynamic-factor"));
    const bool tightensOnly = found.unsignedAlone && !std::isnan(factor.value);
    const Factor house = notBelowOne(tightensOnly ? Factor{found.value.value_or(notKnown), found.source}
                                                  : houseFactor(*option.house, "dynamic-factor"));
    // A figure of the house that cannot be read leaves it open: it may have been meant to be stricter.
    return house.value < factor.value ? factor : house;
  }
  return factor;
}

/// The part of a working load limit that may be used: all of it where nobody is beneath.
Factor overPeople(const std::optional<bool>& peopleBeneath, const Factor& part) {
  if (!peopleBeneath) {
    return {notKnown, QStringLiteral("whether people are beneath is not stated")};
  }
  return *peopleBeneath ? part : Factor{1.0, QStringLiteral("nobody beneath")};
}

Piece pieceNamed(const catalogue::Catalogue& catalogue, const QString& name) {
  const catalogue::HardwareType* type = catalogue::find(catalogue.hardware, name);
  return type == nullptr ? Piece{name, notKnown, {}, nullptr}
                         : Piece{name, limitIn(type->limit), type->source.text, type};
}

/// Nobody beneath, or a hoist whose class needs none.
bool mayDoWithoutSecondary(const Case& option) {
  return option.snapshot->show.peopleBeneath == std::optional<bool>(false) ||
         option.hoist->holdsWithoutSecondary == std::optional<bool>(true);
}

void lookUpHardware(const Case& option, WeightLimits& limits) {
  const catalogue::Catalogue& catalogue = option.snapshot->catalogue;
  limits.rigging = option.hang->rigging.isEmpty() ? notKnown : 0.0;
  if (option.hang->rigging.isEmpty()) {
    limits.riggingUnknown.append(QStringLiteral("what rigging stands between point and hoist"));
  }
  for (const QString& name : option.hang->rigging) {
    limits.hardware.push_back(pieceNamed(catalogue, name));
    const catalogue::HardwareType* type = catalogue::find(catalogue.hardware, name);
    if (type == nullptr || !type->mass) {
      limits.riggingUnknown.append(QStringLiteral("mass of %1").arg(name));
    }
    limits.rigging += type == nullptr ? notKnown : weightIn(type->mass);
  }
  if (option.hang->secondary.isEmpty() && !mayDoWithoutSecondary(option)) {
    limits.rigging = notKnown; // one must be fitted, and it weighs
    limits.riggingUnknown.append(QStringLiteral("what secondary suspension is fitted"));
  }
  for (const QString& name : option.hang->secondary) {
    limits.secondarySteel.push_back(pieceNamed(catalogue, name));
    // It hangs from the point beside the rigging until it catches.
    const catalogue::HardwareType* type = limits.secondarySteel.back().type;
    if (type == nullptr || !type->mass) {
      limits.riggingUnknown.append(QStringLiteral("mass of %1").arg(name));
    }
    limits.rigging += type == nullptr ? notKnown : weightIn(type->mass);
  }
}

void lookUpHoist(const catalogue::HoistType& hoist, WeightLimits& limits) {
  limits.hoistBody = weightIn(hoist.bodyMass);
  const double chain =
      hoist.chainMass && hoist.chainLength
          ? inKilogramsPerMetre(*hoist.chainMass) * inMetres(*hoist.chainLength) * standardGravity
          : notKnown;
  limits.hoistChain = chain + weightIn(hoist.chainBagMass);
}

} // namespace

double dynamicFactorOf(catalogue::HoistingClass hoistingClass, double metresPerSecond) {
  static constexpr std::array<double, 4> least{1.05, 1.10, 1.15, 1.20};
  static constexpr std::array<double, 4> slope{0.17, 0.34, 0.51, 0.68};
  const auto number = static_cast<std::size_t>(hoistingClass);
  return least.at(number) + slope.at(number) * metresPerSecond;
}

std::shared_ptr<const WeightLimits> weightLimits(const Case& option) {
  auto limits = std::make_shared<WeightLimits>();
  const House& house = *option.house;
  const std::optional<bool> people = option.snapshot->show.peopleBeneath;
  limits->dynamic = notBelowOne(dynamicFor(option));
  limits->liftShare = notBelowOne(houseFactor(house, "lift-share"));
  limits->accessory = overPeople(people, houseFactor(house, "people-beneath-accessory"));
  // A hoist whose class holds over people without a secondary has that reserve in its own limit.
  limits->hoistPart = option.hoist->holdsWithoutSecondary.value_or(false)
                          ? Factor{1.0, QStringLiteral("the maker's class of hoist")}
                          : houseFactor(house, "people-beneath-hoist");
  limits->hoistPart = overPeople(people, limits->hoistPart);
  limits->nobodyBeneath = people == std::optional<bool>(false);
  limits->coefficients = coefficientTable(houseFactor(house, "working-coefficients").value);
  limits->jointSide = houseFactor(house, "joint-side-share");
  limits->openMost = houseFactor(house, "joint-open-most");
  limits->secondary = notBelowOne(houseFactor(house, "secondary-factor"));
  limits->drop = option.hang->secondarySlack ? Factor{inMetres(*option.hang->secondarySlack),
                                                      QStringLiteral("as the show's hang says")}
                                             : houseFactor(house, "secondary-drop");
  limits->hoistDifference = houseFactor(house, "hoist-difference");
  limits->leanMost = houseFactor(house, "lean-most");
  limits->pickShare = houseFactor(house, "pick-share-least");
  limits->sideUnlike = houseFactor(house, "side-difference");
  limits->windFace = houseFactor(house, "wind-force-coefficient");
  limits->legAngleLeast = houseFactor(house, "bridle-angle-least");
  limits->legAnglePreferred = houseFactor(house, "bridle-angle-preferred");

  lookUpHoist(*option.hoist, *limits);
  lookUpHardware(option, *limits);
  for (const Carrier& carrier : option.carriers) {
    limits->capacity.push_back(limitIn(carrier.point->capacity));
  }
  limits->pointsHaveSource = std::ranges::none_of(
      option.carriers, [](const Carrier& carrier) { return carrier.point->source.text.isEmpty(); });
  if (option.points.size() == 2) {
    limits->spacing = std::hypot(inMetres(option.points[0]->x) - inMetres(option.points[1]->x),
                                 inMetres(option.points[0]->y) - inMetres(option.points[1]->y));
  }
  lookUpZones(option, *limits);
  return limits;
}

} // namespace hangbook::options
