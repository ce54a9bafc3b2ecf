// SPDX-License-Identifier: GPL-3.0-or-later
// What would do and what breaks first: a show that stands, its parts unlike, spoilt in one way at a time.
#include <boost/test/unit_test.hpp>

#include <array>
#include <functional>

#include <QJsonArray>
#include <QJsonObject>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "model/options/show_fixture.h"
#include "options/easing_json.h"
#include "options/search.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Option;
using options::Snapshot;

namespace {

/// Few settings, since each answer takes a hundred runs over all of them.
Snapshot standing(std::uint64_t seed) {
  Snapshot made = smallHarbourShow();
  Chance by(seed);
  for (catalogue::CabinetType& type : made.catalogue.cabinets) {
    type.mass = kilograms(inKilograms(*type.mass) * by.between(0.95, 1.05));
  }
  catalogue::BarType& bar = made.catalogue.bars.front();
  bar.tiltStep = degrees(by.between(5, 7));
  catalogue::ChainType& chain = made.catalogue.chains.front();
  chain.pitch = metres(by.between(0.08, 0.1));
  chain.links = 26;
  for (venue::Point& point : made.venue.points) {
    point.capacity = kilonewtons(by.between(11, 14));
    point.x = metres(by.between(0.45, 0.55));
  }
  made.venue.lowSteel = metres(by.between(18, 19));
  return made;
}

struct Spoilt {
  const char* what;
  std::function<void(Snapshot&)> how;
};

const std::vector<Spoilt>& ways() {
  static const std::vector<Spoilt> all{
      {"as it is", [](Snapshot&) {}},
      {"point", [](Snapshot& show) { show.venue.points[0].capacity = kilonewtons(3.17); }},
      {"zone", [](Snapshot& show) { show.venue.zones[0].capacity = kilonewtons(9.63); }},
      {"low steel", [](Snapshot& show) { show.venue.lowSteel = metres(7.94); }},
      {"lowest trim", [](Snapshot& show) { show.show.hangs[0].leastTrim = metres(15.37); }},
      {"chain", [](Snapshot& show) { show.catalogue.chains[0].limit = kilonewtons(0.35); }},
      {"sections",
       [](Snapshot& show) {
         show.venue.sections[1].profile = {{metres(70), metres(12)}, {metres(90), metres(20)}};
       }},
      {"points apart", [](Snapshot& show) { show.venue.points[1].y = metres(8.4); }},
      {"screen",
       [](Snapshot& show) {
         show.venue.obstructions.push_back(
             {QStringLiteral("screen"), metres(-1), metres(2), metres(8), metres(12), metres(8.81)});
       }},
      {"outdoors",
       [](Snapshot& show) {
         show.venue.outdoors = true;
         show.show.wind = metresPerSecond(16.4);
         show.show.windBasis = calendar::WindBasis::gust;
         show.show.windAveraging = 3;
         show.show.windHeight = metres(20);
         show.show.hangs[0].wetMass = kilograms(11);
       }},
      {"outdoors, little wind",
       [](Snapshot& show) {
         show.venue.outdoors = true;
         show.show.wind = metresPerSecond(3.2);
         show.show.windBasis = calendar::WindBasis::gust;
         show.show.windAveraging = 2;
         show.show.windHeight = metres(21);
         show.show.hangs[0].wetMass = kilograms(7);
       }},
      {"stock",
       [](Snapshot& show) {
         std::erase_if(show.units, [](const fleet::Unit& unit) {
           return unit.type == QStringLiteral("bass") && unit.serial > QStringLiteral("bass-2");
         });
       }},
      {"stock short",
       [](Snapshot& show) {
         std::erase_if(show.units, [](const fleet::Unit& unit) {
           return unit.kind == fleet::UnitKind::cabinet && unit.serial.endsWith(u'3');
         });
         for (fleet::Unit& unit : show.units) {
           if (unit.type == QStringLiteral("upper") && unit.serial > QStringLiteral("upper-3")) {
             unit.state = fleet::UnitState::quarantined;
           }
         }
         show.show.hangs.resize(1);
       }},
      {"examinations",
       [](Snapshot& show) {
         for (fleet::Examination& each : show.examinations) {
           each.date =
               each.serial.endsWith(u'1') || each.serial.endsWith(u'2') ? each.date : QDate(2026, 1, 5);
         }
       }},
      {"a mass", [](Snapshot& show) { show.catalogue.cabinets[0].mass.reset(); }},
  };
  return all;
}

void spoilt(std::vector<Line>& lines, const Spoilt& way, std::uint64_t seed) {
  Snapshot show = standing(seed);
  const std::vector<Option> before = options::decide(show, QStringLiteral("left")).hangs.front().options;
  const QString id = before[seed % 3 % before.size()].id;
  way.how(show);
  const Option now = options::decideOnly(show, id, QStringLiteral("left")).hangs.front().options.front();
  const std::string name = std::string("would do, ") + way.what;
  addOption(lines, name, now);
  Line would(name);
  would.plain(wordFor(now.verdict).toStdString());
  add(would, QJsonValue(toJson(options::easingsOf(show, now))));
  add(would, QJsonValue(toJson(options::reservesOf(show, now))));
  lines.push_back(would);
}

/// Limits so far off that most ways end unbroken.
void farOff(Snapshot& show) {
  for (venue::Point& each : show.venue.points) {
    each.capacity = kilonewtons(900);
    each.z = metres(60);
  }
  for (venue::Zone& each : show.venue.zones) {
    each.capacity = kilonewtons(2000);
  }
  show.venue.lowSteel = metres(58);
  for (catalogue::HoistType& each : show.catalogue.hoists) {
    each.limit = kilonewtons(900);
    each.chainLength = metres(90);
  }
  for (catalogue::BarType& bar : show.catalogue.bars) {
    for (catalogue::PickArrangement& each : bar.arrangements) {
      each.limit = kilonewtons(2000);
    }
  }
  for (catalogue::ChainType& each : show.catalogue.chains) {
    each.limit = kilonewtons(900);
  }
  for (catalogue::HardwareType& each : show.catalogue.hardware) {
    each.limit = kilonewtons(900);
  }
  for (catalogue::StackingTable& table : show.catalogue.tables) {
    for (catalogue::Join& each : table.joins) {
      each.pinLimit = each.contactLimit = each.stopLimit = kilonewtons(900);
    }
  }
  show.show.house.push_back(
      {QStringLiteral("cover-share"), 1.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 5, 1)});
}

