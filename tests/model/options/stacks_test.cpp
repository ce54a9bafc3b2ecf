// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <random>
#include <set>

#include <boost/test/unit_test.hpp>

#include "options/stacks.h"
#include "quantity/error.h"

using namespace hangbook;
using catalogue::Catalogue;
using catalogue::Join;
using catalogue::JointKind;
using catalogue::StackingTable;

namespace {

Catalogue cabinets(const std::vector<QString>& names) {
  Catalogue made;
  for (const QString& name : names) {
    catalogue::CabinetType type;
    type.name = name;
    type.downfill = name == "down";
    made.cabinets.push_back(type);
  }
  return made;
}

Join join(const QString& above, const QString& below, JointKind kind = JointKind::pinned) {
  Join made;
  made.above = above;
  made.below = below;
  made.kind = kind;
  return made;
}

std::multiset<QString> texts(const std::vector<options::Stack>& stacks) {
  std::multiset<QString> all;
  for (const options::Stack& stack : stacks) {
    all.insert(stack.types().join(' '));
  }
  return all;
}

/// Two to four bass above and below one upper, a downfill at the very bottom where wanted.
StackingTable smallTable() {
  StackingTable table;
  table.name = "small";
  table.chain = "chain";
  table.joins = {join("", "bass"),
                 join("bass", "bass"),
                 join("bass", "upper"),
                 join("upper", "bass"),
                 join("bass", "down", JointKind::pivot),
                 join("upper", "down", JointKind::pivot)};
  table.counts = {{"bass", 2, 3}, {"upper", 1, 1}, {"down", 0, 1}};
  table.lowest = {"bass", "upper", "down"};
  table.held = {"down"};
  return table;
}

} // namespace

BOOST_AUTO_TEST_SUITE(stacks)

BOOST_AUTO_TEST_CASE(handCountedTable) {
  const Catalogue catalogue = cabinets({"bass", "upper", "down"});
  const auto found = options::stacksOf(catalogue, smallTable());
  // Two bass: bbu, bub. Three bass: bbbu, bbub, bubb. Each with and without the downfill.
  const std::multiset<QString> expected{
      "bass bass upper",           "bass upper bass",           "bass bass bass upper",
      "bass bass upper bass",      "bass upper bass bass",      "bass bass upper down",
      "bass upper bass down",      "bass bass bass upper down", "bass bass upper bass down",
      "bass upper bass bass down",
  };
  BOOST_TEST((texts(found) == expected));
  for (const options::Stack& stack : found) {
    BOOST_TEST(stack.downfill == (stack.types().last() == "down"));
    BOOST_TEST(stack.held == (stack.downfill ? static_cast<int>(stack.cabinets.size()) : 0));
    BOOST_TEST(stack.joins.size() == stack.cabinets.size());
    BOOST_TEST(stack.missing.empty());
  }
}

BOOST_AUTO_TEST_CASE(lowestAndLeastAreKept) {
  const Catalogue catalogue = cabinets({"bass", "upper", "down"});
  StackingTable table = smallTable();
  table.lowest = {"bass"};
  BOOST_TEST((texts(options::stacksOf(catalogue, table)) ==
              std::multiset<QString>{"bass upper bass", "bass bass upper bass", "bass upper bass bass"}));
  table.counts[2].least = 1;
  BOOST_TEST(options::stacksOf(catalogue, table).empty());
}

BOOST_AUTO_TEST_CASE(aTypeWithoutACountOrARecordDoesNotStand) {
  StackingTable table = smallTable();
  table.counts.erase(table.counts.begin() + 2);
  for (const options::Stack& stack : options::stacksOf(cabinets({"bass", "upper", "down"}), table)) {
    BOOST_TEST(!stack.downfill);
  }
  BOOST_TEST(options::stacksOf(cabinets({"bass", "down"}), smallTable()).empty());
}

BOOST_AUTO_TEST_CASE(nothingStartsButUnderTheBar) {
  StackingTable table = smallTable();
  table.joins.erase(table.joins.begin());
  BOOST_TEST(options::stacksOf(cabinets({"bass", "upper", "down"}), table).empty());
}

