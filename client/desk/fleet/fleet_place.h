// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include <QTimer>

#include "desk/fleet/fleet_model.h"
#include "desk/fleet/unit_story.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

class QDialog;
class QPushButton;
class QTabWidget;

namespace hangbook::actions {
struct Recorded; // actions/fleet_work.h
}

namespace hangbook::desk {

class LoadPage;
class ScanBench;
class StockPage;

/// Units with place, cart, state and next examination, and what is recorded of the one selected; stock
/// against demand; carts and trucks; beside each of them scanning.
class FleetPlace : public Place {
  Q_OBJECT
public:
  explicit FleetPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;
  bool showPart(const QString& name) override;

  ScanBench& bench() { return *bench_; }
  /// Who answers the dialogs: by default the person in front of the screen.
  using Asker = std::function<bool(QDialog&)>;
  void setAsker(Asker asker) { asker_ = std::move(asker); }

private:
  QWidget* unitPart();
  void showFacts();
  void showUnit();
  const fleet::Unit* current() const;
  QStringList people() const;
  void askState();
  void askHappened();
  void askSplit();
  void askLabels();
  void recorded(const QString& serial, const actions::Recorded& what);
  /// Does `deed` on the worker; what it recorded is told and everything is read again.
  void record(const QString& serial, std::function<actions::Recorded(Source&)> deed);

  Session& session_;
  FleetModel model_;
  StoryModel story_;
  QTabWidget* parts_;
  ListPage* page_;
  StockPage* stock_;
  LoadPage* loads_;
  ScanBench* bench_;
  QLabel* unitText_;
  QLabel* toldText_;
  QPushButton* state_;
  QPushButton* happened_;
  QPushButton* split_;
  QPushButton* labels_;
  std::shared_ptr<Watch> reading_;
  QString selected_;
  QString toldFor_; ///< the unit that `toldText_` speaks of
  QTimer quiet_;    ///< reads everything again when the scanner pauses
  Asker asker_;
};

/// What follows from a fact, in words: quarantined, and the shows that counted on the unit.
QString followsFrom(const QString& serial, const actions::Recorded& what);

} // namespace hangbook::desk
