// SPDX-License-Identifier: GPL-3.0-or-later
#include <QTimeZone>

#include "exchange/cabling_sorts.h"
#include "exchange/facts.h"
#include "exchange/hang_sort.h"
#include "exchange/house_sorts.h"
#include "exchange/hung_sort.h"
#include "exchange/local_time.h"
#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace calendar;

constexpr std::array windBases = {std::pair{WindBasis::gust, "gust"}, std::pair{WindBasis::mean, "mean"},
                                  std::pair{WindBasis::unknown, "unknown"}};

/// A show whose load-in and load-out may be local times until its venue is known.
struct ShowLine {
  Show show;
  QDateTime loadInClock;
  QDateTime loadOutClock;
  Typed typed;
  bool operator==(const ShowLine&) const = default;
};

/// A house rule of a tour or, where `show` is not empty, of one show.
struct HouseLine {
  QString tour;
  QString show;
  venue::HouseFigure value;
  Typed typed;
  bool operator==(const HouseLine&) const = default;
};

struct PersonLine {
  people::Person person;
  Typed typed;
  bool operator==(const PersonLine&) const = default;
};

struct MarkLine {
  marks::MarkUsed fact;
  Typed typed;
  bool operator==(const MarkLine&) const = default;
};

std::unique_ptr<Sort> tourSort() {
  using Line = Tour;
  Columns<Line> columns = {
      name<Line>("name", HANGBOOK_FIELD(name)),
      text<Line>("act", HANGBOOK_FIELD(act)),
      text<Line>("source", HANGBOOK_FIELD(source.text)),
      date<Line>("source date", HANGBOOK_FIELD(source.date)),
  };
  auto handling = recordHandling<Line>(
      &Work::tours, [](const Line& line) { return line.name; },
      [](const Data& data) -> const std::vector<Line>& { return data.tours; });
  return std::make_unique<SortOf<Line>>("tour", std::move(columns), std::move(handling));
}

/// An instant, or a time on the venue's clock.
Column<ShowLine> clockColumn(const char* name, QDateTime Show::*instant, QDateTime ShowLine::*clock) {
  Column<ShowLine> column;
  column.name = QString::fromLatin1(name);
  column.read = [=](ShowLine& line, const Cell& cell) {
    line.show.*instant = readInstant(cell);
    line.*clock = (line.show.*instant).isValid() ? QDateTime() : readLocal(cell);
  };
  column.clear = [=](ShowLine& line) { line.show.*instant = line.*clock = {}; };
  column.write = [=](const ShowLine& line) { return writeInstant(line.show.*instant); };
  column.checkHeading = detail::onlyUnit("");
  return column;
}

void settleClock(const At& at, const char* heading, const QByteArray& zone, QDateTime& instant,
                 QDateTime& clock) {
  if (!clock.isValid()) {
    return;
  }
  const LocalTime local = inZone(clock, zone);
  instant = local.utc;
  clock = {};
  if (local.times != 1) {
    const QString name = QString::fromLatin1(heading);
    at.fault(
        name, at.cell(name),
        local.times == 0
            ? QStringLiteral("another time: a change of clocks skips this one")
            : QStringLiteral("an offset such as +02:00 behind it: a change of clocks repeats this time"));
  }
}

void putShow(Work& work, ShowLine& line, const At& at) {
  const venue::Venue* venue = work.venues.find(line.show.venue);
  mustBeKnown(at, "venue", line.show.venue, work.venues, "venue");
  mustBeKnown(at, "tour", line.show.tour, work.tours, "tour");
  if (!venue || !QTimeZone::isTimeZoneIdAvailable(venue->timeZone.toUtf8())) {
    return;
  }
  settleClock(at, "load-in", venue->timeZone.toUtf8(), line.show.loadIn, line.loadInClock);
  settleClock(at, "load-out", venue->timeZone.toUtf8(), line.show.loadOut, line.loadOutClock);
  line.show.typed = line.typed;
  work.shows.put(line.show);
}

void checkShow(Work&, const ShowLine& line, const At& at) {
  const Show& show = line.show;
  const auto inOrder = [&at](const char* heading, const QDate& first, const QDate& second,
                             const char* wanted) {
    if (first > second) {
      at.fault(QString::fromLatin1(heading), at.cell(QString::fromLatin1(heading)),
               QString::fromLatin1(wanted));
    }
  };
  inOrder("to", show.from, show.to, "a day no earlier than the first");
  inOrder("away from", show.awayFrom, show.from, "a day no later than the first in the venue");
  inOrder("away to", show.to, show.awayTo, "a day no earlier than the last in the venue");
  if (show.loadIn.isValid() && show.loadOut.isValid() && show.loadIn > show.loadOut) {
    at.fault("load-out", at.cell("load-out"), "a time after the load-in");
  }
}

