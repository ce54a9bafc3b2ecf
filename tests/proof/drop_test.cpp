// SPDX-License-Identifier: GPL-3.0-or-later
// Over all rules and random data: a figure that is no longer known never makes a rule hold, or be tight, that
// was not so before. Every cell of every line that may be empty is emptied, and every record taken out that
// others name.
#include <boost/test/unit_test.hpp>

#include <set>

#include "exchange/kind_sorts.h"
#include "state.h"
#include "support/sanitized.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Verdict;

namespace {

bool passes(const std::map<QString, Verdict>& verdicts, const QString& rule) {
  const auto found = verdicts.find(rule);
  return found != verdicts.end() && found->second <= Verdict::tight;
}

/// `after` lacks something that `before` had.
void noNewPass(const Verdicts& before, const Verdicts& after, const std::string& what) {
  for (std::size_t i = 0; i < before.size(); ++i) {
    for (const auto& [rule, verdict] : after[i]) {
      BOOST_TEST((!passes(after[i], rule) || passes(before[i], rule)),
                 "without " << what << " subject " << i << " passes " << rule.toStdString());
    }
  }
}

/// Two lines by chance of those that have something under each heading; a list of two hundred units says no
/// more than two of them.
void emptyEachCell(const exchange::Data& data, const std::vector<Subject>& subjects, std::mt19937& chance,
                   std::set<QString>& emptied) {
  const Verdicts before = verdictsOn(data, subjects);
  using Kind = exchange::Kind;
  for (const Kind kind : {Kind::types, Kind::units, Kind::venues, Kind::shows}) {
    for (const auto& sort : exchange::sortsOf(kind)) {
      const std::vector<Row> rows = rowsOf(kind, sort->word(), data);
      for (const exchange::Heading& heading : sort->headings()) {
        if (exchange::isKey(heading.need) || exchange::isNeeded(heading.need) ||
            !emptyMeans(sort->word(), heading.name).empty()) {
          continue;
        }
        std::vector<Row> filled;
        for (const Row& row : rows) {
          if (!row.cells[row.headings.indexOf(heading.name)].isEmpty()) {
            filled.push_back(row);
          }
        }
        std::shuffle(filled.begin(), filled.end(), chance);
        filled.resize(std::min<std::size_t>(filled.size(), 2));
        for (Row& row : filled) {
          row.set(heading.name, {});
          const auto without = with(data, kind, sort->word(), row);
          if (without && !(*without == data)) {
            emptied.insert(sort->word() + QStringLiteral(": ") + heading.name);
            noNewPass(before, verdictsOn(*without, subjects),
                      sort->word().toStdString() + " " + row.cells[0].toStdString() + ": " +
                          heading.name.toStdString());
          }
        }
      }
    }
  }
}

template <class List>
void takeEachOut(options::Snapshot snapshot, List& (*listOf)(options::Snapshot&), const Verdicts& before,
                 const std::vector<Subject>& subjects, const char* what) {
  const std::size_t count = listOf(snapshot).size();
  for (std::size_t i = 0; i < count; i += 1 + count / 12) {
    options::Snapshot without = snapshot;
    List& list = listOf(without);
    list.erase(list.begin() + static_cast<std::ptrdiff_t>(i));
    noNewPass(before, verdictsOn(without, subjects), std::string("one of the ") + what);
  }
  listOf(snapshot).clear();
  noNewPass(before, verdictsOn(snapshot, subjects), std::string("any ") + what);
}

void takeRecordsOut(const exchange::Data& data, const std::vector<Subject>& subjects) {
  const options::Snapshot snapshot = snapshotOf(data);
  const Verdicts before = verdictsOn(snapshot, subjects);
  using S = options::Snapshot;
  const auto each = [&]<class List>(List& (*listOf)(S&), const char* what) {
    takeEachOut(snapshot, listOf, before, subjects, what);
  };
  each(
      +[](S & s) -> auto& { return s.catalogue.chains; }, "types of chain");
  each(
      +[](S & s) -> auto& { return s.catalogue.hardware; }, "types of hardware");
  each(
      +[](S & s) -> auto& { return s.catalogue.carts; }, "types of cart");
  each(
      +[](S & s) -> auto& { return s.venue.zones; }, "zones");
  each(
      +[](S & s) -> auto& { return s.units; }, "units");
  each(
      +[](S & s) -> auto& { return s.examinations; }, "examinations");
}

} // namespace

BOOST_AUTO_TEST_SUITE(dropped_inputs)

BOOST_AUTO_TEST_CASE(no_figure_less_makes_a_rule_pass) {
  std::set<QString> emptied;
  for (const char* show : {"Pollan Cross", "Eskerholt", "Lindrake", "Hallowfen"}) {
    const exchange::Data demo = demoShow(QString::fromUtf8(show));
    const std::vector<Subject> best = subjectsOf(demo, QStringLiteral("left"));
    for (int state = 0; state < states(testing::underSanitizer ? 2 : 3); ++state) {
      std::mt19937 chance(static_cast<unsigned>(100 * state + show[0]));
      BOOST_TEST_CONTEXT("show " << show << ", state " << state) {
        // The demo as it is, the demo with every column filled, then anything.
        const exchange::Data data = state == 0   ? demo
                                    : state == 1 ? filled(demo)
                                                 : shaken(state % 2 == 0 ? demo : filled(demo), chance, 20);
        const std::vector<Subject> subjects = state < 2 ? best : beside(best, chance);
        emptyEachCell(data, subjects, chance, emptied);
        takeRecordsOut(data, subjects);
      }
    }
  }
  BOOST_TEST_MESSAGE(emptied.size() << " columns emptied");
  for (const QString& each : emptied) {
    BOOST_TEST_MESSAGE(each.toStdString());
  }
  BOOST_TEST(emptied.size() > 90);
}

BOOST_AUTO_TEST_SUITE_END()
