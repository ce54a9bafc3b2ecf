// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "exchange/venue_text.h"

class QPushButton;
class QTableWidget;

namespace hangbook::desk {

/// Points or bays of a venue as rows of texts, with adding and removing; what is wrong stands at the end of
/// its row and marks its field.
class PartTable : public QWidget {
  Q_OBJECT
public:
  /// `name` begins the names of its parts: nameTable, nameAdd, nameRemove.
  PartTable(const QString& name, const QString& says, const QString& add,
            const std::vector<exchange::TextField>& fields, UnitSystem system, QWidget* parent = nullptr);

  void setRows(const std::vector<QStringList>& rows);
  std::vector<QStringList> rows() const;
  /// The faults of one part, whichever row they are of.
  void setFaults(const std::vector<exchange::VenueFault>& faults);
  int currentRow() const;

Q_SIGNALS:
  void changed();
  void currentChanged();

private:
  void addRow();
  void removeRow();
  void fitColumns();
  void putRow(int row, const QStringList& texts);

  const std::vector<exchange::TextField>& fields_;
  QTableWidget* table_;
  QPushButton* add_;
  QPushButton* remove_;
  bool filling_ = false;
};

/// A field's name as it is shown, with the unit of a bare number: "Low steel (m)".
QString fieldTitle(const exchange::TextField& field, UnitSystem system);
/// The same without the unit.
QString fieldWords(const QString& field);
/// "read “1 ton”, expected a force such as 12.5 kN".
QString faultWords(const exchange::VenueFault& fault);

} // namespace hangbook::desk
