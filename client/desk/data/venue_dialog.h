// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "desk/data/edit_dialog.h"
#include "exchange/venue_text.h"

class QTabWidget;

namespace hangbook::desk {

class FieldForm;
class PartTable;
class VenuePlan;
class VenueSide;

/// A venue's figures and parts as texts, with its plan and its section beside them as they are typed. What
/// cannot be read is said beside its field, and nothing is saved until all of it can; what was typed stays in
/// any case.
class VenueDialog : public EditDialog {
  Q_OBJECT
public:
  VenueDialog(Session& session, const venue::Venue& venue, QWidget* parent = nullptr);

protected:
  bool differs() const override;
  void check() override;
  void save() override { sendIt(false); }

private:
  /// A part whose rows are typed in a table of their own.
  struct Part {
    exchange::VenuePart part;
    PartTable* table;
  };

  void addTable(exchange::VenuePart part, const QString& name, const QString& says, const QString& add,
                const QString& tab, const QString& note = {});
  void showCurrent();
  void sendIt(bool dryRun);
  exchange::VenueText typed() const;
  /// The first fault in full, and how many there are; empty: there is none.
  QString faultsInWords(const exchange::VenueText& text) const;

  venue::Venue before_;
  UnitSystem system_; ///< as it was when the dialog opened: the headings name it
  NumberForm form_;
  exchange::VenueText first_;
  QTabWidget* tabs_;
  std::vector<Part> tables_;
  FieldForm* figures_;
  VenuePlan* plan_;
  VenueSide* side_;
  QPushButton* try_ = nullptr;
  exchange::VenueRead read_;
};

} // namespace hangbook::desk
