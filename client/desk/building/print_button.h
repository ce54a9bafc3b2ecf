// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>

#include "desk/source/session.h"
#include "reports/code.h"

namespace hangbook::desk {

/// Prints the sheets of the show that people are at, and makes its offline copy.
class PrintButton : public QPushButton {
  Q_OBJECT
public:
  explicit PrintButton(Session& session, QWidget* parent = nullptr);

  /// Makes the offline copy of the show in a file that must not be there yet.
  void copy(const QString& file);

private:
  void askCopy();
  void print(const QString& kind);
  void preview(const reports::Sheet& sheet, reports::SheetCode code);

  Session& session_;
};

} // namespace hangbook::desk
