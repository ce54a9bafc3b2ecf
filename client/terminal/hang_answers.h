// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QJsonObject>
#include <QJsonValue>

#include "terminal/command.h"

namespace hangbook::terminal {

/// Reads one hang or a list of hangs (JSON) from the context's input and writes one answer or a list of
/// answers, in order. An entry that is refused is `{"error": …}` in its place, with one line on standard
/// error. Ends with badInput if any is not valid, else failing if any is not possible, else done.
Ending answerHangs(Context& context, const std::function<QJsonObject(const QJsonValue&)>& answer);

} // namespace hangbook::terminal
