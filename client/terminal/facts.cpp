// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/facts.h"

#include <algorithm>

#include "store/calendar_store.h"
#include "terminal/names.h"

namespace hangbook::terminal {
namespace {

std::optional<QString> named(const Given& given, const std::string& option) {
  const auto text = given.option(option);
  return text ? std::optional(QString::fromStdString(*text)) : std::nullopt;
}

} // namespace

const Option showOption{"--show", "NAME", "the show", true};
const Option tourOption{"--tour", "NAME", "the show's tour, where several tours have a show of that name"};

calendar::Show findShow(const std::vector<calendar::Show>& shows, const QString& name,
                        const std::optional<QString>& tour) {
  QStringList tours;
  QStringList names;
  QStringList toursWithIt;
  const calendar::Show* found = nullptr;
  for (const calendar::Show& show : shows) {
    tours << show.tour;
    if (tour && !sameName(show.tour, *tour)) {
      continue;
    }
    names << show.name;
    if (sameName(show.name, name)) {
      found = &show;
      toursWithIt << show.tour;
    }
  }
  if (tour && names.isEmpty()) {
    throw unknownName(*tour, QStringLiteral("a tour of this store that has shows"), tours);
  }
  if (found == nullptr) {
    throw unknownName(name,
                      tour ? QStringLiteral("a show of the tour “%1”").arg(*tour)
                           : QStringLiteral("a show of this store"),
                      names);
  }
  if (toursWithIt.size() > 1) {
    throw Error(Trouble::badInput,
                QStringLiteral("several tours have a show “%1”; say with --tour which one is meant: %2")
                    .arg(name, toursWithIt.join(QStringLiteral(", ")))
                    .toStdString());
  }
  return *found;
}

calendar::Show findShow(store::Store& store, const Given& given) {
  return findShow(store::loadShows(store), QString::fromStdString(*given.option("--show")),
                  named(given, "--tour"));
}

QString findTour(store::Store& store, const Given& given) {
  QStringList names;
  for (const calendar::Tour& tour : store::loadTours(store)) {
    names << tour.name;
  }
  const auto wanted = named(given, "--tour");
  if (!wanted) {
    if (names.size() == 1) {
      return names.first();
    }
    throw Error(Trouble::badInput, names.isEmpty() ? "this store holds no tour yet"
                                                   : "say with --tour which tour is meant: " +
                                                         names.join(QStringLiteral(", ")).toStdString());
  }
  const auto found =
      std::find_if(names.begin(), names.end(), [&](const QString& name) { return sameName(name, *wanted); });
  if (found == names.end()) {
    throw unknownName(*wanted, QStringLiteral("a tour of this store"), names);
  }
  return *found;
}

const calendar::Hang& findHang(const calendar::Show& show, const QString& name) {
  QStringList names;
  for (const calendar::Hang& hang : show.hangs) {
    if (sameName(hang.name, name)) {
      return hang;
    }
    names << hang.name;
  }
  throw unknownName(name, QStringLiteral("a hang of the show “%1”").arg(show.name), names);
}

options::ShowOptions optionsBeginning(const options::Snapshot& snapshot, const QString& start,
                                      const std::optional<QString>& hang) {
  options::ShowOptions some = options::decideOnly(snapshot, start.toLower(), hang);
  const bool none = std::ranges::all_of(some.hangs, [](const auto& each) { return each.options.empty(); });
  return none && !start.isEmpty() ? options::decide(snapshot, hang) : some;
}

const options::Option& findOption(const options::ShowOptions& options, const QString& start) {
  QStringList ids;
  QStringList fitting;
  const options::Option* found = nullptr;
  for (const options::HangOptions& hang : options.hangs) {
    for (const options::Option& option : hang.options) {
      ids << option.id;
      if (!start.isEmpty() && option.id.startsWith(start, Qt::CaseInsensitive)) {
        found = &option;
        fitting << option.id;
      }
    }
  }
  if (found == nullptr) {
    throw unknownName(start, QStringLiteral("an option of this show, nor how one begins"), ids);
  }
  if (fitting.size() > 1) {
    throw Error(Trouble::badInput, QStringLiteral("“%1” is how %2 options begin (%3 …); give more of it")
                                       .arg(start)
                                       .arg(fitting.size())
                                       .arg(fitting.mid(0, 4).join(QStringLiteral(", ")))
                                       .toStdString());
  }
  return *found;
}

} // namespace hangbook::terminal
