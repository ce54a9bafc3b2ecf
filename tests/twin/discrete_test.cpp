// SPDX-License-Identifier: GPL-3.0-or-later
// Which options there are, against a constraint solver (MiniZinc with Gecode) that is told what may be, not
// how to list it (discrete.mzn). All cases in one run of it.
#include <algorithm>
#include <set>

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <boost/test/unit_test.hpp>

#include "options/search.h"
#include "twin/discrete.h"
#include "twin/random_show.h"
#include "where.h"

using namespace hangbook;
using options::Snapshot;

namespace {

constexpr int cases = 320;

/// Shows whose hang may use every one of the venue's points.
std::vector<Snapshot> makeShows() {
  std::vector<Snapshot> shows;
  for (int seed = 0; seed < cases; ++seed) {
    Snapshot& made = shows.emplace_back(testing::randomShow(static_cast<std::uint64_t>(seed)));
    QStringList& points = made.show.hangs.front().points;
    points.clear();
    for (const venue::Point& point : made.venue.points) {
      points.append(point.name);
    }
  }
  return shows;
}

/// What the solver printed, one solution a line.
QByteArray solutions(const testing::Discrete& all) {
  QTemporaryDir folder;
  QFile data(folder.filePath(QStringLiteral("cases.dzn")));
  BOOST_REQUIRE(data.open(QIODevice::WriteOnly));
  data.write(all.text().toUtf8());
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

} // namespace

BOOST_AUTO_TEST_SUITE(twin)

BOOST_AUTO_TEST_CASE(a_constraint_solver_lists_the_same_options) {
  const std::vector<Snapshot> shows = makeShows();
  const testing::Discrete all(shows);
  std::set<QString> solved;
  bool complete = false;
  for (const QByteArray& line : solutions(all).split('\n')) {
    if (const QString option = all.optionOf(line); !option.isEmpty()) {
      solved.insert(option);
    }
    complete = complete || line == "==========";
  }
  BOOST_TEST(complete, "the solver did not say that these are all");
  std::set<QString> searched;
  for (std::size_t number = 0; number < shows.size(); ++number) {
    const options::ShowOptions found = options::decide(shows[number]);
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
