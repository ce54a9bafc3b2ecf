// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QUuid>

#include "desk/lists/table_model.h"

namespace hangbook::desk {

/// One scan and what was answered.
struct ScanLine {
  int number = 0;
  QString code{};
  QString word{}; ///< empty: not answered yet
  QString text{};
  options::Verdict sign = options::Verdict::unproven;
};

enum class ScanColumn { word, code, text, count };

/// The scans since the window was opened, the newest first.
class ScanLog : public ListOf<ScanLine, ScanColumn> {
public:
  using ListOf::ListOf;
  /// Puts a scan that waits for its answer on top; answers its number.
  int add(const QString& code);
  void answer(int number, const QString& word, const QString& text, options::Verdict sign);

private:
  Heading headingOf(ScanColumn column) const override;
  Cell cellOf(const ScanLine& line, ScanColumn column) const override;
  QString keyOf(const ScanLine& line) const override { return QString::number(line.number); }

  int count_ = 0;
};

} // namespace hangbook::desk
