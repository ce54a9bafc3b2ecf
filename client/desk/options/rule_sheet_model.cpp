// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/rule_sheet_model.h"

#include <algorithm>

#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

/// What does not apply comes after all that does.
int trouble(const options::Finding& finding) {
  return finding.applies ? static_cast<int>(finding.verdict) : -1;
}

} // namespace

void RuleSheetModel::setFindings(std::vector<options::Finding> findings) {
  std::stable_sort(
      findings.begin(), findings.end(),
      [](const options::Finding& a, const options::Finding& b) { return trouble(a) > trouble(b); });
  setRows(std::move(findings));
}

void RuleSheetModel::setFigures(const Figures& figures) {
  figures_ = figures;
  refresh();
}

Heading RuleSheetModel::headingOf(RuleColumn column) const {
  switch (column) {
  case RuleColumn::verdict:
    return {.title = Words::tr("Verdict"), .characters = 13};
  case RuleColumn::rule:
    return {.title = Words::tr("Rule"), .characters = 20, .wish = 24};
  case RuleColumn::value:
    return {.title = Words::tr("Value"), .figure = true, .characters = 11, .wish = 12};
  case RuleColumn::limit:
    return {.title = Words::tr("Limit"), .figure = true, .characters = 11, .wish = 12};
  case RuleColumn::use:
    return {.title = Words::tr("Use of the limit"),
            .characters = 17,
            .wish = 20,
            .toolTip = Words::tr("The stroke stands at 100 %")};
  case RuleColumn::text:
    return {.title = Words::tr("What it says"), .characters = 50, .wish = 100};
  case RuleColumn::source:
    return {.title = Words::tr("Where the limit comes from"), .characters = 24, .wish = 50};
  case RuleColumn::count:
    break;
  }
  return {};
}

Cell RuleSheetModel::cellOf(const options::Finding& finding, RuleColumn column) const {
  switch (column) {
  case RuleColumn::verdict:
    if (!finding.applies) {
      return {.text = Words::tr("not asked"), .number = -1.0, .toolTip = figures_.sentence(finding.text)};
    }
    return {.text = verdictWord(finding.verdict),
            .number = static_cast<double>(finding.verdict),
            .verdict = finding.verdict};
  case RuleColumn::rule:
    return {.text = ruleWords(finding.rule), .toolTip = finding.rule};
  case RuleColumn::value:
  case RuleColumn::limit: {
    const auto& figure = column == RuleColumn::value ? finding.value : finding.limit;
    const bool missed =
        finding.applies && finding.verdict == options::Verdict::unproven && !finding.unit.isEmpty();
    if (!figure && !missed) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = figures_.inUnit(figure, finding.unit),
            .number = figure,
            .missing = !figure,
            .toolTip = figures_.sentence(finding.source)};
  }
  case RuleColumn::use:
    if (!finding.usePercent || !finding.applies) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = figures_.percent(finding.usePercent),
            .number = finding.usePercent,
            .verdict = finding.verdict,
            .usePercent = finding.usePercent,
            .toolTip = figures_.sentence(finding.text)};
  case RuleColumn::text: {
    const QString says = figures_.sentence(finding.text);
    return {.text = says, .toolTip = says};
  }
  case RuleColumn::source: {
    const QString source = figures_.sentence(finding.source);
    return {.text = source.isEmpty() ? QStringLiteral("–") : source, .toolTip = source};
  }
  case RuleColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
