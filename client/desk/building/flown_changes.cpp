// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/building/flown_changes.h"

#include "desk/building/flown_panel.h"
#include "desk/words/plain_words.h"

namespace hangbook::desk {
namespace {

/// The rule's own words instead of its id; the hang may stand before it.
QString whatText(const build::FlownChange& change) {
  const QString rule = QStringLiteral("rule ");
  const qsizetype at = change.unit.isEmpty() ? change.what.indexOf(rule) : -1;
  const QString what = at < 0
                           ? change.what
                           : change.what.left(at) +
                                 FlownPanel::tr("Rule: %1").arg(ruleWords(change.what.mid(at + rule.size())));
  return what.left(1).toUpper() + what.mid(1);
}

} // namespace

Heading ChangeModel::headingOf(ChangeColumn column) const {
  switch (column) {
  case ChangeColumn::what:
    return {.title = FlownPanel::tr("What changes"), .characters = 24};
  case ChangeColumn::was:
    return {.title = FlownPanel::tr("Signed"), .figure = true, .characters = 11};
  case ChangeColumn::becomes:
    return {.title = FlownPanel::tr("Would be"), .figure = true, .characters = 11};
  case ChangeColumn::count:
    break;
  }
  return {};
}

Cell ChangeModel::cellOf(const build::FlownChange& change, ChangeColumn column) const {
  if (column == ChangeColumn::what) {
    return {.text = figures_.sentence(whatText(change)), .strong = change.worse};
  }
  const bool now = column == ChangeColumn::becomes;
  if (change.unit.isEmpty()) {
    return {.text = figures_.sentence(now ? change.becomesWord : change.wasWord),
            .strong = now && change.worse};
  }
  const std::optional<double> figure = now ? change.becomes : change.was;
  return {.text = change.unit == QStringLiteral("°")   ? figures_.angle(figure)
                  : change.unit == QStringLiteral("%") ? figures_.percent(figure, 1)
                                                       : figures_.inUnit(figure, change.unit),
          .number = figure,
          .missing = !figure,
          .strong = now};
}

} // namespace hangbook::desk
