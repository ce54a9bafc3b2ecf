// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/easing_sheet.h"

#include "terminal/answers.h"
#include "terminal/both_units.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

using options::Easing;
using options::Verdict;

constexpr int width = 106;
constexpr std::size_t mostPairs = 8;

void printLines(const QString& text, const QString& indent, std::ostream& out) {
  for (const QString& line : brokenInto(forReaders(out, text), width - static_cast<int>(indent.size()))) {
    asIs(out) << indent << line << '\n';
  }
}

QString wordsOf(const Easing& easing) {
  QStringList words;
  for (const options::Change& change : easing.changes) {
    words << change.words;
  }
  return words.join(QStringLiteral("; and: "));
}

/// With how many steps of what it does, and that one step less does not.
QString proofOf(const Easing& easing) {
  QStringList steps;
  for (const options::Change& change : easing.changes) {
    for (const options::ChangedFigure& figure : change.figures) {
      if (figure.from && change.kind != QStringLiteral("hire") &&
          change.kind != QStringLiteral("examination")) {
        steps << QStringLiteral("%1 × %2 %3").arg(figure.steps).arg(change.step).arg(change.unit);
      }
    }
  }
  const QString then = options::wordFor(easing.verdict);
  return steps.isEmpty()
             ? QStringLiteral("[then %1; anything nearer: %2]")
                   .arg(then, options::wordFor(easing.oneStepLess))
             : QStringLiteral("[%1: %2; one step less: %3]")
                   .arg(steps.join(QStringLiteral(" and ")), then, options::wordFor(easing.oneStepLess));
}

QString settingOf(const Easing& easing) {
  if (!easing.setting) {
    return {};
  }
  QString text = QStringLiteral(" at tilt %1°, trim %2 m")
                     .arg(shownAngle(easing.setting->tiltDeg), shown(easing.setting->trimM, 2));
  if (easing.setting->mark) {
    text += QStringLiteral(", mark %1").arg(*easing.setting->mark);
  }
  return text;
}

void printEasing(const Easing& easing, const QString& own, std::ostream& out) {
  const QString becomes =
      easing.option == own ? QString() : QStringLiteral(": option %1").arg(easing.option.left(8));
  printLines(wordsOf(easing) + becomes + settingOf(easing) + QStringLiteral(" ") + proofOf(easing),
             QStringLiteral("  "), out);
}

} // namespace

void printEasings(const options::Easings& easings, std::ostream& out) {
  if (easings.verdict == Verdict::fails) {
    const bool pairs = easings.singles.empty() && !easings.pairs.empty();
    out << '\n';
    printLines(
        easings.singles.empty() && easings.pairs.empty()
            ? QStringLiteral("No single change would do, and no pair of two. All rules were run %1 times.")
                  .arg(easings.runs)
            : QStringLiteral("What would do, each line by itself%1; found by running all rules %2 times:")
                  .arg(pairs ? QStringLiteral(", no single change doing") : QString())
                  .arg(easings.runs),
        {}, out);
    for (const Easing& each : easings.singles) {
      printEasing(each, easings.option, out);
    }
    for (std::size_t i = 0; i < easings.pairs.size() && i < mostPairs; ++i) {
      printEasing(easings.pairs[i], easings.option, out);
    }
    if (easings.pairs.size() > mostPairs) {
      out << "  … and " << QString::number(easings.pairs.size() - mostPairs) << " more pairs\n";
    }
    if (easings.goal == Verdict::unproven) {
      printLines(QStringLiteral("After any of these the option no longer fails, but is still unproven."), {},
                 out);
    } else if (!easings.singles.empty() || !easings.pairs.empty()) {
      out << "A rule that is tight counts as mended; none fails.\n";
    }
  }
  if (!easings.ask.empty()) {
    out << "\nTo be asked for, since without it nothing is proven:\n";
    for (const options::Asked& each : easings.ask) {
      printLines(each.rule + QStringLiteral(": ") + each.text, QStringLiteral("  "), out);
    }
  }
}

void printReserves(const std::vector<options::Reserve>& reserves, std::ostream& out) {
  if (reserves.empty()) {
    return;
  }
  out << "\nHow far it is to the first limit, each way by itself, from this setting:\n";
  for (const options::Reserve& each : reserves) {
    const QString text =
        each.steps == 0
            ? each.words + QStringLiteral(" and it still stands; no farther was tried")
            : QStringLiteral("%1 and no farther: one step on (%2 %3) %4")
                  .arg(each.words)
                  .arg(each.step)
                  .arg(each.unit, each.rule.isEmpty()
                                      ? QStringLiteral("is not possible: ") + each.text
                                      : QStringLiteral("%1 %2: %3")
                                            .arg(each.rule,
                                                 each.then == Verdict::fails ? QStringLiteral("fails")
                                                                             : QStringLiteral("is unproven"),
                                                 each.text));
    printLines(text, QStringLiteral("  "), out);
  }
}

void printEasingLine(const QString& id, const options::Easings& easings, std::ostream& out) {
  const auto& list = easings.singles.empty() ? easings.pairs : easings.singles;
  const QString text = list.empty() ? QStringLiteral("no single change and no pair of two would do")
                                    : wordsOf(list.front()) + QStringLiteral(" ") + proofOf(list.front());
  out << id << "  ";
  bool first = true;
  for (const QString& line : brokenInto(forReaders(out, text), width - static_cast<int>(id.size()) - 2)) {
    asIs(out) << (first ? QString() : QString(id.size() + 2, QLatin1Char(' '))) << line << '\n';
    first = false;
  }
}

} // namespace hangbook::terminal
