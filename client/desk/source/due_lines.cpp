// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/due_lines.h"

#include "fleet/due.h"

namespace hangbook::desk {
namespace {

constexpr int allDays = 36525; // a century: every interval that anybody has written down

} // namespace

std::vector<calendar::Planned> dueLines(const Overview& overview) {
  return calendar::planned(fleet::dueWithin(overview.units, overview.rules, overview.examinations,
                                            overview.today, allDays, overview.occurrences),
                           overview.shows, overview.today);
}

} // namespace hangbook::desk
