// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/fleet/fleet_model.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

namespace hangbook::desk {

/// Units with place, cart, state and next examination.
class FleetPlace : public Place {
  Q_OBJECT
public:
  explicit FleetPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

private:
  void showFacts();

  Session& session_;
  FleetModel model_;
  ListPage* page_;
};

} // namespace hangbook::desk
