// SPDX-License-Identifier: GPL-3.0-or-later
// Units hired in, and examinations brought forward.
#include <algorithm>

#include "fleet/due.h"
#include "options/easing_lever.h"
#include "options/gear_needs.h"

namespace hangbook::options {
namespace {

constexpr int mostHired = 100;

struct Type {
  fleet::UnitKind kind = fleet::UnitKind::cabinet;
  QString name;
};

std::vector<Type> typesOf(const Trial& trial) {
  const catalogue::Catalogue& catalogue = trial.snapshot.catalogue;
  QStringList cabinets = trial.key.stack;
  cabinets.removeDuplicates();
  std::vector<Type> types;
  for (const QString& name : cabinets) {
    types.push_back({fleet::UnitKind::cabinet, name});
  }
  types.push_back({fleet::UnitKind::bar, trial.key.bar});
  types.push_back({fleet::UnitKind::hoist, trial.key.hoist});
  const auto* table = catalogue::find(catalogue.tables, trial.key.table);
  if (table != nullptr && !table->chain.isEmpty()) {
    types.push_back({fleet::UnitKind::chain, table->chain});
  }
  for (const catalogue::CartType& cart : catalogue.carts) {
    if (cabinets.contains(cart.carries)) {
      types.push_back({fleet::UnitKind::cart, cart.name});
    }
  }
  return types;
}

/// A pass by every rule that is for this unit, on the day before it leaves.
void examine(Snapshot& snapshot, const fleet::Unit& unit) {
  const QDate day = snapshot.show.awayFrom.isValid() ? snapshot.show.awayFrom : snapshot.today;
  for (const fleet::ExaminationRule& rule : snapshot.examinationRules) {
    if (fleet::appliesTo(rule, unit)) {
      fleet::Examination pass;
      pass.serial = unit.serial;
      pass.rule = rule.name;
      pass.date = day;
      snapshot.examinations.push_back(pass);
    }
  }
}

void hire(Snapshot& snapshot, const Type& type, int number) {
  for (int i = 1; i <= number; ++i) {
    fleet::Unit unit;
    unit.serial = QStringLiteral("hired %1 %2").arg(type.name).arg(i);
    unit.kind = type.kind;
    unit.type = type.name;
    unit.owner = QStringLiteral("hired in");
    examine(snapshot, unit);
    snapshot.units.push_back(std::move(unit));
  }
}

QString lastDay(const Snapshot& snapshot) {
  return snapshot.show.awayTo.isValid() ? snapshot.show.awayTo.toString(Qt::ISODate)
                                        : QStringLiteral("the last day away");
}

Change changeFor(const char* kind, const std::vector<Type>& types, const Steps& steps, const QString& words) {
  Change change{QString::fromLatin1(kind), {}, QStringLiteral("units"), 1.0, {}};
  QStringList parts;
  for (std::size_t i = 0; i < types.size(); ++i) {
    if (steps[i] > 0) {
      parts.append(QStringLiteral("%1 of %2").arg(steps[i]).arg(types[i].name));
      change.figures.push_back({types[i].name, 0.0, static_cast<double>(steps[i]), steps[i]});
    }
  }
  change.words = words.arg(parts.join(QStringLiteral(", ")));
  return change;
}

void addHire(const Trial& trial, std::vector<Lever>& into) {
  const std::vector<Type> types = typesOf(trial);
  Lever lever;
  lever.kind = QStringLiteral("hire");
  lever.unit = QStringLiteral("units");
  lever.most = Steps(types.size(), mostHired);
  lever.apply = [types](Trial& other, const Steps& steps) {
    for (std::size_t i = 0; i < types.size(); ++i) {
      hire(other.snapshot, types[i], steps[i]);
    }
  };
  lever.change = [types, until = lastDay(trial.snapshot)](const Steps& steps) {
    return changeFor("hire", types, steps,
                     QStringLiteral("Hire in %1, with examinations that stand until ") + until);
  };
  into.push_back(std::move(lever));
}

/// Those that could go, were they examined: by serial.
std::vector<fleet::Unit> lapsing(const Snapshot& snapshot, const Type& type) {
  const fleet::LastExaminations last(snapshot.examinations);
  const fleet::Happened happened(snapshot.occurrences);
  std::vector<fleet::Unit> units;
  for (const fleet::Unit& unit : snapshot.units) {
    if (unit.kind != type.kind || unit.type != type.name) {
      continue;
    }
    bool ruled{};
    const QDate until = fleet::standsUntil(unit, snapshot.examinationRules, last, &ruled, happened);
    if (ruled && (!until.isValid() || until < snapshot.show.awayTo)) {
      units.push_back(unit);
    }
  }
  std::ranges::stable_sort(units, {}, &fleet::Unit::serial);
  return units;
}

void addExaminations(const Trial& trial, std::vector<Lever>& into) {
  const Snapshot& snapshot = trial.snapshot;
  if (!snapshot.show.awayTo.isValid()) {
    return;
  }
  std::vector<Type> types;
  std::vector<std::vector<fleet::Unit>> units;
  Lever lever;
  for (const Type& type : typesOf(trial)) {
    if (auto found = lapsing(snapshot, type); !found.empty()) {
      types.push_back(type);
      lever.most.push_back(static_cast<int>(found.size()));
      units.push_back(std::move(found));
    }
  }
  if (types.empty()) {
    return;
  }
  lever.kind = QStringLiteral("examination");
  lever.unit = QStringLiteral("units");
  lever.apply = [units](Trial& other, const Steps& steps) {
    for (std::size_t i = 0; i < units.size(); ++i) {
      for (int n = 0; n < steps[i]; ++n) {
        examine(other.snapshot, units[i][static_cast<std::size_t>(n)]);
      }
    }
  };
  lever.change = [types, units, before = snapshot.show.awayFrom](const Steps& steps) {
    QStringList serials;
    for (std::size_t i = 0; i < units.size(); ++i) {
      for (int n = 0; n < steps[i]; ++n) {
        serials.append(units[i][static_cast<std::size_t>(n)].serial);
      }
    }
    return changeFor("examination", types, steps,
                     QStringLiteral("Examination of %1 brought forward") +
                         (before.isValid()
                              ? QStringLiteral(" to no later than %1").arg(before.toString(Qt::ISODate))
                              : QString()) +
                         QStringLiteral(" (such as %1)").arg(serials.join(QStringLiteral(", "))));
  };
  into.push_back(std::move(lever));
}

} // namespace

void addGearLevers(const Trial& trial, std::vector<Lever>& into) {
  addHire(trial, into);
  addExaminations(trial, into);
}

} // namespace hangbook::options
