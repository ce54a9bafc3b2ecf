// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure that a house may set, at the very figures that a hang comes to, at nothing and far beyond; and
// every limit of the makers' at the load that it meets: which verdict changes, against what was kept.
#include <boost/test/unit_test.hpp>

#include <cmath>
#include <map>
#include <set>

#include "kept/option_lines.h"
#include "kept/unlike_show.h"
#include "options/house_figures.h"
#include "options/search.h"

using namespace hangbook;
using namespace hangbook::testing;
using options::Finding;
using options::Option;
using options::Snapshot;

namespace {

/// Values of the findings in each unit.
std::map<QString, std::set<double>> valuesOf(const Option& option) {
  std::map<QString, std::set<double>> values;
  for (const Finding& each : option.findings) {
    if (each.value && std::isfinite(*each.value) && *each.value >= 0.0) {
      values[each.unit].insert(*each.value);
    }
  }
  return values;
}

void verdictsAt(Line& line, const Snapshot& snapshot, const Option& option) {
  const Option now = options::judge(snapshot, option.key, *option.setting);
  line.word(letters(now));
  for (const Finding& each : now.findings) {
    line.number(each.value);
    line.number(each.limit);
  }
}

void houseFigures(Line& line, const Snapshot& snapshot, const Option& option) {
  const auto values = valuesOf(option);
  for (const options::HouseFigureKind& kind : options::houseFigureKinds()) {
    std::set<double> figures{0.0, 1.0, 3.0 * kind.usual.value_or(0.7)};
    if (const auto same = values.find(kind.unit); same != values.end() && !kind.unit.isEmpty()) {
      figures.insert(same->second.begin(), same->second.end());
    }
    for (const double figure : figures) {
      Snapshot changed = snapshot;
      changed.show.house = {{kind.id, figure, {}, {}, QStringLiteral("Edda"), QDate(2026, 12, 1)}};
      verdictsAt(line, changed, option);
    }
  }
}

/// A limit just above the load that a rule finds, and just below; likewise one of which it is nine tenths.
/// What is met exactly is a matter of the last digit and of machines here: tests of the rules have it.
template <class Limit>
void atLoads(Line& line, const Snapshot& snapshot, const Option& option, const char* rule, Limit limit) {
  for (const Finding& each : option.findings) {
    if (each.rule == QLatin1String(rule) && each.value && *each.value > 0.0) {
      for (const double part : {1.0 + 1e-6, 1.0 - 1e-6, 0.9 + 1e-6, 0.9 - 1e-6}) {
        Snapshot changed = snapshot;
        limit(changed, kilonewtons(*each.value / part));
        verdictsAt(line, changed, option);
      }
    }
  }
}

void makersLimits(Line& line, const Snapshot& snapshot, const Option& option) {
  atLoads(line, snapshot, option, "point-load", [](Snapshot& show, Force limit) {
    for (venue::Point& each : show.venue.points) {
      each.capacity = limit;
    }
  });
  atLoads(line, snapshot, option, "zone-load", [](Snapshot& show, Force limit) {
    for (venue::Zone& each : show.venue.zones) {
      each.capacity = limit;
    }
  });
  atLoads(line, snapshot, option, "hoist",
          [](Snapshot& show, Force limit) { show.catalogue.hoists[0].limit = limit; });
  atLoads(line, snapshot, option, "bar", [](Snapshot& show, Force limit) {
    for (auto& each : show.catalogue.bars[0].arrangements) {
      each.limit = limit;
    }
  });
  for (const char* rule : {"joint", "joint-pins", "contact"}) {
    atLoads(line, snapshot, option, rule, [](Snapshot& show, Force limit) {
      for (auto& each : show.catalogue.tables[0].joins) {
        each.pinLimit = limit;
        each.contactLimit = limit;
        each.stopLimit = limit;
      }
    });
  }
  atLoads(line, snapshot, option, "chain",
          [](Snapshot& show, Force limit) { show.catalogue.chains[0].limit = limit; });
  for (const char* rule : {"hardware", "bridle", "secondary"}) {
    atLoads(line, snapshot, option, rule, [](Snapshot& show, Force limit) {
      for (auto& each : show.catalogue.hardware) {
        each.limit = limit;
      }
    });
  }
}

/// The first option of the show with a chain.
void atTheLimits(std::vector<Line>& lines, std::uint64_t seed) {
  const Snapshot snapshot = unlikeShow(seed);
  const options::HangOptions found = options::decide(snapshot, QStringLiteral("left")).hangs.front();
  for (const Option& option : found.options) {
    if (option.setting && option.setting->mark && option.hangInput) {
      const std::string name = "limits " + std::to_string(seed);
      Line house(name + " house");
      houseFigures(house, snapshot, option);
      lines.push_back(house);
      Line makers(name + " makers");
      makersLimits(makers, snapshot, option);
      lines.push_back(makers);
      return;
    }
  }
}

/// Three of nine shows.
void partOfThem(std::uint64_t part) {
  std::vector<Line> lines;
  for (std::uint64_t seed = 200 + 2 * part; seed < 218; seed += 6) {
    if (looksAt((seed - 200 - 2 * part) / 6)) {
      atTheLimits(lines, seed);
    }
  }
  compareWithKept(lines, partFile("limits", part));
}

} // namespace

BOOST_AUTO_TEST_SUITE(kept)

BOOST_AUTO_TEST_CASE(verdicts_at_the_limits_come_out_as_kept_1) {
  partOfThem(0);
}
BOOST_AUTO_TEST_CASE(verdicts_at_the_limits_come_out_as_kept_2) {
  partOfThem(1);
}
BOOST_AUTO_TEST_CASE(verdicts_at_the_limits_come_out_as_kept_3) {
  partOfThem(2);
}

BOOST_AUTO_TEST_SUITE_END()
