// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QTimer>

#include "desk/source/session.h"
#include "options/ranking.h"

namespace hangbook::desk {

/// The options of a hang in somebody's order.
struct Ranked {
  std::shared_ptr<const options::HangOptions> found{};
  QStringList beaten{}; ///< for each the id of one that beats it in every respect, else empty
  options::RankBy by = options::RankBy::cover;
  /// What the order by changes counts from: what hung at the show before; none: nothing was chosen there.
  std::optional<options::Choice> yesterday{};
};

/// Finds the options of the session's show and hang on the worker, in the order that is remembered.
class OptionSearch : public QObject {
  Q_OBJECT
public:
  explicit OptionSearch(Session& session, QObject* parent = nullptr);

  /// Begins anew; a search that is under way is stopped.
  void look();
  /// Stops it and says so.
  void cancel();
  bool running() const { return watch_ != nullptr; }
  /// Puts what was found into another order and remembers that; `reordered` follows.
  void setOrder(options::RankBy by);

  const std::shared_ptr<const options::Snapshot>& snapshot() const { return snapshot_; }
  /// nullptr while nothing has been found.
  const options::HangOptions* found() const { return ranked_.found.get(); }
  const Ranked& ranked() const { return ranked_; }

Q_SIGNALS:
  void started();
  void progressed(int percent);
  void ended();
  void reordered();
  /// It was cancelled or could not be done; `why` is for people.
  void stopped(const QString& why);

private:
  void drop();

  Session& session_;
  std::shared_ptr<Watch> watch_;
  std::shared_ptr<Watch> ordering_;
  QTimer progressTimer_;
  std::shared_ptr<const options::Snapshot> snapshot_;
  Ranked ranked_;
};

} // namespace hangbook::desk
