// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/house_rules.h"

#include <algorithm>
#include <functional>

#include "actions/plans.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/snapshot_store.h"
#include "store/venue_store.h"

namespace hangbook::actions {
namespace {

using options::HousePlace;
using options::HouseSite;
using options::Snapshot;
using venue::HouseFigure;

[[noreturn]] void refuse(const QString& why, const char* place) {
  throw Error(Trouble::badInput, why.toStdString(), place);
}

template <class Record>
Record found(const std::optional<Record>& record, const HouseSite& site) {
  if (!record) {
    refuse(QStringLiteral("there is no %1 “%2”").arg(wordFor(site.place), site.name), "house rule");
  }
  return *record;
}

/// Gives the list of the site to `edit` and writes it back as `edit` left it.
template <class Edit>
void edited(store::Store& store, const HouseSite& site, const QString& by, Edit edit) {
  switch (site.place) {
  case HousePlace::tour: {
    calendar::Tour tour = found(store::loadTour(store, site.name), site);
    edit(tour.house);
    saveTour(store, tour, by);
    return;
  }
  case HousePlace::venue: {
    venue::Venue venue = found(store::loadVenue(store, site.name), site);
    edit(venue.house);
    saveVenue(store, venue, by);
    return;
  }
  case HousePlace::show:
    break;
  }
  calendar::Show show = found(store::loadShow(store, site.tour, site.name), site);
  edit(show.house);
  saveShow(store, show, by);
}

std::vector<HouseFigure> listOf(store::Store& store, const HouseSite& site) {
  switch (site.place) {
  case HousePlace::tour:
    return found(store::loadTour(store, site.name), site).house;
  case HousePlace::venue:
    return found(store::loadVenue(store, site.name), site).house;
  case HousePlace::show:
    break;
  }
  return found(store::loadShow(store, site.tour, site.name), site).house;
}

std::vector<Snapshot> showsUnder(store::Store& store, const HouseSite& site, const QDate& today) {
  std::vector<Snapshot> all;
  for (const calendar::Show& show : store::loadShows(store)) {
    const bool ours = (site.place == HousePlace::tour && show.tour == site.name) ||
                      (site.place == HousePlace::venue && show.venue == site.name) ||
                      (site.place == HousePlace::show && show.tour == site.tour && show.name == site.name);
    if (ours) {
      all.push_back(store::loadSnapshot(store, show.tour, show.name, today));
    }
  }
  return all;
}

const options::HouseFigureKind& kindOf(const QString& figure) {
  const auto kinds = options::houseFigureKinds();
  const auto kind = std::ranges::find(kinds, figure, &options::HouseFigureKind::id);
  if (kind == kinds.end()) {
    QStringList known;
    for (const auto& each : kinds) {
      known << each.id;
    }
    refuse(QStringLiteral("there is no house figure “%1”; there are: %2")
               .arg(figure, known.join(QStringLiteral(", "))),
           "figure");
  }
  return *kind;
}

/// A figure of makers, venue or law only tightens; what would count for nothing is refused rather than kept.
void checkDirection(const options::HouseFigureKind& kind, const std::vector<HouseFigure>& list,
                    const HouseFigure& figure) {
  if (kind.stricter == options::Stricter::free) {
    return;
  }
  std::vector<HouseFigure> with = list;
  std::erase_if(with, [&](const HouseFigure& each) { return each.figure == figure.figure; });
  with.push_back(figure);
  const options::HouseValue stands = options::House(with, {}, {}).figure(figure.figure);
  if (stands.value && *stands.value != figure.value) {
    refuse(
        QStringLiteral("%1 may only be tightened: %2 %3 or %4 is expected (%5)")
            .arg(kind.id, QString::number(*stands.value), kind.unit,
                 kind.stricter == options::Stricter::higher ? QStringLiteral("more") : QStringLiteral("less"),
                 stands.source)
            .simplified(),
        "value");
  }
}

options::HouseEffect change(store::Store& store, const HouseSite& site, const QString& by, const QDate& today,
                            bool dryRun, const std::function<void(std::vector<HouseFigure>&)>& edit) {
  return store.transact([&] {
    std::vector<HouseFigure> rules = listOf(store, site);
    edit(rules);
    options::HouseEffect effect = options::effectOf(showsUnder(store, site, today), site, rules);
    if (!dryRun) {
      edited(store, site, by, edit);
    }
    return effect;
  });
}

} // namespace

options::HouseEffect stateHouseRule(store::Store& store, const HouseSite& site, HouseFigure figure,
                                    const QString& by, const QDate& today, bool dryRun) {
  const options::HouseFigureKind& kind = kindOf(figure.figure);
  if (figure.unit.isEmpty()) {
    figure.unit = kind.unit;
  }
  if (const QString fault = options::houseFault(figure); !fault.isEmpty()) {
    refuse(figure.figure + QStringLiteral(" ") + fault, "value");
  }
  return change(store, site, by, today, dryRun, [&](std::vector<HouseFigure>& list) {
    HouseFigure stated = figure;
    stated.signedBy = whoActs(store, by);
    stated.signedOn = today;
    checkDirection(kind, list, stated);
    list.push_back(stated);
  });
}

options::HouseEffect withdrawHouseRule(store::Store& store, const HouseSite& site, const QString& figure,
                                       const QString& by, const QDate& today, bool dryRun) {
  kindOf(figure);
  return change(store, site, by, today, dryRun, [&](std::vector<HouseFigure>& list) {
    const auto gone = std::erase_if(list, [&](const HouseFigure& each) { return each.figure == figure; });
    if (gone == 0) {
      refuse(QStringLiteral("the %1 “%2” states no %3").arg(wordFor(site.place), site.name, figure),
             "figure");
    }
  });
}

std::vector<HouseFigure> statementsOf(store::Store& store, const HouseSite& site, const QString& figure) {
  std::vector<HouseFigure> some = listOf(store, site);
  std::erase_if(some, [&](const HouseFigure& each) { return each.figure != figure; });
  return some;
}

void restoreStatements(store::Store& store, const HouseSite& site, const QString& figure,
                       const std::vector<HouseFigure>& statements, const QString& by) {
  store.transact([&] {
    edited(store, site, by, [&](std::vector<HouseFigure>& list) {
      std::erase_if(list, [&](const HouseFigure& each) { return each.figure == figure; });
      list.insert(list.end(), statements.begin(), statements.end());
    });
  });
}

} // namespace hangbook::actions