std::unique_ptr<Sort> showSort() {
  using Line = ShowLine;
  Columns<Line> columns = {
      name<Line>("tour", HANGBOOK_FIELD(show.tour)),
      name<Line>("name", HANGBOOK_FIELD(show.name)),
      text<Line>("venue", HANGBOOK_FIELD(show.venue), Need::needed),
      date<Line>("from", HANGBOOK_FIELD(show.from), Need::needed),
      date<Line>("to", HANGBOOK_FIELD(show.to), Need::needed),
      clockColumn("load-in", &Show::loadIn, &ShowLine::loadInClock),
      clockColumn("load-out", &Show::loadOut, &ShowLine::loadOutClock),
      date<Line>("away from", HANGBOOK_FIELD(show.awayFrom), Need::needed),
      date<Line>("away to", HANGBOOK_FIELD(show.awayTo), Need::needed),
      yesNo<Line>("people beneath", HANGBOOK_FIELD(show.peopleBeneath)),
      number<Line>("temperature", "°C", HANGBOOK_FIELD(show.temperature), Bound::temperature),
      number<Line>("humidity", "%", HANGBOOK_FIELD(show.humidity), Bound::humidity),
      number<Line>("pressure", "kPa", HANGBOOK_FIELD(show.pressure), Bound::pressure),
      figure<Line>("wind", "m/s", HANGBOOK_FIELD(show.wind), Bound::wind),
      word<Line>("wind basis", HANGBOOK_FIELD(show.windBasis), windBases),
      number<Line>("wind averaging", "s", HANGBOOK_FIELD(show.windAveraging), Bound::averaging),
      figure<Line>("wind height", "m", HANGBOOK_FIELD(show.windHeight), Bound::height),
      text<Line>("source", HANGBOOK_FIELD(show.source.text)),
      date<Line>("source date", HANGBOOK_FIELD(show.source.date)),
  };
  Handling<Line> handling;
  handling.fetch = [](Work& work, const Line& keys) -> std::optional<Line> {
    const Show* show = work.shows.find(joined({keys.show.tour, keys.show.name}));
    return show ? std::optional(Line{*show, {}, {}, show->typed}) : std::nullopt;
  };
  handling.put = putShow;
  handling.check = checkShow;
  handling.all = [](const Data& data) {
    std::vector<Line> lines;
    for (const Show& show : data.shows) {
      lines.push_back({show, {}, {}, show.typed});
    }
    return lines;
  };
  return std::make_unique<SortOf<Line>>("show", std::move(columns), std::move(handling));
}

/// The list of house rules that a line belongs to, or nullptr.
std::vector<venue::HouseFigure>* houseOf(Work& work, const HouseLine& line) {
  if (line.show.isEmpty()) {
    Tour* tour = work.tours.find(line.tour);
    return tour ? &tour->house : nullptr;
  }
  Show* show = work.shows.find(joined({line.tour, line.show}));
  return show ? &show->house : nullptr;
}

std::vector<venue::HouseFigure>::iterator findHouse(std::vector<venue::HouseFigure>& house,
                                                    const venue::HouseFigure& wanted) {
  return std::ranges::find(house, labelOfHouse(wanted), labelOfHouse);
}

std::unique_ptr<Sort> houseSort() {
  using Line = HouseLine;
  Columns<Line> whose = {name<Line>("tour", HANGBOOK_FIELD(tour)),
                         name<Line>("show", HANGBOOK_FIELD(show), Need::keyOrEmpty)};
  Handling<Line> handling;
  handling.fetch = [](Work& work, const Line& keys) -> std::optional<Line> {
    auto* house = houseOf(work, keys);
    if (!house) {
      return std::nullopt;
    }
    const auto found = findHouse(*house, keys.value);
    return found == house->end() ? std::nullopt : std::optional(Line{keys.tour, keys.show, *found, {}});
  };
  handling.put = [](Work& work, Line& line, const At& at) {
    auto* house = houseOf(work, line);
    if (!house) {
      at.fault(line.show.isEmpty() ? "tour" : "show", line.show.isEmpty() ? line.tour : line.show,
               "a tour, or a show of that tour, that is in this file or in the store");
      return;
    }
    const auto found = findHouse(*house, line.value);
    if (found == house->end()) {
      house->push_back(line.value);
    } else {
      *found = line.value;
    }
  };
  handling.check = [](Work&, const Line& line, const At& at) { checkHouseFigure(at, line.value); };
  handling.all = [](const Data& data) {
    std::vector<Line> lines;
    for (const Tour& tour : data.tours) {
      for (const auto& value : tour.house) {
        lines.push_back({tour.name, {}, value, {}});
      }
    }
    for (const Show& show : data.shows) {
      for (const auto& value : show.house) {
        lines.push_back({show.tour, show.name, value, {}});
      }
    }
    return lines;
  };
  return std::make_unique<SortOf<Line>>("house rule", houseColumns<Line>(std::move(whose)),
                                        std::move(handling));
}

