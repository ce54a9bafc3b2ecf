// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/freeze_others.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <QJsonObject>

#include "options/zones.h"

namespace hangbook::options {
namespace {

constexpr int withWorst = 5; ///< entries of a point: name, at rest, dynamic, and both at their worst

struct Pair {
  double atRest{};
  double dynamic{};
};

double figure(const QJsonValue& value) {
  return value.isDouble() ? value.toDouble() : notKnown;
}

/// Records from before the worst was in them are compared as stated.
bool haveWorst(const QJsonArray& others) {
  return std::all_of(others.begin(), others.end(), [](const QJsonValue& other) {
    const QJsonArray loads = other[QLatin1String("loads_kn")].toArray();
    return std::all_of(loads.begin(), loads.end(),
                       [](const QJsonValue& load) { return load.toArray().size() == withWorst; });
  });
}

std::vector<Choice> choicesFrom(const QJsonArray& others, bool worst) {
  std::vector<Choice> choices;
  for (const auto other : others) {
    Choice choice;
    choice.hang = other.toObject()[QLatin1String("hang")].toString();
    const QJsonArray loads = other.toObject()[QLatin1String("loads_kn")].toArray();
    for (const auto load : loads) {
      PointResult point;
      const QJsonArray figures = load.toArray();
      point.point = figures[0].toString();
      point.staticKn = figure(figures[worst ? 3 : 1]);
      point.dynamicKn = figure(figures[worst ? 4 : 2]);
      choice.points.push_back(point);
    }
    choices.push_back(choice);
  }
  return choices;
}

/// The real points that carry a choice, each once.
std::vector<Carrier> carriersOf(const venue::Venue& venue, const QStringList& names) {
  QStringList points;
  for (const QString& name : names) {
    const auto* bridle = catalogue::find(venue.bridles, name);
    points += bridle == nullptr ? QStringList{name} : bridle->points;
  }
  points.removeDuplicates();
  std::vector<Carrier> carriers;
  for (const QString& name : points) {
    if (const auto* point = catalogue::find(venue.points, name)) {
      carriers.push_back({point, {}});
    }
  }
  return carriers;
}

/// What the choice itself puts onto each carrier, N.
std::vector<Pair> ownLoads(const Choice& choice, const std::vector<Carrier>& carriers, bool worst) {
  std::vector<Pair> loads;
  for (const Carrier& carrier : carriers) {
    const auto found = std::find_if(choice.points.begin(), choice.points.end(), [&](const PointResult& each) {
      return each.point == carrier.point->name;
    });
    loads.push_back(found == choice.points.end() ? Pair{notKnown, notKnown}
                    : worst ? Pair{*found->worstStaticKn * 1000.0, *found->worstDynamicKn * 1000.0}
                            : Pair{found->staticKn * 1000.0, found->dynamicKn * 1000.0});
  }
  return loads;
}

/// All that other hangs put onto each zone and shared point of the choice, N.
std::map<QString, Pair> besides(const Case& option, const std::vector<Pair>& own) {
  WeightLimits limits;
  lookUpZones(option, limits);
  std::map<QString, Pair> all;
  for (const ZoneLoad& zone : limits.zones) {
    Pair load{zone.otherHangsAtRest, zone.otherHangsDynamic};
    for (std::size_t i = 0; i < option.carriers.size(); ++i) {
      const venue::Point& point = *option.carriers[i].point;
      const bool itself = zone.onePoint ? point.name == zone.name : point.zone == zone.name;
      const int mirrored = zone.times[i] - (itself ? 1 : 0);
      if (mirrored != 0) {
        load.atRest += mirrored * own[i].atRest;
        load.dynamic += mirrored * own[i].dynamic;
      }
    }
    all[(zone.onePoint ? QStringLiteral("point ") : QStringLiteral("zone ")) + zone.name] = load;
  }
  return all;
}

bool same(double one, double other) {
  constexpr double rounding = 1e-9; // sums in another order
  return (std::isnan(one) && std::isnan(other)) ||
         std::abs(one - other) <= rounding * std::max(std::abs(one), std::abs(other));
}

bool allIn(std::map<QString, Pair>& these, std::map<QString, Pair>& those) {
  return std::all_of(these.begin(), these.end(), [&](const auto& each) {
    const Pair& other = those[each.first]; // a point that nobody shares is not listed: 0
    return same(each.second.atRest, other.atRest) && same(each.second.dynamic, other.dynamic);
  });
}

} // namespace

QJsonArray otherHangs(const Snapshot& snapshot, const QString& hang) {
  QJsonArray all;
  for (const Choice& choice : snapshot.choices) {
    if (choice.hang != hang) {
      QJsonArray loads;
      for (const PointResult& point : choice.points) {
        QJsonArray load{point.point, point.staticKn, point.dynamicKn};
        if (point.worstStaticKn && point.worstDynamicKn) {
          load.append(*point.worstStaticKn);
          load.append(*point.worstDynamicKn);
        }
        loads.append(load);
      }
      all.append(QJsonObject{{QStringLiteral("hang"), choice.hang},
                             {QStringLiteral("option"), choice.option},
                             {QStringLiteral("loads_kn"), loads}});
    }
  }
  return all;
}

bool sameFromOthers(const Snapshot& snapshot, const Choice& choice, const QJsonArray& then,
                    const QJsonArray& now) {
  const auto hang = std::find_if(snapshot.show.hangs.begin(), snapshot.show.hangs.end(),
                                 [&](const calendar::Hang& each) { return each.name == choice.hang; });
  if (hang == snapshot.show.hangs.end()) {
    return false;
  }
  const bool worst = haveWorst(then) && haveWorst(now) &&
                     std::all_of(choice.points.begin(), choice.points.end(), [](const PointResult& each) {
                       return each.worstStaticKn && each.worstDynamicKn;
                     });
  Snapshot as;
  as.venue = snapshot.venue;
  as.show = snapshot.show;
  Case option;
  option.snapshot = &as;
  option.hang = &*hang;
  option.carriers = carriersOf(as.venue, choice.key.points);
  const std::vector<Pair> own = ownLoads(choice, option.carriers, worst);
  as.choices = choicesFrom(then, worst);
  std::map<QString, Pair> before = besides(option, own);
  as.choices = choicesFrom(now, worst);
  std::map<QString, Pair> after = besides(option, own);
  return allIn(before, after) && allIn(after, before);
}

} // namespace hangbook::options
