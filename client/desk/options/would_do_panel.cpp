// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/would_do_panel.h"

#include <algorithm>

#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"
#include "desk/words/work_line.h"

namespace hangbook::desk {

WouldDoPanel::WouldDoPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), table_(new QTableView(this)),
      line_(new WorkLine(QStringLiteral("wouldDo"), tr("Work it out"), this)), whole_(new QLabel(this)) {
  setObjectName(QStringLiteral("wouldDo"));
  table_->setObjectName(QStringLiteral("wouldDoTable"));
  table_->setAccessibleName(tr("What would do, or what breaks first"));
  table_->setModel(&model_);
  prepareTable(*table_, model_, static_cast<int>(WouldDoColumn::what));
  table_->verticalHeader()->setDefaultSectionSize(QFontMetrics(font()).height() + 2);
  whole_->setObjectName(QStringLiteral("wouldDoWhole"));
  whole_->setAccessibleName(tr("The selected line in full"));
  whole_->setWordWrap(true);
  whole_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  whole_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  whole_->setFixedHeight(2 * QFontMetrics(font()).lineSpacing() + 2);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addWidget(line_);
  all->addWidget(table_, 1);
  all->addWidget(whole_);
  connect(line_, &WorkLine::cancelAsked, this, [this] {
    drop();
    line_->offerAgain(tr("Stopped. Nothing was changed."));
  });
  connect(line_, &WorkLine::againAsked, this, [this] {
    workOut();
    table_->setFocus();
  });
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &WouldDoPanel::showWhole);
  connect(&session_, &Session::unitsChanged, this, &WouldDoPanel::showLines);
  setNothing();
}

void WouldDoPanel::setNothing() {
  drop();
  wish_.reset();
  found_.reset();
  showLines();
  line_->say(tr("Select an option to see what would do for it, or what breaks first."));
}

void WouldDoPanel::setOption(std::shared_ptr<const options::Snapshot> snapshot, const options::Option& option,
                             bool own) {
  drop();
  wish_ = Wish{std::move(snapshot), option, own};
  found_.reset();
  asked_ = false;
  if (isVisible()) {
    workOut();
  }
}

void WouldDoPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (wish_ && !asked_) {
    workOut();
  }
}

void WouldDoPanel::drop() {
  if (watch_) {
    watch_->cancel();
    watch_.reset();
  }
}

void WouldDoPanel::workOut() {
  if (!wish_) {
    return;
  }
  drop();
  asked_ = true;
  found_.reset();
  showLines();
  watch_ = session_.advising().start(
      this,
      [source = session_.source(), wish = *wish_](Watch& watch) {
        return planningOf(*source).whatWouldDo(*wish.snapshot, wish.option, wish.own, [&watch](double share) {
          watch.setProgress(share);
          return !watch.cancelled();
        });
      },
      [this](WhatWouldDo found) {
        drop();
        found_ = std::move(found);
        showLines();
        line_->say(wouldDoHead(*found_));
      },
      [this](const std::exception_ptr& what) {
        drop();
        line_->offerAgain(wordsFor(what, tr("Nothing was changed.")));
      });
  line_->working(tr("Running all rules on changed copies of the show …"), watch_);
}

void WouldDoPanel::showLines() {
  const int row = table_->currentIndex().row();
  model_.setRows(found_ && wish_ ? wouldDoLines(*found_, wish_->option.id, session_.figures())
                                 : std::vector<WouldDoLine>());
  if (model_.rowCount() > 0) {
    table_->selectRow(std::clamp(row, 0, model_.rowCount() - 1));
  }
  showWhole();
}

void WouldDoPanel::showWhole() {
  const int row = table_->currentIndex().row();
  whole_->setText(row >= 0 && row < model_.rowCount() ? model_.at(row).whole : QString());
}

} // namespace hangbook::desk
