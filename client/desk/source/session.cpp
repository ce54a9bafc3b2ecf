// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/session.h"

#include <algorithm>

#include <QEvent>
#include <QTimer>
#include <QWidget>

#include "catalogue/both_units.h"
#include "desk/source/apart.h"
#include "quantity/error.h"

namespace hangbook::desk {

Session::Session(std::shared_ptr<Source> source, QObject* parent)
    : QObject(parent), source_(std::move(source)) {
  // A connection belongs to the thread that opened it.
  work_.setLast([kept = source_] { kept->close(); });
}

Session::~Session() = default;

void Session::setShow(const ShowKey& show, const QString& hang) {
  if (show == show_ && (hang.isEmpty() || hang == hang_)) {
    return;
  }
  show_ = show;
  hang_ = hang;
  settleShow();
  Q_EMIT showChanged();
}

void Session::setHang(const QString& hang) {
  if (hang != hang_) {
    hang_ = hang;
    Q_EMIT showChanged();
  }
}

void Session::setUnits(UnitSystem system) {
  if (system != figures_.system()) {
    figures_ = Figures(system, figures_.names());
    Q_EMIT unitsChanged();
  }
}

void Session::reload() {
  struct Read {
    StoreLine line;
    std::shared_ptr<const Overview> overview;
    Figures::Names names;
  };
  work_.start(
      this,
      [source = source_](Watch&) {
        auto overview = takenApartElsewhere(source->overview());
        auto names =
            std::make_shared<std::vector<std::string>>(catalogue::namesWithQuantities(overview->catalogue));
        return Read{source->storeLine(), std::move(overview), std::move(names)};
      },
      [this](Read read) {
        storeLine_ = std::move(read.line);
        overview_ = std::move(read.overview);
        loaded_ = true;
        const bool sameNames = figures_.names() && *figures_.names() == *read.names;
        if (!sameNames) {
          figures_ = Figures(figures_.system(), std::move(read.names));
        }
        const ShowKey before = show_;
        settleShow();
        tellFollowers();
        if (!sameNames && figures_.system() != UnitSystem::metric) {
          Q_EMIT unitsChanged(); // sentences that stand already were made with the names as they were
        }
        Q_EMIT overviewChanged();
        if (!(before == show_)) {
          Q_EMIT showChanged();
        }
      },
      [this](const std::exception_ptr& what) {
        Q_EMIT trouble(wordsFor(
            what,
            loaded_
                ? tr("What is shown is what was read before. Try again with F5.")
                : tr("Nothing was changed. Mend what it names and try again with F5, or start with --store "
                     "and another place.")));
      });
}

void Session::keepUp(QWidget* page, std::function<void()> show) {
  page->installEventFilter(this);
  followers_.push_back({page, std::move(show)});
}

void Session::tellFollowers() {
  std::erase_if(followers_, [](const Follower& each) { return each.page.isNull(); });
  for (Follower& each : followers_) {
    each.behind = true;
    if (each.page->isVisible()) {
      catchUp(each);
    }
  }
  QTimer::singleShot(0, this, &Session::catchUpNext);
}

void Session::catchUp(Follower& follower) {
  follower.behind = false;
  follower.show();
}

void Session::catchUpNext() {
  const auto next = std::find_if(followers_.begin(), followers_.end(),
                                 [](const Follower& each) { return each.behind && !each.page.isNull(); });
  if (next != followers_.end()) {
    catchUp(*next);
    QTimer::singleShot(0, this, &Session::catchUpNext);
  }
}

bool Session::anyBehind() const {
  return std::any_of(followers_.begin(), followers_.end(),
                     [](const Follower& each) { return each.behind && !each.page.isNull(); });
}

bool Session::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Show) {
    for (Follower& each : followers_) {
      if (each.page == watched && each.behind) {
        catchUp(each);
      }
    }
  }
  return QObject::eventFilter(watched, event);
}

void Session::settleShow() {
  const calendar::Show* current = findShow(*overview_, show_);
  if (current == nullptr && !overview_->shows.empty()) {
    // The next show that is not over; after the tour its last one.
    const auto next =
        std::find_if(overview_->shows.begin(), overview_->shows.end(), [&](const calendar::Show& each) {
          return !each.to.isValid() || each.to >= overview_->today;
        });
    current = next == overview_->shows.end() ? &overview_->shows.back() : &*next;
    show_ = {current->tour, current->name};
  }
  if (current == nullptr) {
    show_ = {};
    hang_.clear();
    return;
  }
  const bool known = std::any_of(current->hangs.begin(), current->hangs.end(),
                                 [&](const calendar::Hang& each) { return each.name == hang_; });
  if (!known) {
    hang_ = current->hangs.empty() ? QString() : current->hangs.front().name;
  }
}

QString wordsFor(const std::exception_ptr& what, const QString& keptAndNext) {
  QString happened;
  try {
    std::rethrow_exception(what);
  } catch (const Error& error) {
    happened = QString::fromUtf8(error.what());
  } catch (const std::exception& error) {
    happened = Session::tr("The program met something that it did not expect (%1).")
                   .arg(QString::fromUtf8(error.what()));
  } catch (...) {
    happened = Session::tr("The program met something that it did not expect.");
  }
  if (!happened.isEmpty() && !happened.endsWith(QLatin1Char('.'))) {
    happened += QLatin1Char('.');
  }
  return happened + QLatin1Char(' ') + keptAndNext;
}

} // namespace hangbook::desk
