// SPDX-License-Identifier: GPL-3.0-or-later
// What could be moved to mend an option, before anything is tried: every lever of trials no two parts of
// which are alike, what it says and what it does to the show, against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>

#include "kept/kept.h"
#include "kept/unlike_parts.h"
#include "model/options/show_fixture.h"
#include "options/easing_lever.h"
#include "options/stacks.h"
#include "quantity/error.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Change;
using options::Lever;
using options::Snapshot;
using options::Steps;
using options::Trial;

namespace {

void word(Line& line, const QString& text) {
  line.word(text.toStdString());
}

void length(Line& line, const std::optional<Length>& value) {
  line.number(value ? std::optional(inMetres(*value)) : std::nullopt);
}

void add(Line& line, const Change& change) {
  word(line, change.kind + change.words + change.unit);
  line.number(change.step);
  for (const options::ChangedFigure& each : change.figures) {
    word(line, each.what);
    line.number(each.from);
    line.number(each.to);
    line.number(each.steps);
  }
}

void add(Line& line, const venue::Venue& hall) {
  for (const venue::Point& each : hall.points) {
    for (const Length& place : {each.x, each.y, each.z}) {
      line.number(inMetres(place));
    }
    line.number(each.capacity ? std::optional(inKilonewtons(*each.capacity)) : std::nullopt);
  }
  for (const venue::Zone& each : hall.zones) {
    line.number(each.capacity ? std::optional(inKilonewtons(*each.capacity)) : std::nullopt);
  }
  for (const venue::Bridle& each : hall.bridles) {
    line.number(inMetres(each.z));
  }
  for (const venue::Obstruction& each : hall.obstructions) {
    line.number(inMetres(each.underside));
  }
  for (const std::optional<Length>& each : {hall.lowSteel, hall.leastTrim, hall.mostTrim}) {
    length(line, each);
  }
}

/// All of a trial that any lever may touch.
void add(Line& line, const Trial& trial) {
  const options::OptionKey& key = trial.key;
  word(line, key.stack.join(u'+') + key.table + key.bar + options::wordFor(key.picks) + key.hoist +
                 key.points.join(u'+'));
  if (trial.setting) {
    line.number(trial.setting->tiltDeg);
    line.number(trial.setting->trimM);
    line.number(trial.setting->mark ? std::optional<double>(*trial.setting->mark) : std::nullopt);
    for (const double hole : trial.setting->holesDeg) {
      line.number(hole);
    }
  }
  const Snapshot& show = trial.snapshot;
  for (const calendar::Hang& hang : show.show.hangs) {
    word(line, hang.points.join(u'+'));
    length(line, hang.leastTrim);
  }
  add(line, show.venue);
  for (const venue::HouseFigure& each : show.show.house) {
    word(line, each.figure + each.signedBy + each.unit + each.source);
    line.number(each.value);
  }
  line.number(show.show.wind ? std::optional(inMetresPerSecond(*show.show.wind)) : std::nullopt);
  line.number(static_cast<double>(show.units.size()));
  for (const fleet::Unit& unit : show.units) {
    if (!unit.owner.isEmpty()) {
      word(line, unit.serial + unit.type + unit.owner);
      line.number(static_cast<int>(unit.kind));
    }
  }
  line.number(static_cast<double>(show.examinations.size()));
  for (std::size_t i = 0; i < show.examinations.size(); i += 7) {
    const fleet::Examination& each = show.examinations[i];
    word(line, each.serial + each.rule + each.date.toString(Qt::ISODate));
  }
}

void moved(Line& line, const Trial& trial, const Lever& lever, const Steps& steps) {
  add(line, lever.change(steps));
  Trial other = trial;
  lever.apply(other, steps);
  add(line, other);
}

void add(Line& line, const Trial& trial, const Lever& lever) {
  line.plain(lever.kind.toStdString() + ' ');
  word(line, lever.kind + lever.unit);
  line.number(lever.step);
  for (const int most : lever.most) {
    line.number(most);
  }
  line.number(static_cast<double>(lever.swaps.size()));
  // The nearest, some of those between, and the farthest.
  for (std::size_t i = 0; i < lever.swaps.size(); i += i < 6 || i + 2 >= lever.swaps.size() ? 1 : 5) {
    const options::Swap& swap = lever.swaps[i];
    line.number(swap.steps);
    add(line, swap.change);
    Trial other = trial;
    swap.apply(other);
    add(line, other);
  }
  if (lever.most.empty()) {
    return;
  }
  moved(line, trial, lever, lever.most);
  Steps some(lever.most.size(), 0);
  for (std::size_t i = 0; i < some.size(); ++i) { // each alone, the others where they are
    some[i] = std::min(lever.most[i], 3);
    moved(line, trial, lever, some);
    some[i] = 0;
  }
  moved(line, trial, lever, some);
}

/// The fixture's show with what has something to be moved in each of its two ways.
Snapshot movable(Chance& by) {
  Snapshot made = harbourShow();
  catalogue::Catalogue& all = made.catalogue;
  for (catalogue::HoistType& type : all.hoists) {
    type.limit = weightOf(kilograms(by.between(400, 2100)));
    dropOneIn(by, 5, type.limit);
  }
  catalogue::BarType second = all.bars.front();
  second.name = QStringLiteral("second bar");
  catalogue::PickArrangement fore;
  fore.picks = catalogue::Picks::foreAftPair;
  fore.front = catalogue::Position{metres(by.between(0.3, 0.5)), metres(0)};
  fore.rear = catalogue::Position{metres(by.between(-0.7, -0.5)), metres(0)};
  (by.oneIn(2) ? all.bars.front() : second).arrangements.push_back(fore);
  dropOneIn(by, 4, all.bars.front().arrangements.front().spacing);
  all.bars.push_back(second);
  catalogue::StackingTable other = all.tables.front();
  other.name = QStringLiteral("other bar alone");
  other.bars = {second.name};
  other.counts[0].least = 1; // a stack that the first table does not have
  all.tables.push_back(other);
  for (catalogue::StackingTable& table : all.tables) {
    if (by.oneIn(2) && table.bars.front() != second.name) {
      table.bars.push_back(by.oneIn(4) ? QStringLiteral("a bar that nobody makes") : second.name);
    }
    if (by.oneIn(5)) {
      table.chain.clear();
    }
    for (catalogue::Join& join : table.joins) {
      if (!join.angles.empty() && by.oneIn(3)) {
        join.angles.push_back(degrees(by.between(-9, -4)));
        join.angles.push_back(degrees(by.between(1, 3)));
      }
    }
  }
  venue::Venue& hall = made.venue;
  for (venue::Point& each : hall.points) {
    each.x = metres(by.between(0, 1));
    each.y = metres(inMetres(each.y) + by.between(-1.5, 1.5));
    each.z = metres(by.between(18, 20));
    each.capacity = kilonewtons(by.between(4, 14));
    dropOneIn(by, 6, each.capacity);
    if (by.oneIn(6)) {
      each.zone.clear();
    }
  }
  if (by.oneIn(6)) { // both at one place
    hall.points[1].x = hall.points[0].x;
    hall.points[1].y = hall.points[0].y;
  }
  dropOneIn(by, 4, hall.zones.front().capacity);
  for (const char* name : {"B1", "B2"}) {
    venue::Bridle bridle;
    bridle.name = QLatin1String(name);
    bridle.points = {hall.points[0].name, hall.points[name[1] == '1' ? 1 : 2].name};
    bridle.z = metres(by.between(15, 17));
    bridle.steels = {QStringLiteral("steel")};
    bridle.shackle = QStringLiteral("shackle");
    bridle.tolerance = metres(9);
    hall.bridles.push_back(bridle);
  }
  hall.lowSteel = metres(by.between(17, 19));
  dropOneIn(by, 4, hall.lowSteel);
  hall.mostTrim = metres(by.between(9, 12));
  dropOneIn(by, 3, hall.mostTrim);
  hall.obstructions = {
      {QStringLiteral("screen"), metres(0), metres(1), metres(8), metres(9), metres(by.between(8, 9))},
      {QStringLiteral("truss"), metres(2), metres(3), metres(8), metres(9), metres(by.between(6, 7))}};
  calendar::Hang& hang = made.show.hangs.front();
  hang.leastTrim = metres(by.oneIn(4) ? 1.0 : by.between(4, 8));
  hall.leastTrim = by.oneIn(3) ? hang.leastTrim : metres(by.oneIn(4) ? 0.5 : by.between(4, 8));
  dropOneIn(by, 5, hang.leastTrim);
  dropOneIn(by, 5, hall.leastTrim);
  if (by.oneIn(2)) {
    hang.points = {QStringLiteral("B2"), QStringLiteral("L2"), QStringLiteral("L1"), QStringLiteral("R1")};
  }
  if (by.oneIn(2)) {
    hang.tables = {all.tables.front().name, other.name};
  }
  if (by.oneIn(3)) {
    hang.tables = {all.tables.front().name};
  }
  return made;
}

void showAndGear(Snapshot& made, Chance& by) {
  made.venue.outdoors = by.oneIn(2);
  dropOneIn(by, 5, made.venue.outdoors);
  made.show.wind = metresPerSecond(by.between(3, 14));
  dropOneIn(by, 5, made.show.wind);
  if (by.oneIn(4)) {
    made.show.house.push_back({QStringLiteral("cover-share"),
                               by.oneIn(2) ? 0.7 : by.between(40, 100),
                               {},
                               {},
                               QStringLiteral("Edda"),
                               QDate(2026, 5, 1)});
  }
  if (by.oneIn(4)) {
    made.show.house.push_back(
        {QStringLiteral("least-trim"), by.between(2, 5), {}, {}, QStringLiteral("Edda"), QDate(2026, 5, 1)});
  }
  for (fleet::Examination& each : made.examinations) {
    if (by.oneIn(5)) {
      each.date = QDate(2026, 1 + by.oneOf(6), 1 + by.oneOf(28));
    }
  }
  std::erase_if(made.examinations, [&](const fleet::Examination&) { return by.oneIn(9); });
  if (by.oneIn(4)) {
    made.show.awayTo = {};
  }
  if (by.oneIn(4)) {
    made.show.awayFrom = {};
  }
}

Trial trialOf(std::uint64_t seed) {
  Chance by(seed);
  Snapshot made = movable(by);
  showAndGear(made, by);
  options::OptionKey key;
  key.hang = made.show.hangs.front().name;
  const auto& tables = made.catalogue.tables;
  const auto& table = tables[static_cast<std::size_t>(by.oneOf(2))];
  key.table = by.oneIn(12) ? QStringLiteral("no such table") : table.name;
  key.bar = by.oneIn(12) ? QStringLiteral("no such bar") : made.catalogue.bars[by.oneIn(5) ? 1 : 0].name;
  const auto stacks = options::stacksOf(made.catalogue, table);
  key.stack = stacks[static_cast<std::size_t>(by.oneOf(static_cast<int>(stacks.size())))].types();
  key.picks = static_cast<catalogue::Picks>(by.oneOf(3));
  key.hoist = by.oneIn(12) ? QStringLiteral("no such hoist")
                           : made.catalogue.hoists[static_cast<std::size_t>(by.oneOf(3))].name;
  const QStringList& may = made.show.hangs.front().points;
  key.points = {may[0]};
  if (key.picks != catalogue::Picks::single) {
    key.points.append(may[1]);
  }
  Trial trial{std::move(made), key, std::nullopt};
  if (seed % 2 == 0) {
    options::Setting setting;
    setting.tiltDeg = by.between(-5, 3);
    setting.trimM = by.between(5, 9);
    if (by.oneIn(2)) {
      setting.mark = 2 + by.oneOf(60);
    }
    for (const catalogue::Join* join : stacks.back().joins) {
      if (join->angles.size() > 1) {
        setting.holesDeg.push_back(inDegrees(join->angles.back()));
      }
    }
    trial.setting = setting;
  }
  return trial;
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(levers_come_out_as_kept) {
  std::vector<Line> lines;
  for (std::uint64_t seed = 0; seed < 132; ++seed) {
    if (!looksAt(seed)) {
      continue;
    }
    const Trial trial = trialOf(seed);
    Line line("levers " + std::to_string(seed));
    try {
      for (const Lever& lever : options::leversFor(trial)) {
        add(line, trial, lever);
      }
    } catch (const Error& error) {
      line.plain("!");
      line.word(error.what());
    }
    lines.push_back(line);
  }
  compareWithKept(lines, "levers.txt");
}

BOOST_AUTO_TEST_SUITE_END()
