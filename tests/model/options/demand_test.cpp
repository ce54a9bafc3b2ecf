// SPDX-License-Identifier: GPL-3.0-or-later
// What a show takes by its chosen options: looms too, where its cabling states which.
#include <boost/test/unit_test.hpp>

#include "options/demand.h"

using namespace hangbook;
using namespace hangbook::options;
using fleet::UnitKind;

namespace {

const QString bass = QStringLiteral("Marram bass");
const QString upper = QStringLiteral("Marram upper");

struct Taking {
  calendar::Show show;
  std::vector<Choice> choices;
  std::vector<calendar::Plug> plugs;

  Taking() {
    show.tour = QStringLiteral("Parade");
    show.name = QStringLiteral("Ostrel");
    for (const char* name : {"left", "right"}) {
      show.hangs.emplace_back().name = QString::fromLatin1(name);
      Choice choice;
      choice.tour = show.tour;
      choice.show = show.name;
      choice.hang = QString::fromLatin1(name);
      choice.key.hang = choice.hang;
      choice.key.stack = {bass, bass, upper};
      choices.push_back(choice);
    }
  }
  void plug(const char* hang, int element, const QString& cabinet, const char* label) {
    calendar::Plug plug;
    plug.tour = show.tour;
    plug.show = show.name;
    plug.hang = QString::fromLatin1(hang);
    plug.element = element;
    plug.cabinet = cabinet;
    plug.loom = QStringLiteral("loom 25");
    plug.label = QString::fromLatin1(label);
    plugs.push_back(plug);
  }
  int looms() const {
    const Demand demand = demandOf({}, show, choices, plugs);
    const auto found = demand.numbers.find({UnitKind::loom, QStringLiteral("loom 25")});
    return found == demand.numbers.end() ? 0 : found->second;
  }
};

} // namespace

BOOST_AUTO_TEST_SUITE(demand)

BOOST_AUTO_TEST_CASE(each_loom_is_taken_once_however_many_of_its_ends_are_in_use) {
  Taking taking;
  BOOST_TEST(taking.looms() == 0); // nobody stated any
  taking.plug("left", 1, bass, "A");
  taking.plug("left", 2, bass, "A");
  BOOST_TEST(taking.looms() == 1);
  taking.plug("left", 3, upper, "B");
  BOOST_TEST(taking.looms() == 2);
  taking.plug("right", 3, upper, "B"); // the same loom ends in both hangs
  BOOST_TEST(taking.looms() == 2);
  taking.plug("right", 1, bass, "C");
  BOOST_TEST(taking.looms() == 3);
}

BOOST_AUTO_TEST_CASE(a_plug_that_is_not_meant_for_what_hangs_takes_none) {
  Taking taking;
  taking.plug("left", 1, upper, "A"); // a bass hangs there
  taking.plug("left", 4, bass, "B");  // nothing does
  taking.plug("middle", 1, bass, "C");
  BOOST_TEST(taking.looms() == 0);
  taking.plug("left", 1, bass, "D");
  taking.plugs.back().show = QStringLiteral("Gullwick");
  BOOST_TEST(taking.looms() == 0);
  taking.choices.erase(taking.choices.begin()); // nothing is chosen for the left
  taking.plug("left", 1, bass, "E");
  BOOST_TEST(taking.looms() == 0);
}

/// The table's chain where its setting has a mark, and none where nothing is held.
BOOST_AUTO_TEST_CASE(a_chain_is_taken_where_one_is_set) {
  catalogue::Catalogue catalogue;
  catalogue::StackingTable table;
  table.name = QStringLiteral("large");
  table.chain = QStringLiteral("link chain");
  catalogue.tables = {table};
  Taking taking;
  taking.choices.resize(1);
  const auto chains = [&] {
    const Demand demand = demandOf(catalogue, taking.show, taking.choices, {});
    const auto found = demand.numbers.find({UnitKind::chain, QStringLiteral("link chain")});
    return found == demand.numbers.end() ? 0 : found->second;
  };
  taking.choices[0].key.table = table.name;
  BOOST_TEST(chains() == 0);
  taking.choices[0].setting.mark = 7;
  BOOST_TEST(chains() == 1);
  taking.choices[0].key.table = QStringLiteral("gone");
  BOOST_TEST(chains() == 0);
}

/// Of one hang's choices the highest revision counts, wherever it stands; other hangs, shows and tours have
/// their own.
BOOST_AUTO_TEST_CASE(the_newest_choice_of_each_hang) {
  const auto choice = [](const char* tour, const char* show, const char* hang, int revision) {
    Choice made;
    made.tour = QString::fromLatin1(tour);
    made.show = QString::fromLatin1(show);
    made.hang = QString::fromLatin1(hang);
    made.revision = revision;
    return made;
  };
  const std::vector<Choice> choices{
      choice("Parade", "Ostrel", "left", 2),   choice("Parade", "Ostrel", "left", 3),
      choice("Parade", "Ostrel", "left", 1),   choice("Parade", "Ostrel", "right", 1),
      choice("Parade", "Gullwick", "left", 5), choice("Lantern", "Ostrel", "left", 4)};
  const std::vector<const Choice*> newest = newestOf(choices);
  BOOST_REQUIRE(newest.size() == 4U);
  BOOST_TEST((newest[0] == &choices[1]));
  BOOST_TEST((newest[1] == &choices[3]));
  BOOST_TEST((newest[2] == &choices[4]));
  BOOST_TEST((newest[3] == &choices[5]));
}

BOOST_AUTO_TEST_SUITE_END()
