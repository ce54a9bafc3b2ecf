// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QFileInfo>
#include <QJsonArray>

#include "sheets/offline.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

QJsonArray json(const std::vector<sheets::CopyChange>& changes) {
  QJsonArray all;
  for (const sheets::CopyChange& each : changes) {
    all.append(QJsonObject{{QStringLiteral("part"), each.part},
                           {QStringLiteral("copied"), QJsonArray::fromStringList(each.copied)},
                           {QStringLiteral("now"), QJsonArray::fromStringList(each.now)}});
  }
  return all;
}

void print(const QString& heading, const QStringList& lines, std::ostream& out) {
  constexpr qsizetype most = 5; // a swapped type moves every line of a sheet
  for (qsizetype i = 0; i < std::min(lines.size(), most); ++i) {
    out << "  " << heading << lines[i] << '\n';
  }
  if (lines.size() > most) {
    out << "  " << heading << "and " << lines.size() - most << " more lines, which --json lists\n";
  }
}

void print(const sheets::CopyStanding& standing, std::ostream& out) {
  if (!standing.unknown.isEmpty()) {
    out << "NOT KNOWN whether it is stale: " << standing.unknown
        << ". Go by its moment and revisions, and ask who keeps the store.\n";
  } else if (!standing.stale()) {
    out << "current: the store would give the same copy now\n";
  } else {
    out << "STALE: the store has changed since; make another copy. What changed:\n";
    for (const sheets::CopyChange& each : standing.changes) {
      out << each.part << '\n';
      print(QStringLiteral("copy:  "), each.copied, out);
      print(QStringLiteral("store: "), each.now, out);
    }
  }
}

QString wordOf(const sheets::CopyStanding& standing) {
  return !standing.unknown.isEmpty() ? QStringLiteral("unknown")
         : standing.stale()          ? QStringLiteral("stale")
                                     : QStringLiteral("current");
}

void tell(const store::OfflineCopy& copy, const QString& file, const sheets::CopyStanding& standing,
          Context& context) {
  if (context.json) {
    printJson(context,
              {{QStringLiteral("format"), QStringLiteral("hangbook.offline-copy/1")},
               {QStringLiteral("file"), file},
               {QStringLiteral("tour"), copy.tour},
               {QStringLiteral("show"), copy.show},
               {QStringLiteral("made_at"), copy.madeAt.toUTC().toString(Qt::ISODate)},
               {QStringLiteral("made_by"), copy.by},
               {QStringLiteral("made_from"), copy.from},
               {QStringLiteral("as_of"), copy.asOf.toString(Qt::ISODate)},
               {QStringLiteral("revisions"), copy.revisions},
               {QStringLiteral("standing"), wordOf(standing)},
               {QStringLiteral("unknown_because"),
                standing.unknown.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(standing.unknown)},
               {QStringLiteral("changes"), json(standing.changes)}});
  } else {
    context.out << file << ": " << store::wordsFor(copy) << " by " << copy.by << " from " << copy.from
                << '\n';
    print(standing, context.out);
  }
}

/// Whether the copy is stale: by the store where it can be reached, else nobody can tell.
Ending look(const Given& given, Context& context) {
  const QString file = QFileInfo(QString::fromStdString(*given.option("--check"))).absoluteFilePath();
  if (!QFileInfo::exists(file)) {
    throw Error(Trouble::badInput, "there is no such file", file.toStdString());
  }
  const auto copy = store::Store::open(file);
  const auto about = store::offlineCopyIn(*copy);
  if (!about) {
    throw Error(Trouble::badInput, "is a store, and no offline copy of a show", file.toStdString());
  }
  sheets::CopyStanding standing;
  try {
    standing = sheets::standingOf(*copy, *openStore(context));
  } catch (const store::StoreError& error) {
    standing.unknown = QStringLiteral("the store cannot be read (%1)").arg(QString::fromUtf8(error.what()));
  }
  tell(*about, file, standing, context);
  return wordOf(standing) == QLatin1String("current") ? Ending::done : Ending::failing;
}

Ending run(const Given& given, Context& context) {
  if (given.has("--check")) {
    return look(given, context);
  }
  if (!given.has("--show") || !given.has("-o")) {
    throw Error(Trouble::badInput, "either --show NAME and -o FILE, or --check FILE is expected");
  }
  const QString file = QFileInfo(QString::fromStdString(*given.option("-o"))).absoluteFilePath();
  const auto store = openStore(context);
  const calendar::Show show = findShow(*store, given);
  const store::OfflineCopy copy =
      sheets::makeOfflineCopy(*store, show.tour, show.name, today(context), file, person(*store, context));
  tell(copy, file, {}, context);
  return Ending::done;
}

} // namespace

Command copyCommand() {
  return {"copy",
          "an offline copy of a show: one dated file for where there is no network; or whether one is stale",
          {{"--show", "NAME", "the show"},
           tourOption,
           {"-o", "FILE", "where to put the copy; it must not be there yet"},
           {"--check", "FILE", "instead: whether this copy is stale, by the store where it can be reached"}},
          {},
          "hangbook copy --show Ostrel -o ostrel-2027-04-02.hangbook",
          run};
}

} // namespace hangbook::terminal
