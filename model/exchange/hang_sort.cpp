// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/hang_sort.h"

#include <QSet>

#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace calendar;

struct HangLine {
  QString tour;
  QString show;
  Hang hang;
  Chosen chosen; ///< tour, show and hang in it are filled in by `put`
  Typed typed;
  bool operator==(const HangLine&) const = default;
};

QString prefixOf(const Hang& hang) {
  return QStringLiteral("hang %1: ").arg(hang.name);
}

std::optional<HangLine> fetchHang(Work& work, const HangLine& keys) {
  const Show* show = work.shows.find(joined({keys.tour, keys.show}));
  if (!show) {
    return std::nullopt;
  }
  const auto found = std::ranges::find(show->hangs, keys.hang.name, &Hang::name);
  if (found == show->hangs.end()) {
    return std::nullopt;
  }
  const Chosen* chosen = work.chosen.find(joined({keys.tour, keys.show, keys.hang.name}));
  return HangLine{keys.tour, keys.show, *found, chosen ? *chosen : Chosen{},
                  typedOfPart(show->typed, prefixOf(*found))};
}

void putChosen(Work& work, HangLine& line, const At& at) {
  if (line.chosen.option.isEmpty()) {
    for (const char* heading : {"chosen because", "chosen by", "chosen on"}) {
      const QString name = QString::fromLatin1(heading);
      if (!at.cell(name).isEmpty()) {
        at.fault(name, at.cell(name), "an option chosen beside it");
      }
    }
    // A choice is not taken back by an empty cell.
    const Chosen* before = work.chosen.find(joined({line.tour, line.show, line.hang.name}));
    line.chosen = before ? *before : Chosen{};
    return;
  }
  line.chosen.tour = line.tour;
  line.chosen.show = line.show;
  line.chosen.hang = line.hang.name;
  work.chosen.put(line.chosen);
  work.linesOfChosen[joined({line.tour, line.show, line.hang.name})] = at.line();
}

void putHang(Work& work, HangLine& line, const At& at) {
  Show* show = work.shows.find(joined({line.tour, line.show}));
  if (!show) {
    at.fault("show", line.show, "a show of that tour that is in this file or in the store");
    return;
  }
  const auto found = std::ranges::find(show->hangs, line.hang.name, &Hang::name);
  if (found == show->hangs.end()) {
    show->hangs.push_back(line.hang);
  } else {
    *found = line.hang;
  }
  putTypedOfPart(show->typed, prefixOf(line.hang), line.typed);
  putChosen(work, line, at);
}

template <class Value>
void mustBeAmong(const At& at, const char* heading, const QStringList& names, const std::vector<Value>& known,
                 const char* what) {
  QSet<QString> seen;
  for (const QString& each : names) {
    if (!std::ranges::count(known, each, &Value::name)) {
      at.fault(QString::fromLatin1(heading), each,
               QStringLiteral("a %1 that is in this file or in the store").arg(QString::fromLatin1(what)));
    } else if (seen.contains(each)) {
      at.fault(QString::fromLatin1(heading), each,
               QStringLiteral("each %1 once").arg(QString::fromLatin1(what)));
    }
    seen.insert(each);
  }
}

/// What a hang may name among its points.
std::vector<venue::Point> pointsAndBridles(const venue::Venue& venue) {
  std::vector<venue::Point> all = venue.points;
  for (const venue::Bridle& bridle : venue.bridles) {
    all.emplace_back().name = bridle.name;
  }
  return all;
}

void checkHang(Work& work, const HangLine& line, const At& at) {
  const Show* show = work.shows.find(joined({line.tour, line.show}));
  const venue::Venue* venue = work.venues.find(show->venue);
  if (venue) {
    mustBeAmong(at, "points", line.hang.points, pointsAndBridles(*venue),
                "point or bridle of the show's venue");
    mustBeAmong(at, "sections", line.hang.sections, venue->sections, "section of the show's venue");
  }
  mustBeAmong(at, "tables", line.hang.tables, work.after.catalogue.tables, "stacking table");
  for (const QString& each : line.hang.rigging) {
    mustBeKnown(at, "rigging", each, work.hardware, "type of hardware");
  }
  for (const QString& each : line.hang.secondary) {
    mustBeKnown(at, "secondary", each, work.hardware, "type of hardware");
  }
  const QString& other = line.hang.mirrors;
  if (!other.isEmpty() && (other == line.hang.name || !std::ranges::count(show->hangs, other, &Hang::name))) {
    at.fault("mirrors", other, "another hang of the same show");
  }
}

std::vector<HangLine> allHangs(const Data& data) {
  std::vector<HangLine> lines;
  for (const Show& show : data.shows) {
    for (const Hang& hang : show.hangs) {
      const auto chosen = std::ranges::find_if(data.chosen, [&](const Chosen& each) {
        return each.tour == show.tour && each.show == show.name && each.hang == hang.name;
      });
      lines.push_back({show.tour, show.name, hang, chosen == data.chosen.end() ? Chosen{} : *chosen,
                       typedOfPart(show.typed, prefixOf(hang))});
    }
  }
  return lines;
}

/// An instant, or a day without a time.
Column<HangLine> chosenOnColumn() {
  Column<HangLine> column;
  column.name = QStringLiteral("chosen on");
  column.read = [](HangLine& line, const Cell& cell) {
    line.chosen.on = readInstant(cell);
    if (!line.chosen.on.isValid()) {
      line.chosen.on = QDateTime(readDate(cell), QTime(0, 0), Qt::UTC);
    }
  };
  column.clear = [](HangLine& line) { line.chosen.on = {}; };
  column.write = [](const HangLine& line) { return writeInstant(line.chosen.on); };
  column.checkHeading = detail::onlyUnit("");
  return column;
}

} // namespace

std::unique_ptr<Sort> hangSort() {
  using Line = HangLine;
  Columns<Line> columns = {
      name<Line>("tour", HANGBOOK_FIELD(tour)),
      name<Line>("show", HANGBOOK_FIELD(show)),
      name<Line>("name", HANGBOOK_FIELD(hang.name)),
      text<Line>("mirrors", HANGBOOK_FIELD(hang.mirrors)),
      list<Line>("points", HANGBOOK_FIELD(hang.points)),
      figure<Line>("pan", "°", HANGBOOK_FIELD(hang.pan), Bound::angle),
      list<Line>("sections", HANGBOOK_FIELD(hang.sections)),
      list<Line>("tables", HANGBOOK_FIELD(hang.tables)),
      figure<Line>("least trim", "m", HANGBOOK_FIELD(hang.leastTrim), Bound::height),
      figure<Line>("cable mass", "kg", HANGBOOK_FIELD(hang.cableMass), Bound::pieceMass),
      figure<Line>("wet mass", "kg", HANGBOOK_FIELD(hang.wetMass), Bound::pieceMass),
      list<Line>("rigging", HANGBOOK_FIELD(hang.rigging)),
      list<Line>("secondary", HANGBOOK_FIELD(hang.secondary)),
      figure<Line>("secondary slack", "m", HANGBOOK_FIELD(hang.secondarySlack), Bound::smallLength),
      text<Line>("chosen option", HANGBOOK_FIELD(chosen.option)),
      text<Line>("chosen because", HANGBOOK_FIELD(chosen.because)),
      text<Line>("chosen by", HANGBOOK_FIELD(chosen.by)),
      chosenOnColumn(),
  };
  return std::make_unique<SortOf<Line>>("hang", std::move(columns),
                                        Handling<Line>{fetchHang, putHang, checkHang, allHangs});
}

} // namespace hangbook::exchange
