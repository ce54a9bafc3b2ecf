// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/name_box.h"

#include <QCoreApplication>
#include <QLineEdit>

namespace hangbook::desk {

QComboBox* nameBox(const QString& name, const QString& says, const QStringList& people, const QString& first,
                   QWidget* parent) {
  auto* box = new QComboBox(parent);
  box->setObjectName(name);
  box->setAccessibleName(says);
  box->setEditable(true);
  box->setInsertPolicy(QComboBox::NoInsert);
  box->lineEdit()->setAccessibleName(says);
  box->lineEdit()->setPlaceholderText(QCoreApplication::translate("NameBox", "Name"));
  box->addItems(people);
  box->setCurrentIndex(-1);
  box->setEditText(first);
  return box;
}

} // namespace hangbook::desk
