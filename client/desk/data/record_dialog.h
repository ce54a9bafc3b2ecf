// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "desk/data/edit_dialog.h"
#include "exchange/record_text.h"

namespace hangbook::desk {

class FieldForm;
class PartTable;
class TypePicture;

/// What records are read against in the window: makers' data, connections, people and venues.
exchange::Data recordData(const Overview& overview);

/// One record of makers' data or people: a field for each column of its spreadsheet, a table for each sort of
/// line that belongs to it (a stacking table's joints and counts, a cabinet's sockets), read at each key by
/// the spreadsheet's rules. What is wrong stands beside its field; a cabinet or bar is drawn as it is typed.
class RecordDialog : public EditDialog {
  Q_OBJECT
public:
  /// A record without a name is new and begins with `start`, which may be none.
  RecordDialog(Session& session, const exchange::RecordName& record, QWidget* parent = nullptr,
               const exchange::RecordText& start = {});

  /// The name that it has, or is to have.
  QString name() const;

protected:
  bool differs() const override;
  void check() override;
  void save() override;

private:
  bool isNew() const { return record_.name.isEmpty(); }
  QWidget* fields();
  void draw();
  exchange::RecordText typed() const;
  QString faultsInWords(const exchange::RecordText& text) const;
  QString changesInWords(const exchange::RecordText& text) const;

  exchange::RecordName record_;
  exchange::Data before_; ///< as it was read
  std::vector<exchange::RecordPart> parts_;
  exchange::RecordText first_;
  FieldForm* form_ = nullptr;
  std::vector<PartTable*> tables_; ///< one for each part
  TypePicture* picture_;
  exchange::RecordRead read_;
};

} // namespace hangbook::desk
