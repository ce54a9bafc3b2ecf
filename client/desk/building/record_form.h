// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "desk/source/overview.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

/// What was really used: mark, measured angle, chain, who. The button stays off until mark and name are there
/// and everything that was typed can be read.
class RecordForm : public QWidget {
  Q_OBJECT
public:
  explicit RecordForm(QWidget* parent = nullptr);

  void setPeople(const std::vector<people::Person>& people);
  /// The mark that was computed, to begin with; none: nothing to record.
  void setComputed(std::optional<int> mark);
  /// The typed part of the record; the rest is the place's to fill in.
  marks::MarkUsed typed() const;
  void clearTyped();

Q_SIGNALS:
  void recordAsked();

private:
  void check();

  QSpinBox* mark_;
  QLineEdit* measured_;
  QLineEdit* chain_;
  QLineEdit* weather_;
  QComboBox* by_;
  QLabel* note_;
  QPushButton* record_;
  bool has_ = false;
};

} // namespace hangbook::desk
