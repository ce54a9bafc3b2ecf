// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/standing.h"
#include "options/demand.h"

/// Stock against demand, day by day.
namespace hangbook::options {

/// What the fleet is made of.
struct Stock {
  std::vector<fleet::Unit> units;
  std::vector<fleet::ExaminationRule> rules;
  std::vector<fleet::Examination> examinations;
  std::vector<fleet::Occurrence> occurrences;
};

/// A show that takes this type on that day.
struct Taker {
  QString tour;
  QString show;
  int number{};
};

/// One type on one day. Every unit but the written-off ones is counted once: kept back, due, or fit.
struct TypeOnDay {
  fleet::UnitKind kind = fleet::UnitKind::cabinet;
  QString type;
  int owned{};       ///< our own, whatever their state
  int hired{};       ///< of others, and not due back before that day
  int away{};        ///< recorded as away today
  int quarantined{}; ///< quarantined or in repair: kept back
  int due{};         ///< not kept back, but an examination does not stand on that day
  int unruled{};     ///< fit, though no rule says how often it must be examined
  int wanted{};      ///< by the shows that are away on that day
  std::vector<Taker> takers;
  int fit() const { return owned + hired - quarantined - due; }
  int free() const { return fit() - wanted; } ///< below 0: so many are short
};

/// Every type that the fleet has or a show takes, in order of kind and type.
std::vector<TypeOnDay> stockOn(QDate day, const Stock& stock, const std::vector<Demand>& demands);

/// One type on several days, worked out together.
std::vector<TypeOnDay> typeOverDays(fleet::UnitKind kind, const QString& type, const std::vector<QDate>& days,
                                    const Stock& stock, const std::vector<Demand>& demands);

/// A type that a show lacks on some day of its time away.
struct Shortage {
  QString tour;
  QString show;
  fleet::UnitKind kind = fleet::UnitKind::cabinet;
  QString type;
  QDate day;     ///< the first of its worst days
  int lacking{}; ///< so many are missing on that day, over all shows that are away then
  int examine{}; ///< of these so many would be there if they were examined
  int release{}; ///< so many more if what is kept back came free
  int hire{};    ///< and so many must come from elsewhere
};

/// The shortages of every show, each type once with its worst day; in order of day.
std::vector<Shortage> shortagesOf(const Stock& stock, const std::vector<Demand>& demands);

} // namespace hangbook::options
