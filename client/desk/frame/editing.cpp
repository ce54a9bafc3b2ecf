// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/editing.h"

#include <QAction>
#include <QMenu>

#include "desk/options/withdraw_dialog.h"
#include "desk/source/edit_source.h"
#include "desk/words/edit_words.h"
#include "desk/words/stack_text.h"

namespace hangbook::desk {

Editing::Editing(Session& session, QWidget* window)
    : QObject(window), session_(session), window_(window), undo_(new QAction(this)), redo_(new QAction(this)),
      withdraw_(new QAction(tr("&Take back what is chosen…"), this)),
      asker_([](WithdrawDialog& dialog) { return dialog.exec() == QDialog::Accepted; }) {
  setObjectName(QStringLiteral("editing"));
  undo_->setObjectName(QStringLiteral("undo"));
  undo_->setShortcut(QKeySequence::Undo);
  redo_->setObjectName(QStringLiteral("redo"));
  redo_->setShortcuts({Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y});
  withdraw_->setObjectName(QStringLiteral("withdrawChoice"));
  connect(undo_, &QAction::triggered, this, [this] { move(true); });
  connect(redo_, &QAction::triggered, this, [this] { move(false); });
  connect(withdraw_, &QAction::triggered, this, &Editing::withdraw);
  connect(&session_, &Session::overviewChanged, this, [this] {
    sending_ = false;
    refresh();
  });
  connect(&session_, &Session::showChanged, this, &Editing::refresh);
  connect(&session_, &Session::unitsChanged, this, &Editing::refresh);
  refresh();
}

void Editing::addTo(QMenu& menu) {
  menu.addAction(undo_);
  menu.addAction(redo_);
  menu.addSeparator();
  menu.addAction(withdraw_);
}

void Editing::refresh() {
  const Overview& all = session_.overview();
  const auto name = [&](const std::shared_ptr<const actions::PlanEdit>& edit) {
    return editWords(*edit, all.catalogue, session_.figures())
        .replace(QLatin1Char('&'), QStringLiteral("&&"));
  };
  undo_->setText(all.toUndo ? tr("&Undo: %1").arg(name(all.toUndo)) : tr("&Undo"));
  undo_->setEnabled(all.toUndo && !sending_);
  // What was undone is an edit that leads back: its name is that of what is done again.
  redo_->setText(all.toRedo ? tr("&Redo: %1")
                                  .arg(editWords(turned(*all.toRedo), all.catalogue, session_.figures())
                                           .replace(QLatin1Char('&'), QStringLiteral("&&")))
                            : tr("&Redo"));
  redo_->setEnabled(all.toRedo && !sending_);
  withdraw_->setEnabled(!sending_ && findChoice(all, session_.show(), session_.hang()) != nullptr);
}

void Editing::move(bool back) {
  const Overview& all = session_.overview();
  const auto edit = back ? all.toUndo : all.toRedo;
  if (!edit || sending_) {
    return;
  }
  const QString name = editWords(back ? *edit : turned(*edit), all.catalogue, session_.figures());
  send([back](Source& source) { back ? editsOf(source).undo() : editsOf(source).redo(); },
       back ? tr("Undone: %1").arg(name) : tr("Done again: %1").arg(name),
       back ? tr("“%1” was not undone; what stands is as it was.").arg(name)
            : tr("“%1” was not done again; what stands is as it was.").arg(name));
}

void Editing::withdraw() {
  const Overview& all = session_.overview();
  const options::Choice* choice = findChoice(all, session_.show(), session_.hang());
  if (choice == nullptr || sending_) {
    return;
  }
  WithdrawDialog dialog(*choice, stackText(choice->key.stack, all.catalogue), all.people, all.atDesk,
                        window_);
  if (!asker_(dialog)) {
    return;
  }
  send([show = session_.show(), hang = session_.hang(), reason = dialog.reason(),
        by = dialog.by()](Source& source) { editsOf(source).withdraw(show, hang, reason, by); },
       tr("Taken back: the choice for %1 at %2").arg(session_.hang(), session_.show().show),
       tr("What is chosen still stands."));
}

void Editing::send(std::function<void(Source&)> job, const QString& done, const QString& kept) {
  sending_ = true;
  refresh();
  session_.work().start(
      this,
      [source = session_.source(), job = std::move(job)](Watch&) {
        job(*source);
        return true;
      },
      [this, done](bool) {
        Q_EMIT session_.saved();
        Q_EMIT told(done);
        session_.reload();
      },
      [this, kept](const std::exception_ptr& what) {
        Q_EMIT session_.trouble(wordsFor(what, kept));
        session_.reload();
      });
}

} // namespace hangbook::desk
