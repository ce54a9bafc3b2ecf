// SPDX-License-Identifier: GPL-3.0-or-later
// Which options there are, against a constraint solver (MiniZinc with Gecode) that is told what may be, not
// how to list it (discrete.mzn). All cases in one run of it.
#include <algorithm>
#include <array>
#include <set>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTextStream>

#include <boost/test/unit_test.hpp>

#include "options/search.h"
#include "twin/random_show.h"
#include "where.h"

using namespace hangbook;
using options::Snapshot;

namespace {

constexpr int cases = 320;

/// Lists of numbers and truths as the solver reads them.
class Lists {
public:
  explicit Lists(QString rows) : rows_(std::move(rows)) {}
  void add(int value) { values_.append(QString::number(value)); }
  void add(bool value) { values_.append(value ? QStringLiteral("true") : QStringLiteral("false")); }
  /// `shape`: the second and third extent, as ", 1..4" each.
  QString text(const QString& shape) const {
    const int extents = 1 + static_cast<int>(shape.count(QLatin1Char(',')));
    return QStringLiteral("array%1d(1..%2%3, [%4])")
        .arg(extents)
        .arg(rows_, shape, values_.join(QLatin1Char(',')));
  }

private:
  QString rows_;
  QStringList values_;
};

bool has(const std::vector<QString>& names, const QString& name) {
  return std::count(names.begin(), names.end(), name) > 0;
}

int millimetres(Length length) {
  return static_cast<int>(std::lround(1000.0 * inMetres(length)));
}

constexpr int mostTypes = 4;
constexpr int mostBars = 2;
constexpr int mostHoists = 3;
constexpr int mostPoints = 4;

const catalogue::Count* rowOf(const catalogue::StackingTable& table, const QString& type) {
  const auto found = std::find_if(table.counts.begin(), table.counts.end(),
                                  [&](const catalogue::Count& row) { return row.type == type; });
  return found == table.counts.end() ? nullptr : &*found;
}

/// A point that a hang may use.
struct Place {
  QString name;
  int x = 0;
  int y = 0;
};

std::vector<Place> placesOf(const Snapshot& snapshot) {
  std::vector<Place> places;
  for (const venue::Point& each : snapshot.venue.points) {
    places.push_back({each.name, millimetres(each.x), millimetres(each.y)});
  }
  return places;
}

/// A show whose hang may use every one of its points; no bridles, since where an apex hangs is physics.
struct Case {
  Snapshot snapshot;
  std::vector<Place> places;
};

struct Written {
  std::vector<Case> cases;
  std::vector<std::pair<int, int>> tables; ///< case and table, counted from 0
};

Written makeCases() {
  Written all;
  for (int seed = 0; static_cast<int>(all.cases.size()) < cases; ++seed) {
    Case made{testing::randomShow(static_cast<std::uint64_t>(seed)), {}};
    made.snapshot.show.hangs.front().points.clear();
    made.places = placesOf(made.snapshot);
    for (const Place& place : made.places) {
      made.snapshot.show.hangs.front().points.append(place.name);
    }
    for (int table = 0; table < static_cast<int>(made.snapshot.catalogue.tables.size()); ++table) {
      all.tables.emplace_back(static_cast<int>(all.cases.size()), table);
    }
    all.cases.push_back(std::move(made));
  }
  return all;
}

QString tablesText(const Written& all) {
  const QString rows = QStringLiteral("tables");
  Lists caseOf(rows);
  Lists underBar(rows);
  Lists mayStandUnder(rows);
  Lists least(rows);
  Lists most(rows);
  Lists mayBeLowest(rows);
  Lists takesBar(rows);
  for (const auto& [number, place] : all.tables) {
    const Snapshot& snapshot = all.cases[static_cast<std::size_t>(number)].snapshot;
    const catalogue::StackingTable& table = snapshot.catalogue.tables[static_cast<std::size_t>(place)];
    const auto joined = [&](const QString& above, const QString& below) {
      return std::any_of(table.joins.begin(), table.joins.end(), [&](const catalogue::Join& join) {
        return join.above == above && join.below == below;
      });
    };
    caseOf.add(number + 1);
    for (const catalogue::CabinetType& type : snapshot.catalogue.cabinets) {
      const catalogue::Count* row = rowOf(table, type.name);
      underBar.add(joined({}, type.name));
      least.add(row == nullptr ? 0 : row->least);
      most.add(row == nullptr ? 0 : row->most);
      mayBeLowest.add(has(table.lowest, type.name));
      for (const catalogue::CabinetType& below : snapshot.catalogue.cabinets) {
        mayStandUnder.add(joined(type.name, below.name));
      }
    }
    for (std::size_t bar = 0; bar < mostBars; ++bar) {
      takesBar.add(bar < snapshot.catalogue.bars.size() &&
                   has(table.bars, snapshot.catalogue.bars[bar].name));
    }
  }
  return QStringLiteral("tables = %1;\ncaseOf = %2;\nunderBar = %3;\nmayStandUnder = %4;\nleast = %5;\n"
                        "most = %6;\nmayBeLowest = %7;\ntakesBar = %8;\n")
      .arg(QString::number(all.tables.size()), caseOf.text({}), underBar.text(QStringLiteral(", 1..types")),
           mayStandUnder.text(QStringLiteral(", 1..types, 1..types")),
           least.text(QStringLiteral(", 1..types")), most.text(QStringLiteral(", 1..types")),
           mayBeLowest.text(QStringLiteral(", 1..types")), takesBar.text(QStringLiteral(", 1..bars")));
}

QString casesText(const Written& all) {
  const QString rows = QStringLiteral("cases");
  Lists picksOf(rows);
  Lists pointCount(rows);
  Lists hoistCount(rows);
  Lists px(rows);
  Lists py(rows);
  for (const Case& each : all.cases) {
    const catalogue::Catalogue& catalogue = each.snapshot.catalogue;
    for (std::size_t bar = 0; bar < mostBars; ++bar) {
      for (const auto picks :
           {catalogue::Picks::sidePair, catalogue::Picks::foreAftPair, catalogue::Picks::single}) {
        picksOf.add(bar < catalogue.bars.size() &&
                    std::any_of(catalogue.bars[bar].arrangements.begin(),
                                catalogue.bars[bar].arrangements.end(),
                                [&](const auto& arrangement) { return arrangement.picks == picks; }));
      }
    }
    pointCount.add(static_cast<int>(each.places.size()));
    hoistCount.add(static_cast<int>(catalogue.hoists.size()));
    for (std::size_t point = 0; point < mostPoints; ++point) {
      px.add(point < each.places.size() ? each.places[point].x : 0);
      py.add(point < each.places.size() ? each.places[point].y : 0);
    }
  }
  return QStringLiteral("cases = %1;\ntypes = %2;\nbars = %3;\npoints = %4;\nhoists = %5;\nlongest = %6;\n")
             .arg(cases)
             .arg(mostTypes)
             .arg(mostBars)
             .arg(mostPoints)
             .arg(mostHoists)
             .arg(testing::mostInRandomStack) +
         QStringLiteral("picksOf = %1;\npointCount = %2;\nhoistCount = %3;\npx = %4;\npy = %5;\n")
             .arg(picksOf.text(QStringLiteral(", 1..bars, 1..3")), pointCount.text({}), hoistCount.text({}),
                  px.text(QStringLiteral(", 1..points")), py.text(QStringLiteral(", 1..points")));
}

/// What the solver printed, one solution a line.
QByteArray solutions(const Written& all) {
  QTemporaryDir folder;
  QFile data(folder.filePath(QStringLiteral("cases.dzn")));
  BOOST_REQUIRE(data.open(QIODevice::WriteOnly));
  data.write((tablesText(all) + casesText(all)).toUtf8());
  data.close();
  QProcess solver;
  solver.start(QStringLiteral("minizinc"),
               {QStringLiteral("--solver"), QStringLiteral("gecode"), QStringLiteral("-a"),
                QStringLiteral(HANGBOOK_SOURCE_DIR "/tests/twin/discrete.mzn"), data.fileName()});
  BOOST_REQUIRE_MESSAGE(solver.waitForFinished(-1) && solver.exitCode() == 0,
                        "minizinc: " << solver.errorString().toStdString() << ' '
                                     << solver.readAllStandardError().toStdString());
  return solver.readAllStandardOutput();
}

/// From a solution back to an option's identifier, the case's number before it.
QString idOf(const Written& all, const QList<QByteArray>& numbers) {
  const auto at = [&](int place) { return static_cast<std::size_t>(numbers[place].toInt()); };
  const auto& [number, table] = all.tables[at(0) - 1];
  const Case& of = all.cases[static_cast<std::size_t>(number)];
  const catalogue::Catalogue& catalogue = of.snapshot.catalogue;
  options::OptionKey key;
  key.hang = of.snapshot.show.hangs.front().name;
  const int longest = testing::mostInRandomStack;
  for (int i = 1; i <= longest && at(i) > 0; ++i) {
    key.stack.append(catalogue.cabinets[at(i) - 1].name);
  }
  key.bar = catalogue.bars[at(longest + 1) - 1].name;
  key.picks = static_cast<catalogue::Picks>(at(longest + 2) - 1);
  key.hoist = catalogue.hoists[at(longest + 3) - 1].name;
  key.points.append(of.places[at(longest + 4) - 1].name);
  if (at(longest + 5) > 0) {
    key.points.append(of.places[at(longest + 5) - 1].name);
  }
  return QString::number(number) + QLatin1Char(' ') + options::idOf(key);
}

} // namespace

