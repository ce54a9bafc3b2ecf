// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QJsonObject>
#include <QString>

#include "terminal/command.h"

/// What all words that answer about a store share.
namespace hangbook::terminal {

void printJson(Context& context, const QJsonObject& object);

/// --as-of, else today's date here.
QDate today(const Context& context);

/// Text for people.
inline std::ostream& operator<<(std::ostream& out, const QString& text) {
  return out << text.toStdString();
}

} // namespace hangbook::terminal
