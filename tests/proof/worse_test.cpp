// SPDX-License-Identifier: GPL-3.0-or-later
// Over all rules and random data: a worse figure never improves a verdict. What is worse for which figure
// stands in columns.cpp.
#include <boost/test/unit_test.hpp>

#include <algorithm>
#include <cstring>
#include <set>

#include "options/option.h"
#include "state.h"
#include "support/sanitized.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Verdict;

namespace {

bool isAmong(const std::vector<const char*>& only, const QString& rule) {
  return only.empty() ||
         std::ranges::any_of(only, [&](const char* each) { return rule == QLatin1String(each); });
}

void noBetter(const Verdicts& before, const Verdicts& after, const std::vector<const char*>& only,
              const std::string& what) {
  for (std::size_t i = 0; i < before.size(); ++i) {
    for (const auto& [rule, verdict] : after[i]) {
      const auto was = before[i].find(rule);
      if (isAmong(only, rule) && was != before[i].end()) {
        BOOST_TEST((verdict >= was->second), "with "
                                                 << what << " subject " << i << " on " << rule.toStdString()
                                                 << ": " << options::wordFor(was->second).toStdString()
                                                 << " became " << options::wordFor(verdict).toStdString());
      }
    }
  }
}

void worsenEach(const exchange::Data& data, const std::vector<Subject>& subjects, std::mt19937& chance,
                std::set<std::string>& worsened) {
  const Verdicts before = verdictsOn(data, subjects);
  for (const Column& column : columns()) {
    const QString record = QString::fromUtf8(column.record);
    const QString heading = QString::fromUtf8(column.heading);
    for (const Column::Way& way : column.ways) {
      std::vector<Row> rows;
      for (Row& row : rowsOf(column.kind, record, data)) {
        const QString worse = way.worse(row[column.heading], row);
        if (!worse.isEmpty()) {
          row.set(heading, worse);
          rows.push_back(std::move(row));
        }
      }
      std::shuffle(rows.begin(), rows.end(), chance);
      rows.resize(std::min<std::size_t>(rows.size(), 3));
      for (const Row& row : rows) {
        if (const auto after = with(data, column.kind, record, row)) {
          worsened.insert(std::string(column.record) + ": " + column.heading);
          noBetter(before, verdictsOn(*after, subjects), way.only,
                   std::string(column.record) + " " + row.cells[0].toStdString() + ": " + column.heading +
                       " " + row[column.heading].toStdString());
        }
      }
    }
  }
}

template <class Change>
void changed(const options::Snapshot& snapshot, const Verdicts& before, const std::vector<Subject>& subjects,
             const std::vector<const char*>& only, const char* what, Change change) {
  options::Snapshot worse = snapshot;
  change(worse);
  noBetter(before, verdictsOn(worse, subjects), only, what);
}

void worsenFacts(const options::Snapshot& snapshot, const std::vector<Subject>& subjects) {
  const Verdicts before = verdictsOn(snapshot, subjects);
  using S = options::Snapshot;
  changed(snapshot, before, subjects, {}, "all examined half a year earlier", [](S& s) {
    for (fleet::Examination& each : s.examinations) {
      each.date = each.date.addMonths(-6);
    }
  });
  changed(snapshot, before, subjects, {}, "every fifth examination failed", [](S& s) {
    for (std::size_t i = 0; i < s.examinations.size(); i += 5) {
      s.examinations[i].result = fleet::ExaminationResult::fail;
    }
  });
  changed(snapshot, before, subjects, {}, "every third unit gone", [](S& s) {
    std::size_t i = 0;
    std::erase_if(s.units, [&i](const fleet::Unit&) { return ++i % 3 == 0; });
  });
  changed(snapshot, before, subjects, {}, "the same gear chosen for another show", [&](S& s) {
    options::Choice other;
    other.show = QStringLiteral("elsewhere");
    other.hang = QStringLiteral("left");
    other.key = subjects.front().key;
    other.setting = subjects.front().setting;
    s.otherChoices.push_back(other);
  });
  changed(snapshot, before, subjects, {"lean", "point-load", "hoist", "hardware"}, "points farther apart",
          [&](S& s) {
            for (std::size_t i = 0; i + 1 < s.venue.points.size(); i += 2) {
              venue::Point& one = s.venue.points[i];
              venue::Point& other = s.venue.points[i + 1];
              one.x += 0.2 * (one.x - other.x);
              one.y += 0.2 * (one.y - other.y);
            }
          });
}

} // namespace

BOOST_AUTO_TEST_SUITE(worse_figures)

BOOST_AUTO_TEST_CASE(no_worse_figure_improves_a_verdict) {
  std::set<std::string> worsened;
  for (const char* show : {"Pollan Cross", "Eskerholt", "Lindrake", "Hallowfen"}) {
    const exchange::Data demo = demoShow(QString::fromUtf8(show));
    const std::vector<Subject> best = subjectsOf(demo, QStringLiteral("left"));
    for (int state = 0; state < states(testing::underSanitizer ? 2 : 4); ++state) {
      std::mt19937 chance(static_cast<unsigned>(100 * state + show[0]));
      BOOST_TEST_CONTEXT("show " << show << ", state " << state) {
        // The demo as it is, the demo with every column filled, then anything.
        const exchange::Data data = state == 0   ? demo
                                    : state == 1 ? filled(demo)
                                                 : shaken(state % 2 == 0 ? demo : filled(demo), chance, 20);
        const std::vector<Subject> subjects = state < 2 ? best : beside(best, chance);
        worsenEach(data, subjects, chance, worsened);
        worsenFacts(snapshotOf(data), subjects);
      }
    }
  }
  // Every column that has a worse way was really made worse at least once.
  for (const Column& each : columns()) {
    const std::string name = std::string(each.record) + ": " + each.heading;
    BOOST_TEST((each.ways.empty() || worsened.contains(name)), name << " was never made worse");
  }
}

BOOST_AUTO_TEST_SUITE_END()
