// SPDX-License-Identifier: GPL-3.0-or-later
#include "state.h"

#include <algorithm>
#include <cstdlib>

#include <boost/test/unit_test.hpp>

#include "demo/demo.h"
#include "exchange/csv_write.h"
#include "exchange/kind_sorts.h"
#include "quantity/error.h"

namespace hangbook::testing {
namespace {

using exchange::Data;
using exchange::Kind;

const exchange::Importer importer{QStringLiteral("the test"),
                                  QDateTime(QDate(2026, 12, 1), QTime(12, 0), Qt::UTC)};

Data wholeDemo() {
  Data sofar;
  for (const demo::File& file : demo::files()) {
    exchange::Import import = exchange::readFile(exchange::kindFrom(file.kind), file.bytes, sofar, importer);
    BOOST_REQUIRE(import.faults.empty());
    sofar = std::move(import.after);
  }
  return sofar;
}

template <class Record>
void forgetTyped(std::vector<Record>& records) {
  for (Record& each : records) {
    each.typed.clear();
  }
}

template <class List, class Keep>
void keepOnly(List& list, Keep keep) {
  std::erase_if(list, [&](const auto& each) { return !keep(each); });
}

const exchange::Sort& sortOf(Kind kind, const QString& record) {
  for (const auto& sort : exchange::sortsOf(kind)) {
    if (sort->word() == record) {
      return *sort;
    }
  }
  throw Error(Trouble::badInput, "there is no such sort of line");
}

} // namespace

Data demoShow(const QString& show) {
  static const Data whole = wholeDemo();
  Data data = whole;
  keepOnly(data.shows, [&](const calendar::Show& each) { return each.name == show; });
  BOOST_REQUIRE(data.shows.size() == 1);
  keepOnly(data.venues, [&](const venue::Venue& each) { return each.name == data.shows[0].venue; });
  data.chosen.clear();
  data.marks.clear();
  keepOnly(data.cabling.plugs, [&](const calendar::Plug& each) { return each.show == show; });
  keepOnly(data.hung, [&](const calendar::Hung& each) { return each.show == show; });
  forgetTyped(data.catalogue.cabinets);
  forgetTyped(data.catalogue.bars);
  forgetTyped(data.catalogue.hoists);
  forgetTyped(data.catalogue.chains);
  forgetTyped(data.catalogue.hardware);
  forgetTyped(data.catalogue.carts);
  forgetTyped(data.catalogue.tables);
  forgetTyped(data.units);
  forgetTyped(data.venues);
  forgetTyped(data.shows);
  return data;
}

Data filled(Data data) {
  for (catalogue::HardwareType& each : data.catalogue.hardware) {
    each.designFactor = 7.0;
  }
  for (calendar::Hang& each : data.shows.front().hangs) {
    each.secondarySlack = metres(0.0);
  }
  venue::Venue& venue = data.venues.front();
  venue.leastTrim = metres(2.8);
  venue.mostTrim = metres(11.0);
  venue::Obstruction screen;
  screen.name = QStringLiteral("screen");
  screen.xFrom = metres(2.5);
  screen.xTo = metres(4.0);
  screen.yFrom = metres(-3.0);
  screen.yTo = metres(9.5);
  screen.underside = venue.points.front().z - metres(1.0);
  venue.obstructions.push_back(screen);
  for (venue::Section& each : venue.sections) {
    if (!each.swept()) {
      each.yFrom = metres(-12.0);
      each.yTo = metres(12.0);
    }
  }
  data.shows.front().peopleBeneath = false;
  data.shows.front().house.push_back({QStringLiteral("joint-side-share"),
                                      0.55,
                                      {},
                                      QStringLiteral("a test"),
                                      QStringLiteral("Edda"),
                                      QDate(2026, 11, 1)});
  for (catalogue::BarType& bar : data.catalogue.bars) {
    for (catalogue::PickArrangement& each : bar.arrangements) {
      each.limitIncludesFactors = true;
    }
  }
  for (catalogue::StackingTable& table : data.catalogue.tables) {
    for (std::size_t i = 0; i < table.joins.size(); ++i) {
      table.joins[i].limitIncludesFactors = true;
      if (i % 2 == 0) {
        table.joins[i].sideShare.reset();
      }
    }
  }
  for (catalogue::ChainType& each : data.catalogue.chains) {
    each.limitIncludesFactors = true;
  }
  for (catalogue::HoistType& each : data.catalogue.hoists) {
    each.bodyClimbs = false;
    each.holdsWithoutSecondary = true;
  }
  for (std::size_t i = 0; i < data.units.size(); i += 3) {
    data.units[i].hiredUntil = QDate(2027, 12, 31);
  }
  return data;
}

options::Snapshot snapshotOf(const Data& data) {
  options::Snapshot snapshot;
  snapshot.catalogue = data.catalogue;
  snapshot.venue = data.venues.front();
  snapshot.show = data.shows.front();
  for (const calendar::Tour& tour : data.tours) {
    if (tour.name == snapshot.show.tour) {
      snapshot.tour = tour;
    }
  }
  snapshot.units = data.units;
  snapshot.examinationRules = data.examinationRules;
  snapshot.examinations = data.examinations;
  snapshot.today = importer.now.date();
  return snapshot;
}

std::vector<Row> rowsOf(Kind kind, const QString& record, const Data& data) {
  const exchange::Sort& sort = sortOf(kind, record);
  QStringList headings;
  for (const exchange::Heading& each : sort.headings()) {
    headings.append(each.name);
  }
  std::vector<Row> rows;
  for (const std::vector<QString>& cells : sort.write(data)) {
    rows.push_back({headings, QStringList(cells.begin(), cells.end())});
  }
  return rows;
}

std::optional<Data> with(const Data& data, Kind kind, const QString& record, const Row& row) {
  QStringList headings(exchange::recordHeading());
  for (const exchange::Heading& each : sortOf(kind, record).headings()) {
    headings.append(exchange::writtenHeading(each));
  }
  const QByteArray file = exchange::writeCsv({headings, QStringList(record) + row.cells});
  exchange::Import import = exchange::readFile(kind, file, data, importer);
  return import.faults.empty() ? std::optional(std::move(import.after)) : std::nullopt;
}

std::vector<Subject> subjectsOf(const Data& data, const QString& hang) {
  const auto all = options::decide(snapshotOf(data), hang);
  std::map<std::pair<catalogue::Picks, QString>, const options::Option*> best;
  for (const options::Option& each : all.hangs.front().options) {
    if (!each.setting) {
      continue;
    }
    const options::Option*& known = best[{each.key.picks, each.key.table}];
    const auto rank = [](const options::Option& option) {
      return std::make_tuple(option.setting->mark.has_value(), option.verdict != options::Verdict::fails,
                             option.key.stack.size());
    };
    if (known == nullptr || rank(each) > rank(*known)) {
      known = &each;
    }
  }
  std::vector<Subject> subjects;
  for (const auto& [what, option] : best) {
    subjects.push_back({option->key, *option->setting});
  }
  BOOST_REQUIRE(!subjects.empty());
  return subjects;
}

std::vector<Subject> beside(std::vector<Subject> subjects, std::mt19937& chance) {
  std::uniform_real_distribution<double> part(-1.0, 1.0);
  for (Subject& each : subjects) {
    each.setting.tiltDeg += 4.0 * part(chance);
    each.setting.trimM += 2.0 * part(chance);
  }
  return subjects;
}

Verdicts verdictsOn(const options::Snapshot& snapshot, const std::vector<Subject>& subjects) {
  Verdicts all;
  for (const Subject& subject : subjects) {
    std::map<QString, options::Verdict>& verdicts = all.emplace_back();
    try {
      const options::Option judged = options::judge(snapshot, subject.key, subject.setting);
      for (const options::Finding& each : judged.findings) {
        verdicts[each.rule] = each.verdict;
      }
      verdicts[QStringLiteral("option")] = judged.verdict;
    } catch (const Error&) {
      // Refused: no rule has a verdict, so none holds.
    }
  }
  return all;
}

Verdicts verdictsOn(const Data& data, const std::vector<Subject>& subjects) {
  return verdictsOn(snapshotOf(data), subjects);
}

Data shaken(const Data& data, std::mt19937& chance, int changes) {
  const auto upTo = [&chance](std::size_t count) { return static_cast<std::size_t>(chance()) % count; };
  Data now = data;
  std::vector<const Column*> movable;
  for (const Column& each : columns()) {
    if (!each.ways.empty()) {
      movable.push_back(&each);
    }
  }
  for (int i = 0; i < changes; ++i) {
    const Column& column = *movable[upTo(movable.size())];
    const QString record = QString::fromUtf8(column.record);
    const QString heading = QString::fromUtf8(column.heading);
    std::vector<Row> rows = rowsOf(column.kind, record, now);
    if (rows.empty()) {
      continue;
    }
    Row& row = rows[upTo(rows.size())];
    bool number = false;
    const double figure = row[column.heading].toDouble(&number);
    const std::size_t what = upTo(8);
    QString text;
    if (what == 0) { // not known
      text = QString();
    } else if (what < 5) {
      text = column.ways[upTo(column.ways.size())].worse(row[column.heading], row);
    } else if (number) {
      text = QString::number(figure * (0.6 + 0.1 * static_cast<double>(upTo(10))), 'g', 17);
    }
    if (text.isEmpty() && what != 0) {
      continue;
    }
    row.set(heading, text);
    if (auto changed = with(now, column.kind, record, row)) {
      now = std::move(*changed);
    }
  }
  return now;
}

int states(int usual) {
  const char* more = std::getenv("HANGBOOK_PROOF_STATES");
  return more == nullptr ? usual : std::max(usual, std::atoi(more));
}

} // namespace hangbook::testing
