// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/facts.h"
#include "exchange/parts.h"

namespace hangbook::exchange {
namespace {

using namespace fleet;

constexpr std::array kinds = {
    std::pair{UnitKind::cabinet, "cabinet"}, std::pair{UnitKind::bar, "bar"},
    std::pair{UnitKind::hoist, "hoist"},     std::pair{UnitKind::chain, "chain"},
    std::pair{UnitKind::cart, "cart"},       std::pair{UnitKind::hardware, "hardware"},
    std::pair{UnitKind::loom, "loom"}};
constexpr std::array placeKinds = {std::pair{PlaceKind::bay, "bay"}, std::pair{PlaceKind::truck, "truck"},
                                   std::pair{PlaceKind::venue, "venue"},
                                   std::pair{PlaceKind::workshop, "workshop"}};
constexpr std::array states = {std::pair{UnitState::ready, "ready"}, std::pair{UnitState::away, "away"},
                               std::pair{UnitState::quarantined, "quarantined"},
                               std::pair{UnitState::inRepair, "in repair"},
                               std::pair{UnitState::writtenOff, "written off"}};
constexpr std::array results = {std::pair{ExaminationResult::pass, "pass"},
                                std::pair{ExaminationResult::passWithRemark, "pass with remark"},
                                std::pair{ExaminationResult::fail, "fail"}};

/// A unit and, in a plain list, its last examination.
struct UnitLine {
  Unit unit;
  std::optional<UnitKind> kind;
  QDate lastExamination;
  QString certificate;
  QString examiner;
  Typed typed;
  bool operator==(const UnitLine&) const = default;
};

struct ExaminationLine {
  Examination fact;
  Typed typed;
  bool operator==(const ExaminationLine&) const = default;
};

bool hasType(Work& work, UnitKind kind, const QString& type) {
  switch (kind) {
  case UnitKind::cabinet:
    return work.cabinets.find(type);
  case UnitKind::bar:
    return work.bars.find(type);
  case UnitKind::hoist:
    return work.hoists.find(type);
  case UnitKind::chain:
    return work.chains.find(type);
  case UnitKind::cart:
    return work.carts.find(type);
  case UnitKind::hardware:
  case UnitKind::loom: {
    const catalogue::HardwareType* found = work.hardware.find(type);
    return found != nullptr && (found->kind == catalogue::HardwareKind::loom) == (kind == UnitKind::loom);
  }
  }
  return false;
}

QStringList kindsWithType(Work& work, const QString& type) {
  QStringList found;
  for (const auto& [kind, word] : kinds) {
    if (hasType(work, kind, type)) {
      found << QString::fromLatin1(word);
    }
  }
  return found;
}

/// The kind of a unit whose line does not say it: that of its type, where there is only one.
void settleKind(Work& work, UnitLine& line, const At& at) {
  const QStringList found = kindsWithType(work, line.unit.type);
  if (line.kind) {
    line.unit.kind = *line.kind;
    if (!hasType(work, *line.kind, line.unit.type)) {
      at.fault(
          "type", line.unit.type,
          QStringLiteral("a type of %1 that is in the store").arg(writeWord<UnitKind>(*line.kind, kinds)));
    }
  } else if (found.size() == 1) {
    line.unit.kind = readWord<UnitKind>({found.first(), {}, {}}, kinds);
    line.kind = line.unit.kind;
  } else {
    at.fault("type", line.unit.type,
             found.isEmpty()
                 ? QStringLiteral("a type that is in the store")
                 : QStringLiteral("a kind as well: %1 have a type of that name").arg(found.join(" and ")));
  }
}

/// An examination passed on that day, for each rule that applies.
void addLastExamination(Work& work, const UnitLine& line, const At& at) {
  if (!line.lastExamination.isValid()) {
    if (!line.certificate.isEmpty()) {
      at.fault("certificate", line.certificate, "the day of the last examination beside it");
    }
    return;
  }
  if (line.lastExamination > work.importer.now.date()) {
    at.fault("last examination", writeDate(line.lastExamination), "a day that is not in the future");
    return;
  }
  bool applies = false;
  for (const ExaminationRule& rule : work.after.examinationRules) {
    if (rule.kind == line.unit.kind && (rule.type.isEmpty() || rule.type == line.unit.type)) {
      applies = true;
      Examination fact;
      fact.serial = line.unit.serial;
      fact.rule = rule.name;
      fact.date = line.lastExamination;
      fact.examiner = line.examiner;
      fact.certificate = line.certificate;
      addFact(work, work.examinations, "examination", fact);
    }
  }
  if (!applies) {
    at.fault("last examination", writeDate(line.lastExamination),
             QStringLiteral("an examination rule for a %1 in this file or in the store, or an empty cell")
                 .arg(writeWord<UnitKind>(line.unit.kind, kinds)));
  }
}

std::unique_ptr<Sort> ruleSort() {
  using Line = ExaminationRule;
  Columns<Line> columns = {
      name<Line>("name", HANGBOOK_FIELD(name)),
      word<Line>("kind", HANGBOOK_FIELD(kind), kinds, Need::needed),
      text<Line>("type", HANGBOOK_FIELD(type)),
      text<Line>("jurisdiction", HANGBOOK_FIELD(jurisdiction)),
      integer<Line>("months", HANGBOOK_FIELD(months), Bound::months),
      integer<Line>("uses", HANGBOOK_FIELD(uses), Bound::uses),
      number<Line>("hours", "h", HANGBOOK_FIELD(hours), Bound::hours),
      integer<Line>("idle months", HANGBOOK_FIELD(idleMonths), Bound::months),
      yesNo<Line>("after exceptional", HANGBOOK_FIELD(afterExceptional)),
      yesNo<Line>("at new site", HANGBOOK_FIELD(atNewSite)),
      text<Line>("source", HANGBOOK_FIELD(source.text)),
      date<Line>("source date", HANGBOOK_FIELD(source.date)),
  };
  auto handling = recordHandling<Line>(
      &Work::rules, [](const Line& rule) { return rule.name; },
      [](const Data& data) -> const std::vector<Line>& { return data.examinationRules; });
  handling.check = [](Work& work, const Line& rule, const At& at) {
    if (!rule.months && !rule.uses && !rule.hours && !rule.idleMonths && !rule.afterExceptional &&
        !rule.atNewSite) {
      at.fault("months", at.cell("months"),
               "when to examine: months, uses, hours, idle months, after exceptional or at new site");
    }
    if (!rule.type.isEmpty() && !hasType(work, rule.kind, rule.type)) {
      at.fault(
          "type", rule.type,
          QStringLiteral("a type of %1 that is in the store").arg(writeWord<UnitKind>(rule.kind, kinds)));
    }
  };
  return std::make_unique<SortOf<Line>>("examination rule", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> unitSort() {
  using Line = UnitLine;
  Columns<Line> columns = {
      name<Line>("serial", HANGBOOK_FIELD(unit.serial)),
      text<Line>("type", HANGBOOK_FIELD(unit.type), Need::needed),
      word<Line>("kind", HANGBOOK_FIELD(kind), kinds),
      text<Line>("owner", HANGBOOK_FIELD(unit.owner)),
      date<Line>("hired until", HANGBOOK_FIELD(unit.hiredUntil)),
      text<Line>("place", HANGBOOK_FIELD(unit.place)),
      word<Line>("state", HANGBOOK_FIELD(unit.state), states),
      text<Line>("cart", HANGBOOK_FIELD(unit.cart)),
      integer<Line>("cart position", HANGBOOK_FIELD(unit.cartPosition), Bound::pieces),
      integer<Line>("pieces", HANGBOOK_FIELD(unit.pieces), Bound::batch),
      figure<Line>("weighed", "kg", HANGBOOK_FIELD(unit.weighed), Bound::weighed),
      date<Line>("weighed on", HANGBOOK_FIELD(unit.weighedOn)),
      text<Line>("weighed by", HANGBOOK_FIELD(unit.weighedBy)),
      text<Line>("source", HANGBOOK_FIELD(unit.source.text)),
      date<Line>("source date", HANGBOOK_FIELD(unit.source.date)),
      date<Line>("last examination", HANGBOOK_FIELD(lastExamination)),
      text<Line>("certificate", HANGBOOK_FIELD(certificate)),
      text<Line>("examiner", HANGBOOK_FIELD(examiner)),
  };
  Handling<Line> handling;
  handling.fetch = [](Work& work, const Line& keys) -> std::optional<Line> {
    const Unit* unit = work.units.find(keys.unit.serial);
    return unit ? std::optional(Line{*unit, unit->kind, {}, {}, {}, unit->typed}) : std::nullopt;
  };
  handling.put = [](Work& work, Line& line, const At& at) {
    settleKind(work, line, at);
    line.unit.typed = line.typed;
    work.units.put(line.unit);
    // Its rules may stand further down. It is a fact of its own: the unit itself is the same or not.
    work.later.push_back([&work, line, at] { addLastExamination(work, line, at); });
    line.lastExamination = {};
    line.certificate.clear();
    line.examiner.clear();
  };
  handling.check = [](Work& work, const Line& line, const At& at) {
    const Unit* cart = work.units.find(line.unit.cart);
    if (!line.unit.cart.isEmpty() && (!cart || cart->kind != UnitKind::cart)) {
      at.fault("cart", line.unit.cart, "the serial of a cart that is in this file or in the store");
    }
  };
  handling.all = [](const Data& data) {
    std::vector<Line> lines;
    for (const Unit& unit : data.units) {
      lines.push_back({unit, unit.kind, {}, {}, {}, unit.typed});
    }
    return lines;
  };
  return std::make_unique<SortOf<Line>>("unit", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> placeSort() {
  using Line = NamedPlace;
  Columns<Line> columns = {
      name<Line>("name", HANGBOOK_FIELD(name)),
      word<Line>("place kind", HANGBOOK_FIELD(kind), placeKinds, Need::needed),
      figure<Line>("floor length", "m", HANGBOOK_FIELD(floorLength), Bound::smallLength),
      figure<Line>("floor width", "m", HANGBOOK_FIELD(floorWidth), Bound::smallLength),
      figure<Line>("payload", "kg", HANGBOOK_FIELD(payload), Bound::payload),
      text<Line>("source", HANGBOOK_FIELD(source.text)),
      date<Line>("source date", HANGBOOK_FIELD(source.date)),
  };
  auto handling = recordHandling<Line>(
      &Work::places, [](const Line& place) { return place.name; },
      [](const Data& data) -> const std::vector<Line>& { return data.places; });
  return std::make_unique<SortOf<Line>>("place", std::move(columns), std::move(handling));
}

std::unique_ptr<Sort> examinationSort() {
  using Line = ExaminationLine;
  Columns<Line> columns = {
      text<Line>("serial", HANGBOOK_FIELD(fact.serial), Need::key),
      text<Line>("rule", HANGBOOK_FIELD(fact.rule), Need::key),
      date<Line>("date", HANGBOOK_FIELD(fact.date), Need::key),
      word<Line>("result", HANGBOOK_FIELD(fact.result), results),
      text<Line>("examiner", HANGBOOK_FIELD(fact.examiner)),
      text<Line>("certificate", HANGBOOK_FIELD(fact.certificate)),
      text<Line>("remark", HANGBOOK_FIELD(fact.remark)),
      identifier<Line>("entry", HANGBOOK_FIELD(fact.id)),
      identifier<Line>("corrects", HANGBOOK_FIELD(fact.corrects)),
      text<Line>("recorded by", HANGBOOK_FIELD(fact.by)),
      instant<Line>("recorded at", HANGBOOK_FIELD(fact.recordedAt)),
  };
  auto handling = factHandling<Line, Examination>(
      "examination", &Work::examinations, &Line::fact,
      [](const Data& data) -> const std::vector<Examination>& { return data.examinations; });
  handling.check = [](Work& work, const Line& line, const At& at) {
    mustBeKnown(at, "serial", line.fact.serial, work.units, "unit");
    mustBeKnown(at, "rule", line.fact.rule, work.rules, "examination rule");
    mustCorrectKnown(at, line.fact, work.examinations);
    if (line.fact.date > work.importer.now.date()) {
      at.fault("date", writeDate(line.fact.date), "a day that is not in the future");
    }
  };
  return std::make_unique<SortOf<Line>>("examination", std::move(columns), std::move(handling));
}

} // namespace

const Sorts& unitSorts() {
  static const Sorts sorts = [] {
    Sorts made;
    made.push_back(unitSort());
    made.push_back(ruleSort());
    made.push_back(placeSort());
    made.push_back(examinationSort());
    return made;
  }();
  return sorts;
}

} // namespace hangbook::exchange
