// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/sort.h"

/// Facts are added and never changed: a line that says what is recorded already changes nothing, and one that
/// says something else of the same entry is a fault.
namespace hangbook::exchange {

/// Fills in what the line leaves open, adds the fact or finds it there already, and counts it.
/// Answers false where an entry of that identifier says something else.
template <class Fact>
bool addFact(Work& work, Facts<Fact>& facts, const QString& sort, Fact fact) {
  const Fact* known = facts.find(fact);
  if (known) {
    const bool agrees = facts.sameWords(*known, fact);
    work.count(sort).same += agrees ? 1 : 0;
    return agrees;
  }
  if (fact.by.isEmpty()) {
    fact.by = work.importer.by;
  }
  if (!fact.recordedAt.isValid()) {
    fact.recordedAt = work.importer.now;
  }
  facts.add(fact);
  work.count(sort).added += 1;
  return true;
}

/// Lines of facts: `member` is the fact in the line.
template <class Line, class Fact>
Handling<Line> factHandling(const char* word, Facts<Fact> Work::*facts, Fact Line::*member,
                            const std::vector<Fact>& (*listOf)(const Data&)) {
  const QString sort = QString::fromLatin1(word);
  Handling<Line> handling;
  handling.unique = false;
  handling.countsItself = true;
  handling.fetch = [](Work&, const Line&) { return std::optional<Line>(); };
  handling.put = [=](Work& work, Line& line, const At& at) {
    if (!addFact(work, work.*facts, sort, line.*member)) {
      at.fault(QStringLiteral("entry"), at.cell(QStringLiteral("entry")),
               QStringLiteral("the %1 as it was recorded: correct it by a later one").arg(sort));
    }
  };
  handling.all = [=](const Data& data) {
    std::vector<Line> lines;
    for (const Fact& fact : listOf(data)) {
      Line line;
      line.*member = fact;
      lines.push_back(line);
    }
    return lines;
  };
  return handling;
}

/// Puts down a fault where a fact corrects one that nobody knows.
template <class Fact>
void mustCorrectKnown(const At& at, const Fact& fact, Facts<Fact>& facts) {
  if (!fact.corrects.isNull() && !facts.hasEntry(fact.corrects)) {
    at.fault(QStringLiteral("corrects"), at.cell(QStringLiteral("corrects")),
             QStringLiteral("an entry that is in this file or in the store"));
  }
}

} // namespace hangbook::exchange
