// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/fleet/fleet_place.h"

#include <algorithm>

#include <QLineEdit>

#include "desk/frame/place_names.h"

namespace hangbook::desk {

FleetPlace::FleetPlace(Session& session, QWidget* parent)
    : Place(place::fleet, tr("Fleet"), parent), session_(session),
      page_(new ListPage(QStringLiteral("fleetList"), tr("Units"), model_,
                         static_cast<int>(FleetColumn::owner), static_cast<int>(FleetColumn::serial),
                         Qt::AscendingOrder, this)) {
  page_->setEmptyTexts(
      tr("No units yet. Import your gear list as a CSV file, or open the demo tour in a store of its "
         "own to see how one looks."),
      tr("No unit contains these words."));
  setContent(page_);
  connect(&session_, &Session::overviewChanged, this, &FleetPlace::showFacts);
  connect(&session_, &Session::unitsChanged, this, [this] { model_.setFigures(session_.figures()); });
  showFacts();
}

QString FleetPlace::explanation() const {
  return tr("Every serial-numbered unit: where it is, which cart it rides on, its state and the examination "
            "that it owes "
            "next. Click a heading to sort; serials sort by their numbers. Type words to narrow the list: "
            "all of them "
            "must occur in a line.");
}

void FleetPlace::showKey(const QString& key) {
  page_->showKey(key);
}

void FleetPlace::takeFocus() {
  page_->table().setFocus();
}

void FleetPlace::showFacts() {
  model_.setFacts(session_.overview());
  const auto& units = session_.overview().units;
  const auto away = std::count_if(units.begin(), units.end(), [](const fleet::Unit& each) {
    return each.state == fleet::UnitState::away;
  });
  const auto kept = std::count_if(units.begin(), units.end(), [](const fleet::Unit& each) {
    return each.state == fleet::UnitState::quarantined || each.state == fleet::UnitState::inRepair;
  });
  setNote(tr("%1 away · %2 not to be used").arg(away).arg(kept));
}

} // namespace hangbook::desk
