// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/fleet/load_models.h"
#include "desk/source/session.h"

class QComboBox;
class QLabel;
class QSplitter;
class QTableView;

namespace hangbook::desk {

class VerdictLabel;

/// Which carts a show needs, and what is in a truck in the order in which it comes out, with payload and
/// floor.
class LoadPage : public QWidget {
  Q_OBJECT
public:
  explicit LoadPage(Session& session, QWidget* parent = nullptr);

private:
  QWidget* cartPart();
  QWidget* truckPart();
  void showFacts();
  void offerShows();
  void offerTrucks();
  void showCarts();
  void showTruck();
  /// Of the show that is set: the stack of each hang with a choice.
  std::vector<options::HangStack> stacks() const;
  catalogue::Catalogue counted(const std::vector<options::HangStack>& stacks) const;

  Session& session_;
  CartPlanModel carts_;
  LoadModel loads_;
  QComboBox* shows_;
  QComboBox* trucks_;
  QLabel* cartsSay_;
  QTableView* cartTable_;
  QTableView* loadTable_;
  QLabel* loadSays_;
  VerdictLabel* payload_;
  QLabel* payloadSays_;
  VerdictLabel* floor_;
  QLabel* floorSays_;
};

} // namespace hangbook::desk
