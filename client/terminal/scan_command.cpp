// SPDX-License-Identifier: GPL-3.0-or-later
#include <vector>

#include <QJsonArray>
#include <QJsonDocument>

#include "actions/scan.h"
#include "store/calendar_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/fleet_words.h"
#include "terminal/people.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using actions::ScanAnswer;
using actions::ScanTask;
using Word = ScanAnswer::Word;

QString venueOf(const calendar::Show& show) {
  return show.venue.isEmpty() ? show.name : show.venue;
}

ScanTask taskFrom(store::Store& store, const Given& given) {
  ScanTask task;
  int said = 0;
  task.from = textOf(given, "--from");
  if (given.has("--in")) {
    ++said;
    task.kind = ScanTask::Kind::in;
    task.place = textOf(given, "--in");
  }
  if (given.has("--onto")) {
    ++said;
    task.kind = ScanTask::Kind::ontoCart;
    task.cart = textOf(given, "--onto");
  }
  if (given.has("--to")) {
    ++said;
    task.kind = ScanTask::Kind::transfer;
    task.place = textOf(given, "--to");
  }
  if (given.has("--truck") && !given.has("--out")) {
    ++said;
    task.kind = ScanTask::Kind::ontoTruck;
    task.place = textOf(given, "--truck");
  }
  if (given.has("--out")) {
    ++said;
    task.kind = ScanTask::Kind::out;
    const auto tour = given.option("--tour");
    task.show = findShow(store::loadShows(store), textOf(given, "--out"),
                         tour ? std::optional(QString::fromStdString(*tour)) : std::nullopt);
    task.place = given.has("--truck") ? textOf(given, "--truck") : venueOf(*task.show);
  }
  if (said != 1) {
    throw Error(Trouble::badInput,
                "say one thing that the scanner is to do: --out SHOW, --in PLACE, --onto CART, "
                "--truck NAME or --to PLACE");
  }
  actions::checkTask(store, task);
  return task;
}

/// Colour and bell for one who does not look at the words: green, yellow, red; silence, one, two.
std::string loudly(Word word, const std::string& line) {
  const bool good = word == Word::done || word == Word::undone;
  const bool mild = word == Word::again;
  return (good   ? "\033[32m"
          : mild ? "\033[33m"
                 : "\033[31m") +
         line + "\033[0m" +
         (good   ? ""
          : mild ? "\a"
                 : "\a\a");
}

/// One line, flushed: whoever reads it knows that the scan is in the store.
void answer(const ScanAnswer& said, int number, bool loud, Context& context) {
  if (context.json) {
    const QJsonObject line{
        {QStringLiteral("format"), QStringLiteral("hangbook.scan/1")},
        {QStringLiteral("number"), number},
        {QStringLiteral("code"), said.code},
        {QStringLiteral("answer"), actions::wordFor(said.word)},
        {QStringLiteral("text"), said.text},
        {QStringLiteral("units"), QJsonArray::fromStringList(said.serials)},
        {QStringLiteral("scan"), said.scan.isNull() ? QJsonValue(QJsonValue::Null)
                                                    : QJsonValue(said.scan.toString(QUuid::WithoutBraces))}};
    context.out << QJsonDocument(line).toJson(QJsonDocument::Compact).toStdString() << '\n';
  } else {
    const std::string line =
        QStringLiteral("%1  %2").arg(actions::wordFor(said.word), -11).arg(said.text).toStdString();
    context.out << (loud ? loudly(said.word, line) : line) << '\n';
  }
  context.out.flush();
  if (!context.out) {
    throw Error(Trouble::store, "the answer could not be written; the last scan is recorded");
  }
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const ScanTask task = taskFrom(*store, given);
  const QString by = person(*store, context);
  std::vector<QUuid> undoable;
  bool allDone = true;
  int number = 0;
  for (std::string line; std::getline(context.in, line);) {
    const QString code = QString::fromStdString(line).trimmed();
    if (code.isEmpty()) {
      continue;
    }
    ++number;
    ScanAnswer said;
    if (code.compare(QStringLiteral("undo"), Qt::CaseInsensitive) == 0) {
      said = undoable.empty()
                 ? ScanAnswer{Word::refused, code, QStringLiteral("nothing to undo in this run"), {}, {}}
                 : actions::undoScan(*store, undoable.back(), QDateTime::currentDateTimeUtc(), by);
      if (said.word == Word::undone) {
        undoable.pop_back();
      }
    } else {
      said = actions::scan(*store, task, code, QDateTime::currentDateTimeUtc(), by);
      if (said.word == Word::done) {
        undoable.push_back(said.scan);
      }
    }
    said.code = code;
    allDone = allDone && (said.word == Word::done || said.word == Word::undone || said.word == Word::again);
    answer(said, number, given.has("--loud"), context);
  }
  return allDone ? Ending::done : Ending::failing;
}

} // namespace

Command scanCommand() {
  return {"scan",
          "book gear by scanner: one code a line on standard input, one answer a line; “undo” takes the last "
          "one back",
          {{"--out", "SHOW", "what is scanned leaves for this show"},
           {"--in", "PLACE", "what is scanned comes back to this bay"},
           {"--onto", "CART", "what is scanned goes onto this cart"},
           {"--truck", "NAME", "what is scanned goes into this truck; with --out: leaves in it"},
           {"--to", "PLACE", "what is scanned goes to this place, its state as it is"},
           {"--from", "PLACE", "where you stand: what is recorded elsewhere is a wrong place, and stays"},
           {"--loud", "", "answer with the terminal's colours and bell as well"},
           tourOption},
          {},
          "hangbook scan --out Ostrel --truck \"truck 1\" --by \"Ingrid Paddock\" < codes.txt",
          run};
}

} // namespace hangbook::terminal
