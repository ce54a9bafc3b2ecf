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

class EditDialog;

/// Venues, makers' data, house rules and people; beside them every figure of the selected one with its
/// source and date. Venues, makers' data and people are edited, added and removed here.
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
  bool dialogIsOpen() const;
  void edit();
  void editPlugs(const exchange::HangName& hang);
  void open(EditDialog* dialog, const QString& name);
  void fillNew();
  /// A new record of that sort; of the selected one a copy where `copy` says so.
  void addNew(exchange::Kind kind, const QString& sort, bool copy);
  void remove();
  void removeNow(const exchange::RecordName& record, const QString& by);
  void tell(const QString& words);
  /// Shows what was saved, and the record of the name that it then has.
  void afterSaving(const QString& name, const QString& effect);

  Session& session_;
  RecordModel records_;
  FigureModel figures_;
  ListPage* recordPage_;
  ListPage* figurePage_;
  QPushButton* edit_;
  QPushButton* new_;
  QPushButton* remove_;
  QLabel* effect_; ///< what the last edit did to chosen options
  QString wanted_; ///< the record that is to be selected once the list has it
};

} // namespace hangbook::desk
