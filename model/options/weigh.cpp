// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/weigh.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "hang/changes.h"
#include "options/house_figures.h"
#include "options/weigh_cells.h"
#include "quantity/error.h"
#include "quantity/quantity.h"

namespace hangbook::options {
namespace {

using hang::Change;
using hang::ChangeKind;

/// Tonnes: 2000 lb of 0.45359237 kg, both exact.
constexpr double shortTon = 2000.0 * 0.45359237 / 1000.0;

QString count(int number, const QString& what) {
  return number == 1 ? QStringLiteral("one %1").arg(what) : QStringLiteral("%1 × %2").arg(number).arg(what);
}

QString figure(double value, int digits, const char* unit) {
  return QString::number(value, 'f', digits) + QLatin1Char(' ') + QString::fromUtf8(unit);
}

QString wordsFor(const Change& change, const Option& option) {
  const auto cabinet = [&option](int number) { return option.key.stack.value(number - 1); };
  const auto pick = [&option](std::size_t number) { return option.pickLoads[number].name; };
  const double amount = change.amount;
  switch (change.kind) {
  case ChangeKind::missing:
    return QStringLiteral("wrong count: %1 missing").arg(count(change.count, cabinet(change.element)));
  case ChangeKind::extra:
    return QStringLiteral("wrong count: %1 too many").arg(count(change.count, cabinet(change.element)));
  case ChangeKind::other:
    return QStringLiteral("%1 in the place of cabinet %2 (%3)")
        .arg(cabinet(change.instead))
        .arg(change.element)
        .arg(cabinet(change.element));
  case ChangeKind::links:
    return QStringLiteral("the chain at %1 holds %2 links %3 its mark (snagged, or hung in the wrong link)")
        .arg(cabinet(change.element))
        .arg(std::abs(amount))
        .arg(std::signbit(amount) ? QStringLiteral("short of") : QStringLiteral("beyond"));
  case ChangeKind::uneven:
    return QStringLiteral("unlike trims: the %1 pick %2 %3 than set, against the %4 one")
        .arg(pick(0), figure(std::abs(amount), 3, "m"),
             std::signbit(amount) ? QStringLiteral("lower") : QStringLiteral("higher"), pick(1));
  case ChangeKind::pull:
    return std::signbit(amount)
               ? QStringLiteral("something holds up %1 at the %2 pick (a hoist's chain or cable snagged "
                                "above, the hang resting on something)")
                     .arg(figure(-amount / 1000.0, 2, "kN"),
                          pick(static_cast<std::size_t>(change.element) - 1))
               : QStringLiteral("something pulls down %1 at the %2 pick (a chain or cable snagged below)")
                     .arg(figure(amount / 1000.0, 2, "kN"),
                          pick(static_cast<std::size_t>(change.element) - 1));
  case ChangeKind::barMass:
    return std::signbit(amount) ? QStringLiteral("%1 less on the bar than counted (cable, hardware)")
                                      .arg(figure(-amount, 1, "kg"))
                                : QStringLiteral("%1 on the bar not counted (cable, hardware, water)")
                                      .arg(figure(amount, 1, "kg"));
  case ChangeKind::heavier:
    return QStringLiteral("every cabinet weighs %1 times the maker's figure")
        .arg(QString::number(amount, 'f', 3));
  case ChangeKind::panned:
    return QStringLiteral("panned to %1° instead of as set").arg(QString::number(amount, 'f', 2));
  case ChangeKind::exchanged:
    break;
  }
  return QStringLiteral("the readings of %1 and %2 are exchanged").arg(pick(0), pick(1));
}

bool isFor(const CellReading& reading, const Cell& cell) {
  return reading.point == cell.point &&
         (reading.pick == cell.name || (cell.leg >= 0 && reading.pick.isEmpty()));
}

std::string placeOf(const Cell& cell) {
  return cell.leg < 0 ? "the " + cell.name.toStdString() + " pick"
                      : "the leg to point " + cell.point.toStdString() + " of the " +
                            cell.name.toStdString() + " pick's bridle";
}

double readingFor(const Cell& cell, const std::vector<CellReading>& readings) {
  const CellReading* found = nullptr;
  for (const CellReading& each : readings) {
    if (isFor(each, cell)) {
      if (found != nullptr) {
        throw Error(Trouble::badInput, placeOf(cell) + " has two readings", "pick");
      }
      found = &each;
    }
  }
  if (found == nullptr) {
    throw Error(Trouble::badInput,
                placeOf(cell) + (cell.leg < 0 ? " has no reading: every pick of the hang is read at once"
                                              : " has no reading: every cell of the hang is read at once"),
                "pick");
  }
  if (!(found->kn > 0.0) || !std::isfinite(found->kn)) {
    throw Error(Trouble::badInput, "a reading must be above 0", "pick");
  }
  return found->kn;
}

QString typed(const CellReading& reading) {
  return reading.point.isEmpty()  ? reading.pick
         : reading.pick.isEmpty() ? reading.point
                                  : reading.pick + QStringLiteral(", ") + reading.point;
}

void refuseStrangers(const Cells& cells, const std::vector<CellReading>& readings) {
  QStringList names;
  for (const Cell& cell : cells.all()) {
    names.append(wordsFor(cell));
  }
  for (const CellReading& each : readings) {
    const auto number =
        std::ranges::count_if(cells.all(), [&each](const Cell& cell) { return isFor(each, cell); });
    if (number == 0) {
      throw Error(Trouble::badInput,
                  (cells.inLegs() ? "the hang has no cell \"" : "the hang has no pick \"") +
                      typed(each).toStdString() + "\"; it has " +
                      names.join(cells.inLegs() ? QStringLiteral("; ") : QStringLiteral(", ")).toStdString() +
                      (each.point.isEmpty() || cells.inLegs()
                           ? ""
                           : ": a leg is read at its point, and only where the pick hangs from a bridle"),
                  "pick");
    }
    if (number > 1) {
      throw Error(Trouble::badInput,
                  "two legs go to point " + each.point.toStdString() +
                      ": the pick is to be named too, as in \"left, " + each.point.toStdString() + "\"",
                  "pick");
    }
  }
}

class Sheet {
public:
  Sheet(const Option& option, const Cells& cells, Weighed& into)
      : option_(option), cells_(cells), into_(into) {}

