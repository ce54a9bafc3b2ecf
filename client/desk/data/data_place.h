// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/data/record_models.h"
#include "desk/frame/place.h"
#include "desk/lists/list_page.h"
#include "desk/source/session.h"

namespace hangbook::desk {

/// Venues, makers' data, house rules and people; beside them every figure of the selected one with its
/// source and date.
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

  Session& session_;
  RecordModel records_;
  FigureModel figures_;
  ListPage* recordPage_;
  ListPage* figurePage_;
};

} // namespace hangbook::desk
