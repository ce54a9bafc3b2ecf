// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QByteArray>
#include <QDateTime>
#include <QString>

/// Calendars as files: iCalendar, RFC 5545.
namespace hangbook::exchange {

/// Something that takes whole days.
struct CalendarEvent {
  QString uid; ///< the same thing keeps it, so that a calendar that reads the file again replaces its entry
  QDate from;
  QDate to; ///< last day
  QString summary;
  QString description;
  QString location;
};

/// One VCALENDAR: lines end in CR LF and are folded at 75 octets, never inside a character; text is escaped.
/// Days without a time, so that no zone moves them. `stamp` is when the file was made, UTC.
QByteArray writeCalendar(const std::vector<CalendarEvent>& events, const QDateTime& stamp);

} // namespace hangbook::exchange
