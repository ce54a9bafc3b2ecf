// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/would_do_lines.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

using options::Verdict;

/// How far something may be moved: never more than was proved. A figure on its own step stays as it is; in
/// other units it is cut off, not rounded.
QString within(double value, const QString& unit, const Figures& figures) {
  constexpr double metresPerFoot = 0.3048;
  constexpr double kilogramsPerPound = 0.45359237;
  constexpr double slack = 1e-9;
  const bool metric = figures.system() == UnitSystem::metric;
  const auto cut = [](double figure, double steps) { return std::floor(figure * steps + slack) / steps; };
  if (unit == QLatin1String("m")) {
    return figures.length(metric ? value : cut(value / metresPerFoot, 100.0) * metresPerFoot);
  }
  if (unit == QLatin1String("kg")) {
    return figures.mass(metric ? value : cut(value / kilogramsPerPound, 1.0) * kilogramsPerPound, 0);
  }
  return figures.inUnit(value, unit);
}

struct Way {
  const char* kind;
  const char* words;
};
constexpr std::array ways{
    Way{"mass", QT_TRANSLATE_NOOP("Words", "%1 more on the bar")},
    Way{"low-steel", QT_TRANSLATE_NOOP("Words", "%1 less under low steel")},
    Way{"trim-down", QT_TRANSLATE_NOOP("Words", "%1 lower")},
    Way{"trim-up", QT_TRANSLATE_NOOP("Words", "%1 higher")},
    Way{"tilt-down", QT_TRANSLATE_NOOP("Words", "%1 further down")},
    Way{"tilt-up", QT_TRANSLATE_NOOP("Words", "%1 further up")},
    Way{"mark-down", QT_TRANSLATE_NOOP("Words", "%1 shorter")},
    Way{"mark-up", QT_TRANSLATE_NOOP("Words", "%1 longer")},
    Way{"wind", QT_TRANSLATE_NOOP("Words", "%1 more wind")},
};

WouldDoLine reserveLine(const options::Reserve& reserve, const Figures& figures) {
  WouldDoLine line;
  line.about = WouldDoLine::About::reserve;
  const int steps = reserve.steps == 0 ? reserve.most : reserve.steps - 1;
  const QString far = steps == 0 ? Words::tr("not even %1").arg(figures.inUnit(reserve.step, reserve.unit))
                                 : within(steps * reserve.step, reserve.unit, figures);
  line.what = figures.sentence(reserve.words); // of a kind that is not known here
  for (const Way& way : ways) {
    if (reserve.kind == QLatin1String(way.kind)) {
      line.what = Words::tr(way.words).arg(far);
    }
  }
  line.figures = Words::tr("%1 → %2").arg(figures.inUnit(reserve.from, reserve.unit),
                                          figures.inUnit(reserve.last, reserve.unit));
  if (reserve.steps == 0) {
    line.rule = Words::tr("none");
    line.proof = Words::tr("Stands at every step of %1; no farther was tried.")
                     .arg(figures.inUnit(reserve.step, reserve.unit));
    line.whole = Words::tr("%1: it still stands, and no farther was tried.").arg(line.what);
    return line;
  }
  const QString says = figures.sentence(reserve.text);
  line.then = reserve.then;
  line.rule = reserve.rule.isEmpty() ? Words::tr("not possible") : ruleWords(reserve.rule);
  line.proof = Words::tr("One step on: %1").arg(says);
  line.whole = Words::tr("%1 and no farther. One step on (%2) it %3, by %4: %5")
                   .arg(line.what, figures.inUnit(reserve.step, reserve.unit),
                        reserve.then == Verdict::fails ? Words::tr("fails") : Words::tr("is unproven"),
                        line.rule, says);
  return line;
}

QString figuresOf(const options::Easing& easing, const Figures& figures) {
  QStringList says;
  for (const options::Change& change : easing.changes) {
    for (const options::ChangedFigure& each : change.figures) {
      if (each.from && each.to) {
        says << Words::tr("%1 → %2").arg(figures.inUnit(each.from, change.unit),
                                         figures.inUnit(each.to, change.unit));
      }
    }
  }
  return says.isEmpty() ? QStringLiteral("–") : says.join(QStringLiteral(", "));
}

/// With how many steps of what nothing fails, and that with one less something does.
QString proofOf(const options::Easing& easing, const Figures& figures) {
  QStringList steps;
  for (const options::Change& change : easing.changes) {
    for (const options::ChangedFigure& figure : change.figures) {
      if (figure.from && change.kind != QLatin1String("hire") &&
          change.kind != QLatin1String("examination")) {
        steps << Words::tr("%1 × %2").arg(figure.steps).arg(figures.inUnit(change.step, change.unit));
      }
    }
  }
  const QString then = verdictWord(easing.verdict);
  const QString less = verdictWord(easing.oneStepLess);
  return steps.isEmpty()
             ? Words::tr("Run again: %1; anything nearer: %2.").arg(then, less)
             : Words::tr("%1: %2; one step less: %3.").arg(steps.join(Words::tr(" and ")), then, less);
}

