// SPDX-License-Identifier: GPL-3.0-or-later
#include "options/weigh.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "hang/changes.h"
#include "options/house_figures.h"
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
    return amount < 0.0
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
    return QStringLiteral("every cabinet weighs %1 times the maker's figure").arg(amount, 0, 'f', 3);
  case ChangeKind::panned:
    return QStringLiteral("panned to %1° instead of as set").arg(amount, 0, 'f', 2);
  case ChangeKind::exchanged:
    break;
  }
  return QStringLiteral("the readings of %1 and %2 are exchanged").arg(pick(0), pick(1));
}

double partOf(const PointResult& point, const char* what) {
  double sum = 0.0;
  for (const LoadPart& part : point.parts) {
    sum += part.what == QLatin1String(what) ? part.kn : 0.0;
  }
  return sum;
}

/// What hangs between the cell and the pick, kN.
double aboveHook(const Option& option, std::size_t pick, CellAt at) {
  return at == CellAt::hook ? 0.0
                            : partOf(option.points[pick], "hoist") + partOf(option.points[pick], "chain");
}

double readingFor(const QString& pick, const std::vector<CellReading>& readings) {
  const CellReading* found = nullptr;
  for (const CellReading& each : readings) {
    if (each.pick == pick) {
      if (found != nullptr) {
        throw Error(Trouble::badInput, "the " + pick.toStdString() + " pick has two readings", "pick");
      }
      found = &each;
    }
  }
  if (found == nullptr) {
    throw Error(Trouble::badInput,
                "the " + pick.toStdString() +
                    " pick has no reading: every pick of the "
                    "hang is read at once",
                "pick");
  }
  if (!(found->kn > 0.0) || !std::isfinite(found->kn)) {
    throw Error(Trouble::badInput, "a reading must be above 0", "pick");
  }
  return found->kn;
}

void refuseStrangers(const Option& option, const std::vector<CellReading>& readings) {
  QStringList names;
  for (const PickLoad& pick : option.pickLoads) {
    names.append(pick.name);
  }
  for (const CellReading& each : readings) {
    if (!names.contains(each.pick)) {
      throw Error(Trouble::badInput,
                  "the hang has no pick \"" + each.pick.toStdString() + "\"; it has " +
                      names.join(QStringLiteral(", ")).toStdString(),
                  "pick");
    }
  }
}

class Sheet {
public:
  Sheet(const Option& option, Weighed& into) : option_(option), into_(into) {}

  /// `wouldKn` at the cells.
  void add(const QString& what, std::vector<double> wouldKn) {
    Assumption made{what, std::move(wouldKn), 0.0, true};
    for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
      const double miss = std::abs(into_.picks[pick].readKn - made.wouldKn[pick]);
      made.missKn = std::max(made.missKn, miss);
      made.explains = made.explains && miss <= into_.tolerancePercent / 100.0 * std::abs(made.wouldKn[pick]);
    }
    if (std::isfinite(made.missKn)) {
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
    std::array<double, 2> readings{};
    for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
      // What the pick would carry, were the reading right.
      const double difference = into_.picks[pick].readKn - into_.picks[pick].computedKn;
      readings.at(pick) = (option_.pickLoads[pick].loadKn + difference) * 1000.0;
    }
    const hang::Statics now = hang::carried(*option_.hangInput);
    for (const Change& change : hang::singleChanges(*option_.hangInput, readings)) {
      std::vector<double> would;
      for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
        would.push_back(into_.picks[pick].computedKn +
                        (change.loads.at(pick) - now.pickLoads.at(pick).load) / 1000.0);
      }
      add(wordsFor(change, option_), std::move(would));
    }
  }

  void cells() {
    std::vector<double> hoist;
    std::vector<double> rigging;
    std::vector<double> tonnes;
    std::vector<double> shortTons;
    for (std::size_t pick = 0; pick < into_.picks.size(); ++pick) {
      const double body = partOf(option_.points[pick], "hoist") + partOf(option_.points[pick], "chain");
      hoist.push_back(into_.at == CellAt::hook ? body : -body);
      rigging.push_back(partOf(option_.points[pick], "rigging"));
      tonnes.push_back(into_.picks[pick].computedKn * (shortTon - 1.0));
      shortTons.push_back(into_.picks[pick].computedKn * (1.0 / shortTon - 1.0));
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
  Weighed& into_;
};

} // namespace

QString wordFor(CellAt at) {
  return at == CellAt::hook ? QStringLiteral("hook") : QStringLiteral("point");
}

Weighed weigh(const Snapshot& snapshot, const Option& option, CellAt at,
              const std::vector<CellReading>& readings) {
  if (!option.hangInput || option.pickLoads.empty() || !option.bridles.empty() ||
      option.points.size() != option.pickLoads.size()) {
    throw Error(Trouble::notPossible, "the loads of this option are not known");
  }
  refuseStrangers(option, readings);
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
  for (std::size_t pick = 0; pick < option.pickLoads.size(); ++pick) {
    WeighedPick one;
    one.name = option.pickLoads[pick].name;
    one.readKn = readingFor(one.name, readings);
    one.computedKn = partOf(option.points[pick], "pick") + aboveHook(option, pick, at);
    if (!std::isfinite(one.computedKn)) {
      throw Error(Trouble::notPossible, "what the cell at the " + one.name.toStdString() +
                                            " pick carries is not known: a mass is missing");
    }
    one.percent = 100.0 * (one.readKn - one.computedKn) / one.computedKn;
    one.beyond = !(std::abs(one.percent) <= weighed.tolerancePercent);
    weighed.beyond = weighed.beyond || one.beyond;
    weighed.picks.push_back(one);
  }
  if (weighed.beyond) {
    Sheet sheet(option, weighed);
    sheet.statics();
    sheet.cells();
    std::stable_sort(weighed.assumptions.begin(), weighed.assumptions.end(),
                     [](const Assumption& a, const Assumption& b) { return a.missKn < b.missKn; });
  }
  return weighed;
}

} // namespace hangbook::options
