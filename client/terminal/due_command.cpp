// SPDX-License-Identifier: GPL-3.0-or-later
#include <set>

#include <QSaveFile>

#include "actions/fleet_work.h"
#include "exchange/due_calendar.h"
#include "fleet/due.h"
#include "store/calendar_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/due_answers.h"
#include "terminal/facts.h"
#include "terminal/fleet_words.h"
#include "terminal/spans.h"
#include "terminal/store_door.h"

namespace hangbook::terminal {
namespace {

using Types = std::set<std::pair<fleet::UnitKind, QString>>;

/// What is asked about: up to which day, on which route, of which types. No types = everything.
struct Question {
  QDate last;
  std::vector<calendar::Show> route;
  std::optional<Types> types;
  QString asked;
};

QDate lastDayAway(const calendar::Show& show) {
  return show.awayTo.isValid() ? show.awayTo : show.to;
}

/// The types that shows take; nullopt where a hang has no choice yet, so that anything might go.
std::optional<Types> typesOf(store::Store& store, const std::vector<calendar::Show>& shows, QDate asOf) {
  Types types;
  for (const options::Demand& demand : actions::loadDemands(store, asOf)) {
    for (const calendar::Show& show : shows) {
      if (demand.tour == show.tour && demand.show == show.name) {
        if (!demand.open.isEmpty()) {
          return std::nullopt;
        }
        for (const auto& [what, number] : demand.numbers) {
          types.insert(what);
        }
      }
    }
  }
  return types;
}

/// How far to look in days, where that was said; the words are checked before any store is opened.
std::optional<QDate> spanFrom(const Given& given, QDate asOf) {
  const int said = (given.has("--within") ? 1 : 0) + (given.has("--show") ? 1 : 0) +
                   (given.has("--tour") && !given.has("--show") && !given.has("--within") ? 1 : 0);
  if (said != 1) {
    throw Error(Trouble::badInput, "say how far to look: --within SPAN, --show NAME or --tour NAME");
  }
  return given.has("--within") ? std::optional(endOfSpan("--within", *given.option("--within"), asOf))
                               : std::nullopt;
}

Question questionFrom(store::Store& store, const Given& given, const std::optional<QDate>& last, QDate asOf) {
  Question question;
  if (last) {
    question.last = *last;
    question.route =
        given.has("--tour") ? store::loadShows(store, findTour(store, given)) : store::loadShows(store);
    return question;
  }
  std::vector<calendar::Show> shows;
  if (given.has("--show")) {
    const calendar::Show show = findShow(store, given);
    question.asked = QStringLiteral("show %1").arg(show.name);
    question.route = store::loadShows(store, show.tour);
    shows = {show};
  } else {
    const QString tour = findTour(store, given);
    question.asked = QStringLiteral("tour %1").arg(tour);
    question.route = store::loadShows(store, tour);
    shows = question.route;
  }
  for (const calendar::Show& show : shows) {
    const QDate day = lastDayAway(show);
    if (day.isValid() && (!question.last.isValid() || day > question.last)) {
      question.last = day;
    }
  }
  if (!question.last.isValid()) {
    throw Error(Trouble::notPossible, "the " + question.asked.toStdString() + " states no days");
  }
  question.types = typesOf(store, shows, asOf);
  return question;
}

DueAnswer answerTo(store::Store& store, const Question& question, QDate asOf) {
  const options::Stock stock = actions::loadStockUnderRules(store);
  const int days = static_cast<int>(std::max<qint64>(asOf.daysTo(question.last), 0));
  DueAnswer answer{asOf, question.last, {}, {}, question.asked};
  for (calendar::Planned& each : calendar::planned(
           fleet::dueWithin(stock.units, stock.rules, stock.examinations, asOf, days, stock.occurrences),
           question.route, asOf)) {
    const bool wanted = !question.types || question.types->contains({each.due.kind, each.due.type});
    (wanted ? answer.units : answer.besides).push_back(std::move(each));
  }
  return answer;
}

void writeIcs(const QString& name, const QByteArray& bytes) {
  QSaveFile file(name);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
    throw Error(Trouble::badInput,
                "--ics " + name.toStdString() + " cannot be written: " + file.errorString().toStdString());
  }
}

Ending run(const Given& given, Context& context) {
  const QDate asOf = today(context);
  const std::optional<QDate> last = spanFrom(given, asOf);
  const auto store = openStore(context);
  const DueAnswer answer =
      store->reading([&] { return answerTo(*store, questionFrom(*store, given, last, asOf), asOf); });
  if (given.has("--ics")) {
    std::vector<calendar::Planned> all = answer.units;
    all.insert(all.end(), answer.besides.begin(), answer.besides.end());
    writeIcs(textOf(given, "--ics"), exchange::dueAsCalendar(all, QDateTime::currentDateTimeUtc()));
  }
  if (context.json) {
    printJson(context, dueInJson(answer));
  } else {
    printDue(answer, context.out);
  }
  return Ending::done;
}

} // namespace

Command dueCommand() {
  return {
      "due",
      "which units must be examined, by when and where it is best done; what is overdue comes first",
      {{"--within", "SPAN", "how far ahead: days, weeks or months, such as 90d, 12w, 6m"},
       {"--show", "NAME", "until the last day away of this show, of what it takes first"},
       {"--tour", "NAME", "the same for a whole tour; with --show or --within: the tour whose route counts"},
       {"--ics", "FILE", "write it as a calendar too (iCalendar, RFC 5545)"}},
      {},
      "hangbook due --within 90d",
      run};
}

} // namespace hangbook::terminal
