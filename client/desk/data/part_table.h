// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "desk/data/field_words.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace hangbook::desk {

class FlatHeader;

/// Parts of a record (points of a venue, joints of a stacking table) as rows of texts, with adding and
/// removing; what is wrong stands at the end of its row and marks its field. Where the columns are too wide
/// for that end to be seen, what is wrong stands behind the first of them.
class PartTable : public QWidget {
  Q_OBJECT
public:
  /// `name` begins the names of its parts: nameTable, nameAdd, nameRemove.
  PartTable(const QString& name, const QString& says, const QString& add, std::vector<FormField> fields,
            QWidget* parent = nullptr);

  /// A sentence under the table.
  void setNote(const QString& note);

  void setRows(const std::vector<QStringList>& rows);
  std::vector<QStringList> rows() const;
  void setFaults(const std::vector<exchange::FieldFault>& faults);
  int currentRow() const;
  const std::vector<FormField>& fields() const { return fields_; }

Q_SIGNALS:
  void changed();
  void currentChanged();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void addRow();
  void removeRow();
  void fitColumns();
  void fitFaults();
  void putRow(int row, const QStringList& texts);
  void tellEmpty();

  std::vector<FormField> fields_;
  QTableWidget* table_;
  FlatHeader* header_;
  QPushButton* add_;
  QPushButton* remove_;
  QLabel* note_;
  QLabel* empty_; ///< over the table where it has no row
  bool filling_ = false;
};

} // namespace hangbook::desk
