// SPDX-License-Identifier: GPL-3.0-or-later
// What hangs stand on or must cover stays in the venue.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>

#include "actions/edit_venue.h"
#include "quantity/error.h"
#include "support/sample_house.h"

using namespace hangbook;
using namespace hangbook::testing;

namespace {

const QString ada = QStringLiteral("Ada Fenn");
const QDate today(2026, 11, 20);

venue::Venue hall(store::Store& store) {
  return *store::loadVenue(store, QStringLiteral("Gannet Hall"));
}

QString refusal(store::Store& store, const venue::Venue& wanted) {
  try {
    actions::editVenue(store, wanted, ada, today);
  } catch (const Error& error) {
    return QString::fromUtf8(error.what());
  }
  return {};
}

} // namespace

BOOST_AUTO_TEST_SUITE(edit_venue)

BOOST_DATA_TEST_CASE(a_section_that_a_hang_must_cover_stays_and_another_may_go, bothEngines, engine) {
  const FreshStore fresh(engine);
  const auto store = fresh.open();
  fill(*store);
  venue::Venue plain = hall(*store);
  plain.house.clear(); // the sample's house rule has a made-up name
  const venue::Venue before = store::save(*store, plain);
  venue::Venue wanted = before;
  std::erase_if(wanted.sections, [](const auto& each) { return each.name == QStringLiteral("stalls"); });
  BOOST_TEST_REQUIRE(wanted.sections.size() == before.sections.size() - 1);
  const QString says = refusal(*store, wanted);
  BOOST_TEST(says.startsWith(QStringLiteral("section stalls: the show “Skerrymouth”")), says.toStdString());
  BOOST_TEST((hall(*store) == before));
  wanted = before;
  std::erase_if(wanted.sections, [](const auto& each) { return each.name != QStringLiteral("stalls"); });
  BOOST_TEST(refusal(*store, wanted).isEmpty());
  BOOST_TEST(hall(*store).sections.size() == 1u);
}

BOOST_AUTO_TEST_SUITE_END()
