// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/where_best.h"

#include <algorithm>
#include <tuple>

namespace hangbook::calendar {
namespace {

struct Span {
  QDate from;
  QDate to;
};

/// Days away, where one show follows another without a day at home as one.
std::vector<Span> spansAway(const std::vector<Show>& route) {
  std::vector<Span> spans;
  for (const Show& show : route) {
    if (show.awayFrom.isValid() && show.awayTo.isValid() && show.awayFrom <= show.awayTo) {
      spans.push_back({show.awayFrom, show.awayTo});
    }
  }
  std::ranges::sort(spans, {}, &Span::from);
  std::vector<Span> joined;
  for (const Span& each : spans) {
    if (!joined.empty() && each.from <= joined.back().to.addDays(1)) {
      joined.back().to = std::max(joined.back().to, each.to);
    } else {
      joined.push_back(each);
    }
  }
  return joined;
}

/// The last stretch of days at home that begins by `due` and is not over: from `today` on.
std::optional<Slot> lastGap(const std::vector<Span>& spans, QDate today, QDate due) {
  std::optional<Slot> found;
  QDate start = today;
  const auto consider = [&](QDate end) {
    const QDate from = std::max(start, today);
    const QDate to = std::min(end, due);
    if (from <= to) {
      found = Slot{QStringLiteral("warehouse"), from, to, true};
    }
  };
  for (const Span& span : spans) {
    consider(span.from.addDays(-1));
    start = std::max(start, span.to.addDays(1));
  }
  consider(due);
  return found;
}

std::optional<Slot> lastStop(const std::vector<Show>& route, QDate today, QDate due) {
  std::optional<Slot> found;
  for (const Show& show : route) {
    if (!show.from.isValid() || !show.to.isValid()) {
      continue;
    }
    const QDate from = std::max(show.from, today);
    const QDate to = std::min(show.to, due);
    if (from <= to && (!found || from >= found->from)) {
      found = Slot{show.venue, from, to, false};
    }
  }
  return found;
}

} // namespace

std::vector<Planned> planned(const std::vector<fleet::Due>& due, const std::vector<Show>& route,
                             QDate today) {
  const std::vector<Span> spans = spansAway(route);
  std::vector<Planned> all;
  for (const fleet::Due& each : due) {
    Planned plan{each, {each.place, today, today, false}, false};
    const bool late = each.overdue || !each.due.isValid() || each.due < today;
    if (!late) {
      if (const auto gap = lastGap(spans, today, each.due)) {
        plan.slot = *gap;
        plan.ahead = std::ranges::any_of(spans, [&](const Span& span) {
          return span.from <= each.due && each.due <= span.to && span.from > gap->to;
        });
      } else if (const auto stop = lastStop(route, today, each.due)) {
        plan.slot = *stop;
      } else {
        plan.slot.to = each.due;
      }
    }
    all.push_back(std::move(plan));
  }
  return all;
}

std::vector<Visit> visits(const std::vector<Planned>& all) {
  std::vector<Visit> found;
  for (const Planned& each : all) {
    // Of one stretch at home those that must be made earlier go with the others: the earliest last day
    // counts.
    const auto same = std::ranges::find_if(found, [&](const Visit& visit) {
      return visit.slot.place == each.slot.place && visit.slot.from == each.slot.from &&
             visit.slot.warehouse == each.slot.warehouse &&
             (visit.units.front().due.overdue == each.due.overdue);
    });
    if (same == found.end()) {
      found.push_back({each.slot, {each}});
    } else {
      same->slot.to = std::min(same->slot.to, each.slot.to);
      same->units.push_back(each);
    }
  }
  std::ranges::stable_sort(found, [](const Visit& a, const Visit& b) {
    return std::tuple(!a.units.front().due.overdue, a.slot.to, a.slot.place) <
           std::tuple(!b.units.front().due.overdue, b.slot.to, b.slot.place);
  });
  return found;
}

} // namespace hangbook::calendar
