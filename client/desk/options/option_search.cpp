// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/option_search.h"

#include <utility>

#include "desk/source/apart.h"
#include "desk/source/planning_source.h"

namespace hangbook::desk {
namespace {

constexpr int progressMilliseconds = 100;

struct Answer {
  std::shared_ptr<const options::Snapshot> snapshot;
  Ranked ranked;
};

Ranked rankedBy(options::RankBy by, options::HangOptions found, std::optional<options::Choice> yesterday) {
  options::rank(found, {by, yesterday ? std::optional(yesterday->key) : std::nullopt});
  QStringList beaten = options::beatenBy(found);
  return {std::make_shared<const options::HangOptions>(std::move(found)), std::move(beaten), by,
          std::move(yesterday)};
}

} // namespace

OptionSearch::OptionSearch(Session& session, QObject* parent) : QObject(parent), session_(session) {
  progressTimer_.setInterval(progressMilliseconds);
  connect(&progressTimer_, &QTimer::timeout, this, [this] {
    if (watch_) {
      Q_EMIT progressed(static_cast<int>(100.0 * watch_->progress()));
    }
  });
}

void OptionSearch::look() {
  drop();
  snapshot_.reset();
  ranked_ = {};
  if (session_.show().show.isEmpty() || session_.hang().isEmpty()) {
    Q_EMIT stopped({});
    return;
  }
  watch_ = session_.work().start(
      this,
      [source = session_.source(), show = session_.show(), hang = session_.hang()](Watch& watch) {
        PlanningSource& planning = planningOf(*source);
        auto snapshot = takenApartElsewhere(source->snapshot(show));
        auto found = source->decide(*snapshot, hang, [&watch](double share) {
          watch.setProgress(share);
          return !watch.cancelled();
        });
        if (found.hangs.empty()) {
          return Answer{snapshot, {}};
        }
        return Answer{snapshot, rankedBy(planning.likedRanking(), std::move(found.hangs.front()),
                                         planning.chosenBefore(show, hang, SameAs::yesterday))};
      },
      [this](Answer answer) {
        drop();
        snapshot_ = std::move(answer.snapshot);
        ranked_ = std::move(answer.ranked);
        Q_EMIT ended();
      },
      [this](const std::exception_ptr& what) {
        drop();
        Q_EMIT stopped(wordsFor(what, tr("Nothing was changed. Mend what it names, then search again.")));
      });
  progressTimer_.start();
  Q_EMIT started();
}

void OptionSearch::setOrder(options::RankBy by) {
  if (ordering_) {
    ordering_->cancel();
  }
  ordering_ = session_.work().start(
      this,
      [source = session_.source(), by, ranked = ranked_](Watch&) {
        planningOf(*source).likeRanking(by);
        return ranked.found ? rankedBy(by, *ranked.found, ranked.yesterday) : ranked;
      },
      [this, before = ranked_.found](Ranked ranked) {
        ordering_.reset();
        if (ranked_.found && ranked_.found == before) { // else a search came in between, in the new order
          ranked_ = std::move(ranked);
          Q_EMIT reordered();
        }
      },
      [this](const std::exception_ptr& what) {
        ordering_.reset();
        Q_EMIT session_.trouble(wordsFor(what, tr("The order is as it was.")));
        Q_EMIT reordered(); // the field goes back to the order that stands
      });
}

void OptionSearch::cancel() {
  if (running()) {
    drop();
    Q_EMIT stopped(tr("The search was cancelled. Nothing was changed."));
  }
}

void OptionSearch::drop() {
  if (watch_) {
    watch_->cancel();
    watch_.reset();
  }
  progressTimer_.stop();
}

} // namespace hangbook::desk
