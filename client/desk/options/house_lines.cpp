// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QLocale>

#include "desk/options/house_panel.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// As people type it, in the rule's own unit, without a last 0.
QString shown(const std::optional<double>& value, const QString& unit) {
  if (!value) {
    return QStringLiteral("–");
  }
  const QString number = QLocale().toString(*value, 'g', 6);
  return unit.isEmpty() || unit == QStringLiteral("°") ? number + unit : number + QLatin1Char(' ') + unit;
}

QString directionOf(const options::HouseFigureKind& kind) {
  switch (kind.stricter) {
  case options::Stricter::higher:
    return Words::tr("only higher");
  case options::Stricter::lower:
    return Words::tr("only lower");
  case options::Stricter::free:
    break;
  }
  return Words::tr("either way, signed");
}

} // namespace

std::vector<HouseLine> houseLines(const options::Snapshot& snapshot) {
  const options::House house(snapshot.tour.house, snapshot.venue.house, snapshot.show.house);
  std::vector<HouseLine> lines;
  for (const options::HouseFigureKind& kind : options::houseFigureKinds()) {
    HouseLine line{kind, house.figure(kind.id), {}};
    const auto states = [&kind](const std::vector<venue::HouseFigure>& list) {
      return std::ranges::any_of(list,
                                 [&](const venue::HouseFigure& each) { return each.figure == kind.id; });
    };
    if (states(snapshot.tour.house)) {
      line.places << Words::tr("tour");
    }
    if (states(snapshot.venue.house)) {
      line.places << Words::tr("venue");
    }
    if (states(snapshot.show.house)) {
      line.places << Words::tr("show");
    }
    lines.push_back(std::move(line));
  }
  // What somebody set comes first: that is what differs from one show to the next.
  std::ranges::stable_partition(lines, [](const HouseLine& each) { return !each.places.isEmpty(); });
  return lines;
}

void HouseModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading HouseModel::headingOf(HouseColumn column) const {
  switch (column) {
  case HouseColumn::figure:
    return {.title = Words::tr("House rule"), .characters = 20, .wish = 22};
  case HouseColumn::value:
    return {.title = Words::tr("Stands at"), .figure = true, .characters = 11};
  case HouseColumn::usual:
    return {.title = Words::tr("Usual"), .figure = true, .characters = 10};
  case HouseColumn::direction:
    return {.title = Words::tr("May move"), .characters = 17};
  case HouseColumn::places:
    return {.title = Words::tr("Set for"), .characters = 12};
  case HouseColumn::source:
    return {.title = Words::tr("Where it comes from"), .characters = 30, .wish = 70};
  case HouseColumn::what:
    return {.title = Words::tr("What it is"), .characters = 30, .wish = 70};
  case HouseColumn::count:
    break;
  }
  return {};
}

Cell HouseModel::cellOf(const HouseLine& line, HouseColumn column) const {
  switch (column) {
  case HouseColumn::figure:
    return {.text = line.kind.id, .toolTip = line.kind.what, .strong = !line.places.isEmpty()};
  case HouseColumn::value: {
    // In feet only beside it: the rule itself is in its own unit.
    const bool length = line.kind.unit == QLatin1String("m") && figures_.system() != UnitSystem::metric;
    return {.text = shown(line.stands.value, line.kind.unit),
            .number = line.stands.value,
            .missing = !line.stands.value,
            .toolTip = length ? figures_.length(line.stands.value) : QString()};
  }
  case HouseColumn::usual:
    return {.text = shown(line.kind.usual, line.kind.unit),
            .number = line.kind.usual,
            .missing = !line.kind.usual};
  case HouseColumn::direction:
    return {.text = directionOf(line.kind)};
  case HouseColumn::places:
    return {.text = line.places.isEmpty() ? QStringLiteral("–") : line.places.join(Words::tr(", "))};
  case HouseColumn::source:
    return {.text = line.stands.unsignedAlone
                        ? Words::tr("%1 (not signed: proves nothing)").arg(line.stands.source)
                        : line.stands.source,
            .toolTip = line.stands.source};
  case HouseColumn::what:
    return {.text = line.kind.what, .toolTip = line.kind.what};
  case HouseColumn::count:
    break;
  }
  return {};
}

QString effectWords(const options::HouseEffect& effect, bool dryRun) {
  QStringList says;
  says << (dryRun ? Words::tr("Chosen options that it counts for: %1; all would be judged again.")
                  : Words::tr("Chosen options that it counts for, judged again: %1."))
              .arg(effect.judged);
  if (effect.changed.empty()) {
    says << (dryRun ? Words::tr("None would change its verdict.") : Words::tr("None changed its verdict."));
  }
  for (const options::VerdictChange& each : effect.changed) {
    says << Words::tr("%1, %2: %3 → %4. %5")
                .arg(each.show, each.hang, verdictWord(each.before), verdictWord(each.now), each.because);
  }
  return says.join(QLatin1Char(' '));
}

} // namespace hangbook::desk
