// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/gear_needs.h"

#include <algorithm>
#include <array>
#include <map>

#include "options/bridle_pick.h"
#include "options/hang_once.h"

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

int asCount(const House& house, const char* figure) {
  return static_cast<int>(house.figure(QString::fromLatin1(figure)).value.value_or(0.0));
}

int sparesFor(const Case& option, UnitKind kind) {
  switch (kind) {
  case UnitKind::cabinet:
    return asCount(*option.house, "spare-cabinets");
  case UnitKind::bar:
    return asCount(*option.house, "spare-bars");
  case UnitKind::hoist:
    return asCount(*option.house, "spare-hoists");
  case UnitKind::chain:
    return asCount(*option.house, "spare-chains");
  default:
    return 0;
  }
}

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

const catalogue::CartType* cartFor(const catalogue::Catalogue& catalogue, const QString& cabinet) {
  for (const catalogue::CartType& each : catalogue.carts) {
    if (each.carries == cabinet) {
      return &each;
    }
  }
  return nullptr;
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

GearThere::GearThere(const Snapshot& snapshot, const House& house)
    : snapshot_(snapshot), margin_(asCount(house, "examination-margin")), last_(snapshot.examinations),
      happened_(snapshot.occurrences) {
  days_.awayFrom = snapshot.show.awayFrom;
  days_.awayTo = snapshot.show.awayTo;
  days_.datesKnown = days_.awayFrom.isValid() && days_.awayTo.isValid() && days_.awayFrom <= days_.awayTo;
  others_ = elsewhereOf(snapshot, days_);
}

UnitNeed GearThere::counted(UnitKind kind, const QString& type) const {
  UnitNeed need;
  need.kind = kind;
  need.type = type;
  need.elsewhere = mostAtOnce(others_, days_, [&](const Numbers& each) {
    return numberIn(each, {kind, type});
  });
  need.ruled = std::any_of(snapshot_.examinationRules.begin(), snapshot_.examinationRules.end(),
                           [&](const fleet::ExaminationRule& rule) {
                             return rule.kind == kind && (rule.type.isEmpty() || rule.type == type);
                           });
  for (const fleet::Unit& unit : snapshot_.units) {
    if (unit.kind != kind || unit.type != type) {
      continue;
    }
    need.owned += piecesOf(unit);
    if (!isFree(unit, days_.awayTo)) {
      continue;
    }
    need.free += piecesOf(unit);
    const QDate until = fleet::standsUntil(unit, snapshot_.examinationRules, last_, nullptr, happened_);
    if (!until.isValid()) { // no rule is for it, or one is not met
      continue;
    }
    need.firstDue = !need.firstDue.isValid() || until < need.firstDue ? until : need.firstDue;
    need.examined += until >= days_.awayTo ? piecesOf(unit) : 0;
    need.examinedLonger += until >= days_.awayTo.addDays(margin_) ? piecesOf(unit) : 0;
  }
  return need;
}

void GearThere::count(UnitNeed& need) const {
  const std::lock_guard lock(mutex_);
  const auto found = known_.try_emplace({need.kind, need.type});
  UnitNeed& known = found.first->second;
  if (found.second) {
    known = counted(need.kind, need.type);
  }
  need.owned = known.owned;
  need.free = known.free;
  need.elsewhere = known.elsewhere;
  need.ruled = known.ruled;
  need.examined = known.examined;
  need.examinedLonger = known.examinedLonger;
  need.firstDue = known.firstDue;
}

void GearThere::count(CartNeed& need) const {
  const catalogue::CartType* type = cartFor(snapshot_.catalogue, need.cabinet);
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
  for (const fleet::Unit& unit : snapshot_.units) {
    need.free += unit.kind == UnitKind::cart && unit.type == need.cart && isFree(unit, days_.awayTo) ? 1 : 0;
  }
  need.elsewhere = mostAtOnce(others_, days_, [&](const Numbers& numbers) {
    return (numberIn(numbers, {UnitKind::cabinet, need.cabinet}) + most - 1) / most;
  });
}

std::shared_ptr<const GearNeeds> gearNeeds(const Case& option) {
  return gearNeeds(option, GearThere(*option.snapshot, *option.house));
}

std::shared_ptr<const GearNeeds> gearNeeds(const Case& option, const GearThere& there) {
  const Snapshot& snapshot = *option.snapshot;
  auto needs = std::make_shared<GearNeeds>(there.days());

  const bool bySerial = asCount(*option.house, "hardware-by-serial") != 0;
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

  const bool cabinetsToo = asCount(*option.house, "examine-cabinets") != 0;
  for (const auto& [what, number] : numbers) {
    UnitNeed need;
    need.kind = what.first;
    need.type = what.second;
    need.needed = number;
    need.spares = sparesFor(option, need.kind);
    need.mustBeRuled = need.kind != UnitKind::cabinet || cabinetsToo;
    there.count(need);
    needs->units.push_back(need);
    if (need.kind == UnitKind::cabinet) {
      CartNeed carts;
      carts.cabinet = need.type;
      for (const Numbers& each : ofHang) {
        carts.cabinets.push_back(numberIn(each, what));
      }
      there.count(carts);
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
