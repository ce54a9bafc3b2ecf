// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/data/edit_dialog.h"
#include "exchange/plug_text.h"

namespace hangbook::desk {

class PartTable;

/// Which ends of which looms go into the cabinets of a hang: a row a plug, read at each key by the rules of
/// the shows' spreadsheet.
class PlugDialog : public EditDialog {
  Q_OBJECT
public:
  /// `before` is what the plugs are read against.
  PlugDialog(Session& session, const exchange::HangName& hang, const exchange::Data& before,
             QWidget* parent = nullptr);

protected:
  bool differs() const override;
  void check() override;
  void save() override;

private:
  exchange::HangName hang_;
  exchange::Data before_;
  std::vector<QStringList> first_;
  PartTable* table_;
  exchange::PlugsRead read_;
};

} // namespace hangbook::desk
