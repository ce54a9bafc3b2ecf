// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a later fact corrects one is asked for each of a hundred thousand facts: never by reading the
// table.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include <array>

#include "support/fresh_store.h"

namespace data = boost::unit_test::data;
using namespace hangbook;

namespace {

const std::array facts = {"examination",  "movement",    "mark_used",
                          "load_reading", "gate_signed", "occurrence"};

} // namespace

BOOST_AUTO_TEST_SUITE(store_indexes)

BOOST_DATA_TEST_CASE(a_correction_is_found_by_its_index, data::make(facts), table) {
  const testing::FreshStore fresh(store::Engine::sqlite);
  const auto store = fresh.open();
  const auto plan = store->rows(QStringLiteral("EXPLAIN QUERY PLAN SELECT 1 FROM %1 WHERE corrects = :fact")
                                    .arg(QString::fromLatin1(table)),
                                {{"fact", QUuid::createUuid()}});
  BOOST_TEST_REQUIRE(plan.size() == 1U);
  const std::string step = plan.front().text("detail").toStdString();
  BOOST_TEST(step.find("INDEX " + std::string(table) + "_corrects") != std::string::npos, step);
}

BOOST_AUTO_TEST_SUITE_END()
