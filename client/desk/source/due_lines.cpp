// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/due_lines.h"

#include <QHash>

#include "fleet/due.h"

namespace hangbook::desk {
namespace {

constexpr int allDays = 36525; // a century: every interval that anybody has written down

std::vector<int> soonestOf(const Overview& overview) {
  QHash<QString, int> first;
  for (std::size_t i = 0; i < overview.due.size(); ++i) { // the most pressing first
    if (const QString& serial = overview.due[i].due.serial; !first.contains(serial)) {
      first.insert(serial, static_cast<int>(i));
    }
  }
  std::vector<int> soonest;
  soonest.reserve(overview.units.size());
  for (const fleet::Unit& unit : overview.units) {
    soonest.push_back(first.value(unit.serial, -1));
  }
  return soonest;
}

} // namespace

std::vector<calendar::Planned> dueLines(const Overview& overview) {
  return calendar::planned(fleet::dueWithin(overview.units, overview.rules, overview.examinations,
                                            overview.today, allDays, overview.occurrences),
                           overview.shows, overview.today);
}

Overview workedOut(Overview overview) {
  if (overview.due.empty()) {
    overview.due = dueLines(overview);
  }
  overview.soonest = soonestOf(overview);
  overview.visits = calendar::visits(overview.due);
  overview.sums = sumsOf(overview.units);
  return overview;
}

} // namespace hangbook::desk
