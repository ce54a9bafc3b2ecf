// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "desk/style/figures.h"
#include "options/option.h"

class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace hangbook::desk {

class VerdictLabel;

/// Tilt, trim and mark of the option that is looked at, to be changed by hand, and the button to choose it.
/// It only says what was asked for; who owns it judges and tells the verdict back.
class AdjustPanel : public QWidget {
  Q_OBJECT
public:
  explicit AdjustPanel(QWidget* parent = nullptr);

  /// The option that it is about, without saying that anything was asked for. None: nothing to adjust.
  void setOption(const std::optional<options::Option>& option);
  /// What the judged setting came to.
  void setJudged(const options::Option& option);
  void setFigures(const Figures& figures);
  options::Setting setting() const;
  /// Takes a setting from elsewhere, as if it had been typed.
  void ask(const options::Setting& setting);
  /// Moves the trim by so much, as if it had been typed.
  void lift(double metres);

Q_SIGNALS:
  void settingAsked(const options::Setting& setting);
  void backAsked();
  void chooseAsked();

private:
  void fill();
  void tell(const options::Option& option);

  QDoubleSpinBox* tilt_;
  QDoubleSpinBox* trim_;
  QSpinBox* mark_;
  VerdictLabel* verdict_;
  QLabel* about_;
  QPushButton* back_;
  QPushButton* choose_;
  Figures figures_;
  options::Setting setting_;
  bool has_ = false;
};

} // namespace hangbook::desk
