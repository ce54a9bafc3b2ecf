// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/overview.h"

#include <algorithm>

namespace hangbook::desk {
namespace {

template <class Range, class Test>
auto* firstOf(const Range& range, Test test) {
  const auto found = std::find_if(range.begin(), range.end(), test);
  return found == range.end() ? nullptr : &*found;
}

} // namespace

const calendar::Show* findShow(const Overview& overview, const ShowKey& key) {
  return firstOf(overview.shows,
                 [&](const calendar::Show& each) { return each.tour == key.tour && each.name == key.show; });
}

const venue::Venue* findVenue(const Overview& overview, const QString& name) {
  return firstOf(overview.venues, [&](const venue::Venue& each) { return each.name == name; });
}

const options::Choice* findChoice(const Overview& overview, const ShowKey& key, const QString& hang) {
  return firstOf(overview.choices, [&](const options::Choice& each) {
    return each.tour == key.tour && each.show == key.show && each.hang == hang;
  });
}

} // namespace hangbook::desk
