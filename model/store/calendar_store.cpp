// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/calendar_store.h"

#include <QSet>

#include "store/records.h"
#include "store/words.h"

namespace hangbook::store {

namespace {

using namespace calendar;

constexpr auto tourColumns = [](auto& io, auto& tour) {
  recordColumns(io, tour);
  io("name", tour.name);
  io("act", tour.act);
};

constexpr auto showColumns = [](auto& io, auto& show) {
  recordColumns(io, show);
  io("tour", show.tour);
  io("name", show.name);
  io("venue", show.venue);
  io("from_day", show.from);
  io("to_day", show.to);
  io("load_in", show.loadIn);
  io("load_out", show.loadOut);
  io("away_from", show.awayFrom);
  io("away_to", show.awayTo);
  io("people_beneath", show.peopleBeneath);
  io("temperature_c", show.temperature);
  io("humidity_percent", show.humidity);
  io("pressure_kpa", show.pressure);
  io("wind_m_s", show.wind);
  io.word("wind_basis", show.windBasis, windWords);
  io("wind_averaging_s", show.windAveraging);
  io("wind_height_m", show.windHeight);
};

constexpr auto hangColumns = [](auto& io, auto& hang) {
  io("name", hang.name);
  io.reference("mirrors", hang.mirrors);
  io.list("points", hang.points);
  io("secondary_slack_m", hang.secondarySlack);
  io("pan_deg", hang.pan);
  io.list("sections", hang.sections);
  io("least_trim_m", hang.leastTrim);
  io("cable_mass_kg", hang.cableMass);
  io("wet_mass_kg", hang.wetMass);
};

RecordName nameOf(const Tour& tour) {
  return {"tour", QStringLiteral("tour \"%1\"").arg(tour.name)};
}
RecordName nameOf(const Show& show) {
  return {"show", QStringLiteral("show \"%1\" of \"%2\"").arg(show.name, show.tour)};
}

QSet<QString> namesIn(Store& store, const char* table, const QString& venue) {
  QSet<QString> names;
  for (const Row& row : store.rows(QStringLiteral("SELECT child.name FROM %1 child JOIN venue ON venue.id = "
                                                  "child.owner_id WHERE venue.name = :venue")
                                       .arg(QLatin1StringView(table)),
                                   {{"venue", venue}})) {
    names.insert(row.text("name"));
  }
  return names;
}

void checkNames(const Show& show, const Hang& hang, const QStringList& names, const QSet<QString>& known,
                const char* what) {
  for (const QString& each : names) {
    if (!known.contains(each)) {
      throw Error(Trouble::badInput,
                  QStringLiteral("hang \"%1\" of %2 names the %3 \"%4\", which venue \"%5\" does not have")
                      .arg(hang.name, nameOf(show).spoken, QLatin1StringView(what), each, show.venue)
                      .toStdString());
    }
  }
}

/// What a hang names is looked up here, since lists of names stand as JSON.
void checkHangs(Store& store, const Show& show) {
  const QSet<QString> points =
      namesIn(store, "venue_point", show.venue) + namesIn(store, "venue_bridle", show.venue);
  const QSet<QString> sections = namesIn(store, "venue_section", show.venue);
  QSet<QString> hangs;
  for (const Hang& hang : show.hangs) {
    hangs.insert(hang.name);
  }
  for (const Hang& hang : show.hangs) {
    checkNames(show, hang, hang.points, points, "point");
    checkNames(show, hang, hang.sections, sections, "audience section");
    if (!hang.mirrors.isEmpty() && (!hangs.contains(hang.mirrors) || hang.mirrors == hang.name)) {
      throw Error(Trouble::badInput,
                  QStringLiteral("hang \"%1\" of %2 mirrors \"%3\", which is not another hang of it")
                      .arg(hang.name, nameOf(show).spoken, hang.mirrors)
                      .toStdString());
    }
  }
}

void writeNames(Store& store, const char* table, const QUuid& show, int hang, const char* use,
                const QStringList& names) {
  for (int place = 0; place < names.size(); ++place) {
    Bindings values{{"owner_id", show}, {"hang", hang}, {"place", place}, {"name", names[place]}};
    if (use != nullptr) {
      values.emplace_back("use", use);
    }
    insertRow(store, table, values);
  }
}

/// What names a hang by name follows where it is renamed. A hang is the same one where it stands at the same
/// place among the show's and neither name stands at another.
void followNames(Store& store, const Show& show) {
  QStringList before;
  for (const Row& row : store.rows(
           QStringLiteral("SELECT name FROM hang WHERE owner_id = :id ORDER BY place"), {{"id", show.id}})) {
    before << row.text("name");
  }
  QStringList now;
  for (const Hang& hang : show.hangs) {
    now << hang.name;
  }
  for (qsizetype i = 0; i < std::min(before.size(), now.size()); ++i) {
    if (before[i] == now[i] || now.contains(before[i]) || before.contains(now[i])) {
      continue;
    }
    for (const char* table : {"hang_plug", "hang_unit"}) {
      store.run(
          QStringLiteral("UPDATE %1 SET hang = :now WHERE tour = :tour AND show = :show AND hang = :before")
              .arg(QLatin1StringView(table)),
          {{"now", now[i]}, {"tour", show.tour}, {"show", show.name}, {"before", before[i]}});
    }
  }
}

void writeHangs(Store& store, const Show& show) {
  followNames(store, show);
  writeChildren(store, "hang", show.id, show.hangs, hangColumns); // its own lists went with the old rows
  int number = 0;
  for (const Hang& hang : show.hangs) {
    writeNames(store, "hang_table", show.id, number, nullptr, hang.tables);
    writeNames(store, "hang_hardware", show.id, number, "rigging", hang.rigging);
    writeNames(store, "hang_hardware", show.id, number, "secondary", hang.secondary);
    ++number;
  }
}

/// Lists of names of all hangs read, each by show and the hang's number in it.
using HangNames = std::map<std::pair<QUuid, int>, QStringList>;

HangNames hangNames(Store& store, const QString& from) {
  HangNames names;
  for (const Row& row : store.rows(QStringLiteral("SELECT owner_id, hang, name FROM ") + from +
                                   QStringLiteral(" ORDER BY owner_id, hang, place"))) {
    names[{row.uuid("owner_id"), row.number("hang")}].append(row.text("name"));
  }
  return names;
}

std::vector<Show> readShows(Store& store, const QString& rest, const Bindings& bindings) {
  return store.reading([&] {
    auto shows = readRecords<Show>(store, "show", showColumns, rest, bindings);
    if (shows.empty()) {
      return shows;
    }
    const QUuid owner = shows.size() == 1 ? shows.front().id : QUuid();
    auto hangs = readChildren<Hang>(store, "hang", owner, hangColumns);
    auto house = readChildren<venue::HouseFigure>(store, "show_house", owner, houseFields);
    auto tables = hangNames(store, QStringLiteral("hang_table"));
    auto rigging = hangNames(store, QStringLiteral("hang_hardware WHERE use = 'rigging'"));
    auto secondary = hangNames(store, QStringLiteral("hang_hardware WHERE use = 'secondary'"));
    for (Show& show : shows) {
      show.hangs = std::move(hangs[show.id]);
      show.house = std::move(house[show.id]);
      for (std::size_t i = 0; i < show.hangs.size(); ++i) {
        const std::pair<QUuid, int> key{show.id, static_cast<int>(i)};
        show.hangs[i].tables = tables[key];
        show.hangs[i].rigging = rigging[key];
        show.hangs[i].secondary = secondary[key];
      }
    }
    return shows;
  });
}

std::vector<Tour> readTours(Store& store, const QString& rest, const Bindings& bindings) {
  return store.reading([&] {
    auto tours = readRecords<Tour>(store, "tour", tourColumns, rest, bindings);
    auto house = readChildren<venue::HouseFigure>(store, "tour_house", {}, houseFields);
    for (Tour& tour : tours) {
      tour.house = std::move(house[tour.id]);
    }
    return tours;
  });
}

} // namespace

std::vector<Tour> loadTours(Store& store) {
  return readTours(store, QStringLiteral("ORDER BY name"), {});
}

std::optional<Tour> loadTour(Store& store, const QString& name) {
  std::vector<Tour> found = readTours(store, QStringLiteral("WHERE name = :name"), {{"name", name}});
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

std::vector<Show> loadShows(Store& store, const QString& tour) {
  const QString order = QStringLiteral(" ORDER BY from_day NULLS LAST, tour, name");
  return tour.isEmpty() ? readShows(store, order, {})
                        : readShows(store, QStringLiteral("WHERE tour = :tour") + order, {{"tour", tour}});
}

std::optional<Show> loadShow(Store& store, const QString& tour, const QString& name) {
  std::vector<Show> found = readShows(store, QStringLiteral("WHERE tour = :tour AND name = :name"),
                                      {{"tour", tour}, {"name", name}});
  return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

Tour save(Store& store, const Tour& tour) {
  return store.transact([&] {
    Tour saved = tour;
    inTermsOf(nameOf(tour), [&] {
      writeByColumns(store, nameOf(tour), saved, tourColumns);
      writeChildren(store, "tour_house", saved.id, saved.house, houseFields);
    });
    return saved;
  });
}

Show save(Store& store, const Show& show) {
  return store.transact([&] {
    Show saved = show;
    inTermsOf(nameOf(show), [&] {
      writeByColumns(store, nameOf(show), saved, showColumns);
      checkHangs(store, saved);
      writeHangs(store, saved);
      writeChildren(store, "show_house", saved.id, saved.house, houseFields);
    });
    return saved;
  });
}

void remove(Store& store, const Tour& tour) {
  removeRecord(store, nameOf(tour), tour.id, tour.revision);
}

void remove(Store& store, const Show& show) {
  removeRecord(store, nameOf(show), show.id, show.revision);
}

} // namespace hangbook::store
