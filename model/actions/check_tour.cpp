// SPDX-License-Identifier: GPL-3.0-or-later
#include "actions/check_tour.h"

#include <algorithm>
#include <array>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <optional>
#include <thread>

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include "options/freeze.h"
#include "options/house_change.h"
#include "options/rig_shelf.h"
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

/// Nothing where it was stopped.
std::optional<QJsonObject> checkOf(const Snapshot& snapshot, const std::function<bool()>& stop,
                                   options::RigShelf& shelf) {
  try {
    const options::ShowOptions all = options::decide(snapshot, {}, [&](double) { return !stop || !stop(); },
                                                     1, // the crew has a core for each show
                                                     {&shelf, true});
    const auto chosen = options::chosenNow(snapshot);
    QJsonArray hangs;
    for (const options::HangOptions& hang : all.hangs) {
      hangs.append(hangResult(hang, chosen));
    }
    return QJsonObject{{QStringLiteral("hangs"), hangs}};
  } catch (const options::Cancelled&) {
    return std::nullopt;
  } catch (const Error& error) {
    return QJsonObject{{QStringLiteral("hangs"), QJsonArray()},
                       {QStringLiteral("trouble"), QString::fromUtf8(error.what())}};
  }
}

struct Job {
  std::size_t place = 0;
  QString inputs;
  Snapshot snapshot;
};

struct Done {
  std::size_t place = 0;
  QString inputs;
  std::optional<QJsonObject> result;
};

/// Threads that check what they are given; the giver waits while they have enough to do.
class Crew {
public:
  Crew(int threads, std::function<bool()> stop)
      : stop_(std::move(stop)), most_(static_cast<std::size_t>(threads)) {
    for (int i = 0; i < threads; ++i) {
      threads_.emplace_back([this] { work(); });
    }
  }
  ~Crew() {
    {
      const std::lock_guard lock(mutex_);
      closed_ = true;
    }
    wake_.notify_all();
    for (std::thread& each : threads_) {
      each.join();
    }
  }
  Crew(const Crew&) = delete;
  Crew& operator=(const Crew&) = delete;

  /// Whether another job would only wait.
  bool busy() {
    const std::lock_guard lock(mutex_);
    return jobs_.size() >= most_;
  }
  void give(Job job) {
    {
      const std::lock_guard lock(mutex_);
      ++open_;
      jobs_.push_back(std::move(job));
    }
    wake_.notify_one();
  }
  /// The next one that is done; waits for it. Nothing where none is under way.
  std::optional<Done> take() {
    std::unique_lock lock(mutex_);
    if (open_ == 0) {
      return std::nullopt;
    }
    told_.wait(lock, [this] { return !done_.empty(); });
    Done done = std::move(done_.front());
    done_.pop_front();
    --open_;
    return done;
  }

private:
  void work() {
    for (;;) {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return closed_ || !jobs_.empty(); });
      if (jobs_.empty()) {
        return;
      }
      const Job job = std::move(jobs_.front());
      jobs_.pop_front();
      lock.unlock();
      Done done{job.place, job.inputs, checkOf(job.snapshot, stop_, shelf_)};
      lock.lock();
      done_.push_back(std::move(done));
      lock.unlock();
      told_.notify_one();
    }
  }

  std::function<bool()> stop_;
  options::RigShelf shelf_; ///< the system is the same from show to show
  std::size_t most_;
  std::mutex mutex_;
  std::condition_variable wake_;
  std::condition_variable told_;
  std::deque<Job> jobs_;
  std::deque<Done> done_;
  std::size_t open_ = 0;
  bool closed_ = false;
  std::vector<std::thread> threads_;
};

class Checker {
public:
  Checker(store::Store& store, const CheckHow& how, int threads)
      : store_(store), how_(how), crew_(threads, how.stop) {}

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
      while (crew_.busy()) {
        takeOne();
      }
      crew_.give({i, inputs, std::move(snapshot)});
    }
    while (takeOne()) {
    }
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

  bool takeOne() {
    std::optional<Done> done = crew_.take();
    if (!done) {
      return false;
    }
    if (done->result) {
      CheckedShow& show = found_[done->place];
      show.result = std::move(*done->result);
      store::keep(store_, {show.tour, show.show, done->inputs, thisProgram(),
                           QJsonDocument(show.result).toJson(QJsonDocument::Compact),
                           QDateTime::currentDateTimeUtc()});
      finish(done->place);
    }
    return true;
  }

  void finish(std::size_t place) {
    ++finished_;
    if (how_.tell) {
      how_.tell(found_[place], finished_, check_.all);
    }
  }

  store::Store& store_;
  const CheckHow& how_;
  Crew crew_;
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
