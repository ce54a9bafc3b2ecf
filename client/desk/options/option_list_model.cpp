// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/option_list_model.h"

#include <algorithm>
#include <cmath>

#include <QHash>

#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString dash() {
  return QStringLiteral("–");
}

/// The finding of the rule, or nullptr.
const options::Finding* findingOf(const options::Option& option, const char* rule) {
  const auto found =
      std::find_if(option.findings.begin(), option.findings.end(),
                   [&](const options::Finding& each) { return each.rule == QLatin1String(rule); });
  return found == option.findings.end() ? nullptr : &*found;
}

} // namespace

QString windowText(double lowM, double highM, const Figures& figures) {
  constexpr double metresPerFoot = 0.3048;
  constexpr int mostDigits = 4;
  const bool metric = figures.system() == UnitSystem::metric;
  const double metresPerUnit = metric ? 1.0 : metresPerFoot;
  const double low = lowM / metresPerUnit;
  const double high = highM / metresPerUnit;
  for (int digits = metric ? 2 : 1;; ++digits) {
    const double steps = std::pow(10.0, digits);
    const double slack = 1e-7; // a bound that stands on a step but for its last bits stays on it
    const double from = std::ceil(low * steps - slack) / steps;
    const double to = std::floor(high * steps + slack) / steps;
    if (from <= to || digits == mostDigits) {
      const QString lowest = figures.plain(from, digits);
      const QString highest = figures.plain(std::max(from, to), digits);
      return lowest == highest ? lowest : lowest + QStringLiteral("–") + highest;
    }
  }
}

OptionLine optionLine(options::Option option, int rank, bool chosen, const catalogue::Catalogue& catalogue) {
  OptionLine line;
  line.stack = stackText(option.key.stack, catalogue);
  line.rank = rank;
  line.chosen = chosen;
  for (const options::PointResult& point : option.points) {
    if (!point.capacityKn || *point.capacityKn <= 0) {
      line.limitMissing = true;
      continue;
    }
    // Which of its loads a point's limit is compared with is the rule's own matter; its finding says the
    // share.
    const double percent = 100.0 * point.staticKn / *point.capacityKn;
    if (!line.heaviestPercent || percent > *line.heaviestPercent) {
      line.heaviestPercent = percent;
      line.heaviestPoint = point.point;
    }
  }
  if (const auto* finding = findingOf(option, "point-load"); finding != nullptr && finding->usePercent) {
    line.heaviestPercent = finding->usePercent;
    line.heaviestPoint.clear();
  }
  line.option = std::move(option);
  return line;
}

void sayBeaten(const QStringList& beaten, std::vector<OptionLine>& lines) {
  QHash<QString, const OptionLine*> byId;
  for (const OptionLine& each : lines) {
    byId.insert(each.option.id, &each);
  }
  for (std::size_t i = 0; i < lines.size() && i < static_cast<std::size_t>(beaten.size()); ++i) {
    if (const OptionLine* by = byId.value(beaten[static_cast<qsizetype>(i)])) {
      lines[i].beatenBy = by->rank;
      lines[i].beatenStack = by->stack;
    }
  }
}

void OptionListModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading OptionListModel::headingOf(OptionColumn column) const {
  switch (column) {
  case OptionColumn::verdict:
    return {.title = Words::tr("Verdict"),
            .characters = 12,
            .wish = 13,
            .toolTip = Words::tr("Sorted by it, the options stand in the chosen order: what holds first")};
  case OptionColumn::number:
    return {.title = Words::tr("No."),
            .figure = true,
            .characters = 5,
            .wish = 5,
            .toolTip = Words::tr("Place in the chosen order")};
  case OptionColumn::stack:
    return {.title = Words::tr("Stack, from the bar down"), .characters = 18, .wish = 46};
  case OptionColumn::bar:
    return {.title = Words::tr("Bar"), .characters = 7, .wish = 13};
  case OptionColumn::picks:
    return {.title = Words::tr("Picks"), .characters = 9, .wish = 10};
  case OptionColumn::hoist:
    return {.title = Words::tr("Hoist"), .characters = 9, .wish = 17};
  case OptionColumn::points:
    return {.title = Words::tr("Points"), .characters = 8, .wish = 11};
  case OptionColumn::trim:
    return {.title = Words::tr("Trim, %1").arg(QString::fromUtf8(unitOf<Length>(figures_.system()))),
            .figure = true,
            .characters = 13,
            .wish = 13,
            .toolTip = Words::tr("Where the lowest edge may be for every rule to hold")};
  case OptionColumn::mark:
    return {.title = Words::tr("Mark"),
            .figure = true,
            .characters = 6,
            .wish = 6,
            .toolTip = Words::tr("Link that the chain is clipped at")};
  case OptionColumn::heaviest:
    return {.title = Words::tr("Point"),
            .figure = true,
            .characters = 7,
            .wish = 8,
            .toolTip = Words::tr("Heaviest point in % of its limit")};
  case OptionColumn::cover:
    return {.title = Words::tr("Cover"),
            .figure = true,
            .characters = 7,
            .wish = 7,
            .toolTip = Words::tr("Share of the audience that is covered")};
  case OptionColumn::beaten:
    return {.title = Words::tr("Behind"),
            .figure = true,
            .characters = 7,
            .wish = 8,
            .toolTip =
                Words::tr("No. of an option that is no worse in verdict, cover, mass, cabinets and hoists, "
                          "steps of the build and greatest use of a limit, and better in one of them")};
  case OptionColumn::count:
    break;
  }
  return {};
}

