// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QDateTime>

#include "calendar/where_best.h"

namespace hangbook::exchange {

/// What is due as a calendar: one entry for each visit; what is overdue stands on today.
QByteArray dueAsCalendar(const std::vector<calendar::Planned>& due, const QDateTime& stamp);

} // namespace hangbook::exchange
