// SPDX-License-Identifier: GPL-3.0-or-later
#include "terminal/answers.h"

#include <QJsonDocument>

namespace hangbook::terminal {

void printJson(Context& context, const QJsonObject& object) {
  context.out << QJsonDocument(object).toJson(QJsonDocument::Indented).toStdString();
}

QDate today(const Context& context) {
  return context.asOf.value_or(QDate::currentDate());
}

} // namespace hangbook::terminal