/// How far the best option of a show that stands is from its first limits.
void standingFar(std::vector<Line>& lines, std::uint64_t seed) {
  Snapshot show = standing(seed);
  if (seed % 3 == 1) {
    farOff(show);
  }
  if (seed % 2 == 1) {
    show.venue.outdoors = true;
    show.show.wind = metresPerSecond(0.5);
    show.show.windBasis = calendar::WindBasis::gust;
    show.show.windAveraging = 2;
    show.show.windHeight = metres(seed % 3 == 1 ? 70 : 21);
    show.show.hangs[0].wetMass = kilograms(1);
  }
  if (seed % 4 == 2) {
    for (catalogue::StackingTable& table : show.catalogue.tables) {
      table.lowest.pop_back(); // without the downfill no chain
    }
    show.show.house.push_back(
        {QStringLiteral("cover-share"), 40.0, {}, {}, QStringLiteral("Edda"), QDate(2026, 5, 1)});
  }
  const options::HangOptions found = options::decide(show, QStringLiteral("left")).hangs.front();
  const Option& first = found.options.front();
  Line line("far " + std::to_string(seed));
  line.plain(wordFor(first.verdict).toStdString() + (first.setting->mark ? " chain" : ""));
  add(line, QJsonValue(toJson(options::reservesOf(show, first))));
  lines.push_back(line);
}

/// Every fourth way, from this one on.
void partOfThem(std::uint64_t part) {
  std::vector<Line> lines;
  for (std::uint64_t seed = part; seed < ways().size(); seed += 4) {
    if (looksAt(seed + 2)) {
      spoilt(lines, ways()[seed], seed);
    }
  }
  compareWithKept(lines, partFile("would_do", part));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(what_would_do_comes_out_as_kept_1) {
  partOfThem(0);
}
BOOST_AUTO_TEST_CASE(what_would_do_comes_out_as_kept_2) {
  partOfThem(1);
}
BOOST_AUTO_TEST_CASE(what_would_do_comes_out_as_kept_3) {
  partOfThem(2);
}
BOOST_AUTO_TEST_CASE(what_would_do_comes_out_as_kept_4) {
  partOfThem(3);
}

BOOST_AUTO_TEST_CASE(what_breaks_first_comes_out_as_kept) {
  std::vector<Line> lines;
  const std::array<std::uint64_t, 6> seeds{25, 22, 21, 26, 20, 31};
  for (std::size_t number = 0; number < seeds.size(); ++number) {
    if (looksAt(number)) {
      standingFar(lines, seeds.at(number));
    }
  }
  compareWithKept(lines, "breaks_first.txt");
}

BOOST_AUTO_TEST_SUITE_END()
