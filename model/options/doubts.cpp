// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/doubts.h"

#include <algorithm>
#include <cmath>

#include "fleet/load_list.h"
#include "options/sentence.h"

namespace hangbook::options {
namespace {

struct HouseDoubt {
  double value = notKnown;
  QString source;
};

HouseDoubt houseDoubt(const House& house, const char* id) {
  const HouseValue found = house.figure(QString::fromLatin1(id));
  return {found.value.value_or(notKnown), found.source};
}

/// Per cent as a part.
HouseDoubt partOf(const House& house, const char* id) {
  HouseDoubt doubt = houseDoubt(house, id);
  doubt.value *= 0.01;
  return doubt;
}

QString percent(double part) {
  return QStringLiteral("± %1 %").arg(QString::number(part * 100.0, 'g', 4));
}
QString millimetres(double metres) {
  return QStringLiteral("± %1 mm").arg(QString::number(metres * 1000.0, 'g', 4));
}
QString kilogramsOf(double mass) {
  return QStringLiteral("%1 kg").arg(QString::number(mass, 'g', 5));
}

/// The maker's tolerance, else the house's figure.
template <class Quantity, class In>
HouseDoubt statedOr(const std::optional<Quantity>& tolerance, In in, const QString& maker,
                    const HouseDoubt& house) {
  return tolerance ? HouseDoubt{in(*tolerance), maker} : house;
}

/// Sources already told, each once.
class Sources {
public:
  explicit Sources(std::vector<DoubtFigure>& list) : list_(list) {}
  void add(const QString& what, const QString& figure, const QString& source) {
    const DoubtFigure line{what, figure, source};
    if (std::find(list_.begin(), list_.end(), line) == list_.end()) {
      list_.push_back(line);
    }
  }

private:
  std::vector<DoubtFigure>& list_;
};

/// Of a type's units those that may hang at the show.
std::vector<const fleet::Unit*> unitsThatMayHang(const Snapshot& snapshot, fleet::UnitKind kind,
                                                 const QString& type) {
  std::vector<const fleet::Unit*> units;
  for (const fleet::Unit& unit : snapshot.units) {
    const bool backByThen = !unit.owner.isEmpty() && unit.hiredUntil.isValid() &&
                            snapshot.show.from.isValid() && unit.hiredUntil < snapshot.show.from;
    if (unit.kind == kind && unit.type == type && unit.state != fleet::UnitState::writtenOff && !backByThen) {
      units.push_back(&unit);
    }
  }
  return units;
}

QString whenWeighed(const fleet::Unit& unit) {
  QString text = QStringLiteral("%1 weighed").arg(unit.serial);
  text += unit.weighedOn.isValid() ? QStringLiteral(" ") + unit.weighedOn.toString(Qt::ISODate)
                                   : QStringLiteral(" on a day not written down");
  text += unit.weighedBy.isEmpty() ? QStringLiteral(" by somebody not named")
                                   : QStringLiteral(" by ") + unit.weighedBy;
  return text;
}

/// What the crew's scale says of a type's units.
struct OnTheScale {
  const fleet::Unit* heaviest = nullptr; ///< none: nobody weighed one
  std::optional<Mass> lightest;
  bool all{}; ///< every one that may hang was weighed
};

OnTheScale onTheScale(const Snapshot& snapshot, fleet::UnitKind kind, const QString& type) {
  const std::vector<const fleet::Unit*> units = unitsThatMayHang(snapshot, kind, type);
  OnTheScale scale;
  scale.all = !units.empty();
  for (const fleet::Unit* unit : units) {
    scale.all = scale.all && unit->weighed && piecesOf(*unit) == 1; // of a batch one piece was weighed
    if (unit->weighed) {
      scale.heaviest =
          scale.heaviest == nullptr || *unit->weighed > *scale.heaviest->weighed ? unit : scale.heaviest;
      scale.lightest = std::min(scale.lightest.value_or(*unit->weighed), *unit->weighed);
    }
  }
  return scale;
}

/// What a maker states of one piece, kg.
struct Stated {
  double mass = notKnown;
  double off = notKnown; ///< either way
  QString source;        ///< of that
};

/// `share`: how much of what is weighed belongs to the piece.
KnownMass counted(const QString& name, const Stated& maker, const OnTheScale& scale, const House& house,
                  double share) {
  KnownMass known{maker.mass, notKnown, notKnown, maker.source, {}};
  double low = maker.mass - maker.off;
  double high = maker.mass + maker.off;
  if (scale.heaviest != nullptr && (std::isfinite(maker.mass) || scale.all)) {
    const HouseDoubt doubt = partOf(house, "scale-doubt");
    const double most = inKilograms(*scale.heaviest->weighed) * share;
    const double heavy = most * (1.0 + doubt.value);
    const double light = inKilograms(*scale.lightest) * share * (1.0 - doubt.value);
    const double stated = scale.all ? most : std::max(most, known.stated);
    known.weighed =
        stated == most ? QStringLiteral("%1 counts as %2 (%3%4)")
                             .arg(name, kilogramsOf(most), whenWeighed(*scale.heaviest),
                                  scale.all ? QStringLiteral(", the heaviest of all, and all are weighed")
                                            : QStringLiteral(", heavier than the maker's figure"))
                       : QStringLiteral("%1 counts as the maker's %2 until all of its units are "
                                        "weighed (%3: %4)")
                             .arg(name, kilogramsOf(stated), whenWeighed(*scale.heaviest), kilogramsOf(most));
    // std::max alone would lose a scale's doubt that is not known; the maker's it keeps, as its first.
    high = scale.all || std::isnan(heavy) ? heavy : std::max(high, heavy);
    low = scale.all || std::isnan(light) ? light : std::min(low, light);
    known.stated = stated;
    known.source = scale.all ? doubt.source : known.source + QStringLiteral("; ") + doubt.source;
  }
  known.lighter = known.stated - low;
  known.heavier = high - known.stated;
  return known;
}

Stated statedOf(const std::optional<Mass>& mass, const catalogue::Tolerances& tolerances,
                const QString& maker, const HouseDoubt& part) {
  if (!mass) {
    return {};
  }
  return {inKilograms(*mass),
          tolerances.mass ? inKilograms(*tolerances.mass) : part.value * inKilograms(*mass),
          tolerances.mass ? maker : part.source};
}

} // namespace

KnownMass massOfType(const Snapshot& snapshot, const House& house, const catalogue::CabinetType& type) {
  return counted(
      type.name,
      statedOf(type.mass, type.tolerances, makerSource(type.name, type.source), partOf(house, "mass-doubt")),
      onTheScale(snapshot, fleet::UnitKind::cabinet, type.name), house, 1.0);
}

KnownBar massesOfBar(const Snapshot& snapshot, const House& house, const catalogue::BarType& type) {
  const HouseDoubt part = partOf(house, "mass-doubt");
  const QString maker = makerSource(type.name, type.source);
  const Stated frame = statedOf(type.frameMass, type.tolerances, maker, part);
  const Stated head = statedOf(type.headMass, type.tolerances, maker, part);
  fleet::Unit any;
  any.kind = fleet::UnitKind::bar;
  any.type = type.name;
  catalogue::Catalogue alone;
  alone.bars.push_back(type);
  const std::optional<Mass> all = fleet::pieceMass(alone, any); // none where a part is not known
  const OnTheScale scale =
      all && inKilograms(*all) > 0.0 ? onTheScale(snapshot, any.kind, type.name) : OnTheScale{};
  const double whole = all ? inKilograms(*all) : notKnown;
  KnownBar known;
  known.frame = counted(type.name, frame, scale, house, frame.mass / whole);
  known.head = counted(type.name, head, scale, house, head.mass / whole);
  known.whole = counted(type.name, {whole, frame.off + (type.headMass ? head.off : 0.0), frame.source}, scale,
                        house, 1.0);
  return known;
}

RigDoubts doubtsOf(const House& house, const Stack& stack, const catalogue::BarType& bar,
                   const KnownBar& barMasses, const catalogue::ChainType* chain, const calendar::Hang& hang,
                   const std::vector<KnownMass>& masses) {
  const HouseDoubt mass = partOf(house, "mass-doubt");
  const HouseDoubt centre = houseDoubt(house, "centre-doubt");
  const HouseDoubt place = houseDoubt(house, "length-doubt");
  RigDoubts doubts;
  Sources sources(doubts.sources);
  const auto centreAndPlace = [&](const QString& name, const catalogue::Tolerances& tolerances,
                                  const catalogue::Source& source, hang::PieceDoubt& into) {
    const QString maker = makerSource(name, source);
    const HouseDoubt centreOff = statedOr(
        tolerances.centre, [](const Length& x) { return inMetres(x); }, maker, centre);
    const HouseDoubt placeOff = statedOr(
        tolerances.place, [](const Length& x) { return inMetres(x); }, maker, place);
    into.centre = centreOff.value;
    into.place = placeOff.value;
    sources.add(QStringLiteral("centres of gravity"), millimetres(centreOff.value), centreOff.source);
    sources.add(QStringLiteral("lengths and places"), millimetres(placeOff.value), placeOff.source);
  };
  for (std::size_t i = 0; i < stack.cabinets.size(); ++i) {
    const catalogue::CabinetType& cabinet = *stack.cabinets[i];
    const KnownMass& known = masses[i];
    hang::PieceDoubt doubt;
    doubt.lighter = known.lighter;
    doubt.heavier = known.heavier;
    centreAndPlace(cabinet.name, cabinet.tolerances, cabinet.source, doubt);
    doubts.figures.stack.push_back(doubt);
    if (known.weighed.isEmpty() && !cabinet.tolerances.mass) {
      sources.add(QStringLiteral("masses"), percent(mass.value), mass.source);
    } else {
      sources.add(QStringLiteral("mass of %1").arg(cabinet.name),
                  QStringLiteral("− %1 + %2").arg(kilogramsOf(known.lighter), kilogramsOf(known.heavier)),
                  known.source);
      doubts.weighed.append(known.weighed);
    }
  }
  doubts.weighed.removeAll(QString()); // a stated tolerance is nobody's scale
  doubts.weighed.removeDuplicates();
  const auto barMass = [&](const std::optional<Mass>& of) {
    return bar.tolerances.mass ? inKilograms(*bar.tolerances.mass)
                               : mass.value * (of ? inKilograms(*of) : 0.0);
  };
  const bool weighed = !barMasses.whole.weighed.isEmpty();
  hang::PieceDoubt& head = doubts.figures.head;
  hang::PieceDoubt& frame = doubts.figures.frame;
  head.lighter = head.heavier = barMass(bar.headMass);
  frame.lighter = frame.heavier = barMass(bar.frameMass);
  if (weighed) {
    frame.lighter = barMasses.frame.lighter;
    frame.heavier = barMasses.frame.heavier;
    if (bar.headMass) {
      head.lighter = barMasses.head.lighter;
      head.heavier = barMasses.head.heavier;
    }
  }
  double fixed = hang.cableMass ? inKilograms(*hang.cableMass) : 0.0;
  if (chain != nullptr && chain->mass && chain->pitch && chain->links) {
    fixed += inKilogramsPerMetre(*chain->mass) * inMetres(*chain->pitch) * *chain->links;
  }
  frame.lighter += mass.value * fixed;
  frame.heavier += mass.value * fixed;
  centreAndPlace(bar.name, bar.tolerances, bar.source, doubts.figures.head);
  centreAndPlace(bar.name, bar.tolerances, bar.source, doubts.figures.frame);
  if (weighed) {
    const KnownMass& whole = barMasses.whole;
    sources.add(QStringLiteral("mass of %1").arg(bar.name),
                QStringLiteral("− %1 + %2").arg(kilogramsOf(whole.lighter), kilogramsOf(whole.heavier)),
                whole.source);
    doubts.weighed.append(whole.weighed);
  } else {
    sources.add(bar.tolerances.mass ? QStringLiteral("masses of %1").arg(bar.name) : QStringLiteral("masses"),
                bar.tolerances.mass ? QStringLiteral("± ") + kilogramsOf(inKilograms(*bar.tolerances.mass))
                                    : percent(mass.value),
                bar.tolerances.mass ? makerSource(bar.name, bar.source) : mass.source);
  }
  if (chain != nullptr && chain->pitch) {
    const double pitch = inMetres(*chain->pitch);
    HouseDoubt off = partOf(house, "pitch-doubt");
    off.value *= pitch;
    off = statedOr(
        chain->pitchTolerance, [](const Length& x) { return inMetres(x); },
        makerSource(chain->name, chain->source), off);
    const HouseDoubt wear = partOf(house, "chain-wear");
    doubts.figures.linkShorter = off.value;
    doubts.figures.linkLonger = off.value + wear.value * (pitch + off.value);
    sources.add(QStringLiteral("pitch of %1").arg(chain->name), millimetres(off.value), off.source);
    sources.add(QStringLiteral("wear of %1").arg(chain->name),
                QStringLiteral("+ %1 %").arg(QString::number(wear.value * 100.0, 'g', 4)), wear.source);
  }
  doubts.gearHeavier = 1.0 + mass.value;
  doubts.longer = place.value;
  sources.add(QStringLiteral("lengths of hoists and hardware"), millimetres(place.value), place.source);
  return doubts;
}

Settled asStated(const Settled& settled) {
  Settled stated = settled;
  if (settled.doubt != nullptr) {
    stated.statics = settled.doubt->statics;
    stated.build = settled.doubt->build;
    stated.gearHeavier = 1.0;
    stated.doubt.reset();
  }
  return stated;
}

void takeDoubts(hang::Doubting& doubting, const hang::Hang& hang, const RigDoubts& doubts, Settled& settled) {
  if (doubts.figures.none() && doubts.gearHeavier == 1.0 && doubts.longer == 0.0) {
    return;
  }
  hang::Unfavourable worst = doubting.at(settled.statics, settled.build);
  auto doubt = std::make_shared<SettledDoubt>();
  doubt->statics = std::move(settled.statics);
  doubt->build = settled.build;
  settled.statics = std::move(worst.statics);
  settled.build = worst.build;
  doubt->worst = std::move(worst);
  doubt->figures = doubts.figures;
  doubt->longer = doubts.longer;
  if (!doubt->worst.bounded) {
    settled.build.unknown = hang::BuildMoment{hang::BuildStage::set, static_cast<int>(hang.stack.size())};
  }
  settled.doubt = std::move(doubt);
  settled.gearHeavier = doubts.gearHeavier;
}

} // namespace hangbook::options
