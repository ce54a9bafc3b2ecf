// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/cart_plan.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "options/doubts.h"
#include "options/house_figures.h"

namespace hangbook::options {
namespace {

const catalogue::CartType* cartFor(const catalogue::Catalogue& catalogue, const QString& cabinet) {
  const auto found = std::ranges::find(catalogue.carts, cabinet, &catalogue::CartType::carries);
  return found == catalogue.carts.end() ? nullptr : &*found;
}

void weigh(const catalogue::Catalogue& catalogue, PlannedCart& planned) {
  const catalogue::CartType* cart = cartFor(catalogue, planned.cabinet);
  const auto* cabinet = catalogue::find(catalogue.cabinets, planned.cabinet);
  if (cart == nullptr) {
    return;
  }
  planned.cart = cart->name;
  planned.floor = cart->length;
  if (cart->mass && cabinet != nullptr && cabinet->mass) {
    planned.gross = *cart->mass + *cabinet->mass * static_cast<double>(planned.number);
  }
}

/// A cart and the place in the stack of the first cabinet that is taken from it.
struct Ranked {
  PlannedCart cart;
  int first{};
};

} // namespace

catalogue::Catalogue withCountedMasses(const Snapshot& snapshot) {
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  catalogue::Catalogue counted = snapshot.catalogue;
  for (catalogue::CabinetType& each : counted.cabinets) {
    const double mass = massOfType(snapshot, house, each).stated;
    each.mass = std::isfinite(mass) ? std::optional(kilograms(mass)) : std::nullopt;
  }
  return counted;
}

std::vector<PlannedCart> planCarts(const catalogue::Catalogue& catalogue,
                                   const std::vector<HangStack>& hangs) {
  std::vector<Ranked> all;
  std::map<QString, std::vector<Ranked>> left; // of each type: what no whole cart takes, hang by hang
  for (const HangStack& hang : hangs) {
    std::map<QString, Ranked> open;
    for (int place = 0; place < hang.stack.size(); ++place) {
      const QString& type = hang.stack[place];
      const catalogue::CartType* cart = cartFor(catalogue, type);
      Ranked& riding =
          open.try_emplace(type, Ranked{{{}, type, 0, {hang.hang}, {}, {}}, place}).first->second;
      ++riding.cart.number;
      if (cart == nullptr || !cart->most || riding.cart.number >= *cart->most) {
        all.push_back(riding);
        open.erase(type);
      }
    }
    for (const auto& [type, riding] : open) {
      left[type].push_back(riding);
    }
  }
  for (const auto& [type, rest] : left) {
    const int most = *cartFor(catalogue, type)->most; // only a cart that takes two or more leaves a rest
    Ranked shared;
    for (Ranked each : rest) {
      while (each.cart.number > 0) {
        if (shared.cart.number == 0) {
          shared = Ranked{{{}, type, 0, {}, {}, {}}, each.first};
        }
        const int taken = std::min(each.cart.number, most - shared.cart.number);
        shared.cart.number += taken;
        each.cart.number -= taken;
        shared.cart.hangs << each.cart.hangs;
        shared.first = std::min(shared.first, each.first);
        if (shared.cart.number == most) {
          all.push_back(shared);
          shared.cart.number = 0;
        }
      }
    }
    if (shared.cart.number > 0) {
      all.push_back(shared);
    }
  }
  std::ranges::stable_sort(all, {}, &Ranked::first);
  std::vector<PlannedCart> carts;
  for (Ranked& each : all) {
    weigh(catalogue, each.cart);
    carts.push_back(std::move(each.cart));
  }
  return carts;
}

} // namespace hangbook::options
