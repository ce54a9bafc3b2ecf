// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/words/ask_dialog.h"
#include "fleet/occurrence.h"
#include "fleet/unit.h"

class QDateEdit;
class QDoubleSpinBox;
class QSpinBox;

namespace hangbook::desk {

/// Something happened to a unit: it was used, dropped, assembled, found faulty.
class HappenedDialog : public AskDialog {
  Q_OBJECT
public:
  HappenedDialog(const fleet::Unit& unit, QDate today, const QStringList& people, const QString& atDesk,
                 QWidget* parent = nullptr);

  fleet::Occurrence occurrence() const;
  /// Names of files to be kept with it.
  QStringList files() const;

private:
  void addDay(QDate today);
  void addCounts();
  fleet::OccurrenceKind kind() const;
  QString follows() const;
  void fitKind();

  fleet::Unit unit_;
  QComboBox* kind_;
  QDateEdit* date_;
  QSpinBox* uses_;
  QDoubleSpinBox* hours_;
  QLineEdit* remark_ = nullptr;
  QLineEdit* file_ = nullptr;
  QLabel* follows_ = nullptr;
};

} // namespace hangbook::desk