std::unique_ptr<Sort> personSort() {
  using Line = PersonLine;
  Columns<Line> columns = {name<Line>("name", HANGBOOK_FIELD(person.name)),
                           text<Line>("role", HANGBOOK_FIELD(person.role))};
  Handling<Line> handling;
  handling.fetch = [](Work& work, const Line& keys) -> std::optional<Line> {
    const people::Person* person = work.people.find(keys.person.name);
    return person ? std::optional(Line{*person, {}}) : std::nullopt;
  };
  handling.put = [](Work& work, Line& line, const At&) { work.people.put(line.person); };
  handling.all = [](const Data& data) {
    std::vector<Line> lines;
    for (const people::Person& person : data.people) {
      lines.push_back({person, {}});
    }
    return lines;
  };
  return std::make_unique<SortOf<Line>>("person", std::move(columns), std::move(handling));
}

void checkMark(Work& work, const MarkLine& line, const At& at) {
  const marks::MarkUsed& mark = line.fact;
  for (const QString& type : mark.stack) {
    mustBeKnown(at, "stack", type, work.cabinets, "type of cabinet");
  }
  mustBeKnown(at, "bar", mark.bar, work.bars, "bar");
  mustBeKnown(at, "chain", mark.chain, work.chains, "chain");
  if (!mark.show.isEmpty() && !work.shows.find(joined({mark.tour, mark.show}))) {
    at.fault("show", mark.show, "a show of that tour, or an empty cell where it is none of ours");
  }
  mustCorrectKnown(at, mark, work.marks);
  if (mark.date > work.importer.now.date().addDays(1)) { // it may be tomorrow already where it was
    at.fault("date", writeDate(mark.date), "a day that is not in the future");
  }
}

std::unique_ptr<Sort> markSort() {
  using Line = MarkLine;
  Columns<Line> columns = {
      list<Line>("stack", HANGBOOK_FIELD(fact.stack), Need::needed),
      text<Line>("bar", HANGBOOK_FIELD(fact.bar), Need::needed),
      text<Line>("chain", HANGBOOK_FIELD(fact.chain), Need::needed),
      text<Line>("chain serial", HANGBOOK_FIELD(fact.chainSerial)),
      figure<Line>("tilt", "°", HANGBOOK_FIELD(fact.tilt), Bound::angle),
      angles<Line>("holes", HANGBOOK_FIELD(fact.holes)),
      integer<Line>("mark", HANGBOOK_FIELD(fact.mark), Bound::links, Need::needed),
      figure<Line>("measured", "°", HANGBOOK_FIELD(fact.measured), Bound::angle),
      text<Line>("tour", HANGBOOK_FIELD(fact.tour)),
      text<Line>("show", HANGBOOK_FIELD(fact.show)),
      text<Line>("hang", HANGBOOK_FIELD(fact.hang)),
      text<Line>("place", HANGBOOK_FIELD(fact.place)),
      text<Line>("weather", HANGBOOK_FIELD(fact.weather)),
      date<Line>("date", HANGBOOK_FIELD(fact.date), Need::needed),
      text<Line>("by", HANGBOOK_FIELD(fact.by), Need::needed),
      identifier<Line>("entry", HANGBOOK_FIELD(fact.id)),
      identifier<Line>("corrects", HANGBOOK_FIELD(fact.corrects)),
      instant<Line>("recorded at", HANGBOOK_FIELD(fact.recordedAt)),
  };
  auto handling = factHandling<Line, marks::MarkUsed>(
      "mark", &Work::marks, &Line::fact,
      [](const Data& data) -> const std::vector<marks::MarkUsed>& { return data.marks; });
  handling.check = checkMark;
  return std::make_unique<SortOf<Line>>("mark", std::move(columns), std::move(handling));
}

} // namespace

const Sorts& showSorts() {
  static const Sorts sorts = [] {
    Sorts all;
    all.push_back(tourSort());
    all.push_back(showSort());
    all.push_back(hangSort());
    all.push_back(plugSort());
    all.push_back(hungSort());
    all.push_back(houseSort());
    all.push_back(personSort());
    all.push_back(markSort());
    return all;
  }();
  return sorts;
}

const Sorts& peopleSorts() {
  static const Sorts sorts = [] {
    Sorts all;
    all.push_back(personSort());
    return all;
  }();
  return sorts;
}

const Sorts& markSorts() {
  static const Sorts sorts = [] {
    Sorts all;
    all.push_back(markSort());
    return all;
  }();
  return sorts;
}

} // namespace hangbook::exchange