  /// `wouldKn` at the cells.
  void add(const QString& what, std::vector<double> wouldKn) {
    Assumption made{what, std::move(wouldKn), 0.0, true};
    for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
      const double miss = std::abs(into_.picks[pick].readKn - made.wouldKn[pick]);
      made.missKn = std::max(made.missKn, miss);
      made.explains = made.explains && miss <= into_.tolerancePercent / 100.0 * std::abs(made.wouldKn[pick]);
    }
    // What no balance follows for is left out: a leg that could not be made up so, a load that legs do not
    // hold.
    if (std::ranges::all_of(made.wouldKn, [](double kn) { return std::isfinite(kn); })) {
      into_.assumptions.push_back(std::move(made));
    }
  }

  /// The same added at each pick's cell.
  void addAll(const QString& what, const std::vector<double>& moreKn) {
    std::vector<double> would;
    bool any = false;
    for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
      would.push_back(into_.picks[pick].computedKn + moreKn[pick]);
      any = any || moreKn[pick] != 0.0;
    }
    if (any) {
      add(what, std::move(would));
    }
  }

  void statics() {
    std::vector<double> read;
    for (const WeighedPick& each : into_.picks) {
      read.push_back(each.readKn);
    }
    // What the picks would carry, were the readings right.
    const std::array<double, 2> more = cells_.moreBy(read);
    std::array<double, 2> readings{};
    for (std::size_t pick = 0; pick < option_.pickLoads.size(); ++pick) {
      readings.at(pick) = (option_.pickLoads[pick].loadKn + more.at(pick)) * 1000.0;
    }
    const hang::Statics now = hang::carried(*option_.hangInput);
    for (const Change& change : hang::singleChanges(*option_.hangInput, readings)) {
      if (change.kind == ChangeKind::exchanged && cells_.inLegs()) {
        continue; // any two of the cells may be: see exchanged()
      }
      std::array<double, 2> changed{};
      for (std::size_t pick = 0; pick < option_.pickLoads.size(); ++pick) {
        changed.at(pick) = (change.loads.at(pick) - now.pickLoads.at(pick).load) / 1000.0;
      }
      add(wordsFor(change, option_), cells_.with(changed));
    }
  }

