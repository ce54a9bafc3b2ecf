// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/data/record.h"

#include <algorithm>
#include <array>

#include <QCoreApplication>

#include "desk/data/records_of.h"

namespace hangbook::desk {

int RecordLine::unknown() const {
  return static_cast<int>(std::count_if(figures.begin(), figures.end(), [](const FigureLine& each) {
    return !each.known() && !each.optional;
  }));
}

std::vector<RecordLine> recordsOf(const Overview& overview) {
  std::vector<RecordLine> all;
  const auto add = [&](const auto& list) {
    for (const auto& each : list) {
      all.push_back(recordOf(each));
    }
  };
  add(overview.venues);
  add(overview.catalogue.cabinets);
  add(overview.catalogue.bars);
  add(overview.catalogue.hoists);
  add(overview.catalogue.chains);
  add(overview.catalogue.hardware);
  add(overview.catalogue.carts);
  add(overview.catalogue.tables);
  add(overview.connections.connectors);
  for (const calendar::Show& show : overview.shows) {
    if (!overview.today.isValid() || show.to >= overview.today) { // what is over is not plugged any more
      for (const calendar::Hang& hang : show.hangs) {
        all.push_back(recordOf(show, hang));
      }
    }
  }
  for (const calendar::Tour& tour : overview.tours) {
    addHouse(all, tour.house, tour.name);
  }
  for (const venue::Venue& venue : overview.venues) {
    addHouse(all, venue.house, venue.name);
  }
  for (const calendar::Show& show : overview.shows) {
    addHouse(all, show.house, show.name);
  }
  add(overview.people);
  return all;
}

QString wordOf(RecordKind kind) {
  static constexpr std::array names{
      QT_TRANSLATE_NOOP("Record", "venue"),      QT_TRANSLATE_NOOP("Record", "cabinet"),
      QT_TRANSLATE_NOOP("Record", "bar"),        QT_TRANSLATE_NOOP("Record", "hoist"),
      QT_TRANSLATE_NOOP("Record", "chain"),      QT_TRANSLATE_NOOP("Record", "hardware"),
      QT_TRANSLATE_NOOP("Record", "cart"),       QT_TRANSLATE_NOOP("Record", "stacking table"),
      QT_TRANSLATE_NOOP("Record", "connector"),  QT_TRANSLATE_NOOP("Record", "plugs"),
      QT_TRANSLATE_NOOP("Record", "house rule"), QT_TRANSLATE_NOOP("Record", "person")};
  return QCoreApplication::translate("Record", names.at(static_cast<std::size_t>(kind)));
}

} // namespace hangbook::desk
