// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/route_place.h"

#include <algorithm>

#include <QSplitter>
#include <QTabWidget>

#include "desk/frame/place_names.h"
#include "desk/route/check_panel.h"
#include "desk/route/clash_panel.h"
#include "desk/route/load_chart.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

RoutePlace::RoutePlace(Session& session, QWidget* parent)
    : Place(place::route, tr("Route"), parent), session_(session),
      page_(new ListPage(QStringLiteral("routeList"), tr("Shows"), model_,
                         static_cast<int>(RouteColumn::stacks), static_cast<int>(RouteColumn::from),
                         Qt::AscendingOrder, this)),
      chart_(new LoadChart(this)), check_(new CheckPanel(session, this)),
      clashes_(new ClashPanel(session, this)) {
  page_->setEmptyTexts(tr("No shows yet. Import a tour as a CSV file to see its stops here."),
                       tr("No stop contains these words."));
  auto* halves = new QSplitter(Qt::Vertical, this);
  halves->setObjectName(QStringLiteral("routeHalves"));
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::step);
  halves->addWidget(page_);
  auto* parts = new QTabWidget;
  parts->setObjectName(QStringLiteral("routeParts"));
  parts->setAccessibleName(tr("Loads through the tour, the check of all its shows, or what clashes"));
  parts->setDocumentMode(true);
  parts->addTab(chart_, tr("&Loads"));
  parts->addTab(check_, tr("Chec&k"));
  parts->addTab(clashes_, tr("Cl&ashes"));
  halves->addWidget(parts);
  halves->setSizes({6200, 3800});
  setContent(halves);
  session_.keepUp(this, [this] { showFacts(); });
  connect(&session_, &Session::unitsChanged, this, [this] {
    model_.setFigures(session_.figures());
    chart_->setStops(model_.all(), session_.figures());
  });
  connect(&page_->table(), &QTableView::activated, this, [this] {
    if (const int row = page_->currentRow(); row >= 0) {
      Q_EMIT optionsWanted({model_.at(row).show.tour, model_.at(row).show.name});
    }
  });
  connect(check_, &CheckPanel::optionsWanted, this, &RoutePlace::optionsWanted);
  connect(clashes_, &ClashPanel::optionsWanted, this, &RoutePlace::optionsWanted);
  connect(page_, &ListPage::currentRowChanged, this, &RoutePlace::followStop);
  connect(&session_, &Session::showChanged, this, [this] {
    page_->select(keyOf(session_.show()));
    followStop();
  });
  showFacts();
}

/// The stop that is selected; without one, the show that people are at.
void RoutePlace::followStop() {
  const int row = page_->currentRow();
  const ShowKey at = row >= 0 ? ShowKey{model_.at(row).show.tour, model_.at(row).show.name} : session_.show();
  check_->setTour(at.tour);
  chart_->showAround(at);
}

QString RoutePlace::explanation() const {
  return tr(
      "The stops in order of date, with the verdict of what has been chosen for them: the worst of all "
      "their hangs. "
      "Press Enter on a stop to look at its options. Loads are at rest, as frozen with the choice.\n\n"
      "The check decides every option of every show of the tour on all cores and judges what is chosen "
      "by today's rules and data. It can be stopped: what was done is kept, and only what an edit "
      "touched is checked again.\n\n"
      "Clashes says in words what does not go together from today on, and names a way out: gear that "
      "shows which are away at once want too much of, examinations that run out while the gear is away, "
      "and stops that no truck can reach in time.");
}

void RoutePlace::showKey(const QString& key) {
  page_->showKey(key);
}

void RoutePlace::takeFocus() {
  page_->table().setFocus();
}

void RoutePlace::showFacts() {
  auto stops = stopsOf(session_.overview());
  const auto done = std::count_if(stops.begin(), stops.end(), [](const Stop& each) {
    return each.chosen > 0 && each.chosen == static_cast<int>(each.show.hangs.size());
  });
  setNote(tr("%1 of %2 stops chosen").arg(done).arg(stops.size()));
  model_.setRows(std::move(stops));
  followStop();
  chart_->setStops(model_.all(), session_.figures());
  if (page_->currentRow() < 0 && !session_.show().show.isEmpty()) {
    page_->showKey(keyOf(session_.show())); // a long tour begins years ago
  }
}

} // namespace hangbook::desk