Cell OptionListModel::trimOf(const options::Option& option) const {
  if (!option.trimWindow) {
    return {
        .text = dash(), .missing = true, .toolTip = Words::tr("There is no trim at which every rule holds.")};
  }
  const options::TrimWindow& window = *option.trimWindow;
  return {.text = windowText(window.lowM, window.highM, figures_), // the unit stands in the heading
          .number = window.highM - window.lowM,
          .toolTip = windowText(window.lowM, window.highM, figures_) + QLatin1Char(' ') +
                     QString::fromUtf8(unitOf<Length>(figures_.system())) + QLatin1Char('\n') +
                     Words::tr("Not lower: %1. Not higher: %2.")
                         .arg(ruleWords(window.lowSetBy), ruleWords(window.highSetBy))};
}

Cell OptionListModel::heaviestOf(const OptionLine& line) const {
  if (!line.heaviestPercent) {
    return {.text = line.option.points.empty() ? dash() : Words::tr("no limit"), .missing = true};
  }
  Cell cell{.text = figures_.percent(line.heaviestPercent), .number = line.heaviestPercent};
  const options::Finding* finding = findingOf(line.option, "point-load");
  if (finding != nullptr) {
    cell.toolTip = finding->text;
  }
  return cell;
}

Cell OptionListModel::cellOf(const OptionLine& line, OptionColumn column) const {
  const options::Option& option = line.option;
  switch (column) {
  case OptionColumn::verdict:
    return {.text = verdictWord(option.verdict),
            .number = static_cast<double>(line.rank),
            .verdict = option.verdict};
  case OptionColumn::number:
    return {.text = QString::number(line.rank), .number = static_cast<double>(line.rank)};
  case OptionColumn::stack:
    return {.text = line.chosen ? Words::tr("%1 (chosen)").arg(line.stack) : line.stack,
            .toolTip = line.stack,
            .strong = line.chosen};
  case OptionColumn::bar:
    return {.text = option.key.bar, .toolTip = option.key.bar, .endMatters = true};
  case OptionColumn::picks:
    return {.text = wordOf(option.key.picks)};
  case OptionColumn::hoist:
    return {.text = option.key.hoist, .toolTip = option.key.hoist, .endMatters = true};
  case OptionColumn::points:
    return {.text = option.key.points.join(QStringLiteral(", ")),
            .toolTip = option.key.points.join(QStringLiteral(", "))};
  case OptionColumn::trim:
    return trimOf(option);
  case OptionColumn::mark:
    if (!option.setting || !option.setting->mark) {
      return {.text = dash(),
              .missing = true,
              .toolTip = Words::tr("No chain in this stack, or no setting possible")};
    }
    return {.text = QString::number(*option.setting->mark),
            .number = static_cast<double>(*option.setting->mark)};
  case OptionColumn::heaviest:
    return heaviestOf(line);
  case OptionColumn::cover:
    return {.text = figures_.percent(option.coveredPercent), .number = option.coveredPercent};
  case OptionColumn::beaten:
    if (line.beatenBy == 0) {
      return {.text = dash(),
              .missing = true,
              .toolTip = Words::tr("No other option beats it in every respect.")};
    }
    return {.text = Words::tr("No. %1").arg(line.beatenBy),
            .number = static_cast<double>(line.beatenBy),
            .toolTip = Words::tr("No. %1 (%2) is no worse in anything and better in something.")
                           .arg(line.beatenBy)
                           .arg(line.beatenStack)};
  case OptionColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
