// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "desk/data/field_words.h"

class QLabel;
class QLineEdit;

namespace hangbook::desk {

/// Fields under one another, each with its title before it and what is wrong with it under it, in as many
/// lines as that takes. Lies in a scroll area and is as high as it must be for its width.
class FieldForm : public QWidget {
  Q_OBJECT
public:
  /// `prefix` begins the names of its parts: prefix_low_steel, prefix_low_steel_wrong.
  FieldForm(const QString& prefix, std::vector<FormField> fields, const QStringList& texts,
            QWidget* parent = nullptr);

  QStringList texts() const;
  /// Those of the one row that a form is.
  void setFaults(const std::vector<exchange::FieldFault>& faults);

Q_SIGNALS:
  void changed();

private:
  std::vector<FormField> fields_;
  std::vector<QLineEdit*> edits_;
  std::vector<QLabel*> wrong_; ///< one for each field
};

/// The form in a frame that follows the field which has the keyboard.
QWidget* scrolled(FieldForm* form, QWidget* parent);

} // namespace hangbook::desk
