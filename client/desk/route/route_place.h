// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/route/route_model.h"
#include "desk/source/session.h"

namespace hangbook::desk {

class CheckPanel;
class ClashPanel;
class LoadChart;

/// The tour's shows in order of date.
class RoutePlace : public Place {
  Q_OBJECT
public:
  explicit RoutePlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

Q_SIGNALS:
  /// Somebody wants to look at the options of this show.
  void optionsWanted(const ShowKey& show);

private:
  void showFacts();
  void followStop();

  Session& session_;
  RouteModel model_;
  ListPage* page_;
  LoadChart* chart_;
  CheckPanel* check_;
  ClashPanel* clashes_;
};

} // namespace hangbook::desk
