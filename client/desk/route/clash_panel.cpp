// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/clash_panel.h"

#include <utility>

#include <QVBoxLayout>

#include "desk/style/scale.h"

namespace hangbook::desk {

ClashPanel::ClashPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session),
      page_(new ListPage(QStringLiteral("clashList"), tr("Clashes of the route"), model_,
                         static_cast<int>(ClashColumn::wayOut), static_cast<int>(ClashColumn::day),
                         Qt::AscendingOrder, this)) {
  setObjectName(QStringLiteral("routeClashes"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, space::step, 0, 0);
  all->addWidget(page_);
  page_->setEmptyTexts(tr("Looking through gear, examinations and travel …"),
                       tr("No clash contains these words."));
  connect(&session_, &Session::overviewChanged, this, &ClashPanel::look);
  connect(&session_, &Session::unitsChanged, this, &ClashPanel::look);
  connect(&page_->table(), &QTableView::activated, this, [this] {
    if (const int row = page_->currentRow(); row >= 0 && !model_.at(row).show.isEmpty()) {
      Q_EMIT optionsWanted({model_.at(row).tour, model_.at(row).show});
    }
  });
}

void ClashPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (stale_) {
    look();
  }
}

void ClashPanel::look() {
  if (looking_) {
    looking_->cancel();
    looking_.reset();
  }
  stale_ = true;
  if (!isVisible() || !session_.loaded()) {
    return;
  }
  stale_ = false;
  looking_ = session_.judging().start(
      this,
      [facts = session_.facts(), figures = session_.figures()](Watch&) { return clashesOf(*facts, figures); },
      [this](std::vector<Clash> found) {
        looking_.reset();
        page_->setEmptyTexts(tr("Nothing clashes in what is known: stops without times, places or chosen "
                                "options are not judged."),
                             tr("No clash contains these words."));
        model_.setRows(std::move(found));
      },
      [this](const std::exception_ptr& what) {
        looking_.reset();
        Q_EMIT session_.trouble(wordsFor(what, tr("The route could not be searched for clashes.")));
      });
}

} // namespace hangbook::desk