BOOST_AUTO_TEST_SUITE(twin)

BOOST_AUTO_TEST_CASE(a_constraint_solver_lists_the_same_options) {
  const Written all = makeCases();
  std::set<QString> solved;
  bool complete = false;
  for (const QByteArray& line : solutions(all).split('\n')) {
    const QList<QByteArray> numbers = line.split(' ');
    if (numbers.size() == testing::mostInRandomStack + 6) {
      solved.insert(idOf(all, numbers));
    }
    complete = complete || line == "==========";
  }
  BOOST_TEST(complete, "the solver did not say that these are all");
  std::set<QString> searched;
  for (std::size_t number = 0; number < all.cases.size(); ++number) {
    const options::ShowOptions found = options::decide(all.cases[number].snapshot);
    for (const options::Option& option : found.hangs.front().options) {
      searched.insert(QString::number(number) + QLatin1Char(' ') + option.id);
    }
  }
  BOOST_TEST_MESSAGE(cases << " shows: " << searched.size() << " options, " << solved.size()
                           << " by the solver");
  BOOST_TEST(searched.size() > 1500U);
  std::vector<QString> odd;
  std::ranges::set_symmetric_difference(searched, solved, std::back_inserter(odd));
  for (const QString& each : odd) {
    BOOST_ERROR("case and option " << each.toStdString() << " only by the "
                                   << (solved.contains(each) ? "solver" : "search"));
  }
}

BOOST_AUTO_TEST_SUITE_END()