BOOST_AUTO_TEST_CASE(seatedStacksAreHeldAtTheLowestThatMayBe) {
  StackingTable table;
  table.name = "seated";
  table.chain = "chain";
  table.joins = {join("", "bass"), join("bass", "bass", JointKind::seated),
                 join("bass", "upper", JointKind::seated)};
  table.counts = {{"bass", 2, 2}, {"upper", 0, 1}};
  table.lowest = {"bass", "upper"};
  table.held = {"bass"};
  const Catalogue catalogue = cabinets({"bass", "upper"});
  for (const options::Stack& stack : options::stacksOf(catalogue, table)) {
    BOOST_TEST(stack.held == 2); // the upper may not be held
  }
  table.chain.clear();
  for (const options::Stack& stack : options::stacksOf(catalogue, table)) {
    BOOST_TEST(stack.held == 0);
    BOOST_TEST(stack.missing.empty());
  }
}

BOOST_AUTO_TEST_CASE(aPivotThatNothingHoldsIsSaidNotPassed) {
  StackingTable table = smallTable();
  table.held.clear();
  for (const options::Stack& stack : options::stacksOf(cabinets({"bass", "upper", "down"}), table)) {
    BOOST_TEST(stack.missing.empty() == !stack.downfill);
  }
  table = smallTable();
  table.chain.clear();
  for (const options::Stack& stack : options::stacksOf(cabinets({"bass", "upper", "down"}), table)) {
    BOOST_TEST(stack.missing.empty() == !stack.downfill);
  }
}

BOOST_AUTO_TEST_CASE(aTableThatPermitsTooMuchIsRefused) {
  StackingTable table;
  table.name = "endless";
  table.joins = {join("", "a"), join("a", "b"), join("b", "a"), join("a", "a"), join("b", "b")};
  table.counts = {{"a", 0, 20}, {"b", 0, 20}};
  table.lowest = {"a", "b"};
  BOOST_CHECK_EXCEPTION(options::stacksOf(cabinets({"a", "b"}), table), Error, [](const Error& error) {
    return error.trouble() == Trouble::badInput && error.place().find("endless") != std::string::npos;
  });
}

/// Against every sequence up to a length, each tested by the table's words one by one.
BOOST_AUTO_TEST_CASE(sameAsTryingEverySequence) {
  const std::vector<QString> names{"a", "b", "c"};
  const Catalogue catalogue = cabinets(names);
  std::mt19937 random(7);
  for (int round = 0; round < 200; ++round) {
    StackingTable table;
    table.name = "random";
    for (const QString& below : names) {
      if (random() % 2 == 0) {
        table.joins.push_back(join("", below));
      }
      for (const QString& above : names) {
        if (random() % 2 == 0) {
          table.joins.push_back(join(above, below));
        }
      }
      const int least = static_cast<int>(random() % 2);
      table.counts.push_back({below, least, least + static_cast<int>(random() % 2)});
      if (random() % 2 == 0) {
        table.lowest.push_back(below);
      }
    }
    std::multiset<QString> expected;
    for (int size = 1; size <= 6; ++size) {
      int all = 1;
      for (int i = 0; i < size; ++i) {
        all *= 3;
      }
      for (int number = 0; number < all; ++number) {
        QStringList sequence;
        for (int i = 0, rest = number; i < size; ++i, rest /= 3) {
          sequence.append(names[static_cast<std::size_t>(rest % 3)]);
        }
        bool permitted =
            std::find(table.lowest.begin(), table.lowest.end(), sequence.last()) != table.lowest.end();
        for (const catalogue::Count& count : table.counts) {
          const auto standing = sequence.count(count.type);
          permitted = permitted && standing >= count.least && standing <= count.most;
        }
        for (int i = 0; i < size; ++i) {
          const QString above = i == 0 ? QString() : sequence[i - 1];
          permitted = permitted && std::any_of(table.joins.begin(), table.joins.end(), [&](const Join& each) {
                        return each.above == above && each.below == sequence[i];
                      });
        }
        if (permitted) {
          expected.insert(sequence.join(' '));
        }
      }
    }
    BOOST_TEST((texts(options::stacksOf(catalogue, table)) == expected));
  }
}

BOOST_AUTO_TEST_SUITE_END()
