// SPDX-License-Identifier: GPL-3.0-or-later
#include "build/rides.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "build/shape.h"

namespace hangbook::build {
namespace {

using Place = CartRide::Place;

const hang::Element& elementAt(const Job& job, Place place) {
  return job.hangs[static_cast<std::size_t>(place.hang)].rig.stack[static_cast<std::size_t>(place.element)];
}

/// A NaN stays, whichever side it is on.
double higher(double one, double other) {
  return std::isnan(one) || std::isnan(other) ? notStated : std::max(one, other);
}

CartRide rideOf(const Job& job, const Carts* carts, const QString& cabinet,
                const std::vector<Place>& places) {
  CartRide ride;
  ride.cabinet = cabinet;
  ride.type = carts != nullptr ? carts->type : QString();
  const int high = carts != nullptr && carts->high > 0 ? carts->high : static_cast<int>(places.size());
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (static_cast<int>(i) % high == 0) {
      ride.columns.emplace_back();
    }
    ride.columns.back().push_back(places[i]);
    const QString& hang = job.hangs[static_cast<std::size_t>(places[i].hang)].hang;
    if (!ride.hangs.contains(hang)) {
      ride.hangs << hang;
    }
  }
  return ride;
}

int firstElement(const CartRide& ride) {
  int first = std::numeric_limits<int>::max();
  for (const auto& column : ride.columns) {
    for (const Place& place : column) {
      first = std::min(first, place.element);
    }
  }
  return first;
}

} // namespace

const Carts* cartsFor(const Job& job, const QString& cabinet) {
  const auto found = std::ranges::find(job.carts, cabinet, &Carts::cabinet);
  return found == job.carts.end() ? nullptr : &*found;
}

std::vector<CartRide> ridesOf(const Job& job) {
  std::vector<CartRide> rides;
  std::map<QString, std::vector<Place>> rest;
  for (std::size_t h = 0; h < job.hangs.size(); ++h) {
    std::map<QString, std::vector<Place>> open;
    for (qsizetype e = 0; e < job.hangs[h].types.size(); ++e) {
      const QString& type = job.hangs[h].types[e];
      const Carts* carts = cartsFor(job, type);
      std::vector<Place>& places = open[type];
      places.push_back({static_cast<int>(h), static_cast<int>(e)});
      if (static_cast<int>(places.size()) == std::max(1, carts != nullptr ? carts->most : 1)) {
        rides.push_back(rideOf(job, carts, type, places));
        places.clear();
      }
    }
    for (const auto& [type, places] : open) {
      rest[type].insert(rest[type].end(), places.begin(), places.end());
    }
  }
  for (const auto& [type, places] : rest) {
    const Carts* carts = cartsFor(job, type);
    const auto most = static_cast<std::size_t>(std::max(1, carts != nullptr ? carts->most : 1));
    for (std::size_t from = 0; from < places.size(); from += most) {
      const std::size_t to = std::min(places.size(), from + most);
      rides.push_back(rideOf(job, carts, type,
                             {places.begin() + static_cast<std::ptrdiff_t>(from),
                              places.begin() + static_cast<std::ptrdiff_t>(to)}));
    }
  }
  std::ranges::stable_sort(rides, {}, firstElement);
  std::map<QString, int> numbers;
  for (CartRide& ride : rides) {
    const QString type = ride.type.isEmpty() ? QStringLiteral("cart for %1").arg(ride.cabinet) : ride.type;
    ride.name = QStringLiteral("%1 %2").arg(type).arg(++numbers[type]);
  }
  return rides;
}

double undersideOn(const Job& job, const CartRide& ride, std::size_t column, int place) {
  const Carts* carts = cartsFor(job, ride.cabinet);
  if (carts == nullptr || (carts->high <= 0 && carts->most != 1)) {
    return notStated;
  }
  double at = carts->deck;
  const auto& places = ride.columns[column];
  for (auto below = static_cast<int>(places.size()) - 1; below > place; --below) {
    at += standingOf(elementAt(job, places[static_cast<std::size_t>(below)])).height;
  }
  return at;
}

OnCart standsOn(const Job& job, const CartRide& ride, const std::vector<int>& taken) {
  const Carts* carts = cartsFor(job, ride.cabinet);
  OnCart on{carts != nullptr ? carts->deck : notStated, true};
  bool full = carts != nullptr && carts->most > 0;
  int number = 0;
  for (std::size_t c = 0; c < ride.columns.size(); ++c) {
    full = full && taken[c] == 0;
    number += static_cast<int>(ride.columns[c].size());
    if (taken[c] < static_cast<int>(ride.columns[c].size())) {
      on.empty = false;
      const Place top = ride.columns[c][static_cast<std::size_t>(taken[c])];
      const double engagement =
          job.hangs[static_cast<std::size_t>(top.hang)].engagement[static_cast<std::size_t>(top.element)];
      on.top = higher(on.top, undersideOn(job, ride, c, taken[c]) + standingOf(elementAt(job, top)).height +
                                  engagement);
    }
  }
  // What was measured over the loaded cart counts where it is more than the sum of its parts.
  if (full && number == carts->most && !std::isnan(carts->height)) {
    on.top = higher(on.top, carts->height);
  }
  return on;
}

} // namespace hangbook::build
