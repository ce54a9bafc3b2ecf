// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "actions/scan.h"
#include "desk/source/overview.h"

class QComboBox;
class QFormLayout;

namespace hangbook::desk {

/// What the scanner is set to: what a scan does, where to, where one stands, and who scans.
class ScanTaskForm : public QWidget {
  Q_OBJECT
public:
  explicit ScanTaskForm(QWidget* parent = nullptr);

  /// Shows, carts, trucks and places to choose from. What is chosen stays.
  void setFacts(const Overview& overview);
  /// The task as set; none where something is missing, and `lacking` then says what.
  std::optional<actions::ScanTask> task(QString& lacking) const;
  QString by() const;

Q_SIGNALS:
  void changed();

private:
  actions::ScanTask::Kind kind() const;
  void offer();

  QComboBox* kind_;
  QComboBox* target_; ///< show, cart, truck or place
  QComboBox* truck_;  ///< out: in which truck
  QComboBox* from_;
  QComboBox* by_;
  QFormLayout* form_;
  std::vector<calendar::Show> shows_;
  QStringList carts_;
  QStringList trucks_;
  QStringList bays_;
  QStringList places_;
};

} // namespace hangbook::desk
