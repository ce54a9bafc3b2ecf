// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/examinations/due_list.h"

namespace hangbook::desk {
namespace {

constexpr int allDays = 36525; // a century: every interval that anybody has written down

QString stopBefore(const std::vector<calendar::Show>& shows, QDate due, QDate today) {
  QString stop;
  for (const calendar::Show& show : shows) {
    if (show.from.isValid() && show.from >= today && show.from <= due) {
      stop = show.venue;
    }
  }
  return stop;
}

} // namespace

std::vector<DueLine> dueLines(const Overview& overview) {
  std::vector<DueLine> lines;
  for (fleet::Due& each :
       fleet::dueWithin(overview.units, overview.rules, overview.examinations, overview.today, allDays)) {
    QString stop = each.due.isValid() ? stopBefore(overview.shows, each.due, overview.today) : QString();
    lines.push_back({std::move(each), std::move(stop)});
  }
  return lines;
}

} // namespace hangbook::desk
