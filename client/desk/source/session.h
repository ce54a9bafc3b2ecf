// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QObject>
#include <QPointer>

#include "desk/source/overview.h"
#include "desk/source/source.h"
#include "desk/source/work.h"
#include "desk/style/figures.h"

class QWidget;

namespace hangbook::desk {

/// What all places of one window share: the facts as last read, the show and hang that people are at, the
/// units, and the threads that the work runs on.
class Session : public QObject {
  Q_OBJECT
public:
  explicit Session(std::shared_ptr<Source> source, QObject* parent = nullptr);
  ~Session() override;

  const Overview& overview() const { return *overview_; }
  /// The same for a worker: facts that are read again meanwhile leave these as they are.
  std::shared_ptr<const Overview> facts() const { return overview_; }
  bool loaded() const { return loaded_; }
  const StoreLine& storeLine() const { return storeLine_; }
  const std::shared_ptr<Source>& source() const { return source_; }

  const ShowKey& show() const { return show_; }
  const QString& hang() const { return hang_; }
  const Figures& figures() const { return figures_; }

  /// Store and searches: one job after the other.
  Work& work() { return work_; }
  /// Judging one setting while it changes: never waits behind a search.
  Work& judging() { return judging_; }
  /// What would do, how far it is to a limit, maps of settings: long, and dropped when somebody looks at
  /// something else.
  Work& advising() { return advising_; }

  /// The check of a whole tour, on a connection of its own.
  Work& checking() { return checking_; }

  bool busy() const {
    return work_.busy() || judging_.busy() || advising_.busy() || checking_.busy() || anyBehind();
  }

  void setShow(const ShowKey& show, const QString& hang = {});
  void setHang(const QString& hang);
  void setUnits(UnitSystem system);
  /// Reads everything again; `overviewChanged` follows.
  void reload();
  /// Calls `show` each time that the facts were read: at once while `page` can be seen; else in an event of
  /// its own, so that no event has all places of a long tour to fill, or when it is opened before that.
  void keepUp(QWidget* page, std::function<void()> show);

Q_SIGNALS:
  void overviewChanged();
  void showChanged();
  void unitsChanged();
  /// Something was written and is safely in the store.
  void saved();
  /// For the error line: what happened, what was kept, what to do.
  void trouble(const QString& text);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  /// A page that shows the facts, and whether it still shows those of before.
  struct Follower {
    QPointer<QWidget> page;
    std::function<void()> show;
    bool behind = false;
  };

  void settleShow();
  void tellFollowers();
  void catchUp(Follower& follower);
  void catchUpNext();
  bool anyBehind() const;

  std::shared_ptr<Source> source_;
  std::shared_ptr<const Overview> overview_ = std::make_shared<Overview>();
  StoreLine storeLine_;
  bool loaded_ = false;
  ShowKey show_;
  QString hang_;
  Figures figures_;
  Work work_;
  Work judging_;
  Work advising_;
  Work checking_;
  std::vector<Follower> followers_;
};

/// Words for people out of whatever a job threw: what happened, then `kept` and what to do.
QString wordsFor(const std::exception_ptr& what, const QString& keptAndNext);

} // namespace hangbook::desk
