// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/gear_needs.h"

#include <algorithm>
#include <array>
#include <map>

#include "fleet/due.h"
#include "options/bridle_pick.h"
#include "options/demand.h"

namespace hangbook::options {
namespace {

using fleet::UnitKind;
using fleet::UnitState;

/// What the legs of a key's bridles are made up from.
void addLegs(const Case& option, const OptionKey& key, Numbers& into) {
  for (const QString& name : key.points) {
    const auto* bridle = catalogue::find(option.snapshot->venue.bridles, name);
    if (bridle == nullptr) {
      continue;
    }
    const auto pick =
        bridledPick(*option.snapshot, *option.house, *bridle); // holds the legs while they are read
    for (const BridleLeg& leg : pick->legs) {
      for (const LegPiece& piece : leg.pieces) {
        into[{UnitKind::hardware, piece.type->name}] += piece.count;
      }
    }
  }
}

int asCount(const Case& option, const char* figure) {
  return static_cast<int>(option.house->figure(QString::fromLatin1(figure)).value.value_or(0.0));
}

int sparesFor(const Case& option, UnitKind kind) {
  switch (kind) {
  case UnitKind::cabinet:
    return asCount(option, "spare-cabinets");
  case UnitKind::bar:
    return asCount(option, "spare-bars");
  case UnitKind::hoist:
    return asCount(option, "spare-hoists");
  case UnitKind::chain:
    return asCount(option, "spare-chains");
  default:
    return 0;
  }
}

/// What other shows take, each over its own days; a choice without days counts as taking it all the time.
struct Elsewhere {
  QDate from;
  QDate to;
  Numbers numbers;
};

std::vector<Elsewhere> elsewhereOf(const Snapshot& snapshot, const GearNeeds& needs) {
  std::vector<Elsewhere> all;
  for (const Choice* choice : newestOf(snapshot.otherChoices)) {
    Elsewhere each{choice->awayFrom.isValid() ? choice->awayFrom : needs.awayFrom,
                   choice->awayTo.isValid() ? choice->awayTo : needs.awayTo,
                   {}};
    if (needs.datesKnown && (each.from > needs.awayTo || each.to < needs.awayFrom)) {
      continue;
    }
    addKey(choice->key, chainOf(snapshot.catalogue, *choice), each.numbers);
    all.push_back(std::move(each));
  }
  return all;
}

/// The most that the others take on any one day of ours: shows that do not overlap each other may use the
/// same units one after the other. The sum can only rise on a day on which one of them starts.
template <class Count>
int mostAtOnce(const std::vector<Elsewhere>& others, const GearNeeds& needs, Count count) {
  int most = 0;
  for (const Elsewhere& start : others) {
    const QDate day = std::max(start.from, needs.awayFrom);
    int sum = 0;
    for (const Elsewhere& each : others) {
      if (each.from <= day && each.to >= day) {
        sum += count(each.numbers);
      }
    }
    most = std::max(most, sum);
  }
  return most;
}

int numberIn(const Numbers& numbers, const std::pair<UnitKind, QString>& what) {
  const auto found = numbers.find(what);
  return found == numbers.end() ? 0 : found->second;
}

bool isFree(const fleet::Unit& unit, QDate until) {
  return (unit.state == UnitState::ready || unit.state == UnitState::away) &&
         (!unit.hiredUntil.isValid() || !until.isValid() || unit.hiredUntil >= until);
}

void countUnits(const Case& option, const fleet::LastExaminations& last, const fleet::Happened& happened,
                const GearNeeds& needs, UnitNeed& need) {
  const Snapshot& snapshot = *option.snapshot;
  need.ruled = std::any_of(snapshot.examinationRules.begin(), snapshot.examinationRules.end(),
                           [&](const fleet::ExaminationRule& rule) {
                             return rule.kind == need.kind && (rule.type.isEmpty() || rule.type == need.type);
                           });
  const int margin = asCount(option, "examination-margin");
  for (const fleet::Unit& unit : snapshot.units) {
    if (unit.kind != need.kind || unit.type != need.type) {
      continue;
    }
    need.owned += piecesOf(unit);
    if (!isFree(unit, needs.awayTo)) {
      continue;
    }
    need.free += piecesOf(unit);
    bool ruled = false;
    const QDate until = fleet::standsUntil(unit, snapshot.examinationRules, last, &ruled, happened);
    if (!ruled || !until.isValid()) {
      continue;
    }
    need.firstDue = !need.firstDue.isValid() || until < need.firstDue ? until : need.firstDue;
    need.examined += until >= needs.awayTo ? piecesOf(unit) : 0;
    need.examinedLonger += until >= needs.awayTo.addDays(margin) ? piecesOf(unit) : 0;
  }
}

const catalogue::CartType* cartFor(const catalogue::Catalogue& catalogue, const QString& cabinet) {
  for (const catalogue::CartType& each : catalogue.carts) {
    if (each.carries == cabinet) {
      return &each;
    }
  }
  return nullptr;
}

/// Whole carts, and what is left over of all hangs together on as few more as can be.
void countCarts(const Case& option, const std::vector<Elsewhere>& others, const GearNeeds& needs,
                CartNeed& need) {
  const catalogue::CartType* type = cartFor(option.snapshot->catalogue, need.cabinet);
  if (type == nullptr) {
    return;
  }
  need.cart = type->name;
  need.most = type->most && *type->most > 0 ? type->most : std::nullopt;
  if (!need.most) {
    return;
  }
  const int most = *need.most;
  int together = 0;
  int whole = 0;
  int odd = 0;
  for (const int each : need.cabinets) {
    together += each;
    whole += each / most;
    odd += each % most > 0 ? 1 : 0;
  }
  need.needed = (together + most - 1) / most;
  need.shared = odd > need.needed - whole ? need.needed - whole : 0;
  need.notFull = together % most > 0 ? 1 : 0;
  for (const fleet::Unit& unit : option.snapshot->units) {
    need.free += unit.kind == UnitKind::cart && unit.type == need.cart && isFree(unit, needs.awayTo) ? 1 : 0;
  }
  need.elsewhere = mostAtOnce(others, needs, [&](const Numbers& numbers) {
    return (numberIn(numbers, {UnitKind::cabinet, need.cabinet}) + most - 1) / most;
  });
}

} // namespace

QString wordFor(fleet::UnitKind kind) {
  switch (kind) {
  case UnitKind::cabinet:
    return QStringLiteral("cabinet");
  case UnitKind::bar:
    return QStringLiteral("bar");
  case UnitKind::hoist:
    return QStringLiteral("hoist");
  case UnitKind::chain:
    return QStringLiteral("chain");
  case UnitKind::cart:
    return QStringLiteral("cart");
  case UnitKind::hardware:
    return QStringLiteral("hardware");
  case UnitKind::loom:
    return QStringLiteral("loom");
  }
  return {};
}

std::shared_ptr<const GearNeeds> gearNeeds(const Case& option) {
  const Snapshot& snapshot = *option.snapshot;
  auto needs = std::make_shared<GearNeeds>();
  needs->awayFrom = snapshot.show.awayFrom;
  needs->awayTo = snapshot.show.awayTo;
  needs->datesKnown =
      needs->awayFrom.isValid() && needs->awayTo.isValid() && needs->awayFrom <= needs->awayTo;

  const bool bySerial = asCount(option, "hardware-by-serial") != 0;
  // By its name in the table: a chain whose type nobody described is needed all the same.
  const QString chain = option.held != 0 ? option.table->chain : QString();
  const auto chosen = newestOf(snapshot.choices);
  Numbers numbers;
  std::vector<Numbers> ofHang;
  for (const calendar::Hang& hang : snapshot.show.hangs) {
    const auto choice = std::find_if(chosen.begin(), chosen.end(), [&](const Choice* each) {
      return each->hang == hang.name && each->show == snapshot.show.name && each->tour == snapshot.show.tour;
    });
    const bool own = hang.name == option.hang->name;
    const bool asChosen = !own && choice != chosen.end();
    Numbers each;
    const OptionKey& key = asChosen ? (*choice)->key : option.key;
    addKey(key, asChosen ? chainOf(snapshot.catalogue, **choice) : chain, each);
    if (bySerial) {
      addHardware(hang, static_cast<int>(key.points.size()), each);
      addLegs(option, key, each);
    }
    if (!own) {
      needs->hangs.append(hang.name +
                          (asChosen ? QStringLiteral(" as chosen") : QStringLiteral(" like this one")));
    }
    for (const auto& [what, number] : each) {
      numbers[what] += number;
    }
    ofHang.push_back(std::move(each));
  }

  const auto others = elsewhereOf(snapshot, *needs);
  const fleet::LastExaminations last(snapshot.examinations);
  const fleet::Happened happened(snapshot.occurrences);
  const bool cabinetsToo = asCount(option, "examine-cabinets") != 0;
  for (const auto& [what, number] : numbers) {
    UnitNeed need;
    need.kind = what.first;
    need.type = what.second;
    need.needed = number;
    need.spares = sparesFor(option, need.kind);
    need.mustBeRuled = need.kind != UnitKind::cabinet || cabinetsToo;
    need.elsewhere =
        mostAtOnce(others, *needs, [&, &type = what](const Numbers& each) { return numberIn(each, type); });
    countUnits(option, last, happened, *needs, need);
    needs->units.push_back(need);
    if (need.kind == UnitKind::cabinet) {
      CartNeed carts;
      carts.cabinet = need.type;
      for (const Numbers& each : ofHang) {
        carts.cabinets.push_back(numberIn(each, what));
      }
      countCarts(option, others, *needs, carts);
      needs->carts.push_back(std::move(carts));
    }
  }
  return needs;
}

std::span<const Rule> gearRules() {
  static const std::array<Rule, 4> rules{stockRule, examinedRule, cartsRule, sameChainRule};
  return rules;
}

} // namespace hangbook::options
