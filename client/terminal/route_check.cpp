// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/route_check.h"

#include <algorithm>
#include <atomic>
#include <csignal>

#include <QJsonArray>

#include "actions/check_tour.h"
#include "terminal/answers.h"
#include "terminal/figures.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

std::atomic<bool> interrupted{false};

extern "C" void interrupt(int /*signal*/) {
  interrupted.store(true);
}

/// The first interrupt stops the check in good order; whatever is done is kept.
class HearsInterrupt {
public:
  HearsInterrupt() : before_(std::signal(SIGINT, interrupt)) { interrupted.store(false); }
  ~HearsInterrupt() { std::signal(SIGINT, before_); }
  HearsInterrupt(const HearsInterrupt&) = delete;
  HearsInterrupt& operator=(const HearsInterrupt&) = delete;

private:
  void (*before_)(int);
};

QString count(const QJsonObject& hang, const char* key) {
  return QString::number(hang[QLatin1String(key)].toInteger());
}

QStringList stackOf(const QJsonObject& best) {
  QStringList stack;
  for (const auto& each : best[QStringLiteral("stack")].toArray()) {
    stack << each.toString();
  }
  return stack;
}

/// Whether every hang of every show has an option that stands, and nothing that is chosen fails or is
/// unproven.
bool allStand(const actions::TourCheck& check) {
  for (const actions::CheckedShow& show : check.shows) {
    if (show.result.contains(QStringLiteral("trouble"))) {
      return false;
    }
    for (const auto& each : show.result[QStringLiteral("hangs")].toArray()) {
      const QJsonObject hang = each.toObject();
      const QString chosen = hang[QStringLiteral("chosen")][QStringLiteral("verdict")].toString();
      const bool some = hang[QStringLiteral("holds")].toInt() + hang[QStringLiteral("tight")].toInt() > 0;
      if (!some || chosen == QStringLiteral("fails") || chosen == QStringLiteral("unproven")) {
        return false;
      }
    }
  }
  return !check.stopped;
}

void print(const actions::TourCheck& check, std::ostream& out) {
  Table table({{QStringLiteral("show"), Column::Kind::text},
               {QStringLiteral("hang")},
               {QStringLiteral("options"), Column::Kind::figure},
               {QStringLiteral("hold"), Column::Kind::figure},
               {QStringLiteral("tight"), Column::Kind::figure},
               {QStringLiteral("unproven"), Column::Kind::figure},
               {QStringLiteral("fail"), Column::Kind::figure},
               {QStringLiteral("best"), Column::Kind::text},
               {QStringLiteral("chosen"), Column::Kind::text},
               {QStringLiteral("checked")}});
  qint64 settings = 0;
  for (const actions::CheckedShow& show : check.shows) {
    if (show.result.contains(QStringLiteral("trouble"))) {
      table.add({show.show, QString(), QString(), QString(), QString(), QString(), QString(),
                 show.result[QStringLiteral("trouble")].toString(), QString(), QString()});
    }
    for (const auto& each : show.result[QStringLiteral("hangs")].toArray()) {
      const QJsonObject hang = each.toObject();
      const QJsonObject best = hang[QStringLiteral("best")].toObject();
      const QJsonObject chosen = hang[QStringLiteral("chosen")].toObject();
      const QString because = best[QStringLiteral("because")].toString();
      settings += hang[QStringLiteral("settings")].toInteger();
      table.add({show.show, hang[QStringLiteral("hang")].toString(), count(hang, "options"),
                 count(hang, "holds"), count(hang, "tight"), count(hang, "unproven"), count(hang, "fails"),
                 best.isEmpty()
                     ? QStringLiteral("none")
                     : QStringLiteral("%1 %2%3, %4")
                           .arg(best[QStringLiteral("option")].toString().left(8),
                                best[QStringLiteral("verdict")].toString(),
                                because.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(because),
                                shownStack(stackOf(best))),
                 chosen.isEmpty() ? QStringLiteral("–")
                                  : chosen[QStringLiteral("option")].toString().left(8) + QLatin1Char(' ') +
                                        chosen[QStringLiteral("verdict")].toString(),
                 show.kept ? QStringLiteral("before") : QStringLiteral("now")});
    }
  }
  if (!table.empty()) {
    table.print(out);
  }
  const auto kept =
      std::count_if(check.shows.begin(), check.shows.end(), [](const auto& each) { return each.kept; });
  out << QString::number(check.shows.size()) << " of " << QString::number(check.all) << " shows, "
      << QString::number(settings) << " settings; " << QString::number(kept)
      << " shows stand as checked before, for nothing that decides them has changed since.\n";
  if (check.stopped) {
    out << "Stopped before the end. What was checked is kept: the next check goes on from there.\n";
  }
}

QJsonObject toJson(const QString& tour, const actions::TourCheck& check) {
  QJsonArray shows;
  for (const actions::CheckedShow& show : check.shows) {
    QJsonObject object = show.result;
    object[QStringLiteral("show")] = show.show;
    object[QStringLiteral("venue")] = show.venue;
    object[QStringLiteral("from")] = show.from.toString(Qt::ISODate);
    object[QStringLiteral("to")] = show.to.toString(Qt::ISODate);
    object[QStringLiteral("kept")] = show.kept;
    shows.append(object);
  }
  return {{QStringLiteral("format"), QStringLiteral("hangbook.route-check/1")},
          {QStringLiteral("tour"), tour},
          {QStringLiteral("all_shows"), check.all},
          {QStringLiteral("stopped"), check.stopped},
          {QStringLiteral("shows"), shows}};
}

} // namespace

Ending checkRoute(store::Store& store, const QString& tour, bool afresh, Context& context) {
  const HearsInterrupt hears;
  actions::CheckHow how;
  how.afresh = afresh;
  how.stop = [] { return interrupted.load(); };
  // Several shows are decided together, so that for a while no show is told.
  how.share = [&context, told = 0](double share) mutable {
    const int tenths = static_cast<int>(share * 10.0);
    if (tenths > told && tenths < 10) {
      told = tenths;
      context.err << told * 10 << " %\n" << std::flush;
    }
  };
  how.tell = [&context](const actions::CheckedShow& show, int done, int of) {
    context.err << done << " of " << of << ": " << show.show.toStdString()
                << (show.kept ? " as checked before" : " checked") << '\n'
                << std::flush;
  };
  const actions::TourCheck check = actions::checkTour(store, tour, today(context), how);
  if (context.json) {
    printJson(context, toJson(tour, check));
  } else {
    context.out << tour << '\n';
    print(check, context.out);
  }
  return allStand(check) ? Ending::done : Ending::failing;
}

} // namespace hangbook::terminal
