// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/data/record_models.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"
#include "exchange/record_text.h"

class QLabel;
class QPushButton;

namespace hangbook::desk {

/// Venues, makers' data, house rules and people; beside them every figure of the selected one with its
/// source and date. Venues, makers' data and people are edited
/// here.
class DataPlace : public Place {
  Q_OBJECT
public:
  explicit DataPlace(Session& session, QWidget* parent = nullptr);

  QString explanation() const override;
  void showKey(const QString& key) override;
  void takeFocus() override;

private:
  void showFacts();
  void showRecord(int row);
  std::optional<exchange::RecordName> currentRecord() const;
  const venue::Venue* currentVenue() const;
  void edit();
  template <class Dialog>
  void open(Dialog* dialog, const QString& name);

  Session& session_;
  RecordModel records_;
  FigureModel figures_;
  ListPage* recordPage_;
  ListPage* figurePage_;
  QPushButton* edit_;
  QLabel* effect_; ///< what the last edit did to chosen options
};

} // namespace hangbook::desk
