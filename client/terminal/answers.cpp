// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/answers.h"

#include <QJsonDocument>

#include "quantity/error.h"

namespace hangbook::terminal {

void printJson(Context& context, const QJsonObject& object) {
  context.out << QJsonDocument(object).toJson(QJsonDocument::Indented).toStdString();
}

QDate today(const Context& context) {
  return context.asOf.value_or(QDate::currentDate());
}

QString signedBy(const Context& context, const std::string& why) {
  const QString name = QString::fromStdString(context.by.value_or("")).simplified();
  if (name.isEmpty()) {
    throw Error(Trouble::badInput, "--by NAME is needed " + why);
  }
  return name;
}

} // namespace hangbook::terminal
