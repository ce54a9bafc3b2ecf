// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableWidget>

#include "desk/importing/import_wish.h"

namespace hangbook::desk {

/// The headings of a file, what stands below them, and as which of ours each is read.
class ColumnsTable : public QTableWidget {
  Q_OBJECT
public:
  explicit ColumnsTable(QWidget* parent = nullptr);

  /// Shows the file's headings with the mapping that the look was made with.
  void setLook(const ImportLook& look, exchange::Kind kind);
  /// Only the columns that are not read as they stand.
  std::vector<exchange::Mapping::Column> columns() const;

Q_SIGNALS:
  void changed();

private:
  QStringList headings_;
};

} // namespace hangbook::desk