WouldDoLine changeLine(const options::Easing& easing, const QString& own, const Figures& figures) {
  WouldDoLine line;
  QStringList says;
  for (const options::Change& change : easing.changes) {
    says << figures.sentence(change.words);
  }
  line.what = says.join(Words::tr("; and: "));
  line.figures = figuresOf(easing, figures);
  line.then = easing.verdict;
  line.rule = QStringLiteral("–");
  line.proof = proofOf(easing, figures);
  QString at;
  if (easing.setting) {
    at = Words::tr(" Then at tilt %1, trim %2%3.")
             .arg(figures.angle(easing.setting->tiltDeg), figures.length(easing.setting->trimM),
                  easing.setting->mark ? Words::tr(", mark %1").arg(*easing.setting->mark) : QString());
  }
  if (!easing.option.isEmpty() && easing.option != own) {
    at += Words::tr(" That is another option of the list.");
  }
  line.whole = Words::tr("%1. %2%3").arg(line.what, line.proof, at);
  return line;
}

} // namespace

std::vector<WouldDoLine> wouldDoLines(const WhatWouldDo& found, const QString& own, const Figures& figures) {
  std::vector<WouldDoLine> lines;
  for (const auto* list : {&found.easings.singles, &found.easings.pairs}) {
    for (const options::Easing& each : *list) {
      lines.push_back(changeLine(each, own, figures));
    }
  }
  for (const options::Reserve& each : found.reserves) {
    lines.push_back(reserveLine(each, figures));
  }
  for (const options::Asked& each : found.easings.ask) {
    WouldDoLine line;
    line.about = WouldDoLine::About::ask;
    line.what = figures.sentence(each.text);
    line.figures = QStringLiteral("–");
    line.then = Verdict::unproven;
    line.rule = ruleWords(each.rule);
    line.proof = Words::tr("Unproven until what it lacks is asked for and entered.");
    line.whole = Words::tr("Not proven, by %1: %2").arg(line.rule, line.what);
    lines.push_back(std::move(line));
  }
  return lines;
}

QString wouldDoHead(const WhatWouldDo& found) {
  const options::Easings& easings = found.easings;
  if (easings.verdict == Verdict::fails) {
    const QString runs = QString::number(easings.runs);
    QString text =
        Words::tr("It fails. No single change would do, and no pair of two. All rules were run %1 times.");
    if (!easings.singles.empty()) {
      text = Words::tr("It fails. Each line would do by itself. All rules were run %1 times.");
    } else if (!easings.pairs.empty()) {
      text = Words::tr(
          "It fails, and no single change would do; each line is a pair of two that does. All rules "
          "were run %1 times.");
    }
    text = text.arg(runs);
    const auto leavesOpen = [](const options::Easing& each) { return each.verdict == Verdict::unproven; };
    if (std::ranges::any_of(easings.singles, leavesOpen) || std::ranges::any_of(easings.pairs, leavesOpen)) {
      text += Words::tr(" With what says unproven it no longer fails, but is not proven either.");
    }
    return text;
  }
  if (easings.verdict == Verdict::unproven) {
    return Words::tr("It is unproven. Nothing here mends that but the figures that are missing.");
  }
  return found.reserves.empty()
             ? Words::tr("It stands; there is no direction in which it could be moved.")
             : Words::tr("It stands. From this setting, each way by itself; what breaks first "
                         "in each unit comes first.");
}

Heading WouldDoModel::headingOf(WouldDoColumn column) const {
  switch (column) {
  case WouldDoColumn::what:
    return {.title = Words::tr("What would do, or how far it may go"), .characters = 36, .wish = 90};
  case WouldDoColumn::figures:
    return {.title = Words::tr("Now → then"), .characters = 20, .wish = 24};
  case WouldDoColumn::then:
    return {.title = Words::tr("Verdict then"),
            .characters = 13,
            .wish = 14,
            .toolTip = Words::tr("With the change; of a way to a limit one step beyond it")};
  case WouldDoColumn::rule:
    return {.title = Words::tr("What breaks first"), .characters = 18, .wish = 26};
  case WouldDoColumn::proof:
    return {.title = Words::tr("Proved by running all rules"), .characters = 30, .wish = 90};
  case WouldDoColumn::count:
    break;
  }
  return {};
}

Cell WouldDoModel::cellOf(const WouldDoLine& line, WouldDoColumn column) const {
  switch (column) {
  case WouldDoColumn::what:
    return {.text = line.what, .toolTip = line.whole, .strong = line.about != WouldDoLine::About::ask};
  case WouldDoColumn::figures:
    return {.text = line.figures};
  case WouldDoColumn::then:
    if (!line.then) {
      return {.text = QStringLiteral("–"), .missing = true};
    }
    return {.text = verdictWord(*line.then), .number = static_cast<double>(*line.then), .verdict = line.then};
  case WouldDoColumn::rule:
    return {.text = line.rule};
  case WouldDoColumn::proof:
    return {.text = line.proof, .toolTip = line.proof};
  case WouldDoColumn::count:
    break;
  }
  return {};
}

} // namespace hangbook::desk
