// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/stock_look.h"

#include <algorithm>
#include <iterator>

#include "desk/words/words.h"

namespace hangbook::desk {
std::vector<options::Demand> demandsOf(const Overview& overview, QDate from) {
  std::vector<options::Demand> demands;
  for (const calendar::Show& show : overview.shows) {
    if (show.awayTo.isValid() && show.awayTo < from) {
      continue;
    }
    std::vector<options::Choice> choices;
    std::ranges::copy_if(overview.choices, std::back_inserter(choices), [&](const options::Choice& each) {
      return each.tour == show.tour && each.show == show.name;
    });
    demands.push_back(options::demandOf(overview.catalogue, show, choices, overview.plugs));
  }
  return demands;
}

StockLook stockLook(const Overview& overview, QDate day) {
  const options::Stock stock{overview.units, overview.rules, overview.examinations, overview.occurrences};
  const std::vector<options::Demand> demands = demandsOf(overview, std::min(day, overview.today));
  StockLook look;
  look.day = day;
  look.types = options::stockOn(day, stock, demands);
  look.shortages = options::shortagesOf(stock, demands);
  for (const options::Demand& each : demands) {
    look.hangsNotChosen += static_cast<int>(each.open.size());
    const bool from = !each.from.isValid() || each.from <= day;
    if (from && (!each.to.isValid() || each.to >= day)) {
      look.away << each.show;
    }
  }
  return look;
}

QString fillsIt(const options::Shortage& lack) {
  QStringList ways;
  if (lack.examine > 0) {
    ways << Words::tr("examine %1").arg(lack.examine);
  }
  if (lack.release > 0) {
    ways << Words::tr("release or repair %1").arg(lack.release);
  }
  if (lack.hire > 0) {
    ways << Words::tr("hire in %1").arg(lack.hire);
  }
  return ways.join(QStringLiteral(", "));
}

} // namespace hangbook::desk
