// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/edit_venue.h"

#include <algorithm>

#include "actions/plans.h"
#include "exchange/venue_text.h"
#include "options/verdict_changes.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"

namespace hangbook::actions {
namespace {

/// Thrown to roll a dry run back.
struct DryRunEnds {};

[[noreturn]] void refuse(const QString& why, const QString& place) {
  throw Error(Trouble::badInput, why.toStdString(), place.toStdString());
}

bool holds(const venue::Venue& venue, const QString& name) {
  return std::ranges::count(venue.points, name, &venue::Point::name) > 0 ||
         std::ranges::count(venue.bridles, name, &venue::Bridle::name) > 0;
}

bool hasSection(const venue::Venue& venue, const QString& name) {
  return std::ranges::count(venue.sections, name, &venue::Section::name) > 0;
}

[[noreturn]] void refuseToDrop(const char* what, const QString& name, const QString& show,
                               const QString& hang) {
  refuse(
      QStringLiteral("the show “%1” names it for the hang “%2”; take it off that hang first").arg(show, hang),
      QStringLiteral("%1 %2").arg(QString::fromLatin1(what), name));
}

} // namespace

// What hangs stand on stays: a hang whose point has gone would silently have one way less, one whose section
// has gone would cover less.
void keepsWhatHangsUse(const venue::Venue& was, const venue::Venue& becomes,
                       const std::vector<calendar::Show>& shows) {
  for (const calendar::Show& show : shows) {
    if (show.venue != was.name) {
      continue;
    }
    for (const calendar::Hang& hang : show.hangs) {
      for (const QString& point : hang.points) {
        if (holds(was, point) && !holds(becomes, point)) {
          refuseToDrop("point", point, show.name, hang.name);
        }
      }
      for (const QString& section : hang.sections) {
        if (hasSection(was, section) && !hasSection(becomes, section)) {
          refuseToDrop("section", section, show.name, hang.name);
        }
      }
    }
  }
}

options::HouseEffect editVenue(store::Store& store, const venue::Venue& venue, const QString& by,
                               const QDate& today, bool dryRun) {
  options::HouseEffect effect;
  try {
    store.transact([&] {
      const auto stored = store::loadVenue(store, venue.name);
      if (!stored) {
        refuse(QStringLiteral("there is no such venue"), venue.name);
      }
      if (const QStringList wrong = exchange::complaintsOf(venue); !wrong.isEmpty()) {
        refuse(wrong.join(QStringLiteral("; ")), venue.name);
      }
      std::vector<calendar::Show> here = store::loadShows(store);
      std::erase_if(here, [&](const calendar::Show& show) { return show.venue != venue.name; });
      keepsWhatHangsUse(*stored, venue, here);
      std::vector<options::Snapshot> snapshots;
      for (const calendar::Show& show : here) {
        snapshots.push_back(store::loadSnapshot(store, show.tour, show.name, today));
      }
      // Saved before it is judged: whatever the store refuses is then said first, of a dry run too.
      const venue::Venue saved = dryRun ? store::save(store, venue) : saveVenue(store, venue, by);
      effect = options::effectOf(snapshots, saved);
      if (dryRun) {
        throw DryRunEnds{};
      }
    });
  } catch (const DryRunEnds&) {
  }
  return effect;
}

} // namespace hangbook::actions
