// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/option_search.h"

namespace hangbook::desk {
namespace {

constexpr int progressMilliseconds = 100;

struct Answer {
  std::shared_ptr<const options::Snapshot> snapshot;
  options::ShowOptions found;
};

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
  found_.reset();
  if (session_.show().show.isEmpty() || session_.hang().isEmpty()) {
    Q_EMIT stopped({});
    return;
  }
  watch_ = session_.work().start(
      this,
      [source = session_.source(), show = session_.show(), hang = session_.hang()](Watch& watch) {
        auto snapshot = std::make_shared<const options::Snapshot>(source->snapshot(show));
        auto found = source->decide(*snapshot, hang, [&watch](double share) {
          watch.setProgress(share);
          return !watch.cancelled();
        });
        return Answer{snapshot, std::move(found)};
      },
      [this](Answer answer) {
        drop();
        snapshot_ = std::move(answer.snapshot);
        if (!answer.found.hangs.empty()) {
          found_ = std::move(answer.found.hangs.front());
        }
        Q_EMIT ended();
      },
      [this](const std::exception_ptr& what) {
        drop();
        Q_EMIT stopped(wordsFor(what, tr("Nothing was changed. Mend what it names, then search again.")));
      });
  progressTimer_.start();
  Q_EMIT started();
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
