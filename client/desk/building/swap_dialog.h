// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/building/flown_changes.h"
#include "desk/source/session.h"
#include "desk/source/swap_source.h"
#include "desk/words/ask_dialog.h"

class QLabel;

namespace hangbook::desk {

class VerdictLabel;

/// A unit that is dead at load-in: which one, what takes its place, and all that changes by it before anyone
/// acts. It only asks; whoever opened it does what it answers.
class SwapDialog : public AskDialog {
  Q_OBJECT
public:
  explicit SwapDialog(Session& session, QWidget* parent = nullptr);

  SwapWish wish() const;

private:
  QString massOf(const fleet::Unit& unit) const;
  void list();
  void fill(const std::vector<actions::StandIn>& standIns);
  void judge();
  void show(const actions::Swap& swap);
  void say(const QString& words);

  Session& session_;
  ShowKey show_;
  QComboBox* dead_;
  QComboBox* stand_;
  ChangeModel changes_;
  VerdictLabel* verdict_;
  QLabel* about_;
  QLineEdit* reason_ = nullptr;
  std::shared_ptr<Watch> watch_;
};

} // namespace hangbook::desk
