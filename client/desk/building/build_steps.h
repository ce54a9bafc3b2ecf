// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "build/plan.h"
#include "desk/source/overview.h"
#include "desk/style/figures.h"
#include "marks/gate.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTextBrowser;

namespace hangbook::desk {

/// One hang's hold points as they stand; `id` is null where one stands open.
using Gates = std::vector<marks::GateSigned>;

/// The computed steps of one hang, up or down, with the hold points in them and room to sign the next one.
class BuildSteps : public QWidget {
  Q_OBJECT
public:
  explicit BuildSteps(QWidget* parent = nullptr);

  void setPlan(const build::Plan& plan, const QString& hang, const Gates& gates, const Figures& figures);
  /// Instead of steps.
  void setWords(const QString& words);
  void setPeople(const std::vector<people::Person>& people);
  const Gates& gates() const { return gates_; }

Q_SIGNALS:
  /// The next open hold point: signed, or skipped where there is a reason.
  void signAsked(const QString& gate, const QString& by, const QString& skippedBecause);

private:
  void fill();
  void check();
  QString next() const; ///< empty: none stands open

  build::Plan plan_;
  QString hang_;
  Gates gates_;
  Figures figures_;
  QComboBox* way_;
  QTextBrowser* text_;
  QLabel* gate_;
  QComboBox* by_;
  QLineEdit* reason_;
  QPushButton* sign_;
  QPushButton* skip_;
};

} // namespace hangbook::desk
