// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QWidget>

#include "desk/options/would_do_lines.h"
#include "desk/source/session.h"

class QLabel;
class QTableView;

namespace hangbook::desk {

class WorkLine;

/// What would do for the option that is looked at, or what breaks first and how far away it is. Worked out
/// while somebody looks at this panel, off the window's thread; dropped as soon as another option or setting
/// is meant.
class WouldDoPanel : public QWidget {
  Q_OBJECT
public:
  explicit WouldDoPanel(Session& session, QWidget* parent = nullptr);

  /// `own`: at this very setting, which somebody chose; else as the search found it.
  void setOption(std::shared_ptr<const options::Snapshot> snapshot, const options::Option& option, bool own);
  void setNothing();

protected:
  void showEvent(QShowEvent* event) override;

private:
  struct Wish {
    std::shared_ptr<const options::Snapshot> snapshot;
    options::Option option;
    bool own = false;
  };
  void workOut();
  void drop();
  void showLines();
  void showWhole();

  Session& session_;
  WouldDoModel model_;
  QTableView* table_;
  WorkLine* line_;
  QLabel* whole_;
  std::optional<Wish> wish_;
  std::optional<WhatWouldDo> found_;
  std::shared_ptr<Watch> watch_;
  bool asked_ = false; ///< the wish has been worked out, is being worked out, or was stopped by hand
};

} // namespace hangbook::desk
