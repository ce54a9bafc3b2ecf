// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/stock_day.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "fleet/due.h"

namespace hangbook::options {
namespace {

using fleet::UnitState;

/// A show that does not know its days is away on all of them.
bool isAway(const Demand& demand, QDate day) {
  return (!demand.from.isValid() || demand.from <= day) && (!demand.to.isValid() || demand.to >= day);
}

/// The units of a fleet with the day until which each is examined, worked out once for any number of days.
class Counter {
public:
  explicit Counter(const Stock& stock) {
    const fleet::LastExaminations last(stock.examinations);
    const fleet::Happened happened(stock.occurrences);
    for (const fleet::Unit& unit : stock.units) {
      if (unit.state == UnitState::writtenOff) {
        continue;
      }
      bool ruled = false;
      const QDate until = fleet::standsUntil(unit, stock.rules, last, &ruled, happened);
      lines_.push_back({&unit, until, ruled});
    }
  }

  std::vector<TypeOnDay> on(QDate day, const std::vector<Demand>& demands) const {
    std::map<std::pair<fleet::UnitKind, QString>, TypeOnDay> types;
    for (const Line& line : lines_) {
      const fleet::Unit& unit = *line.unit;
      if (!unit.owner.isEmpty() && unit.hiredUntil.isValid() && unit.hiredUntil < day) {
        continue; // back at its owner by then
      }
      const int pieces = piecesOf(unit);
      TypeOnDay& type = types[{unit.kind, unit.type}];
      (unit.owner.isEmpty() ? type.owned : type.hired) += pieces;
      type.away += unit.state == UnitState::away ? pieces : 0;
      if (unit.state == UnitState::quarantined || unit.state == UnitState::inRepair) {
        type.quarantined += pieces;
      } else if (line.ruled && (!line.until.isValid() || line.until < day)) {
        type.due += pieces;
      } else if (!line.ruled) {
        type.unruled += pieces;
      }
    }
    for (const Demand& demand : demands) {
      if (isAway(demand, day)) {
        for (const auto& [what, number] : demand.numbers) {
          TypeOnDay& type = types[what];
          type.wanted += number;
          type.takers.push_back({demand.tour, demand.show, number});
        }
      }
    }
    std::vector<TypeOnDay> all;
    for (auto& [what, type] : types) {
      type.kind = what.first;
      type.type = what.second;
      all.push_back(std::move(type));
    }
    return all;
  }

  /// Days between which nothing changes for the worse begin or end: the first days away of shows, and the day
  /// after an examination or a hire ends.
  std::set<QDate> turningDays(QDate from, QDate to) const {
    std::set<QDate> days{from};
    const auto add = [&](QDate day) {
      if (day > from && day <= to) { // one that is none comes before all others
        days.insert(day);
      }
    };
    for (const Line& line : lines_) {
      add(line.until.addDays(1));
      add(line.unit->hiredUntil.addDays(1));
    }
    return days;
  }

private:
  struct Line {
    const fleet::Unit* unit;
    QDate until;
    bool ruled;
  };
  std::vector<Line> lines_;
};

Shortage shortageOf(const Demand& demand, const TypeOnDay& type, QDate day) {
  Shortage lack{demand.tour, demand.show, type.kind, type.type, day, -type.free()};
  lack.examine = std::min(lack.lacking, type.due);
  lack.release = std::min(lack.lacking - lack.examine, type.quarantined);
  lack.hire = lack.lacking - lack.examine - lack.release;
  return lack;
}

} // namespace

std::vector<TypeOnDay> stockOn(QDate day, const Stock& stock, const std::vector<Demand>& demands) {
  return Counter(stock).on(day, demands);
}

std::vector<TypeOnDay> typeOverDays(fleet::UnitKind kind, const QString& type, const std::vector<QDate>& days,
                                    const Stock& stock, const std::vector<Demand>& demands) {
  const Counter counter(stock);
  std::vector<TypeOnDay> over;
  for (const QDate& day : days) {
    TypeOnDay here;
    here.kind = kind;
    here.type = type;
    for (TypeOnDay& each : counter.on(day, demands)) {
      if (each.kind == kind && each.type == type) {
        here = std::move(each);
      }
    }
    over.push_back(std::move(here));
  }
  return over;
}

std::vector<Shortage> shortagesOf(const Stock& stock, const std::vector<Demand>& demands) {
  const Counter counter(stock);
  std::map<QDate, std::vector<TypeOnDay>> known;
  const auto on = [&](QDate day) -> const std::vector<TypeOnDay>& {
    const auto [at, fresh] = known.try_emplace(day);
    if (fresh) {
      at->second = counter.on(day, demands);
    }
    return at->second;
  };
  std::vector<Shortage> all;
  for (const Demand& demand : demands) {
    if (!demand.from.isValid() || !demand.to.isValid() || demand.from > demand.to) {
      continue;
    }
    std::set<QDate> days = counter.turningDays(demand.from, demand.to);
    for (const Demand& other : demands) {
      if (other.from.isValid() && other.from > demand.from && other.from <= demand.to) {
        days.insert(other.from);
      }
    }
    std::map<std::pair<fleet::UnitKind, QString>, Shortage> worst;
    for (const QDate& day : days) {
      for (const TypeOnDay& type : on(day)) {
        const std::pair what{type.kind, type.type};
        if (type.free() >= 0 || !demand.numbers.contains(what)) {
          continue;
        }
        const auto found = worst.find(what);
        if (found == worst.end() || found->second.lacking < -type.free()) {
          worst[what] = shortageOf(demand, type, day);
        }
      }
    }
    for (const auto& [what, lack] : worst) {
      all.push_back(lack);
    }
  }
  std::ranges::stable_sort(all, [](const Shortage& a, const Shortage& b) {
    return std::tie(a.day, a.tour, a.show) < std::tie(b.day, b.tour, b.show);
  });
  return all;
}

} // namespace hangbook::options