  void exchanged() {
    for (std::size_t i = 0; cells_.inLegs() && i < into_.picks.size(); ++i) {
      for (std::size_t j = i + 1; j < into_.picks.size(); ++j) {
        std::vector<double> more(into_.picks.size());
        more[i] = into_.picks[j].computedKn - into_.picks[i].computedKn;
        more[j] = -more[i];
        addAll(QStringLiteral("the readings of (%1) and (%2) are exchanged")
                   .arg(options::wordsFor(into_.picks[i]), options::wordsFor(into_.picks[j])),
               more);
      }
    }
  }

  /// A piece of hardware more or fewer in a leg: the apex then hangs elsewhere, and the legs share otherwise.
  void legs() {
    for (const LegPieces& change : cells_.legChanges()) {
      const auto bridle =
          std::ranges::find(option_.bridles, option_.pickLoads[change.pick].name, &BridleResult::pick);
      const QString& point = bridle->legs[change.leg].point;
      add(QStringLiteral("one %1 %2 than counted in the leg to %3 (another make-up)")
              .arg(change.type, change.more > 0 ? QStringLiteral("more") : QStringLiteral("fewer"), point),
          cells_.with(change));
    }
  }

  void cells() {
    std::vector<double> hoist;
    std::vector<double> rigging;
    std::vector<double> tonnes;
    std::vector<double> shortTons;
    for (std::size_t i = 0; i < into_.picks.size(); ++i) {
      const Cell& cell = cells_.all()[i];
      // No cell in one leg could hang below the hoist, nor above more rigging than it does.
      const double body = cell.leg < 0 ? cells_.hoistAndChain(cell.pick) : 0.0;
      hoist.push_back(into_.at == CellAt::hook ? body : -body);
      rigging.push_back(cell.leg < 0 ? cells_.rigging(cell.pick) : 0.0);
      tonnes.push_back(into_.picks[i].computedKn * (shortTon - 1.0));
      shortTons.push_back(into_.picks[i].computedKn * (1.0 / shortTon - 1.0));
    }
    addAll(
        into_.at == CellAt::hook
            ? QStringLiteral("the cells hang above the hoists: body, chain and bag are in the reading")
            : QStringLiteral("the cells hang below the hoists: body, chain and bag are not in the reading"),
        hoist);
    addAll(QStringLiteral("the cells carry the rigging above the hoists too"), rigging);
    addAll(QStringLiteral("the cells show short tons, read as tonnes"), shortTons);
    addAll(QStringLiteral("the cells show tonnes, read as short tons"), tonnes);
  }

private:
  const Option& option_;
  const Cells& cells_;
  Weighed& into_;
};

} // namespace

QString wordFor(CellAt at) {
  return at == CellAt::hook ? QStringLiteral("hook") : QStringLiteral("point");
}

QString wordsFor(const WeighedPick& cell) {
  return wordsFor(Cell{0, cell.point.isEmpty() ? -1 : 0, cell.name, cell.point});
}

Weighed weigh(const Snapshot& snapshot, const Option& option, CellAt at,
              const std::vector<CellReading>& readings) {
  const Cells cells(snapshot, option, at);
  refuseStrangers(cells, readings);
  const House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  const HouseValue tolerance = house.figure(QStringLiteral("scale-tolerance"));
  if (!tolerance.value) {
    throw Error(Trouble::notPossible,
                "the house's tolerance cannot be used: " + tolerance.source.toStdString());
  }
  Weighed weighed;
  weighed.at = at;
  weighed.tolerancePercent = *tolerance.value;
  weighed.toleranceSource = tolerance.source;
  for (std::size_t i = 0; i < cells.all().size(); ++i) {
    WeighedPick one;
    one.name = cells.all()[i].name;
    one.point = cells.all()[i].point;
    one.readKn = readingFor(cells.all()[i], readings);
    one.computedKn = cells.computed(i);
    one.percent = 100.0 * (one.readKn - one.computedKn) / one.computedKn;
    one.beyond = !(std::abs(one.percent) <= weighed.tolerancePercent);
    weighed.beyond = weighed.beyond || one.beyond;
    weighed.picks.push_back(one);
  }
  if (weighed.beyond) {
    Sheet sheet(option, cells, weighed);
    sheet.statics();
    sheet.exchanged();
    sheet.legs();
    sheet.cells();
    std::stable_sort(weighed.assumptions.begin(), weighed.assumptions.end(),
                     [](const Assumption& a, const Assumption& b) { return a.missKn < b.missKn; });
  }
  return weighed;
}

} // namespace hangbook::options
