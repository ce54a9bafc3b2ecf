// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QJsonValue>

namespace hangbook::exchange {

/// Reads JSON text (UTF-8) whose outermost value is an object or a list. Throws Error(badInput) with line and
/// column where the text is not JSON, and where an object names one key twice: a reader that takes one of the
/// two without a word would hide a slip.
QJsonValue readJson(const QByteArray& text);

} // namespace hangbook::exchange
