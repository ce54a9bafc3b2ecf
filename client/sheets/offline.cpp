// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/offline.h"

#include <algorithm>
#include <iterator>

#include <QJsonObject>

#include "options/freeze.h"
#include "quantity/error.h"
#include "sheets/input_words.h"
#include "sheets/sheets.h"
#include "store/calendar_store.h"
#include "store/gate_store.h"
#include "store/mark_store.h"
#include "store/reading_store.h"
#include "store/snapshot_store.h"

namespace hangbook::sheets {
namespace {

struct Part {
  QString name;
  QStringList lines;
};

/// A fact is never changed: the moment at which it was recorded tells it from any other.
template <class Fact>
QString factLine(const QStringList& words, const Fact& fact) {
  return QStringLiteral("%1, by %2, recorded %3")
      .arg(words.join(QStringLiteral(", ")), fact.by,
           fact.recordedAt.toUTC().toString(QStringLiteral("yyyy-MM-dd HH:mm:ss.zzz 'UTC'")));
}

QStringList inputLines(store::Store& store, const store::OfflineCopy& of) {
  QJsonObject inputs = options::inputsOf(store::loadSnapshot(store, of.tour, of.show, of.asOf));
  inputs.remove(QLatin1String("choices")); // their revisions stand on every sheet
  return wordsOfInputs(inputs);
}

QStringList gateLines(store::Store& store, const store::OfflineCopy& of) {
  QStringList lines;
  for (const marks::GateSigned& each : store::loadGatesOf(store, of.tour, of.show)) {
    lines << factLine(
        {each.hang, each.gate,
         each.skipped ? QStringLiteral("skipped: %1").arg(each.reason) : QStringLiteral("signed")},
        each);
  }
  return lines;
}

QStringList readingLines(store::Store& store, const store::OfflineCopy& of) {
  QStringList lines;
  for (const marks::LoadReading& each : store::loadReadingsOf(store, of.tour, of.show)) {
    lines << factLine({each.hang, QStringLiteral("%1 pick").arg(each.pick),
                       QStringLiteral("%1 kN").arg(inNewtons(each.reading) / 1000)},
                      each);
  }
  return lines;
}

QStringList markLines(store::Store& store) {
  QStringList lines;
  for (const marks::MarkUsed& each : store::loadMarks(store)) {
    lines << factLine({each.place, each.date.toString(Qt::ISODate), each.hang,
                       QStringLiteral("%1 cabinets").arg(each.stack.size()),
                       QStringLiteral("mark %1").arg(each.mark)},
                      each);
  }
  return lines;
}

QStringList sheetLines(store::Store& store, const store::OfflineCopy& of, const QString& kind) {
  QStringList lines;
  for (const QStringList& record :
       reports::recordsOf(sheetOf(store, {kind, of.tour, of.show, UnitSystem::metric, of.asOf, {}}), {})) {
    lines << record.join(QStringLiteral(" | "));
  }
  return lines;
}

std::vector<Part> partsOf(store::Store& store, const store::OfflineCopy& of) {
  return store.reading([&] {
    std::vector<Part> parts{{QStringLiteral("what options are decided from"), inputLines(store, of)},
                            {QStringLiteral("hold points"), gateLines(store, of)},
                            {QStringLiteral("load readings"), readingLines(store, of)},
                            {QStringLiteral("mark book"), markLines(store)}};
    for (const QString& kind : kinds()) {
      parts.push_back({kind, sheetLines(store, of, kind)});
    }
    return parts;
  });
}

/// Lines of `these` that `those` lacks, in their order; of equal ones as many as it lacks.
QStringList missingFrom(const QStringList& those, const QStringList& these) {
  QHash<QString, int> there;
  for (const QString& line : those) {
    ++there[line];
  }
  QStringList missing;
  std::copy_if(these.begin(), these.end(), std::back_inserter(missing),
               [&](const QString& line) { return there[line]-- <= 0; });
  return missing;
}

std::vector<CopyChange> between(const std::vector<Part>& copied, const std::vector<Part>& now) {
  std::vector<CopyChange> changes;
  for (std::size_t i = 0; i < copied.size(); ++i) {
    if (copied[i].lines != now[i].lines) {
      changes.push_back({copied[i].name, missingFrom(now[i].lines, copied[i].lines),
                         missingFrom(copied[i].lines, now[i].lines)});
    }
  }
  return changes;
}

QString revisionsOf(store::Store& store, const QString& tour, const QString& show, const QDate& today) {
  const options::Snapshot snapshot = store::loadSnapshot(store, tour, show, today);
  QStringList parts{QStringLiteral("show r%1").arg(snapshot.show.revision)};
  for (const options::Choice& choice : snapshot.choices) {
    parts << QStringLiteral("%1 r%2").arg(choice.hang).arg(choice.revision);
  }
  return parts.join(QStringLiteral(", "));
}

} // namespace

store::OfflineCopy makeOfflineCopy(store::Store& store, const QString& tour, const QString& show,
                                   const QDate& today, const QString& file, const QString& by) {
  if (by.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who makes the copy; say who is at the desk");
  }
  if (const auto copy = store::offlineCopyIn(store)) {
    throw Error(Trouble::notPossible, "this is an " + store::wordsFor(*copy).toStdString() +
                                          ": a copy of it would look younger than it is; copy its file");
  }
  return store.reading([&] {
    const store::OfflineCopy about{tour,
                                   show,
                                   today,
                                   QDateTime::currentDateTimeUtc(),
                                   by.trimmed(),
                                   store.place().shown(),
                                   revisionsOf(store, tour, show, today)};
    store::writeOfflineCopy(store, file, about, [&](store::Store& copy) {
      if (!between(partsOf(copy, about), partsOf(store, about)).empty()) {
        throw Error(Trouble::store, "the copy does not answer as the store does, so it was thrown away");
      }
    });
    return about;
  });
}

CopyStanding standingOf(store::Store& copy, store::Store& store) {
  const auto about = store::offlineCopyIn(copy);
  if (!about) {
    throw Error(Trouble::badInput, "this is a store, and no offline copy of a show",
                copy.place().shown().toStdString());
  }
  if (const auto itself = store::offlineCopyIn(store)) {
    return {QStringLiteral("the store is an %1 itself").arg(store::wordsFor(*itself)), {}};
  }
  const auto show = store::loadShow(store, about->tour, about->show);
  const auto copied = store::loadShow(copy, about->tour, about->show);
  if (!show || !copied || show->id != copied->id) {
    return {show ? QStringLiteral("the store has another show of that name")
                 : QStringLiteral("the store does not have that show, or no more by that name"),
            {}};
  }
  return {{}, between(partsOf(copy, *about), partsOf(store, *about))};
}

} // namespace hangbook::sheets
