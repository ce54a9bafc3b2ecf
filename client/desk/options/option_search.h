// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QTimer>

#include "desk/source/session.h"

namespace hangbook::desk {

/// Finds the options of the session's show and hang on the worker.
class OptionSearch : public QObject {
  Q_OBJECT
public:
  explicit OptionSearch(Session& session, QObject* parent = nullptr);

  /// Begins anew; a search that is under way is stopped.
  void look();
  /// Stops it and says so.
  void cancel();
  bool running() const { return watch_ != nullptr; }

  const std::shared_ptr<const options::Snapshot>& snapshot() const { return snapshot_; }
  /// nullptr while nothing has been found.
  const options::HangOptions* found() const { return found_ ? &*found_ : nullptr; }

Q_SIGNALS:
  void started();
  void progressed(int percent);
  void ended();
  /// It was cancelled or could not be done; `why` is for people.
  void stopped(const QString& why);

private:
  void drop();

  Session& session_;
  std::shared_ptr<Watch> watch_;
  QTimer progressTimer_;
  std::shared_ptr<const options::Snapshot> snapshot_;
  std::optional<options::HangOptions> found_;
};

} // namespace hangbook::desk
