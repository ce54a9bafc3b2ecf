// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/unit_story.h"

#include <algorithm>
#include <set>

#include <QLocale>

#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString joined(QStringList parts) {
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

QString wordOf(fleet::Act act) {
  switch (act) {
  case fleet::Act::unsaid:
    return Words::tr("moved");
  case fleet::Act::entered:
    return Words::tr("entered");
  case fleet::Act::out:
    return Words::tr("out");
  case fleet::Act::in:
    return Words::tr("in");
  case fleet::Act::transfer:
    return Words::tr("moved");
  case fleet::Act::ontoCart:
    return Words::tr("onto a cart");
  case fleet::Act::ontoTruck:
    return Words::tr("into a truck");
  case fleet::Act::state:
    return Words::tr("state");
  case fleet::Act::undone:
    return Words::tr("taken back");
  }
  return {};
}

StoryLine lineOf(const fleet::Movement& each) {
  return {each.happenedAt, false, wordOf(each.act),
          joined({each.toPlace, desk::wordOf(each.toState),
                  each.toCart.isEmpty() ? QString() : Words::tr("on cart %1").arg(each.toCart),
                  each.show.isEmpty() ? QString() : Words::tr("for %1").arg(each.show), each.reason}),
          each.by};
}

StoryLine lineOf(const fleet::Examination& each) {
  return {QDateTime(each.date, QTime(12, 0), Qt::UTC), true, Words::tr("examined"),
          joined({each.rule, desk::wordOf(each.result), Words::tr("by %1").arg(each.examiner),
                  each.certificate, each.remark}),
          each.by};
}

StoryLine lineOf(const fleet::Occurrence& each) {
  return {QDateTime(each.date, QTime(12, 0), Qt::UTC), true, desk::wordOf(each.kind),
          joined({each.uses ? Words::tr("%1 times").arg(*each.uses) : QString(),
                  each.hours ? Words::tr("%1 h").arg(QLocale().toString(*each.hours)) : QString(), each.place,
                  each.remark}),
          each.by};
}

StoryLine lineOf(const fleet::UnitDocument& each) {
  return {each.recordedAt, false, Words::tr("file"),
          joined({each.fileName, Words::tr("SHA-256 %1…").arg(each.sha256.left(12))}), each.by};
}

template <class Fact>
void take(const std::vector<Fact>& facts, std::vector<StoryLine>& lines) {
  std::set<QUuid> corrected;
  for (const Fact& each : facts) {
    if constexpr (requires { each.corrects; }) {
      corrected.insert(each.corrects);
    }
  }
  for (const Fact& each : facts) {
    lines.push_back(lineOf(each));
    lines.back().corrected = corrected.contains(each.id);
  }
}

} // namespace

std::vector<StoryLine> storyLines(const UnitStory& story) {
  std::vector<StoryLine> lines;
  take(story.movements, lines);
  take(story.examinations, lines);
  take(story.occurrences, lines);
  take(story.documents, lines);
  std::ranges::stable_sort(lines, {}, &StoryLine::at);
  std::ranges::reverse(lines);
  return lines;
}

Heading StoryModel::headingOf(StoryColumn column) const {
  switch (column) {
  case StoryColumn::when:
    return {.title = Words::tr("When"), .characters = 17, .wish = 17};
  case StoryColumn::what:
    return {.title = Words::tr("What"), .characters = 11, .wish = 13};
  case StoryColumn::words:
    return {.title = Words::tr("In words"), .characters = 20, .wish = 60};
  case StoryColumn::by:
    return {.title = Words::tr("Recorded by"), .characters = 12, .wish = 16};
  case StoryColumn::count:
    break;
  }
  return {};
}

Cell StoryModel::cellOf(const StoryLine& line, StoryColumn column) const {
  Cell cell;
  switch (column) {
  case StoryColumn::when:
    cell.text =
        line.dayOnly
            ? dateText(line.at.date())
            : Words::tr("%1, %2").arg(dateText(line.at.toLocalTime().date()),
                                      QLocale().toString(line.at.toLocalTime().time(), QLocale::ShortFormat));
    cell.number = static_cast<double>(line.at.toMSecsSinceEpoch());
    break;
  case StoryColumn::what:
    cell.text = line.what;
    break;
  case StoryColumn::words:
    cell.text = line.corrected ? Words::tr("corrected since: %1").arg(line.words) : line.words;
    cell.toolTip = cell.text;
    break;
  case StoryColumn::by:
    cell.text = line.by;
    break;
  case StoryColumn::count:
    break;
  }
  cell.missing = line.corrected;
  return cell;
}

} // namespace hangbook::desk
