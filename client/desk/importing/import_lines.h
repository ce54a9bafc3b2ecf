// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/importing/import_wish.h"
#include "desk/lists/table_model.h"

namespace hangbook::desk {

/// One line of a look: a fault, or a figure that becomes another one.
struct ImportLine {
  int line = 0;
  QString what{}; ///< the record, or "cannot be read"
  QString column{};
  QString stands{}; ///< what was read, or the figure as it is
  QString then{};   ///< what is expected, or the figure as it becomes
  bool fault = false;
};

enum class ImportColumn { line, what, column, stands, then, count };

class ImportLines : public ListOf<ImportLine, ImportColumn> {
public:
  using ListOf::ListOf;
  void setLook(const ImportLook& look);

private:
  Heading headingOf(ImportColumn column) const override;
  Cell cellOf(const ImportLine& line, ImportColumn column) const override;
  QString keyOf(const ImportLine& line) const override { return QString::number(line.line); }
};

} // namespace hangbook::desk
