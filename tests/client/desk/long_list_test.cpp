// SPDX-License-Identifier: GPL-3.0-or-later
// Lists longer than what is sorted and searched before a call returns: worked through between events, and in
// the end the same as if it had been done at once.
#include <algorithm>
#include <string>

#include <boost/test/unit_test.hpp>

#include <QAbstractItemModelTester>

#include "desk/lists/list_page.h"
#include "waiting.h"

using namespace hangbook::desk;
using hangbook::testing::waitUntil;

namespace {

constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;
constexpr int many = SortFilter::atOnce + 904;

enum class Part { name, weight, count };

/// "U-0" to "U-4999", in no order; every third has no weight.
class Units : public ListOf<int, Part> {
public:
  explicit Units(int count = many) { fill(count); }
  void fill(int count) {
    std::vector<int> numbers;
    for (int i = 0; i < count; ++i) {
      numbers.push_back(static_cast<int>(i * 7919LL % count)); // a prime: each number once
    }
    setRows(std::move(numbers));
  }
  void change() { refresh(); }

private:
  Heading headingOf(Part) const override { return {.title = QStringLiteral("Unit")}; }
  Cell cellOf(const int& number, Part part) const override {
    if (part == Part::name) {
      return {.text = keyOf(number)};
    }
    return number % 3 == 0 ? Cell{.text = QStringLiteral("–"), .missing = true}
                           : Cell{.text = QStringLiteral("weighed"), .number = many - number};
  }
  QString keyOf(const int& number) const override { return QStringLiteral("U-%1").arg(number); }
};

void wait(const SortFilter& proxy) {
  BOOST_TEST_REQUIRE(waitUntil([&] { return !proxy.working(); }, 100'000));
}

std::vector<int> shown(const Units& units, const SortFilter& proxy) {
  std::vector<int> numbers;
  for (int row = 0; row < proxy.rowCount(); ++row) {
    numbers.push_back(units.at(proxy.mapToSource(proxy.index(row, 0)).row()));
  }
  return numbers;
}

/// The numbers below `many` whose decimal digits hold `part`.
std::vector<int> holding(const std::string& part) {
  std::vector<int> numbers;
  for (int number = 0; number < many; ++number) {
    if (std::to_string(number).find(part) != std::string::npos) {
      numbers.push_back(number);
    }
  }
  return numbers;
}

const auto each = boost::test_tools::per_element();

} // namespace

BOOST_AUTO_TEST_SUITE(long_list)

BOOST_AUTO_TEST_CASE(is_sorted_and_searched_between_events) {
  Units units;
  SortFilter proxy;
  const QAbstractItemModelTester tester(&proxy, fatal);
  proxy.setModel(units);
  wait(proxy);
  proxy.sort(0);
  BOOST_TEST(proxy.working());
  BOOST_TEST(proxy.rowCount() == many);
  const QPersistentModelIndex kept = proxy.mapFromSource(units.index(17, 1));
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding(""), each);
  BOOST_TEST(proxy.mapToSource(kept).row() == 17);
  BOOST_TEST(kept.column() == 1);
  proxy.setWords(QStringLiteral("4"));
  proxy.setWords(QStringLiteral("49"));
  BOOST_TEST(proxy.rowCount() == many); // until the new rows are known
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding("49"), each);
  proxy.setWords(QStringLiteral("490"));
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding("490"), each);
  proxy.setWords(QStringLiteral("u- 12"));
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding("12"), each);
  units.change();
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding("12"), each);
  proxy.setWords({});
  wait(proxy);
  BOOST_TEST(shown(units, proxy) == holding(""), each);
}

BOOST_AUTO_TEST_CASE(puts_what_is_not_known_last_in_either_direction) {
  Units units;
  SortFilter proxy;
  proxy.setModel(units);
  for (const auto direction : {Qt::AscendingOrder, Qt::DescendingOrder}) {
    proxy.sort(1, direction);
    wait(proxy);
    const std::vector<int> numbers = shown(units, proxy);
    BOOST_TEST_REQUIRE(numbers.size() == static_cast<std::size_t>(many));
    const auto known = static_cast<std::size_t>(
        std::count_if(numbers.begin(), numbers.end(), [](int number) { return number % 3 != 0; }));
    bool right = true;
    for (std::size_t i = 1; i < known; ++i) { // the weight falls where the number rises
      right = right &&
              (direction == Qt::AscendingOrder ? numbers[i - 1] > numbers[i] : numbers[i - 1] < numbers[i]);
    }
    BOOST_TEST(right);
    BOOST_TEST(std::all_of(numbers.begin() + static_cast<std::ptrdiff_t>(known), numbers.end(),
                           [](int number) { return number % 3 == 0; }));
  }
}

BOOST_AUTO_TEST_CASE(keeps_the_selected_row_through_a_search) {
  Units units;
  ListPage page(QStringLiteral("longList"), QStringLiteral("Units"), units, 0, 0, Qt::AscendingOrder);
  wait(page.proxy());
  BOOST_TEST(page.select(QStringLiteral("U-123")));
  std::vector<int> told;
  QObject::connect(&page, &ListPage::currentRowChanged,
                   [&](int row) { told.push_back(row < 0 ? row : units.at(row)); });
  const auto search = [&](const char* words) {
    page.proxy().setWords(QLatin1String(words));
    wait(page.proxy());
    return page.currentRow() < 0 ? -1 : units.at(page.currentRow());
  };
  BOOST_TEST(search("12") == 123);
  BOOST_TEST(told.empty()); // it is the same unit
  BOOST_TEST(page.table().selectionModel()->selectedRows().size() == 1);
  BOOST_TEST(search("49") == 149); // the next one that is left
  BOOST_TEST(search("u-48 0") == 480);
  BOOST_TEST(search("nothing") == -1);
  BOOST_TEST(told == (std::vector<int>{149, 480, -1}), each);
}

BOOST_AUTO_TEST_CASE(selects_what_was_asked_for_once_it_is_found) {
  Units units;
  ListPage page(QStringLiteral("longList"), QStringLiteral("Units"), units, 0, 0, Qt::AscendingOrder);
  page.setEmptyTexts(QStringLiteral("none at all"), QStringLiteral("none fits"));
  page.proxy().setWords(QStringLiteral("12"));
  wait(page.proxy());
  units.fill(many); // as when the store was read again
  auto* empty = page.findChild<QWidget*>(QStringLiteral("longListEmpty"));
  BOOST_TEST_REQUIRE(empty != nullptr);
  BOOST_TEST(empty->property("text").toString().toStdString() == "Looking …");
  BOOST_TEST(!page.select(QStringLiteral("U-none")));
  BOOST_TEST(page.select(QStringLiteral("U-3123")));
  BOOST_TEST(page.currentRow() == -1);
  wait(page.proxy());
  BOOST_TEST_REQUIRE(page.currentRow() >= 0);
  BOOST_TEST(units.at(page.currentRow()) == 3123);
  BOOST_TEST(empty->isHidden());
  units.fill(3); // a short one is done at once, and leaves nothing under way
  BOOST_TEST(!page.proxy().working());
  BOOST_TEST(page.proxy().rowCount() == 0);
}

BOOST_AUTO_TEST_SUITE_END()
