// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/route/route_place.h"

#include <algorithm>

#include <QSplitter>

#include "desk/frame/place_names.h"
#include "desk/route/load_chart.h"
#include "desk/style/scale.h"

namespace hangbook::desk {

RoutePlace::RoutePlace(Session& session, QWidget* parent)
    : Place(place::route, tr("Route"), parent), session_(session),
      page_(new ListPage(QStringLiteral("routeList"), tr("Shows"), model_,
                         static_cast<int>(RouteColumn::stacks), static_cast<int>(RouteColumn::from),
                         Qt::AscendingOrder, this)),
      chart_(new LoadChart(this)) {
  page_->setEmptyTexts(tr("No shows yet. Import a tour as a CSV file to see its stops here."),
                       tr("No stop contains these words."));
  auto* halves = new QSplitter(Qt::Vertical, this);
  halves->setObjectName(QStringLiteral("routeHalves"));
  halves->setChildrenCollapsible(false);
  halves->setHandleWidth(space::step);
  halves->addWidget(page_);
  halves->addWidget(chart_);
  halves->setSizes({6200, 3800});
  setContent(halves);
  connect(&session_, &Session::overviewChanged, this, &RoutePlace::showFacts);
  connect(&session_, &Session::unitsChanged, this, [this] {
    model_.setFigures(session_.figures());
    chart_->setStops(model_.all(), session_.figures());
  });
  connect(&page_->table(), &QTableView::activated, this, [this] {
    if (const int row = page_->currentRow(); row >= 0) {
      Q_EMIT optionsWanted({model_.at(row).show.tour, model_.at(row).show.name});
    }
  });
  showFacts();
}

QString RoutePlace::explanation() const {
  return tr("The stops in order of date, with the verdict of what has been chosen for them: the worst of all "
            "their hangs. "
            "Press Enter on a stop to look at its options. Loads are at rest, as frozen with the choice.");
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
  chart_->setStops(model_.all(), session_.figures());
}

} // namespace hangbook::desk
