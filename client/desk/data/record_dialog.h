// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "desk/source/session.h"
#include "exchange/record_text.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace hangbook::desk {

class TypePicture;

/// One record of makers' data or people: a field for each column of its spreadsheet, read at each key by the
/// spreadsheet's rules. What is wrong stands beside its field; a cabinet or bar is drawn as it is typed.
class RecordDialog : public QDialog {
  Q_OBJECT
public:
  RecordDialog(Session& session, const exchange::RecordName& record, QWidget* parent = nullptr);

  /// What the save changed, in words.
  const QString& effect() const { return effect_; }

protected:
  void reject() override;

private:
  QWidget* fields();
  void layOut();
  void check();
  void draw();
  void save();
  QStringList typed() const;

  Session& session_;
  exchange::RecordName record_;
  exchange::Data before_; ///< makers' data and people as they were read
  std::vector<exchange::RecordField> columns_;
  QStringList first_;
  std::vector<QLineEdit*> fields_;
  std::vector<QLabel*> wrong_; ///< one beside each field
  TypePicture* picture_;
  QComboBox* by_;
  QLabel* says_;
  QPushButton* save_;
  exchange::RecordRead read_;
  QString effect_;
  bool sending_ = false;
  bool warned_ = false; ///< that leaving loses what was typed
};

} // namespace hangbook::desk
