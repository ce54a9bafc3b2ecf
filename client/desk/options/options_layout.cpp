// SPDX-License-Identifier: GPL-3.0-or-later
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include "desk/options/adjust_panel.h"
#include "desk/options/elevation.h"
#include "desk/options/house_panel.h"
#include "desk/options/options_place.h"
#include "desk/options/setting_map_panel.h"
#include "desk/options/show_chooser.h"
#include "desk/options/side_by_side_panel.h"
#include "desk/options/would_do_panel.h"
#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"

namespace hangbook::desk {
namespace {

QWidget* column(std::initializer_list<std::pair<QWidget*, int>> parts) {
  auto* widget = new QWidget;
  auto* inside = new QVBoxLayout(widget);
  inside->setContentsMargins(0, 0, 0, 0);
  inside->setSpacing(space::small);
  for (const auto& [part, stretch] : parts) {
    inside->addWidget(part, stretch);
  }
  return widget;
}

QSplitter* splitter(Qt::Orientation orientation, const QString& name) {
  auto* made = new QSplitter(orientation);
  made->setObjectName(name);
  made->setChildrenCollapsible(false);
  made->setHandleWidth(space::step);
  return made;
}

} // namespace

/// In the order of `options::allRankings()`.
void OptionsPlace::fillOrders() {
  order_->setObjectName(QStringLiteral("optionsOrder"));
  order_->setAccessibleName(tr("Order among options of like verdict"));
  for (const options::RankBy by : options::allRankings()) {
    switch (by) {
    case options::RankBy::cover:
      order_->addItem(tr("cover first"));
      break;
    case options::RankBy::lightest:
      order_->addItem(tr("lightest first"));
      break;
    case options::RankBy::gear:
      order_->addItem(tr("least gear first"));
      break;
    case options::RankBy::changes:
      order_->addItem(tr("fewest changes first"));
      break;
    case options::RankBy::build:
      order_->addItem(tr("shortest build first"));
      break;
    }
  }
}

QWidget* OptionsPlace::lowerParts() {
  parts_->setObjectName(QStringLiteral("optionsParts"));
  parts_->setAccessibleName(tr("Rules, what would do, side by side, house rules"));
  parts_->setDocumentMode(true);
  parts_->addTab(column({{rules_, 1}, {sentence_, 0}}), tr("R&ules"));
  parts_->addTab(wouldDo_, tr("&What would do"));
  parts_->addTab(beside_, tr("Si&de by side"));
  parts_->addTab(house_, tr("House rules"));
  yesterday_->setObjectName(QStringLiteral("optionsYesterday"));
  yesterday_->setToolTip(tr("Find what was chosen for this hang at the show before, by today's rules here"));
  hereBefore_->setObjectName(QStringLiteral("optionsHereBefore"));
  hereBefore_->setToolTip(tr("Find what was chosen for this hang the last time in this venue"));
  auto* again = new QWidget;
  auto* inAgain = new QHBoxLayout(again);
  inAgain->setContentsMargins(0, 0, 0, space::hair);
  inAgain->setSpacing(space::small);
  inAgain->addWidget(yesterday_);
  inAgain->addWidget(hereBefore_);
  parts_->setCornerWidget(again, Qt::TopRightCorner);
  return parts_;
}

void OptionsPlace::layOut() {
  addToTitle(new ShowChooser(QStringLiteral("options"), session_, this));
  progress_->setObjectName(QStringLiteral("optionsProgress"));
  progress_->setAccessibleName(tr("How far the search is"));
  progress_->setRange(0, 100);
  progress_->setMaximumWidth(120);
  progress_->setTextVisible(false);
  cancel_->setObjectName(QStringLiteral("optionsCancel"));
  addToTitle(progress_);
  addToTitle(cancel_);
  progress_->hide();
  cancel_->hide();

  verdicts_->setObjectName(QStringLiteral("optionsVerdict"));
  verdicts_->setAccessibleName(tr("Verdict"));
  verdicts_->addItem(tr("every verdict"));
  for (const auto each : {options::Verdict::holds, options::Verdict::tight, options::Verdict::unproven,
                          options::Verdict::fails}) {
    verdicts_->addItem(verdictWord(each), static_cast<int>(each));
  }
  page_->addControl(verdicts_);
  fillOrders();
  page_->addControl(order_);

  rules_->setObjectName(QStringLiteral("ruleSheet"));
  rules_->setAccessibleName(tr("Rule sheet"));
  rules_->setModel(&sheet_);
  prepareTable(*rules_, sheet_, static_cast<int>(RuleColumn::text));
  const int lowRow = QFontMetrics(font()).height() + 2;
  rules_->verticalHeader()->setDefaultSectionSize(lowRow);
  ruleHead_->setObjectName(QStringLiteral("ruleHead"));
  ruleHead_->setFont(fontFor(TextSize::heading, font()));
  sentence_->setObjectName(QStringLiteral("ruleSentence"));
  sentence_->setAccessibleName(tr("The selected rule in full"));
  sentence_->setWordWrap(true);
  sentence_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  sentence_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  sentence_->setFixedHeight(4 * QFontMetrics(font()).lineSpacing() + 2); // what the longest of them take

  auto* above = splitter(Qt::Horizontal, QStringLiteral("optionsAbove"));
  above->addWidget(page_);
  views_->setObjectName(QStringLiteral("optionsViews"));
  views_->setAccessibleName(tr("In the room, or the window of settings"));
  views_->setDocumentMode(true);
  views_->addTab(elevation_, tr("In the r&oom"));
  views_->addTab(map_, tr("Se&ttings"));
  above->addWidget(column({{adjust_, 0}, {views_, 1}}));
  above->setStretchFactor(0, 3);
  above->setStretchFactor(1, 2);
  above->setSizes({6400, 3600});
  auto* all = splitter(Qt::Vertical, QStringLiteral("optionsAll"));
  all->addWidget(above);
  all->addWidget(column({{ruleHead_, 0}, {lowerParts(), 1}}));
  all->setStretchFactor(0, 1);
  all->setStretchFactor(1, 1);
  all->setSizes({4500, 5500});
  setContent(all);
}

} // namespace hangbook::desk
