// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "options/search.h"

namespace hangbook::options {
namespace {

/// Below 0: `one` comes first. Compared in the order that was asked for, then by the other figures, then by
/// name, so that the list is the same on every run.
int compare(const Option& one, const Option& other, Order order) {
  const auto by = [](auto a, auto b) { return a < b ? -1 : (b < a ? 1 : 0); };
  const int cover = by(other.coveredPercent, one.coveredPercent);
  const int mass = by(one.massKg, other.massKg);
  const int gear = by(one.key.stack.size(), other.key.stack.size());
  const auto first = [](std::initializer_list<int> each) {
    const auto found = std::find_if(each.begin(), each.end(), [](int way) { return way != 0; });
    return found == each.end() ? 0 : *found;
  };
  switch (order) {
  case Order::coverFirst:
    return first({cover, mass, gear, by(one.id, other.id)});
  case Order::lightestFirst:
    return first({mass, cover, gear, by(one.id, other.id)});
  case Order::leastGear:
    break;
  }
  return first({gear, cover, mass, by(one.id, other.id)});
}

} // namespace

void rank(HangOptions& options, Order order) {
  std::stable_sort(options.options.begin(), options.options.end(), [order](const Option& a, const Option& b) {
    if (a.verdict != b.verdict) {
      return a.verdict < b.verdict;
    }
    return compare(a, b, order) < 0;
  });
}

} // namespace hangbook::options
