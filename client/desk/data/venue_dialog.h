// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QDialog>

#include "desk/source/session.h"
#include "exchange/venue_text.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

class PartTable;
class VenuePlan;

/// A venue's figures, points and bays as texts, with the plan of its points beside them. What cannot be read
/// is said beside its field, and nothing is saved until all of it can; what was typed stays in any case.
class VenueDialog : public QDialog {
  Q_OBJECT
public:
  VenueDialog(Session& session, const venue::Venue& venue, QWidget* parent = nullptr);

  /// What the save did to chosen options, in words.
  const QString& effect() const { return effect_; }

protected:
  void reject() override;

private:
  QWidget* figures();
  QWidget* parts();
  void layOut();
  void check();
  void send(bool dryRun);
  exchange::VenueText typed() const;
  /// The first fault in full, and how many there are.
  QString faultsInWords(const exchange::VenueText& text) const;

  Session& session_;
  venue::Venue before_;
  UnitSystem system_; ///< as it was when the dialog opened: the headings name it
  NumberForm form_;
  exchange::VenueText first_;
  std::vector<QLineEdit*> fields_;
  std::vector<QLabel*> wrong_; ///< one beside each field
  PartTable* points_;
  PartTable* zones_;
  VenuePlan* plan_;
  QComboBox* by_;
  QLabel* says_;
  QPushButton* try_;
  QPushButton* save_;
  exchange::VenueRead read_;
  QString effect_;
  bool sending_ = false;
  bool warned_ = false; ///< that leaving loses what was typed
};

} // namespace hangbook::desk
