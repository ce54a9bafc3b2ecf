// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QDialog>

#include "fleet/occurrence.h"
#include "fleet/unit.h"

class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

/// Something happened to a unit: it was used, dropped, assembled, found faulty.
class HappenedDialog : public QDialog {
  Q_OBJECT
public:
  HappenedDialog(const fleet::Unit& unit, QDate today, const QStringList& people, const QString& atDesk,
                 QWidget* parent = nullptr);

  fleet::Occurrence occurrence() const;
  /// Names of files to be kept with it.
  QStringList files() const;
  /// Who names the file; by default the person in front of the screen.
  void setFileAsker(std::function<QString()> asker) { fileAsker_ = std::move(asker); }

private:
  fleet::OccurrenceKind kind() const;
  void check();

  fleet::Unit unit_;
  QComboBox* kind_;
  QDateEdit* date_;
  QSpinBox* uses_;
  QDoubleSpinBox* hours_;
  QLineEdit* remark_;
  QLineEdit* file_;
  QComboBox* by_;
  QLabel* follows_;
  std::function<QString()> fileAsker_;
  QPushButton* accept_;
};

} // namespace hangbook::desk
