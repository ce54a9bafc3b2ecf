// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/choosing.h"

#include "desk/options/choose_dialog.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/ask_dialog.h"
#include "desk/words/plain_words.h"
#include "desk/words/stack_text.h"

namespace hangbook::desk {
namespace {

struct Again {
  std::optional<options::Choice> before;
  std::optional<options::Option> now;
};

} // namespace

Choosing::Choosing(Session& session, QWidget* window)
    : QObject(window), session_(session), window_(window),
      asker_([](ChooseDialog& dialog) { return dialog.exec() == QDialog::Accepted; }) {}

void Choosing::choose(const options::Option& option, const QString& what) {
  if (!option.setting || option.verdict == options::Verdict::fails) {
    return;
  }
  ChooseDialog dialog(option, what, namesOf(session_.overview().people), window_);
  if (!asker_(dialog)) {
    return;
  }
  const options::Choice* before = findChoice(session_.overview(), session_.show(), session_.hang());
  ChoiceRequest request{.show = session_.show(),
                        .hang = session_.hang(),
                        .key = option.key,
                        .setting = *option.setting,
                        .by = dialog.by(),
                        .reason = dialog.reason(),
                        .expectedRevision = before == nullptr ? 0 : before->revision};
  session_.work().start(
      this,
      [source = session_.source(), request](Watch&) {
        source->choose(request);
        return true;
      },
      [this](bool) {
        Q_EMIT session_.saved();
        session_.reload();
      },
      [this](const std::exception_ptr& error) {
        Q_EMIT session_.trouble(wordsFor(
            error,
            tr("Nothing was chosen; what was chosen before still stands. Read the store again with F5.")));
      });
}

void Choosing::findAgain(std::shared_ptr<const options::Snapshot> snapshot, SameAs when) {
  if (watch_) {
    watch_->cancel();
  }
  watch_ = session_.work().start(
      this,
      [source = session_.source(), snapshot, when, hang = session_.hang()](Watch& watch) {
        PlanningSource& planning = planningOf(*source);
        Again again{planning.chosenBefore({snapshot->show.tour, snapshot->show.name}, hang, when), {}};
        if (again.before) {
          again.now = planning.sameAgain(*snapshot, again.before->key, [&watch](double share) {
            watch.setProgress(share);
            return !watch.cancelled();
          });
        }
        return again;
      },
      [this, snapshot, when](const Again& again) {
        watch_.reset();
        if (!again.before) {
          Q_EMIT notFound(when == SameAs::yesterday
                              ? tr("Nothing was chosen for this hang at an earlier show of the tour.")
                              : tr("Nothing was chosen for this hang at an earlier show in this venue."));
          return;
        }
        const options::Choice& before = *again.before;
        if (!again.now) {
          Q_EMIT notFound(tr("What hung at %1 (%2) cannot hang here: no way of reaching this venue's points "
                             "fits, or the makers' data no longer have it.")
                              .arg(before.show, stackText(before.key.stack, snapshot->catalogue)));
          return;
        }
        Q_EMIT foundAgain(*again.now, tr("As at %1, chosen on %2 by %3 (then %4). By today's rules here: %5.")
                                          .arg(before.show, dateText(before.at.date()), before.by,
                                               verdictWord(before.verdict), verdictWord(again.now->verdict)));
      },
      [this](const std::exception_ptr& what) {
        watch_.reset();
        Q_EMIT notFound(wordsFor(what, tr("Nothing was changed.")));
      });
}

void Choosing::cancel() {
  if (watch_) {
    watch_->cancel();
    watch_.reset();
    Q_EMIT notFound(tr("The search was cancelled. Nothing was changed."));
  }
}

} // namespace hangbook::desk
