// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/check_tour.h"

#include <algorithm>
#include <array>
#include <optional>
#include <thread>
#include <utility>

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include "options/freeze.h"
#include "options/house_change.h"
#include "options/search.h"
#include "quantity/error.h"
#include "store/calendar_store.h"
#include "store/check_store.h"
#include "store/snapshot_store.h"

namespace hangbook::actions {
namespace {

using options::Option;
using options::Snapshot;
using options::Verdict;

QString shaOf(const QByteArray& bytes) {
  return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

/// Which build this is: what another one found may differ, even under the same version.
const QString& thisProgram() {
  static const QString program = [] {
    QFile file(QCoreApplication::applicationFilePath());
    QCryptographicHash hash(QCryptographicHash::Sha256);
    const bool read = file.open(QIODevice::ReadOnly) && hash.addData(&file);
    return QStringLiteral(HANGBOOK_VERSION) + QLatin1Char(' ') +
           (read ? QString::fromLatin1(hash.result().toHex().left(16)) : QStringLiteral("unknown"));
  }();
  return program;
}

QString inputsDigest(const Snapshot& snapshot) {
  return shaOf(QJsonDocument(options::inputsOf(snapshot)).toJson(QJsonDocument::Compact));
}

QString rulesOf(const Option& option) {
  QStringList rules;
  for (const options::Finding& finding : option.findings) {
    if (option.verdict != Verdict::holds && finding.applies && finding.verdict == option.verdict) {
      rules << finding.rule;
    }
  }
  return rules.join(QStringLiteral(", "));
}

QJsonObject hangResult(const options::HangOptions& hang, const std::vector<options::ChosenNow>& chosen) {
  std::array<int, 4> counts{};
  for (const Option& option : hang.options) {
    ++counts[static_cast<std::size_t>(option.verdict)];
  }
  QJsonObject result{{QStringLiteral("hang"), hang.hang},
                     {QStringLiteral("options"), static_cast<qint64>(hang.options.size())},
                     {QStringLiteral("settings"), hang.decided.settings},
                     {QStringLiteral("by_bound"), hang.decided.byBound},
                     {QStringLiteral("best"), QJsonValue(QJsonValue::Null)},
                     {QStringLiteral("chosen"), QJsonValue(QJsonValue::Null)}};
  for (const Verdict verdict : {Verdict::holds, Verdict::tight, Verdict::unproven, Verdict::fails}) {
    result[options::wordFor(verdict)] = counts[static_cast<std::size_t>(verdict)];
  }
  if (!hang.options.empty()) {
    const Option& best = hang.options.front();
    result[QStringLiteral("best")] =
        QJsonObject{{QStringLiteral("option"), best.id},
                    {QStringLiteral("verdict"), options::wordFor(best.verdict)},
                    {QStringLiteral("stack"), QJsonArray::fromStringList(best.key.stack)},
                    {QStringLiteral("because"), rulesOf(best)}};
  }
  for (const options::ChosenNow& each : chosen) {
    if (each.choice->hang == hang.hang) {
      result[QStringLiteral("chosen")] =
          QJsonObject{{QStringLiteral("option"), each.choice->option},
                      {QStringLiteral("verdict"), options::wordFor(each.verdict())},
                      {QStringLiteral("because"), each.option ? rulesOf(*each.option) : each.why}};
    }
  }
  return result;
}

QJsonObject trouble(const Error& error) {
  return {{QStringLiteral("hangs"), QJsonArray()},
          {QStringLiteral("trouble"), QString::fromUtf8(error.what())}};
}

QJsonObject showResult(const Snapshot& snapshot, const options::DecidedShow& decided) {
  if (decided.trouble) {
    return trouble(*decided.trouble);
  }
  QJsonArray hangs;
  try {
    const auto chosen = options::chosenNow(snapshot);
    for (const options::HangOptions& hang : decided.options.hangs) {
      hangs.append(hangResult(hang, chosen));
    }
    return {{QStringLiteral("hangs"), hangs}};
  } catch (const Error& error) {
    return trouble(error);
  }
}

/// Shows that are decided together: the more there are the less often the same rig is solved, and the more is
/// lost when somebody stops it. How many snapshots stand in memory at once is bounded by what they hold.
class Batch {
public:
  struct Job {
    std::size_t place = 0;
    QString inputs;
    Snapshot snapshot;
  };

  bool hasRoomFor(const Snapshot& snapshot) const {
    return jobs_.empty() || (jobs_.size() < mostShows && units_ + snapshot.units.size() <= mostUnits &&
                             pairs_ + pairsOf(snapshot) <= mostPairs);
  }
  void add(Job job) {
    units_ += job.snapshot.units.size();
    pairs_ += pairsOf(job.snapshot);
    jobs_.push_back(std::move(job));
  }
  const std::vector<Job>& jobs() const { return jobs_; }

private:
  static constexpr std::size_t mostShows = 8;
  static constexpr std::size_t mostUnits = 50000;
  static constexpr std::size_t mostPairs = 100; ///< of points: so many options each build has at most

  static std::size_t pairsOf(const Snapshot& snapshot) {
    std::size_t pairs = 0;
    for (const calendar::Hang& hang : snapshot.show.hangs) {
      const auto points = static_cast<std::size_t>(hang.points.size());
      pairs += points * points / 2;
    }
    return pairs;
  }

  std::vector<Job> jobs_;
  std::size_t units_ = 0;
  std::size_t pairs_ = 0;
};

class Checker {
public:
  Checker(store::Store& store, const CheckHow& how, int threads)
      : store_(store), how_(how), threads_(threads) {}

  TourCheck check(const QString& tour, const QDate& today) {
    const std::vector<calendar::Show> shows = store::loadShows(store_, tour);
    check_.all = static_cast<int>(shows.size());
    found_.resize(shows.size());
    for (std::size_t i = 0; i < shows.size() && !stopped(); ++i) {
      const calendar::Show& show = shows[i];
      found_[i] = CheckedShow{show.tour, show.name, show.venue, show.from, show.to, false, {}};
      Snapshot snapshot = store::loadSnapshot(store_, show.tour, show.name, today);
      const QString inputs = inputsDigest(snapshot);
      if (const auto kept = keptFor(show, inputs)) {
        found_[i].kept = true;
        found_[i].result = *kept;
        finish(i);
        continue;
      }
      if (!batch_.hasRoomFor(snapshot)) {
        decideBatch();
      }
      batch_.add({i, inputs, std::move(snapshot)});
    }
    decideBatch();
    check_.stopped = finished_ < check_.all;
    for (CheckedShow& each : found_) {
      if (!each.result.isEmpty()) {
        check_.shows.push_back(std::move(each));
      }
    }
    return std::move(check_);
  }

private:
  bool stopped() const { return how_.stop && how_.stop(); }

  std::optional<QJsonObject> keptFor(const calendar::Show& show, const QString& inputs) {
    if (how_.afresh) {
      return std::nullopt;
    }
    const auto kept = store::loadKeptCheck(store_, show.tour, show.name);
    if (!kept || kept->inputs != inputs || kept->program != thisProgram()) {
      return std::nullopt;
    }
    const QJsonObject result = QJsonDocument::fromJson(kept->result).object();
    return result.isEmpty() ? std::nullopt : std::optional(result);
  }

  void decideBatch() {
    const Batch batch = std::exchange(batch_, {});
    if (batch.jobs().empty()) {
      return;
    }
    std::vector<const Snapshot*> snapshots;
    for (const Batch::Job& job : batch.jobs()) {
      snapshots.push_back(&job.snapshot);
    }
    try {
      const auto decided = options::decideTogether(
          snapshots, [this](double) { return !stopped(); }, threads_);
      for (std::size_t i = 0; i < decided.size(); ++i) {
        keep(batch.jobs()[i], decided[i]);
      }
    } catch (const options::Cancelled&) { // what was kept before stays
    }
  }

  void keep(const Batch::Job& job, const options::DecidedShow& decided) {
    CheckedShow& show = found_[job.place];
    show.result = showResult(job.snapshot, decided);
    store::keep(store_,
                {show.tour, show.show, job.inputs, thisProgram(),
                 QJsonDocument(show.result).toJson(QJsonDocument::Compact), QDateTime::currentDateTimeUtc()});
    finish(job.place);
  }

  /// `more`: shows' worth of what is under way.
  void tellShare(double more) const {
    if (how_.share) {
      how_.share((finished_ + more) / std::max(1, check_.all));
    }
  }

  void finish(std::size_t place) {
    ++finished_;
    tellShare(0.0);
    if (how_.tell) {
      how_.tell(found_[place], finished_, check_.all);
    }
  }

  store::Store& store_;
  const CheckHow& how_;
  int threads_;
  Batch batch_;
  TourCheck check_;
  std::vector<CheckedShow> found_;
  int finished_ = 0;
};

} // namespace

TourCheck checkTour(store::Store& store, const QString& tour, const QDate& today, const CheckHow& how) {
  const int cores = static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
  thisProgram();
  return Checker(store, how, how.threads > 0 ? how.threads : cores).check(tour, today);
}

} // namespace hangbook::actions
