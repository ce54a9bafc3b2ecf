// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/would_do_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/lists/list_page.h"
#include "desk/style/scale.h"

namespace hangbook::desk {
namespace {

constexpr int progressMilliseconds = 100;

} // namespace

WouldDoPanel::WouldDoPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), table_(new QTableView(this)), head_(new QLabel(this)),
      whole_(new QLabel(this)), progress_(new QProgressBar(this)),
      cancel_(new QPushButton(tr("Cancel"), this)), again_(new QPushButton(tr("&Work it out"), this)) {
  setObjectName(QStringLiteral("wouldDo"));
  table_->setObjectName(QStringLiteral("wouldDoTable"));
  table_->setAccessibleName(tr("What would do, or what breaks first"));
  table_->setModel(&model_);
  prepareTable(*table_, model_, static_cast<int>(WouldDoColumn::what));
  table_->verticalHeader()->setDefaultSectionSize(QFontMetrics(font()).height() + 2);
  head_->setObjectName(QStringLiteral("wouldDoHead"));
  head_->setWordWrap(true);
  whole_->setObjectName(QStringLiteral("wouldDoWhole"));
  whole_->setAccessibleName(tr("The selected line in full"));
  whole_->setWordWrap(true);
  whole_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  whole_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  whole_->setFixedHeight(2 * QFontMetrics(font()).lineSpacing() + 2);
  progress_->setObjectName(QStringLiteral("wouldDoProgress"));
  progress_->setAccessibleName(tr("How far it is worked out"));
  progress_->setRange(0, 100);
  progress_->setTextVisible(false);
  progress_->setFixedWidth(120);
  cancel_->setObjectName(QStringLiteral("wouldDoCancel"));
  again_->setObjectName(QStringLiteral("wouldDoAgain"));
  auto* line = new QHBoxLayout;
  line->setSpacing(space::step);
  line->addWidget(head_, 1);
  line->addWidget(progress_);
  line->addWidget(cancel_);
  line->addWidget(again_);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::small, 0, 0);
  all->setSpacing(space::small);
  all->addLayout(line);
  all->addWidget(table_, 1);
  all->addWidget(whole_);
  progressTimer_.setInterval(progressMilliseconds);
  connect(&progressTimer_, &QTimer::timeout, this, [this] {
    if (watch_) {
      progress_->setValue(static_cast<int>(100.0 * watch_->progress()));
    }
  });
  connect(cancel_, &QPushButton::clicked, this, [this] {
    drop();
    showState(tr("Stopped. Nothing was changed."), false);
    again_->show();
    again_->setFocus();
  });
  connect(again_, &QPushButton::clicked, this, [this] {
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
  showState(tr("Select an option to see what would do for it, or what breaks first."), false);
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
  progressTimer_.stop();
}

void WouldDoPanel::workOut() {
  if (!wish_) {
    return;
  }
  drop();
  asked_ = true;
  found_.reset();
  showLines();
  progress_->setValue(0);
  showState(tr("Running all rules on changed copies of the show …"), true);
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
        showState(wouldDoHead(*found_), false);
      },
      [this](const std::exception_ptr& what) {
        drop();
        showState(wordsFor(what, tr("Nothing was changed.")), false);
        again_->show();
      });
  progressTimer_.start();
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

void WouldDoPanel::showState(const QString& text, bool working) {
  head_->setText(text);
  progress_->setVisible(working);
  cancel_->setVisible(working);
  again_->hide();
}

} // namespace hangbook::desk
